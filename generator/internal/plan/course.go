package plan

import (
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/recite"
)

// Lines is one session of a course.
type Lines struct {
	Day  int
	Plan Plan
	Passage
	How    int // of the ranking
	Found  int // places of the marked rule the child found
	Places [recite.NumRules]int
}

// Course plays a child who begins with the last juz and no rules, and has sessions on four days a week, through the
// sequence: every session does what Today says on the best passage that Rank finds. The child finds seven in ten places
// in the first session with a rule and all of them from the second on, but now and then (every seventh session) three in
// four. It reads the first session of a rule with some help and the others alone. The course ends when every unit is
// known; most is a limit of sessions.
func Course(t *mushaf.Text, x *passage.Index, units []Unit, most int) []Lines {
	rare := Rare(Places(x, 0, len(t.Verses)-1))
	l := Learner{Order: TeachingOrder(t, x, units)}
	place, juz := JuzStart(t, 30), 30
	var course []Lines
	met := map[int]int{} // sessions that marked each rule
	for n := range most {
		l.Day = n/4*7 + [...]int{0, 1, 3, 5}[n%4]
		p := Today(units, rare, l, DefaultCriterion)
		if p.Do == ReadOn || p.Do == DoReview && len(l.Taught) == len(units) && allKnown(units, rare, l) {
			break
		}
		if p.Do == Teach {
			l.Taught = append(l.Taught, Taught{p.Unit, l.Day, -1})
		}
		var used [][2]int
		for _, c := range course {
			if l.Day-c.Day <= RestDays {
				used = append(used, [2]int{c.A, c.B})
			}
		}
		q := p.Query(units, place, used)
		q.Best = 1
		r := Choose(x, q)
		s := Lines{Day: l.Day, Plan: p, Passage: r.Passages[0], How: r.How}
		for i := range s.Places {
			s.Places[i] = x.Count(recite.RuleID(i), s.A, s.B)
		}
		log := Session{Day: l.Day, Rule: p.Rule, Places: s.Places}
		if p.Rule >= 0 {
			s.Found = s.Focus
			switch met[p.Rule]++; {
			case met[p.Rule] == 1:
				s.Found, log.Help = (7*s.Focus+9)/10, SomeHelp
			case n%7 == 6:
				s.Found = (3*s.Focus + 3) / 4
			}
			log.Found, log.Missed = s.Found, s.Focus-s.Found
		}
		l.Log, course = append(l.Log, log), append(course, s)
		// The place moves on when the lines were ahead and near; at the end of a juz the child begins the one before it.
		if last := int(x.Verse[s.B]); s.Distance >= 0 && s.Distance < 600 {
			place = last + 1
		}
		if juz > 1 && (place >= len(t.Verses) || t.Verses[place].Juz > juz || t.Verses[place].Juz == 30 && juz < 30) {
			juz--
			place = JuzStart(t, juz)
		}
	}
	return course
}

func allKnown(units []Unit, rare [recite.NumRules]bool, l Learner) bool {
	for _, t := range l.Taught {
		if KnownDay(units[t.Unit], rare, t.Since, l.Log, DefaultCriterion) < 0 {
			return false
		}
	}
	return true
}

// JuzStart is the index of the first verse of a juz from 1 to 30.
func JuzStart(t *mushaf.Text, juz int) int {
	for i := range t.Verses {
		if t.Verses[i].Juz == juz {
			return i
		}
	}
	return 0
}

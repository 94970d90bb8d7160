package plan

import (
	"slices"

	"sutur/generator/internal/recite"
)

// What there is to do.
const (
	Settle   = iota // read without a new rule
	Teach           // begin a new unit
	Practise        // find and mark the unit begun last
	DoReview        // find and mark a rule known for some time, in lines where others are due too
	ReadOn          // everything has been taught and nothing is due
)

// SettleDays are the days of reading before the first rule. ReviewRules are the rules that must be due before a session is
// given to review alone, and ReviewEvery says that at most one session in so many is.
const (
	SettleDays  = 2
	ReviewRules = 3
	ReviewEvery = 4
)

// Taught is a unit that was begun: on which day, and on which the adult called it known (-1 for not yet).
type Taught struct{ Unit, Since, Known int }

// Learner is all that the plan for a day depends on.
type Learner struct {
	Day     int
	Settled bool // the adult says that the child reads well already
	Taught  []Taught
	Log     []Session // in order of time
	Order   []int     // units in the order in which they are taught
}

// Plan is what to do.
type Plan struct {
	Do   int
	Unit int // to teach or to practise; -1 for none
	Rule int // to mark; -1 for none
	Left int // days of settling in still to come
	// Readiness is that of the unit being practised.
	Readiness Readiness
	Due       []recite.RuleID // due today, the longest overdue first
	Known     []recite.RuleID // rules taught, known or being learnt
	Level     int             // units taught
}

// Today decides. units, rare and the criterion are as for Ready.
func Today(units []Unit, rare [recite.NumRules]bool, l Learner, c Criterion) Plan {
	p := Plan{Unit: -1, Rule: -1, Level: len(l.Taught)}
	known := make([]int, len(l.Taught))
	learning := -1
	var schedules []Schedule
	var since [recite.NumRules]int // the day on which each rule became known, plus one
	for i, t := range l.Taught {
		p.Known = append(p.Known, units[t.Unit].Rules...)
		if known[i] = t.Known; t.Known < 0 {
			known[i] = KnownDay(units[t.Unit], rare, t.Since, l.Log, c)
		}
		if known[i] < 0 {
			if learning < 0 || t.Since >= l.Taught[learning].Since {
				learning = i
			}
			continue
		}
		for _, r := range units[t.Unit].Rules {
			schedules = append(schedules, Review(r, known[i], l.Log))
			since[r] = known[i] + 1
		}
	}
	p.Due = Due(schedules, l.Day)
	if left := SettleDays - days(l.Log); !l.Settled && len(l.Taught) == 0 && left > 0 {
		p.Do, p.Left = Settle, left
		return p
	}
	next := -1
	for _, u := range l.Order {
		if !slices.ContainsFunc(l.Taught, func(t Taught) bool { return t.Unit == u }) {
			next = u
			break
		}
	}
	switch {
	case len(p.Due) >= ReviewRules && !reviewed(l.Log, since), learning < 0 && next < 0 && len(p.Due) > 0:
		p.Do, p.Rule = DoReview, int(p.Due[0])
	case learning >= 0:
		t := l.Taught[learning]
		p.Readiness = Ready(units[t.Unit], rare, t.Since, l.Log, c)
		p.Do, p.Unit, p.Rule = Practise, t.Unit, p.Readiness.Rule
	case next >= 0:
		p.Do, p.Unit, p.Rule = Teach, next, int(units[next].Rules[0])
	default:
		p.Do = ReadOn
	}
	return p
}

func days(log []Session) (n int) {
	last := -1
	for i := range log {
		if log[i].Day != last {
			n++
			last = log[i].Day
		}
	}
	return n
}

// reviewed reports whether one of the last sessions was given to a rule that was known before. since is the day on which
// each rule became known, plus one; 0 for not yet.
func reviewed(log []Session, since [recite.NumRules]int) bool {
	for _, s := range log[max(0, len(log)-ReviewEvery+1):] {
		if s.Rule >= 0 && since[s.Rule] > 0 && s.Day >= since[s.Rule] {
			return true
		}
	}
	return false
}

// Query asks for the lines of a plan near a place, which is a verse. A rule of the same unit that wants practice counts
// like a due one.
func (p Plan) Query(units []Unit, place int, used [][2]int) Query {
	q := Query{Known: p.Known, Place: place, Used: used, Level: p.Level}
	if p.Rule >= 0 {
		q.Focus = []recite.RuleID{recite.RuleID(p.Rule)}
	}
	if p.Unit >= 0 {
		for _, r := range units[p.Unit].Rules {
			if !slices.Contains(q.Focus, r) {
				q.Due = append(q.Due, r)
			}
			if !slices.Contains(q.Known, r) {
				q.Known = append(slices.Clone(q.Known), r)
			}
		}
	}
	for _, r := range p.Due {
		if !slices.Contains(q.Focus, r) && !slices.Contains(q.Due, r) {
			q.Due = append(q.Due, r)
		}
	}
	return q
}

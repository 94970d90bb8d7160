package plan

import (
	"slices"

	"sutur/generator/internal/recite"
)

// How a session's lines were read.
const (
	Alone = iota
	SomeHelp
	MuchHelp
)

// Session is what the log has of one practice session. Days are numbered; only their difference counts.
type Session struct {
	Day           int
	Rule          int // the rule that was marked; -1 for reading only
	Found, Missed int // written places of it
	Help          int
	Places        [recite.NumRules]int // places of every rule in the lines: all that were read aloud
}

// Criterion says when a unit is in hand. It is shown, and the adult may change it.
//
// To go on only when the present step is mastered, by a standard set beforehand, is mastery learning: B. S. Bloom,
// "Learning for Mastery", Evaluation Comment 1(2), 1968. Practice on different days instead of one: Cepeda et al. 2006
// (review.go). The figures themselves are common practice, with no source.
type Criterion struct {
	Sessions int // with the unit's rules
	Days     int // different days of these
	Percent  int // places found, of all, in the last Last sessions
	Last     int
}

// DefaultCriterion is three sessions on three days, nine in ten places found in the last two.
var DefaultCriterion = Criterion{Sessions: 3, Days: 3, Percent: 90, Last: 2}

// Readiness is how far a unit is. Percent is -1 while nothing was marked.
type Readiness struct {
	Sessions, Days int
	Percent        int
	MuchHelp       bool // one of the last sessions needed much help
	Rule           int  // the unit's rule that most wants practice, to be marked next
	Practised      int  // sessions in whose lines it came
	Wanted         int  // how many are wanted of it
	Ready          bool
}

// Rare reports which rules have fewer than Enough places in the whole text. One of several rules of a unit, such a rule
// is practised once; it cannot be practised often without reading the same lines again and again.
func Rare(places [recite.NumRules]int) (rare [recite.NumRules]bool) {
	for r, n := range places {
		rare[r] = n < Enough
	}
	return rare
}

// Ready weighs the sessions since the day on which the unit was begun. log is in order of time.
func Ready(u Unit, rare [recite.NumRules]bool, since int, log []Session, c Criterion) Readiness {
	r := Readiness{Percent: -1}
	var own []*Session
	practised, marked := make([]int, len(u.Rules)), make([]int, len(u.Rules))
	lastDay := -1
	for i := range log {
		s := &log[i]
		if s.Day < since {
			continue
		}
		for k, rule := range u.Rules {
			if s.Places[rule] > 0 {
				practised[k]++
			}
			if s.Rule == int(rule) {
				marked[k]++
			}
		}
		if s.Rule < 0 || !slices.Contains(u.Rules, recite.RuleID(s.Rule)) {
			continue
		}
		own = append(own, s)
		r.Sessions++
		if s.Day != lastDay {
			r.Days++
			lastDay = s.Day
		}
	}
	found, all := 0, 0
	for _, s := range own[max(0, len(own)-c.Last):] {
		found, all = found+s.Found, all+s.Found+s.Missed
		r.MuchHelp = r.MuchHelp || s.Help == MuchHelp
	}
	if all > 0 {
		r.Percent = 100 * found / all
	}
	lack := -1 << 30
	for k, rule := range u.Rules {
		want := c.Sessions
		if rare[rule] && len(u.Rules) > 1 {
			want = min(1, want)
		}
		// The greater lack first; of equal ones the one marked less.
		if l := (want-practised[k])*1000 - marked[k]; l > lack {
			lack, r.Rule, r.Practised, r.Wanted = l, int(rule), practised[k], want
		}
	}
	r.Ready = r.Sessions >= c.Sessions && r.Days >= c.Days && (r.Percent < 0 || r.Percent >= c.Percent) && !r.MuchHelp && r.Practised >= r.Wanted
	return r
}

// KnownDay is the day on which the unit first met the criterion, or -1.
func KnownDay(u Unit, rare [recite.NumRules]bool, since int, log []Session, c Criterion) int {
	for i := range log {
		if log[i].Day >= since && Ready(u, rare, since, log[:i+1], c).Ready {
			return log[i].Day
		}
	}
	return -1
}

package plan

import (
	"cmp"
	"slices"

	"sutur/generator/internal/recite"
)

// Intervals are the days from one review of a rule to the next. Each is about twice the one before: recall that still
// succeeds after a longer and longer wait lasts best (T. K. Landauer and R. A. Bjork, "Optimum rehearsal patterns and name
// learning", in Practical Aspects of Memory, 1978), and practice spread over days is kept longer than the same practice
// at once (N. J. Cepeda, H. Pashler, E. Vul, J. T. Wixted, D. Rohrer, "Distributed practice in verbal recall tasks",
// Psychological Bulletin 132(3), 2006). The figures are ours.
var Intervals = [...]int{3, 7, 14, 30, 60, 120}

// ReviewFound is the least share of places found, in percent, with which a review counts as gone well.
const ReviewFound = 75

// Schedule is where a known rule stands: reviews gone well, and the day from which it is due again.
type Schedule struct {
	Rule recite.RuleID
	Well int
	Due  int
}

// Review follows a rule that is known since a day through the log. A session reviews it when the rule is due and has a
// place in the lines, whether it was marked or only read. Reading before it is due changes nothing. A review that went
// badly (much help, or too little found of the rule itself) shortens the wait by one interval.
func Review(rule recite.RuleID, known int, log []Session) Schedule {
	s := Schedule{Rule: rule, Due: known + Intervals[0]}
	for i := range log {
		l := &log[i]
		if l.Day < s.Due || l.Places[rule] == 0 {
			continue
		}
		if well(l, rule) {
			s.Well++
		} else {
			s.Well = max(0, s.Well-1)
		}
		s.Due = l.Day + Intervals[min(s.Well, len(Intervals)-1)]
	}
	return s
}

func well(l *Session, rule recite.RuleID) bool {
	marked := l.Rule == int(rule) && l.Found+l.Missed > 0
	return l.Help != MuchHelp && (!marked || 100*l.Found >= ReviewFound*(l.Found+l.Missed))
}

// Due lists the rules due on day, the longest overdue first.
func Due(list []Schedule, day int) []recite.RuleID {
	list = slices.DeleteFunc(slices.Clone(list), func(s Schedule) bool { return s.Due > day })
	slices.SortFunc(list, func(a, b Schedule) int { return cmp.Or(cmp.Compare(a.Due, b.Due), cmp.Compare(a.Rule, b.Rule)) })
	var rules []recite.RuleID
	for _, s := range list {
		rules = append(rules, s.Rule)
	}
	return rules
}

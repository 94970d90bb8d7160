package plan

import (
	"slices"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// Unit is what is taught at once: the rules of one lesson.
type Unit struct {
	Rules []recite.RuleID
	Needs []int // units taught before it
}

// Units joins rules into units, one for each lesson. rs is in the engine's order and each of its
// rules in one lesson.
func Units(rs []rules.Rule, lessons [][]recite.RuleID) []Unit {
	units := make([]Unit, len(lessons))
	of := make([]int, len(rs)) // unit of each rule
	for i, l := range lessons {
		units[i].Rules = l
		for _, r := range l {
			of[r] = i
		}
	}
	for i := range units {
		u := &units[i]
		for _, r := range u.Rules {
			for _, n := range rs[r].Needs {
				k, _ := recite.ParseRule(n)
				if need := of[k]; need != i && !slices.Contains(u.Needs, need) {
					u.Needs = append(u.Needs, need)
				}
			}
		}
		slices.Sort(u.Needs)
	}
	return units
}

// places counts the places of every rule in the verses from first to last (indices, both included).
func places(x *passage.Index, first, last int) (n [recite.NumRules]int) {
	for r := range n {
		n[r] = x.Count(recite.RuleID(r), int(x.Of[first]), int(x.Of[last+1])-1)
	}
	return n
}

// unitPlaces adds up the places of each unit's rules.
func unitPlaces(units []Unit, places [recite.NumRules]int) []int {
	n := make([]int, len(units))
	for i, u := range units {
		for _, r := range u.Rules {
			n[i] += places[r]
		}
	}
	return n
}

// Step is one unit of a sequence, with the reason for its place.
type Step struct {
	Unit   int
	Places int // places of its own
	// Opens is the unit for whose sake it comes now, itself where it is its own places; Lessons are
	// the lessons up to Opens and Together their places: of all that could come now, Together a
	// lesson is the most.
	Opens, Lessons, Together int
}

// sequence orders the units so that needs are respected and the most places become readable early.
// places are those of each unit in the verses that count. At each step every unit is weighed
// together with all that it still needs: the places of them all, divided by their number. The best
// of these goes ahead with the first lesson it needs: of those whose own needs are met, the one
// with the most places. Equal units keep their order.
//
// It is the rule of highest ratio first for jobs with precedence (Horn 1972, Single-machine job
// sequencing with treelike precedence ordering and linear delay penalties, SIAM J. Appl. Math.
// 23(2); from memory), applied to one chain at a time.
func sequence(units []Unit, places []int) []Step {
	done := make([]bool, len(units))
	var steps []Step
	for {
		best := Step{Unit: -1}
		for i := range units {
			if done[i] {
				continue
			}
			chain := closure(units, done, i)
			sum, first := 0, -1
			for _, c := range chain {
				sum += places[c]
				if ready(units, done, c) && (first < 0 || places[c] > places[first]) {
					first = c
				}
			}
			if first < 0 { // lessons that need each other
				first = i
			}
			if best.Unit < 0 || sum*best.Lessons > best.Together*len(chain) {
				best = Step{Unit: first, Places: places[first], Opens: i, Lessons: len(chain), Together: sum}
			}
		}
		if best.Unit < 0 {
			return steps
		}
		done[best.Unit] = true
		steps = append(steps, best)
	}
}

// TeachingOrder is the order in which units are taught by default: that of sequence by the places
// in the last juz, with which children begin (common practice).
func TeachingOrder(t *mushaf.Text, x *passage.Index, units []Unit) []Step {
	last := slices.IndexFunc(t.Verses, func(v mushaf.Verse) bool { return v.Juz == 30 })
	return sequence(units, unitPlaces(units, places(x, max(0, last), len(t.Verses)-1)))
}

// closure is unit i with everything it still needs, in the order of units.
func closure(units []Unit, done []bool, i int) (list []int) {
	in := make([]bool, len(units))
	var visit func(int)
	visit = func(u int) {
		if in[u] || done[u] {
			return
		}
		in[u] = true
		for _, n := range units[u].Needs {
			visit(n)
		}
	}
	visit(i)
	for u, ok := range in {
		if ok {
			list = append(list, u)
		}
	}
	return list
}

// ready reports whether the needs of unit i are done.
func ready(units []Unit, done []bool, i int) bool {
	return !slices.ContainsFunc(units[i].Needs, func(n int) bool { return !done[n] })
}

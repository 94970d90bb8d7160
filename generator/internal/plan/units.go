package plan

import (
	"slices"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// Unit is what is taught at once: the rules of one lesson, or one rule that no lesson teaches yet.
type Unit struct {
	ID    string // the lesson's id, or the rule's
	Rules []recite.RuleID
	Needs []int // units taught before it
}

// Lesson names the rules that one lesson teaches.
type Lesson struct {
	ID    string
	Rules []string
}

// Units joins rules into units. rs is in the engine's order; lessons come first, in their order.
func Units(rs []rules.Rule, lessons []Lesson) []Unit {
	var units []Unit
	of := make([]int, len(rs)) // unit of each rule, plus one
	add := func(id string, ids []string) {
		u := Unit{ID: id}
		for _, name := range ids {
			if r, ok := recite.ParseRule(name); ok && of[r] == 0 {
				u.Rules = append(u.Rules, r)
				of[r] = len(units) + 1
			}
		}
		if len(u.Rules) > 0 {
			units = append(units, u)
		}
	}
	for _, l := range lessons {
		add(l.ID, l.Rules)
	}
	for _, r := range rs {
		add(r.ID, []string{r.ID})
	}
	for i := range units {
		u := &units[i]
		for _, r := range u.Rules {
			for _, n := range rs[r].Needs {
				k, _ := recite.ParseRule(n)
				if need := of[k] - 1; need != i && !slices.Contains(u.Needs, need) {
					u.Needs = append(u.Needs, need)
				}
			}
		}
		slices.Sort(u.Needs)
	}
	return units
}

// Places counts the places of every rule in the verses from first to last (indices, both included).
func Places(x *passage.Index, first, last int) (n [recite.NumRules]int) {
	for r := range n {
		n[r] = x.Count(recite.RuleID(r), int(x.Of[first]), int(x.Of[last+1])-1)
	}
	return n
}

// UnitPlaces adds up the places of each unit's rules.
func UnitPlaces(units []Unit, places [recite.NumRules]int) []int {
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
	// Opens is the unit for whose sake it comes now, itself where it is its own places; Lessons are the lessons up to
	// Opens and Together their places: of all that could come now, Together a lesson is the most.
	Opens, Lessons, Together int
}

// Sequence orders the units not yet taught so that needs are respected and the most places become readable early. places
// are those of each unit in the verses that count. At each step every unit is weighed together with all that it still
// needs: the places of them all, divided by their number. The best of these goes ahead with the first lesson it needs: of
// those whose own needs are met, the one with the most places. Equal units keep their order.
//
// It is the rule of highest ratio first for jobs with precedence (Horn 1972, Single-machine job sequencing with treelike
// precedence ordering and linear delay penalties, SIAM J. Appl. Math. 23(2); from memory), applied to one chain at a time.
func Sequence(units []Unit, places []int, taught []bool) []Step {
	done := slices.Clone(taught)
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
				if len(Missing(units, done, c)) == 0 && (first < 0 || places[c] > places[first]) {
					first = c
				}
			}
			if first < 0 { // needs go round in a circle; the rules' own check reports it
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

// TeachingOrder is the order in which units are taught by default: Sequence by their places in the last juz, with which
// children begin (common practice).
func TeachingOrder(t *mushaf.Text, x *passage.Index, units []Unit) (order []int) {
	places := UnitPlaces(units, Places(x, JuzStart(t, 30), len(t.Verses)-1))
	for _, s := range Sequence(units, places, make([]bool, len(units))) {
		order = append(order, s.Unit)
	}
	return order
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

// Missing are the needs of unit i that are not taught.
func Missing(units []Unit, taught []bool, i int) (list []int) {
	for _, n := range units[i].Needs {
		if !taught[n] {
			list = append(list, n)
		}
	}
	return list
}

// Option is a unit that can be taught now: its needs are met. Places become readable with it.
type Option struct{ Unit, Places int }

// Next lists the units whose needs are met, those with the most places first. places are those of each unit in what the
// child is about to read. The unit to recommend is the first of Sequence.
func Next(units []Unit, places []int, taught []bool) []Option {
	var list []Option
	for i := range units {
		if !taught[i] && len(Missing(units, taught, i)) == 0 {
			list = append(list, Option{i, places[i]})
		}
	}
	slices.SortStableFunc(list, func(a, b Option) int { return b.Places - a.Places })
	return list
}

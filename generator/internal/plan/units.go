package plan

import (
	"slices"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// Unit is what is taught at once: the rules of one lesson.
type Unit struct {
	Rules  []recite.RuleID
	Family string // that of its first rule
	Needs  []int  // units taught before it
}

// Units joins rules into units, one for each lesson. rs is in the engine's order and each of its
// rules in one lesson.
func Units(rs []rules.Rule, lessons [][]recite.RuleID) []Unit {
	units := make([]Unit, len(lessons))
	of := make([]int, len(rs)) // unit of each rule
	for i, l := range lessons {
		units[i].Rules, units[i].Family = l, rs[l[0]].Family
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

// TeachingOrder is the order in which units are taught by default: that of sequence, by what the
// last juz shows of each, with which children begin (common practice).
func TeachingOrder(t *mushaf.Text, units []Unit) []Step {
	last := slices.IndexFunc(t.Verses, func(v mushaf.Verse) bool { return v.Juz == 30 })
	seen := lookAt(t, max(0, last))
	list := make([]sight, len(units))
	for i, u := range units {
		list[i] = together(u, seen)
	}
	return sequence(units, list)
}

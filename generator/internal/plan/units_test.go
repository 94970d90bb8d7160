package plan

import (
	"slices"
	"testing"

	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

func TestUnits(t *testing.T) {
	rs := make([]rules.Rule, recite.NumRules)
	rs[recite.Ghunnah].Needs = []string{"qalqalah", "sun-lam"}
	rs[recite.MoonLam].Needs = []string{"sun-lam", "qalqalah"}
	units := Units(rs, [][]recite.RuleID{{recite.MoonLam, recite.SunLam}, {recite.Ghunnah}, {recite.Qalqalah}})
	for i, want := range [][]int{{2}, {0, 2}, nil} { // what a rule needs of its own lesson is no need
		if !slices.Equal(units[i].Needs, want) {
			t.Errorf("unit %d needs %v, want %v", i, units[i].Needs, want)
		}
	}
}

func TestSequence(t *testing.T) {
	for _, c := range []struct {
		name   string
		needs  [][]int
		places []int
		want   []Step
	}{
		{"the most places first, equal ones in their order", [][]int{nil, nil, nil}, []int{5, 5, 6}, []Step{
			{2, 6, 2, 1, 6}, {0, 5, 0, 1, 5}, {1, 5, 1, 1, 5},
		}},
		// Unit 3 with what it needs has 1 + 6 + 30 places in three lessons, 12 a lesson, more than
		// the 10 of unit 0; the first of the three that needs nothing goes ahead. Then 36 in two,
		// 18 a lesson; then 30 alone.
		{"what opens the most", [][]int{nil, {2}, nil, {1}}, []int{10, 6, 1, 30}, []Step{
			{2, 1, 3, 3, 37}, {1, 6, 3, 2, 36}, {3, 30, 3, 1, 30}, {0, 10, 0, 1, 10},
		}},
		// 1 + 1 + 28 places in three lessons are 10 a lesson, no more than the 10 of unit 0, which
		// stands before.
		{"equal ratios", [][]int{nil, nil, {1}, {2}}, []int{10, 1, 1, 28}, []Step{
			{0, 10, 0, 1, 10}, {1, 1, 3, 3, 30}, {2, 1, 3, 2, 29}, {3, 28, 3, 1, 28},
		}},
		// Unit 2 needs both others: of these the one with more places goes first.
		{"two needs", [][]int{nil, nil, {0, 1}}, []int{1, 2, 30}, []Step{{1, 2, 2, 3, 33}, {0, 1, 2, 2, 31}, {2, 30, 2, 1, 30}}},
		{"a circle still ends", [][]int{{1}, {0}}, []int{1, 3}, []Step{{0, 1, 0, 2, 4}, {1, 3, 1, 1, 3}}},
	} {
		units := make([]Unit, len(c.needs))
		for i, n := range c.needs {
			units[i].Needs = n
		}
		if got := sequence(units, c.places); !slices.Equal(got, c.want) {
			t.Errorf("%s:\n got %v\nwant %v", c.name, got, c.want)
		}
	}
}

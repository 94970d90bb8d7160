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
	rs[recite.MoonLam].Family, rs[recite.Qalqalah].Family = "lam", "qalqalah"
	units := Units(rs, [][]recite.RuleID{{recite.MoonLam, recite.SunLam}, {recite.Ghunnah}, {recite.Qalqalah}})
	for i, want := range [][]int{{2}, {0, 2}, nil} { // what a rule needs of its own lesson is no need
		if !slices.Equal(units[i].Needs, want) {
			t.Errorf("unit %d needs %v, want %v", i, units[i].Needs, want)
		}
		if want := []string{"lam", "", "qalqalah"}[i]; units[i].Family != want {
			t.Errorf("unit %d is of family %q, want %q", i, units[i].Family, want)
		}
	}
}

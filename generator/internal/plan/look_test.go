package plan

import (
	"slices"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// What is seen of rules in the last juz follows from their conditions in RULES.md. The passage index
// counts the same places in another way.
func TestLook(t *testing.T) {
	tx, x := text(), index()
	first := slices.IndexFunc(tx.Verses, func(v mushaf.Verse) bool { return v.Juz == 30 })
	seen := lookAt(tx, first)
	for _, c := range []struct {
		rule recite.RuleID
		look look
		sign bool
	}{
		{recite.HeavyLetter, 0, false},
		{recite.Ghunnah, 0, false},
		{recite.HeavyRa, lookStop, false}, // a stop takes the vowel of the last letter
		{recite.HeavyRaSakinah, lookBefore | lookAfter | lookStop, false},
		{recite.LightLam, lookBefore, false},
		{recite.HamzatWasl, lookBefore, true}, // something is read before it, or it is started on
		{recite.MoonLam, lookAfter, false},
		{recite.NoonIzhar, lookAfter | lookStop, false},
		{recite.NoonIqlab, lookAfter | lookStop, true},
		{recite.MaddMuttasil, lookAfter, true},
		{recite.MaddMunfasil, lookAfter | lookStop, true},
		{recite.MaddSilahShort, lookStop, true},
		{recite.MaddArid, lookAfter | lookStop, false},
		{recite.MaddIwad, lookBefore | lookStop, false},
		{recite.MaddLazimLetter, 0, false}, // none there
	} {
		s := seen[c.rule]
		if sign := s.places > 0 && s.signs != 0; s.look != c.look || sign != c.sign {
			t.Errorf("%s: look %03b, sign %v; want %03b, %v", c.rule, s.look, sign, c.look, c.sign)
		}
	}
	for r := range seen {
		if want := x.Count(recite.RuleID(r), int(x.Of[first]), x.Len()-1); seen[r].places != want {
			t.Errorf("%s: %d places, the index has %d", recite.RuleID(r), seen[r].places, want)
		}
	}
}

// A lesson looks wherever one of its rules does, has a sign where all of them have one, and is rare
// where its rules have fewer places each than lines are to have.
func TestTogether(t *testing.T) {
	var seen [recite.NumRules]seenOf
	seen[0] = seenOf{7, lookBefore, mushaf.Maddah}
	seen[1] = seenOf{2, lookBefore | lookStop, mushaf.MeemLow}
	seen[2] = seenOf{1, 0, 0}
	for _, c := range []struct {
		rules []recite.RuleID
		want  sight
	}{
		{[]recite.RuleID{0}, sight{7, 1, true, false}},
		{[]recite.RuleID{1}, sight{2, 2, true, true}},
		{[]recite.RuleID{0, 1}, sight{9, 2, true, false}},
		{[]recite.RuleID{0, 2}, sight{8, 1, false, false}},
		{[]recite.RuleID{1, 2}, sight{3, 2, false, true}},
		{[]recite.RuleID{3}, sight{0, 0, false, true}},
	} {
		if got := together(Unit{Rules: c.rules}, seen); got != c.want {
			t.Errorf("%v: %+v, want %+v", c.rules, got, c.want)
		}
	}
}

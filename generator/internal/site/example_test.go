package site

import (
	"testing"

	"sutur/generator/internal/recite"
)

// TestExamples: every rule has a word that shows it when the reader stops at verse ends, in the
// last juz wherever it acts there at all.
func TestExamples(t *testing.T) {
	text, err := realText()
	if err != nil {
		t.Fatal(err)
	}
	engine := recite.New(text)
	last := map[recite.RuleID]bool{}
	acts := func(v, word int, r recite.RuleID) bool {
		for _, e := range engine.Reading(nil, v, recite.Reading{}) {
			if e.Rule == r && int(e.Word) == word && !e.Unwritten {
				return true
			}
		}
		return false
	}
	for i, v := range text.Verses {
		if v.Juz == lastJuz {
			for _, e := range engine.Reading(nil, i, recite.Reading{}) {
				last[e.Rule] = last[e.Rule] || !e.Unwritten && e.CauseWord == 0
			}
		}
	}
	var all []recite.Event
	for i := range text.Verses {
		all = engine.Verse(all, i)
	}
	for r, at := range examples(text, [][]recite.Event{all}) {
		id := recite.RuleID(r)
		if at[0] == 0 {
			t.Errorf("%s has no word to show it", id)
			continue
		}
		v := text.Surahs[at[0]-1].First + at[1] - 1
		if !acts(v, at[2], id) {
			t.Errorf("%s does not act on word %d of %d:%d", id, at[2]+1, at[0], at[1])
		}
		if last[id] && text.Verses[v].Juz != lastJuz {
			t.Errorf("%s is shown by %d:%d, outside the last juz", id, at[0], at[1])
		}
	}
}

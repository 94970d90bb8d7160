package site

import "sutur/generator/internal/recite"

// examples finds for each rule, in the engine's order, a short word in which it acts when the
// reader stops at verse ends: surah, verse and word (from 0). The word whose letter causes the rule
// stands in the same verse. Words of the last juz, which children read first, come before all
// others; a rule that never acts so has zeros.
func examples(s Source) [recite.NumRules][3]int {
	var at [recite.NumRules][3]int
	var sizes [recite.NumRules]int
	engine := s.Engine()
	var events []recite.Event
	for i := len(s.Text.Verses) - 1; i >= 0; i-- {
		v := &s.Text.Verses[i]
		events = engine.Reading(events[:0], i, recite.Reading{})
		for _, e := range events {
			k := int(e.Word) + int(e.CauseWord)
			if e.Unwritten || k < 0 || k >= len(v.Words) {
				continue
			}
			size := len(v.Words[e.Word].Letters)
			if size < 3 {
				size += 10 // a word of two letters shows little of its rule
			}
			if k != int(e.Word) {
				size += len(v.Words[k].Letters)
			}
			if v.Juz != lastJuz {
				size += 1000
			}
			if now := &sizes[e.Rule]; *now == 0 || size < *now {
				*now, at[e.Rule] = size, [3]int{v.Surah, v.Ayah, int(e.Word)}
			}
		}
	}
	return at
}

const lastJuz = 30

package site

import (
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// examples finds for each rule, in the engine's order, a short word in which it acts when the
// reader stops at verse ends: surah, verse and word (from 0). The word whose letter causes the rule
// stands in the same verse. Words of the last juz, which children read first, come before all
// others; of equal ones the first of the last verse is taken. A rule that never acts so has zeros.
// The events are those of each surah, in the order of the text.
func examples(t *mushaf.Text, events [][]recite.Event) (at [recite.NumRules][3]int) {
	var best [recite.NumRules]struct {
		size  int
		verse int32
	}
	for _, list := range events {
		for _, e := range list {
			v := &t.Verses[e.Verse]
			w := int(e.Word)
			k := w + int(e.CauseWord)
			if e.Unwritten || k < 0 || k >= len(v.Words) || !e.Holds(w == 0, w == len(v.Words)-1) {
				continue
			}
			size := len(v.Words[w].Letters)
			if size < 3 {
				size += 10 // a word of two letters shows little of its rule
			}
			if k != w {
				size += len(v.Words[k].Letters)
			}
			if v.Juz != lastJuz {
				size += 1000
			}
			if b := &best[e.Rule]; b.size == 0 || size < b.size || size == b.size && e.Verse > b.verse {
				b.size, b.verse, at[e.Rule] = size, e.Verse, [3]int{v.Surah, v.Ayah, w}
			}
		}
	}
	return at
}

const lastJuz = 30

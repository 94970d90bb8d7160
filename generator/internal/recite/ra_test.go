package recite

import (
	"fmt"
	"testing"

	"sutur/generator/internal/mushaf"
)

// The text's own vowel signs are the witness of the ra with a vowel: heavy-ra stands only on a ra
// that bears fatha or damma, light-ra only on one that bears kasra (or the sign of imalah), and
// where it has none, or a stop takes it away, the ra goes by the rules of ra sakinah. In every
// reading a ra is heavy or light, and never both; one that merges into a ra is none.
func TestRa(t *testing.T) {
	const light = mushaf.Kasra | mushaf.KasratanStacked | mushaf.KasratanOpen | mushaf.ImalahMark
	const kept = mushaf.FathatanStacked | mushaf.FathatanOpen // what a stop draws out
	tx := load(t)
	e := New(tx)
	ras, merged := 0, 0
	for v := range tx.Verses {
		at := map[[2]int][]Event{}
		for _, ev := range e.Verse(nil, v) {
			switch ev.Rule {
			case HeavyRa, LightRa, HeavyRaSakinah, LightRaSakinah:
				k := [2]int{int(ev.Word), int(ev.Letter)}
				at[k] = append(at[k], ev)
			}
		}
		for w := range tx.Verses[v].Words {
			word := &tx.Verses[v].Words[w]
			for l, letter := range word.Letters {
				if letter.Rune != 'ر' {
					continue
				}
				ras++
				ref := fmt.Sprintf("%d:%d word %d letter %d", tx.Verses[v].Surah, tx.Verses[v].Ayah, w+1, l+1)
				var on, stop int
				for _, ev := range at[[2]int{w, l}] {
					if ev.Holds(false, false) {
						on++
					}
					if ev.Holds(false, true) {
						stop++
					}
					vowel := ev.Rule == HeavyRa || ev.Rule == LightRa
					last := l == len(word.Letters)-1 && !letter.Has(kept) && !isOpening(word.Letters)
					switch {
					case vowel && (letter.Has(mushaf.Sukun) || letter.Has(light) != (ev.Rule == LightRa)):
						t.Errorf("%s: %s does not go by the printed vowel", ref, ev.Rule)
					case vowel && ev.When == Always && last:
						t.Errorf("%s: %s goes by a vowel that a stop takes away", ref, ev.Rule)
					case !vowel && ev.When != Stop && !letter.Has(mushaf.Sukun):
						t.Errorf("%s: %s, and no sukun is printed", ref, ev.Rule)
					}
				}
				if on == 0 && stop == 1 {
					merged++
				} else if on != 1 || stop != 1 {
					t.Errorf("%s: %d events reading on, %d at a stop", ref, on, stop)
				}
			}
		}
	}
	if ras != 12403 || merged != 3 {
		t.Errorf("%d ras, %d of them merged", ras, merged)
	}
}

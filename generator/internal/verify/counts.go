package verify

import (
	"fmt"
	"strings"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// Witness 3: figures that every teacher of this reading knows, over the text and the engine's
// events. Common practice; no single source. Hizb are counted as quarters that begin one in four.
func counts(b *bench, t *mushaf.Text, e Engine) {
	s := b.witness("known counts: figures")
	is := func(name string, got, want int) {
		s.same(name, 0, "", fmt.Sprint(want), fmt.Sprint(got))
	}
	last := t.Verses[len(t.Verses)-1]
	is("surahs", len(t.Surahs), 114)
	is("verses", len(t.Verses), 6236)
	is("pages", last.Page, 604)
	is("juz", last.Juz, 30)
	is("hizb", (last.Quarter+3)/4, 60)
	is("quarters", last.Quarter, 240)

	n := map[recite.RuleID]int{}
	silent := map[string]bool{} // places of a silence, with when
	opened, names := map[int]bool{}, map[rune]bool{}
	sajdahSurahs := map[int]bool{}
	var buf []recite.Event
	for v := range t.Verses {
		vs := &t.Verses[v]
		if vs.Ayah <= 2 && Opening(&vs.Words[0]) {
			opened[vs.Surah] = true
			for _, l := range vs.Words[0].Letters {
				names[l.Rune] = true
			}
		}
		buf = e.Verse(buf[:0], v)
		for _, x := range buf {
			n[x.Rule]++
			switch x.Rule {
			case recite.Sakt:
				silent[fmt.Sprintf("%d:%d", vs.Surah, vs.Ayah)] = x.When == recite.Always
			case recite.Sajdah:
				sajdahSurahs[vs.Surah] = true
			case recite.MaddLazimLetter:
				if x.Word != 0 || !Opening(&vs.Words[0]) {
					is(fmt.Sprintf("%d:%d word %d bears madd-lazim-letter and opens no surah", vs.Surah, vs.Ayah, x.Word+1), 1, 0)
				}
			}
		}
	}
	is("surahs that open with letters", len(opened), 29)
	is("distinct opening letters", len(names), 14)
	is("places of prostration", n[recite.Sajdah], 15)
	is("surahs with a prostration", len(sajdahSurahs), 14)
	is("silences", n[recite.Sakt], 5)
	is("imalah", n[recite.Imalah], 1)
	is("ishmam", n[recite.Ishmam], 1)
	is("tas-hil", n[recite.TasHil], 1)
	is("sad with a seen", n[recite.SadAsSeen], 4)
	var where []string
	for _, ref := range []string{"18:1", "36:52", "69:28", "75:27", "83:14"} {
		if always, ok := silent[ref]; ok {
			where = append(where, ref+word(always, " always"))
		}
	}
	// 18:1 ends its verse: the silence is for who reads on. 69:28 is the fifth, one of two ways.
	s.same("places of silence", 0, "", "18:1none 36:52 always 69:28none 75:27 always 83:14 always", strings.Join(where, " "))
}

package plan

import (
	"fmt"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
)

// Spot names the words of a passage: 78:1-5, or with words, from 1, where it begins or ends within
// a verse: 2:255.1-2:255.24.
func Spot(t *mushaf.Text, x *passage.Index, p Passage) string {
	a, b := &t.Verses[x.Verse[p.A]], &t.Verses[x.Verse[p.B]]
	from, to := fmt.Sprintf("%d:%d", a.Surah, a.Ayah), fmt.Sprintf("%d:%d", b.Surah, b.Ayah)
	switch {
	case x.First[p.A] > 0 || x.End[p.B] == passage.PauseEnd:
		return fmt.Sprintf("%s.%d-%s.%d", from, x.First[p.A]+1, to, x.First[p.B]+int32(x.Words[p.B]))
	case from == to:
		return from
	default:
		return fmt.Sprintf("%s-%d", from, b.Ayah)
	}
}

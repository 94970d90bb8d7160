package verify

import (
	"fmt"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// The place of the small seen tells the reading: above the sad seen is read, below it the sad is
// the better known, and where none is printed the sad is read. The engine goes by the word's place
// in the text and not by the sign.
func TestSeenTellsTheReading(t *testing.T) {
	tx := load(t)
	e := recite.New(tx)
	n := 0
	var buf []recite.Event
	for v := range tx.Verses {
		buf = e.Verse(buf[:0], v)
		signed := map[string]mushaf.Letter{}
		for w, x := range tx.Verses[v].Words {
			for i, l := range x.Letters {
				if l.Has(mushaf.SeenMark | mushaf.SeenLow) {
					signed[fmt.Sprint(w, i)] = l
				}
			}
		}
		for _, x := range buf {
			if x.Rule != recite.SadAsSeen {
				continue
			}
			n++
			key := fmt.Sprint(x.Word, x.Letter)
			want := recite.ReadSad
			switch l := signed[key]; {
			case l.Has(mushaf.SeenMark):
				want = recite.ReadSeen
			case l.Has(mushaf.SeenLow):
				want = recite.Either
			}
			if x.Detail != want {
				t.Errorf("%d:%d.%d: the engine says %s, the sign %s", tx.Verses[v].Surah, tx.Verses[v].Ayah, x.Word+1, x.Detail, want)
			}
			delete(signed, key)
		}
		if len(signed) > 0 {
			t.Errorf("%d:%d: a seen without its event", tx.Verses[v].Surah, tx.Verses[v].Ayah)
		}
	}
	if n != 4 {
		t.Errorf("%d places, 4 are expected", n)
	}
}

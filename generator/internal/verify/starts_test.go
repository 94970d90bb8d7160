package verify

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// The vowel with which every word that begins with hamzat wasl is started: fatha on the article and
// the words that hold it, damma on the words of testdata/starts-damma.txt, kasra on all others.
func TestStartVowels(t *testing.T) {
	raw, err := os.ReadFile("testdata/starts-damma.txt")
	if err != nil {
		t.Fatal(err)
	}
	damma := map[string]bool{}
	for _, l := range strings.Split(string(raw), "\n") {
		if !strings.HasPrefix(l, "#") {
			for _, ref := range strings.Fields(l) {
				damma[ref] = true
			}
		}
	}
	tx := load(t)
	e := recite.New(tx)
	var buf []recite.Event
	starts, used := 0, 0
	for v := range tx.Verses {
		vs := &tx.Verses[v]
		buf = e.Verse(buf[:0], v)
		lam := map[uint16]bool{} // the second letter is a lam of the article
		for _, x := range buf {
			if (x.Rule == recite.SunLam || x.Rule == recite.MoonLam) && x.Letter == 1 {
				lam[x.Word] = true
			}
		}
		for _, x := range buf {
			if x.Rule != recite.HamzatWasl || x.When != recite.Start {
				continue
			}
			starts++
			ref := fmt.Sprintf("%d:%d.%d", vs.Surah, vs.Ayah, x.Word+1)
			second := vs.Words[x.Word].Letters[1]
			third := vs.Words[x.Word].Letters[2]
			name := second.Rune == 'ل' && second.Marks == 0 && third.Rune == 'ل' && third.Has(mushaf.Shadda)
			want := recite.StartKasra
			switch {
			case damma[ref]:
				want = recite.StartDamma
				used++
			case lam[x.Word], name, second.Rune == 'ل' && second.Has(mushaf.Shadda):
				want = recite.StartFatha
			}
			if x.Detail != want {
				t.Errorf("%s starts with %s, want %s", ref, x.Detail, want)
			}
		}
	}
	if starts == 0 || used != len(damma) {
		t.Errorf("%d starts; %d of %d words of the list were met", starts, used, len(damma))
	}
}

package mushaf

import (
	"fmt"
	"os"
	"strings"
	"testing"
)

// The words that bear the line: 26, all at the 15 places of prostration, as the text's source has
// them.
func TestProstrationLines(t *testing.T) {
	tx := load(t)
	words, verses := 0, map[int]bool{}
	for i, v := range tx.Verses {
		for _, w := range v.Words {
			if w.Lined {
				words++
				verses[i] = true
			}
		}
		if strings.ContainsRune(v.Text, 0x06E4) {
			t.Errorf("%d:%d bears the line as a sign in its text", v.Surah, v.Ayah)
		}
	}
	if words != 26 || len(verses) != 15 {
		t.Errorf("%d words in %d verses bear the line; 26 in 15 are expected", words, len(verses))
	}
	for i, v := range tx.Verses {
		if v.Sajdah && !verses[i] && !verses[i-1] && !verses[i-2] {
			t.Errorf("%d:%d: no word of this prostration bears the line", v.Surah, v.Ayah)
		}
	}
}

func TestParseLines(t *testing.T) {
	tx := load(t)
	for _, c := range []struct{ in, want string }{
		{"13:15\t1 2\n", "[[1721 0] [1721 1]]"},
		{"13:15\t1\n16:49\t2\n", "[[1721 0] [1949 1]]"},
		{"13:14\t1\n", "[[1720 0]]"}, // the verse before a prostration
		{"13:12\t1\n", `prostrations.txt:1: found "13:12"`},
		{"13:16\t1\n", `prostrations.txt:1: found "13:16"`},
		{"16:49\t1\n13:15\t1\n", `prostrations.txt:2: found "13:15"`},
		{"13\t1\n", `found "13"`},
		{"13:15\t2 1\n", `found word "1"`},
		{"13:15\t1 1\n", `found word "1"`},
		{"13:15\t0\n", `found word "0"`},
		{"13:15\t12\n", `found word "12"`},
		{"13:15\t1  2\n", `found word ""`},
		{"13:15 1\n", `found "13:15 1"`},
		{"\n", `found ""`},
	} {
		got, err := ParseLines(tx, c.in)
		s := fmt.Sprint(got)
		if err != nil {
			s = err.Error()
		}
		if err == nil && s != c.want || !strings.Contains(s, c.want) || strings.Contains(s, "\n") {
			t.Errorf("%q: got %q, want %q", c.in, s, c.want)
		}
	}
}

func FuzzParseLines(f *testing.F) {
	raw, err := os.ReadFile("../../../rules-content/text/" + ProstrationFile)
	if err != nil {
		f.Fatal(err)
	}
	f.Add(string(raw))
	f.Add("13:15\t1 2\n13:15\t1")
	f.Add("13:15\t99999999999999999999")
	tx := load(f)
	f.Fuzz(func(t *testing.T, s string) {
		words, err := ParseLines(tx, s)
		if err != nil {
			return
		}
		last := [2]int{-1, -1}
		for _, w := range words {
			if w[0] < last[0] || w[0] == last[0] && w[1] <= last[1] || w[1] >= len(tx.Verses[w[0]].Words) {
				t.Fatalf("%q gives %v", s, words)
			}
			last = w
		}
	})
}

// The line of a prostration is no sign of a word any more, and the small seen stands under a sad
// alone.
func TestSignsOutOfPlace(t *testing.T) {
	for _, c := range []struct {
		text string
		bad  rune
	}{
		{"\u0646\u064E\u06E4", 0x06E4},
		{"\u0633\u06E3\u064E", 0x06E3},
		{"\u06E3", 0x06E3},
		{"\u0635\u06E3\u064E", 0},
		{"\u0645\u064E\u0640\u0670\u0653", 0},
		{"\u0645\u064E\u0640", 0x0640},
		{"\u0645\u064E\u0640\u064E\u0670", 0x064E},
	} {
		v, _, bad := ParseVerse(c.text)
		if bad != c.bad {
			t.Errorf("%+q: U+%04X is refused, want U+%04X", c.text, bad, c.bad)
		}
		if bad == 0 && strings.Contains(c.text, "\u0640") {
			// A small letter on a stretch begins with the stretch, and the stretch is no letter.
			ls := v.Words[0].Letters
			if len(ls) != 2 || c.text[ls[1].Start:ls[1].End] != "\u0640\u0670\u0653" || ls[1].Rune != SmallAlif {
				t.Errorf("%+q: letters %v", c.text, ls)
			}
		}
	}
}

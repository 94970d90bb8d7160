package mushaf

import (
	"fmt"
	"io/fs"
	"strings"
)

// markLines reads ProstrationFile and marks its words.
func (t *Text) markLines(dir fs.FS) error {
	raw, err := fs.ReadFile(dir, ProstrationFile)
	if err != nil {
		return fmt.Errorf("read the words of the prostrations: %w", err)
	}
	words, err := ParseLines(t, string(raw))
	if err != nil {
		return err
	}
	for _, w := range words {
		t.Verses[w[0]].Words[w[1]].Lined = true
	}
	return nil
}

// ParseLines reads the text of ProstrationFile and gives verse and word, both as indices into t, of
// each word that bears the line. They stand in the verse of a prostration or a little before it.
// Any other verse, a word that is not in its verse, and words out of order are errors of one line.
func ParseLines(t *Text, s string) (words [][2]int, err error) {
	last := [2]int{-1, -1}
	for i, l := range strings.Split(strings.TrimSuffix(s, "\n"), "\n") {
		ref, rest, _ := strings.Cut(l, "\t")
		bad := func(found string) error {
			return fmt.Errorf("%s:%d: %s; a verse at a prostration, a tab and its words in order are expected, as 13:15 TAB 1 2",
				ProstrationFile, i+1, found)
		}
		r, err := parsePlace(t, ref, ref)
		if err != nil || r.First != r.Last || !t.prostrates(r.First) || r.First <= last[0] {
			return nil, bad(fmt.Sprintf("found %q", ref))
		}
		last = [2]int{r.First, -1}
		for _, f := range strings.Split(rest, " ") {
			n, ok := number(f)
			if !ok || n <= last[1]+1 || n > len(t.Verses[r.First].Words) {
				return nil, bad(fmt.Sprintf("found word %q", f))
			}
			last[1] = n - 1
			words = append(words, last)
		}
	}
	return words, nil
}

// prostrates reports whether verse v is that of a prostration or at most two verses before it
// (17:107).
func (t *Text) prostrates(v int) bool {
	for i := v; i <= v+2 && i < len(t.Verses) && t.Verses[i].Surah == t.Verses[v].Surah; i++ {
		if t.Verses[i].Sajdah {
			return true
		}
	}
	return false
}

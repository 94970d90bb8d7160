package verify

import (
	"fmt"
	"strings"

	"sutur/generator/internal/mushaf"
)

// Witness 4: the second text. The text is held against it word by word and letter by letter, mark
// by mark and in the order in which the marks are written. What is taken as equal is in folds.go,
// one entry a class, each with its reason and its count. Not compared are the pause signs
// U+06D6–06DB: the second text has those of an older print.

// Difference is one place in which the two texts differ.
type Difference struct {
	Ref    string // surah:verse
	Word   int    // from 1; 0 for the whole verse
	What   string
	Text   string // as code points
	Second string
}

func (d Difference) String() string {
	return fmt.Sprintf("%s.%d %s: %+q, the second text has %+q", d.Ref, d.Word, d.What, d.Text, d.Second)
}

// Comparison is what CompareTexts found. Alike counts the letters written the same in both; Folded
// those that each fold made equal, in the order of the folds (a letter can take two).
type Comparison struct {
	Verses, Words, Letters, Alike int
	Folded                        []int
	Differences                   []Difference
}

// written is one written word: its letters, each with its marks and the stretch before it, and the
// signs that belong to the word: a silence, the quarter, the prostration.
type written struct {
	letters []string
	signs   string
}

// CompareTexts holds the text (lines of reference TAB verse) against the second, independent one.
// Source of the second: quran-validator 1.3.0 (MIT), from the Quranic Universal Library.
func CompareTexts(a, b string) Comparison {
	c := Comparison{Folded: make([]int, len(folds))}
	la, lb := strings.Split(strings.TrimSpace(a), "\n"), strings.Split(strings.TrimSpace(b), "\n")
	for i := range max(len(la), len(lb)) {
		var x, y string
		if i < len(la) {
			x = la[i]
		}
		if i < len(lb) {
			y = lb[i]
		}
		c.verse(x, y)
	}
	return c
}

func (c *Comparison) verse(a, b string) {
	c.Verses++
	ref, ta, _ := strings.Cut(a, "\t")
	refB, tb, _ := strings.Cut(b, "\t")
	wa, wb := splitWritten(ta), splitWritten(tb)
	if ref != refB || len(wa) != len(wb) {
		c.differ(ref, 0, fmt.Sprintf("%d words, the second text has %d in %s", len(wa), len(wb), refB), ta, tb)
		return
	}
	for i := range wa {
		c.word(ref, i+1, wa[i], wb[i])
	}
}

func (c *Comparison) word(ref string, n int, a, b written) {
	c.Words++
	if a.signs != b.signs {
		c.differ(ref, n, "signs of the word", a.signs, b.signs)
	}
	if len(a.letters) != len(b.letters) {
		c.differ(ref, n, "number of letters", strings.Join(a.letters, " "), strings.Join(b.letters, " "))
		return
	}
	for i := range a.letters {
		c.Letters++
		if a.letters[i] == b.letters[i] {
			c.Alike++
			continue
		}
		if got := c.fold(ref, a.letters[:i+1], b.letters[i]); got != b.letters[i] {
			c.differ(ref, n, fmt.Sprintf("letter %d", i+1), a.letters[i], b.letters[i])
		}
	}
}

// fold writes the last of the letters as the second text does, where a fold allows it, and counts
// the fold.
func (c *Comparison) fold(ref string, letters []string, b string) string {
	l := letters[len(letters)-1]
	for i, f := range folds {
		if l == b {
			break
		}
		if to, ok := f.fold(ref, letters[:len(letters)-1], l, b); ok {
			l = to
			c.Folded[i]++
		}
	}
	return l
}

func (c *Comparison) differ(ref string, word int, what, a, b string) {
	c.Differences = append(c.Differences, Difference{ref, word, what, a, b})
}

// splitWritten parts a verse of either text. The second text sets its signs between spaces of their
// own: they go to the word before, the quarter to the word after.
func splitWritten(s string) (out []written) {
	quarter := ""
	for _, f := range strings.Fields(s) {
		w, last, stretch := written{signs: quarter}, rune(0), false
		quarter = ""
		for _, r := range f {
			n := len(w.letters) - 1
			switch {
			case mushaf.IsPause(r):
			case r == '\u06DE', r == '\u06E9', r == '\u06DC' && last != '\u0635':
				w.signs += string(r)
			case r == mushaf.Tatweel:
				w.letters, stretch = append(w.letters, string(r)), true
			case mushaf.IsBase(r) && stretch: // the stretch is no letter
				w.letters[n] += string(r)
				last, stretch = r, false
			case mushaf.IsBase(r):
				w.letters = append(w.letters, string(r))
				last = r
			case n < 0:
				w.letters = append(w.letters, string(r)) // a mark without a letter: a difference
			default: // a hamza on a stretch is a letter
				w.letters[n] += string(r)
				stretch = false
			}
		}
		switch {
		case len(w.letters) > 0:
			out = append(out, w)
		case w.signs == "\u06DE":
			quarter = w.signs
		case len(out) > 0:
			out[len(out)-1].signs += w.signs
		}
	}
	return out
}

package importer

import (
	"fmt"
	"strings"

	"sutur/generator/internal/mushaf"
)

// Correction is one entry of the reviewed list. Word (from 1) takes the word at that number from
// text B; Split takes B's parting of the words where A runs two together.
type Correction struct {
	Ref    string `json:"ref"`
	Word   int    `json:"word,omitempty"`
	Split  bool   `json:"split,omitempty"`
	Reason string `json:"reason"`
}

// apply corrects the words of one verse of A; b are those of B.
func (c Correction) apply(a, b []string) ([]string, error) {
	if c.Split {
		return split(a, b)
	}
	if len(a) != len(b) || c.Word < 1 || c.Word > len(b) {
		return nil, fmt.Errorf("%s: word %d of %d in A, %d in B", c.Ref, c.Word, len(a), len(b))
	}
	w := a[c.Word-1]
	tail := w[len(strings.TrimRightFunc(w, mushaf.IsPause)):] // B's pause signs are those of another print
	a[c.Word-1] = sukunA(b[c.Word-1]) + tail
	return a, nil
}

// split divides the one word of A that holds two of B, at the letter where B splits them.
func split(a, b []string) ([]string, error) {
	if len(b) != len(a)+1 {
		return nil, fmt.Errorf("%d words in A, %d in B; B must have one more", len(a), len(b))
	}
	for i, w := range a {
		n := len(letters(b[i]))
		if len(letters(w)) == n {
			continue
		}
		if len(letters(w)) != n+len(letters(b[i+1])) {
			return nil, fmt.Errorf("word %d of A is not words %d and %d of B", i+1, i+1, i+2)
		}
		at := letters(w)[n]
		return append(append(append([]string{}, a[:i]...), w[:at], w[at:]), a[i+1:]...), nil
	}
	return nil, fmt.Errorf("no word of A holds two of B")
}

// letters gives the byte offsets of the base letters of a word.
func letters(w string) (at []int) {
	for i, r := range w {
		if r >= 0x0621 && r <= 0x063A || r >= 0x0641 && r <= 0x064A || r == 0x0671 {
			at = append(at, i)
		}
	}
	return at
}

// wordsB parts a verse of B into its words; pause signs stand between spaces of their own there.
func wordsB(text string) (words []string) {
	for _, w := range strings.Split(text, " ") {
		if len(letters(w)) > 0 {
			words = append(words, w)
		}
	}
	return words
}

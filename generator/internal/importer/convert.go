// Package importer turns the source packages into the files of rules-content/text, once. The build never runs it.
//
// Text A is the base; it writes some signs with code points that mean something else in Unicode, and Convert gives each
// its own. What A lacks or runs together is listed in corrections.json with a reason and taken from text B.
package importer

import (
	"fmt"
	"strings"
)

// conversion is the table of text A's code points that stand for other signs.
var conversion = map[rune]rune{
	0x0657: 0x08F0, // open tanween, fatha
	0x065E: 0x08F1, // open tanween, damma
	0x0656: 0x08F2, // open tanween, kasra
	0x0652: 0x06DF, // round zero
	0x065C: 0x06EA, // imalah, 11:41
}

// Convert gives the text of one verse of A in standard code points. 12:11 alone writes its ishmam with U+06EC, the sign
// that 41:44 has for its tas-hil.
func Convert(surah, ayah int, a string) string {
	return strings.Map(func(r rune) rune {
		if r == 0x06EC && surah == 12 && ayah == 11 {
			return 0x06EB
		}
		if to, ok := conversion[r]; ok {
			return to
		}
		return r
	}, a)
}

// convertB gives one word of text B in the code points of A: its sukun is U+0652.
func convertB(b string) string {
	return strings.Map(func(r rune) rune {
		if r == 0x0652 {
			return 0x06E1
		}
		return r
	}, b)
}

// Correction is one entry of the reviewed list. Word (from 1) takes the word at that number from text B; Split takes B's
// parting of the words where A runs two together.
type Correction struct {
	Ref    string `json:"ref"`
	Word   int    `json:"word,omitempty"`
	Split  bool   `json:"split,omitempty"`
	Reason string `json:"reason"`
}

func (c Correction) apply(a string, b []string) (string, error) {
	words := strings.Split(a, " ")
	if c.Split {
		return split(words, b)
	}
	if len(words) != len(b) || c.Word < 1 || c.Word > len(b) {
		return "", fmt.Errorf("%s: word %d of %d in A, %d in B", c.Ref, c.Word, len(words), len(b))
	}
	tail := ""
	for i, r := range words[c.Word-1] {
		if r >= 0x06D6 && r <= 0x06DC {
			tail = words[c.Word-1][i:]
			break
		}
	}
	words[c.Word-1] = convertB(b[c.Word-1]) + tail
	return strings.Join(words, " "), nil
}

// split parts the one word of A that holds two of B, at the letter where B parts them.
func split(a, b []string) (string, error) {
	if len(b) != len(a)+1 {
		return "", fmt.Errorf("%d words in A, %d in B; B must have one more", len(a), len(b))
	}
	for i, w := range a {
		if len(letters(w)) == len(letters(b[i])) {
			continue
		}
		n := len(letters(b[i]))
		if len(letters(w)) != n+len(letters(b[i+1])) {
			return "", fmt.Errorf("word %d of A is not words %d and %d of B", i+1, i+1, i+2)
		}
		at := letters(w)[n]
		a[i] = w[:at] + " " + w[at:]
		return strings.Join(a, " "), nil
	}
	return "", fmt.Errorf("no word of A holds two of B")
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

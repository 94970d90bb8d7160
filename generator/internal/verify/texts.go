// Package verify holds the text and the engine against witnesses that nobody here wrote.
package verify

import (
	"sort"
	"strings"
)

// Canon gives a copy of a verse, in either text's way of writing, for comparing only: letter for letter and vowel for
// vowel, with tatweel, spaces, pause signs, the open or stacked form of tanween and the encodings of hamza and of final
// ya taken as equal. It is never shown.
func Canon(s string) string {
	rs := []rune(s)
	var out []rune
	for i := 0; i < len(rs); i++ {
		r := rs[i]
		switch {
		case r == ' ' || r >= 0x06D6 && r <= 0x06DB || r == 0x06DE || r == 0x06E9 || r == 0x06E4:
			// spaces, pause signs, the quarter, the prostration and its line
		case r == 0x06DC && !afterSad(rs, i):
			// a silence: text B parts it from its word
		case r == 0x0640:
			if i+1 < len(rs) && (rs[i+1] == 0x0654 || rs[i+1] == 0x0655) {
				out = append(out, 0x0621)
				i++
			}
		case r == 0x0623 && i+1 < len(rs) && rs[i+1] == 0x0653: // hamza and long alif under one sign
			out = append(out, 0x0621, 0x064E, 0x0627)
			i++
		case r == 0x0623 || r == 0x0624 || r == 0x0625 || r == 0x0626:
			out = append(out, 0x0621)
		case (r == 0x0649 || r == 0x064A) && i+1 < len(rs) && (rs[i+1] == 0x0655 || rs[i+1] == 0x0654): // ya as the seat of a hamza
			out = append(out, 0x0621)
			i++
		case r == 0x0648 && i+1 < len(rs) && rs[i+1] == 0x0655: // 56:23
			out = append(out, 0x0621)
			i++
		case r == 0x0649:
			out = append(out, 0x064A)
		case r == 0x0652:
			out = append(out, 0x06E1)
		case r == 0x06E3: // 52:37: the seen below in B, above in A
			out = append(out, 0x06DC)
		case r >= 0x08F0 && r <= 0x08F2:
			out = append(out, 0x064B+r-0x08F0)
		case r >= 0x064E && r <= 0x0650 && i+1 < len(rs) && (rs[i+1] == 0x06E2 || rs[i+1] == 0x06ED):
			out = append(out, r-3) // a vowel with a small meem is a tanween
		default:
			out = append(out, r)
		}
	}
	sortMarks(out)
	return string(out)
}

func afterSad(rs []rune, i int) bool {
	for i--; i >= 0 && isMark(rs[i]); i-- {
	}
	return i >= 0 && rs[i] == 0x0635
}

func isMark(r rune) bool {
	return r >= 0x064B && r <= 0x065F || r >= 0x06DF && r <= 0x06E4 || r == 0x06DC || r >= 0x06EA && r <= 0x06ED
}

// sortMarks puts the marks of each letter in one order: the two texts differ in it, and it carries no meaning.
func sortMarks(rs []rune) {
	for i := 0; i < len(rs); {
		j := i + 1
		for j < len(rs) && isMark(rs[j]) {
			j++
		}
		m := rs[i+1 : j]
		sort.Slice(m, func(a, b int) bool { return m[a] < m[b] })
		i = j
	}
}

// Difference is one verse in which the two texts differ after Canon.
type Difference struct{ Ref, A, B string }

// CompareTexts holds the text (lines of reference TAB verse) against the second, independent one. Source of the second:
// quran-validator 1.3.0 (MIT), from the Quranic Universal Library.
func CompareTexts(a, b string) (checked int, diffs []Difference) {
	la, lb := strings.Split(strings.TrimSpace(a), "\n"), strings.Split(strings.TrimSpace(b), "\n")
	for i := range max(len(la), len(lb)) {
		var ra, ta, rb, tb string
		if i < len(la) {
			ra, ta, _ = strings.Cut(la[i], "\t")
		}
		if i < len(lb) {
			rb, tb, _ = strings.Cut(lb[i], "\t")
		}
		checked++
		if ca, cb := Canon(ta), Canon(tb); ra != rb || ca != cb {
			diffs = append(diffs, Difference{ra + rb, ca, cb})
		}
	}
	return checked, diffs
}

// Package importer turns the source packages into the files of rules-content/text, once. The build
// never runs it.
//
// Text A is the base. It was made for one font: it writes some signs with code points that mean
// something else in Unicode, and spells some letters in a way that looks unlike the print in any
// other font. Each class of change is one rule of codePoints (convert.go) or spelling (spell.go),
// with the number of places it must change; what A lacks or runs together is listed in
// corrections.json with a reason and taken from text B. The result must agree with B letter by
// letter (verify.CompareTexts), or nothing is written.
package importer

import "strings"

// rule is one class of change: the number of places it must change in the whole text, and what it
// does to a piece of it. It returns the piece as it is to stand and the number of places it
// changed. b is the same word of text B.
type rule struct {
	name   string
	places int
	change func(ref, a, b string) (string, int)
}

// replace gives the change of every old to new.
func replace(old, new string) func(ref, a, b string) (string, int) {
	return func(_, a, _ string) (string, int) { return strings.ReplaceAll(a, old, new), strings.Count(a, old) }
}

// codePoints are text A's code points that stand for other signs. They run over whole verses of A
// as they come.
var codePoints = []rule{
	{"open tanween, fatha", 2901, replace("\u0657", "\u08F0")},
	{"open tanween, damma", 1807, replace("\u065E", "\u08F1")},
	{"open tanween, kasra", 1935, replace("\u0656", "\u08F2")},
	{"round zero", 3988, replace("\u0652", "\u06DF")},
	{"imalah, 11:41", 1, replace("\u065C", "\u06EA")},
	{"ishmam, 12:11", 1, func(ref, a, b string) (string, int) { // elsewhere the sign is the tas-hil of 41:44
		if ref != "12:11" {
			return a, 0
		}
		return replace("\u06EC", "\u06EB")(ref, a, b)
	}},
}

// tally counts what each rule changed.
type tally map[string]int

// run applies the rules in order.
func (t tally) run(rules []rule, ref, a, b string) string {
	for _, r := range rules {
		n := 0
		a, n = r.change(ref, a, b)
		t[r.name] += n
	}
	return a
}

// sukunA gives one word of text B in the code points of A: its sukun is U+0652.
func sukunA(b string) string { return strings.ReplaceAll(b, "\u0652", "\u06E1") }

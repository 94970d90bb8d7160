package verify

import "strings"

// fold is one class of letters that the two texts write differently and that mean the same. It
// tells how the second text writes the letter l, given the letters before it in its word and the
// letter b of the second text; ok is false where the class does not hold. places is the number of
// letters of the whole text that it makes equal: one more, or one fewer, is a fault. A fold goes
// one way only and may not hide a sign that means something.
type fold struct {
	name, reason string
	places       int
	fold         func(ref string, before []string, l, b string) (to string, ok bool)
}

// spelled makes a fold of one writing for another: where l has the first and b the second.
func spelled(ours, theirs string) func(string, []string, string, string) (string, bool) {
	return func(_ string, _ []string, l, b string) (string, bool) {
		return strings.Replace(l, ours, theirs, 1), strings.Contains(l, ours) && strings.Contains(b, theirs)
	}
}

// in keeps a fold to one verse.
func in(verse string, f func(string, []string, string, string) (string, bool)) func(string, []string, string, string) (string, bool) {
	return func(ref string, before []string, l, b string) (string, bool) {
		to, ok := f(ref, before, l, b)
		return to, ok && ref == verse
	}
}

const oneForm = "the second text has one form of tanween: which form is right the engine says (signs: tanween)"

var folds = []fold{
	{"sukun", "one sign in two code points, U+06E1 and U+0652", 37148, spelled("\u06E1", "\u0652")},
	{"open tanween, fatha", oneForm, 2901, spelled("\u08F0", "\u064B")},
	{"open tanween, damma", oneForm, 1807, spelled("\u08F1", "\u064C")},
	{"open tanween, kasra", oneForm, 1935, spelled("\u08F2", "\u064D")},
	{"tanween before ba, fatha", turnedForm, 106, spelled("\u064E\u06E2", "\u064B\u06E2")},
	{"tanween before ba, damma", turnedForm, 134, spelled("\u064F\u06E2", "\u064C\u06E2")},
	{"tanween before ba, kasra", turnedForm, 99, spelled("\u0650\u06ED", "\u064D\u06ED")},
	{"hamza beneath its ya seat", "the hamza of the second text stands over the same seat, bears the same kasra, and is read the same",
		685, spelled("\u0649\u0655", "\u0626")},
	{"hamza beneath waw, 56:23", "the same letter: hamza on waw with kasra", 1, in("56:23", spelled("\u0648\u0655", "\u0624"))},
	{"ya without dots", "the same letter: it bears a vowel, a shadda or a sukun or stands after a kasra, so it is no alif maqsurah",
		3690, yaWithoutDots},
	{"stretch of 43:58", "the letter before does not join, so there is nothing to stretch", 1, in("43:58", spelled("\u0670", "\u0640\u0670"))},
	{"stretch of 2:97", "a longer line before jeem: no sign stands on it", 1, in("2:97", spelled("\u0640\u062C", "\u062C"))},
}

const turnedForm = "one vowel and a small meem, or tanween and the same small meem: both are the tanween that turns to meem"

// yaWithoutDots: the second text writes a ya at a word's end as alif maqsurah. An alif that is read
// as one bears no vowel and stands after a fatha, so a ya in its place would still be seen.
func yaWithoutDots(_ string, before []string, l, b string) (string, bool) {
	if !strings.HasPrefix(l, "\u064A") || !strings.HasPrefix(b, "\u0649") {
		return l, false
	}
	ok := strings.ContainsAny(l, "\u064B\u064C\u064D\u064E\u064F\u0650\u0651\u0652\u06E1\u08F0\u08F1\u08F2")
	for i := len(before) - 1; i >= 0 && !ok; i-- {
		if strings.Contains(before[i], "\u06DF") { // never read: 39:69, 89:23
			continue
		}
		ok = strings.Contains(before[i], "\u0650")
		break
	}
	return "\u0649" + strings.TrimPrefix(l, "\u064A"), ok
}

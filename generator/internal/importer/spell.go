package importer

import "strings"

const prostrationLine = "\u06E4"

// spelling are the classes in which text A looks unlike the print in a Unicode font. They run over
// single words, after the corrections, and take what text B has or leave out what is kept as data.
var spelling = []rule{
	// The line over the words of a prostration is no sign of a letter, and fonts draw a maddah for
	// its code point: ProstrationFile keeps the words that bear it, and the page draws the line.
	{"prostration line, kept as data", 26, replace(prostrationLine, "")},
	// After a letter that joins: the print has a hamza with fatha over the line, then an alif, and
	// no maddah. Two letters.
	{"hamza and long alif", 277, replace("\u0623\u0653", "\u0640\u0654\u064E\u0627")},
	// A hamza on a ya seat that bears a kasra stands beneath the seat; the seat has no dots.
	{"hamza beneath its seat", 676, replace("\u0626\u0650", "\u0649\u0655\u0650")},
	{"hamza beneath its seat, dots of the seat", 9, replace("\u064A\u0655\u0650", "\u0649\u0655\u0650")},
	// With an open kasra it stands above, and the seat is B's.
	{"hamza above its seat, dots of the seat", 4, replace("\u064A\u0655\u08F2", "\u0626\u08F2")},
	// A small alif stands on a stretch of its own after a letter that joins, on none after one that
	// does not. B has the stretch at 5,924 places; 43:58 is left out, where the letter before does
	// not join.
	{"small alif, stretch of its own", 4897, func(ref, a, b string) (string, int) { return stretch(ref, a, b, true) }},
	{"small alif, stretch after a letter that does not join", 90,
		func(ref, a, b string) (string, int) { return stretch(ref, a, b, false) }},
}

const smallAlif = '\u0670'

// stretch adds (or removes) the stretch before each small alif of a that has one (has none) in b.
func stretch(ref, a, b string, add bool) (string, int) {
	if ref == "43:58" {
		return a, 0
	}
	want := stretched(b)
	var out strings.Builder
	i, n := 0, 0
	held := false // a stretch that waits for its letter
	for _, r := range a {
		if held && r != smallAlif {
			out.WriteRune('\u0640')
			held = false
		}
		switch {
		case r == '\u0640':
			held = true
			continue
		case r == smallAlif:
			on := i < len(want) && want[i]
			i++
			switch {
			case add && on && !held:
				held = true
				n++
			case !add && !on && held:
				held = false
				n++
			}
			if held {
				out.WriteRune('\u0640')
				held = false
			}
		}
		out.WriteRune(r)
	}
	if held {
		out.WriteRune('\u0640')
	}
	return out.String(), n
}

// stretched tells of each small alif of a word whether it stands on a stretch.
func stretched(w string) (on []bool) {
	var last rune
	for _, r := range w {
		if r == smallAlif {
			on = append(on, last == '\u0640')
		}
		last = r
	}
	return on
}

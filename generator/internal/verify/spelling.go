package verify

import (
	"fmt"
	"strings"

	"sutur/generator/internal/mushaf"
)

// spelling: the classes in which the text is spelled as the print looks, counted in the text as it
// stands. The figures are those that the second text has, but for 43:58, where it stretches a
// letter that does not join.
func spelling(b *bench, t *mushaf.Text) {
	n := map[string]int{}
	for i := range t.Verses {
		v := &t.Verses[i]
		for _, w := range v.Words {
			if w.Lined {
				n["words under the line of a prostration"]++
			}
			for k, l := range w.Letters {
				before := mushaf.Letter{}
				if k > 0 {
					before = w.Letters[k-1]
				}
				if name := classOf(v.Text, before, l); name != "" {
					n[name]++
				}
			}
		}
	}
	for _, c := range []struct {
		name   string
		places int
	}{
		{onStretch, 5923}, {afterApart, 1377}, {onSeat, 2426}, {beneath, 685},
		{"seen over a sad", 2}, {"seen under a sad", 1}, {"words under the line of a prostration", 26},
	} {
		b.witness("spelling: "+c.name).figure(n[c.name], c.places)
	}
	s := b.witness("spelling: kinds that must be gone")
	for _, name := range []string{strayStretch, overJoining, hamzaMaddah} {
		s.same(name, 0, "", "0", fmt.Sprint(n[name]))
	}
}

const (
	onStretch  = "small alif on a stretch of its own"
	afterApart = "small alif after a letter that does not join"
	onSeat     = "small alif over the waw or ya that carries it"
	beneath    = "hamza beneath its ya seat, with kasra"

	strayStretch = "small alif, stretch after a letter that does not join"
	overJoining  = "small alif over a letter that joins"
	hamzaMaddah  = "hamza with a maddah"
)

// apart are the letters that do not join to the one after them (Unicode, ArabicShaping.txt: joining
// types R and U).
const apart = "\u0621\u0622\u0623\u0624\u0625\u0627\u0629\u062F\u0630\u0631\u0632\u0648\u0671"

func classOf(text string, before, l mushaf.Letter) string {
	switch {
	case l.Rune == mushaf.SmallAlif:
		stretch, joins := strings.HasPrefix(text[l.Start:], "\u0640"), !strings.ContainsRune(apart, before.Rune)
		switch {
		case stretch && joins:
			return onStretch
		case stretch:
			return strayStretch
		case before.Marks == 0 && (before.Rune == 'و' || before.Rune == 'ى'):
			return onSeat
		case joins:
			return overJoining
		}
		return afterApart
	case l.Has(mushaf.HamzaBelow) && l.Rune == 'ى' && l.Has(mushaf.Kasra):
		return beneath
	case l.Has(mushaf.Maddah) && (strings.ContainsRune("أإؤئء", l.Rune) || l.Has(hamzaOn)):
		return hamzaMaddah
	case l.Has(mushaf.SeenMark):
		return "seen over a sad"
	case l.Has(mushaf.SeenLow):
		return "seen under a sad"
	}
	return ""
}

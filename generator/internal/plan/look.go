package plan

import (
	"math/bits"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// look is where a child must look, besides the letter that bears a rule, to know that the rule acts
// there.
type look uint8

const (
	lookBefore look = 1 << iota // at a letter before it, or whether one is read before it
	lookAfter                   // at a letter after it, in the word or in the next
	lookStop                    // whether the reader stops after the word
)

// lookFor is where the engine looked: at the letter that causes the event, and at the boundary that
// the event depends on.
func lookFor(ev *recite.Event) (l look) {
	switch {
	case ev.CauseLetter < 0:
	case ev.CauseWord < 0 || ev.CauseWord == 0 && ev.CauseLetter < int8(ev.Letter):
		l = lookBefore
	case ev.CauseWord > 0 || ev.CauseLetter > int8(ev.Letter):
		l = lookAfter
	}
	switch {
	case ev.When == recite.Always:
		return l
	case ev.Before:
		return l | lookBefore
	}
	return l | lookStop
}

// The signs that the print adds to help the reader with a rule, as a set. Vowels, sukun, shadda and
// tanween are none of them: they stand on every letter that has them, whatever the rule.
const (
	helping  = mushaf.Maddah | mushaf.RoundZero | mushaf.UprightZero | mushaf.SeenMark | mushaf.SeenLow | mushaf.ImalahMark | mushaf.IshmamMark | mushaf.TashilMark
	meemSign = mushaf.MeemHigh | mushaf.MeemLow
	small    = 1 << 31 // small waw or ya
	wasla    = 1 << 30
)

func signs(l mushaf.Letter) mushaf.Marks {
	m := l.Marks & helping
	if l.Has(meemSign) {
		m |= meemSign
	}
	switch l.Rune {
	case mushaf.SmallWaw, mushaf.SmallYa, mushaf.SmallYaTop:
		m |= small
	case mushaf.AlifWasla:
		m |= wasla
	}
	return m
}

// sight is what a reader sees of a rule, or of the rules of a unit.
type sight struct {
	places int  // in the default reading, as a child marks them
	look   int  // things to look at besides the letter, 0 to 3
	sign   bool // all places of a rule bear the same sign of the print
	rare   bool // there are fewer places a rule than lines are to have
}

// looks is what a child must look at: a sign of the print spares all but one look.
func (s sight) looks() int {
	if s.sign {
		return min(s.look, 1)
	}
	return s.look
}

// seenOf is what all places of one rule show.
type seenOf struct {
	places int
	look   look
	signs  mushaf.Marks // those that every place bears
}

// lookAt goes through the verses of t from first on.
func lookAt(t *mushaf.Text, first int) (seen [recite.NumRules]seenOf) {
	for r := range seen {
		seen[r].signs = ^mushaf.Marks(0)
	}
	e := recite.New(t)
	var events []recite.Event
	for v := first; v < len(t.Verses); v++ {
		words := t.Verses[v].Words
		events = e.Verse(events[:0], v)
		for i := range events {
			ev := &events[i]
			if ev.Unwritten || !ev.Holds(ev.Word == 0, int(ev.Word) == len(words)-1) {
				continue
			}
			s := &seen[ev.Rule]
			s.places++
			s.look |= lookFor(ev)
			s.signs &= signs(words[ev.Word].Letters[ev.Letter])
		}
	}
	return seen
}

// together is what a unit's rules show: their places added up, all that is looked at for any of
// them, a sign only where each has one.
func together(u Unit, seen [recite.NumRules]seenOf) sight {
	s := sight{sign: true}
	var l look
	for _, r := range u.Rules {
		s.places += seen[r].places
		l |= seen[r].look
		s.sign = s.sign && seen[r].places > 0 && seen[r].signs != 0
	}
	s.look = bits.OnesCount8(uint8(l))
	s.rare = s.places < Enough*len(u.Rules)
	return s
}

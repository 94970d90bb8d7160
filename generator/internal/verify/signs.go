package verify

import (
	"fmt"
	"strings"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// Witness 1: the text's own signs, over the whole Qur'an, everything joined, each surah's end into
// the next basmala.
//
// The print says how a letter is read when the reader goes on: a bare or signed noon, tanween one
// above the other or side by side, a small meem, a maddah, a shadda on a first letter, zeros. The
// engine here has not seen those signs (recite.NewBlank). Every letter of the text is asked both
// ways: does the engine say what its sign shows, and does every event have its sign. Source of the
// signs: the text's source, named in rules-content/text.

// page is one verse laid out for the witnesses: which rules hold on each letter when all is joined,
// and at a stop.
type page struct {
	t      *mushaf.Text
	v      int
	ref    string
	joined [][]rules
	stop   [][]rules
	prev   *mushaf.Word // the word before the verse, nil at the start of a surah but the ninth
	before []rules      // what holds on prev, joined
	next   rune         // the first letter after the verse: that of the next verse, or the basmala's
}

// rules is a set of rule ids.
type rules uint64

func of(ids ...recite.RuleID) (s rules) {
	for _, id := range ids {
		s |= 1 << id
	}
	return s
}

func (s rules) any(o rules) bool { return s&o != 0 }

func (s rules) String() string {
	var out []string
	for id := recite.RuleID(0); int(id) < recite.NumRules; id++ {
		if s.any(of(id)) {
			out = append(out, id.String())
		}
	}
	if len(out) == 0 {
		return "nothing"
	}
	return strings.Join(out, "+")
}

func signs(b *bench, t *mushaf.Text, e Engine) { signsOf(b, t, e, 0, len(t.Verses)) }

// signsOf hears the verses from first up to end.
func signsOf(b *bench, t *mushaf.Text, e Engine, first, end int) {
	ws := []struct {
		*stand
		hear func(*stand, *page)
	}{
		{b.witness("signs: noon without a vowel"), noonSigns},
		{b.witness("signs: tanween"), tanweenSigns},
		{b.witness("signs: meem without a vowel"), meemSigns},
		{b.witness("signs: sukun or none on other letters"), sukunSigns},
		{b.witness("signs: shadda of merging"), shaddaSigns},
		{b.witness("signs: maddah"), maddahSigns},
		{b.witness("signs: lam of the article"), lamSigns},
		{b.witness("signs: letters never read"), zeroSigns},
		{b.witness("signs: hamzat wasl"), waslSigns},
		{b.witness("signs: ghunnah on shadda"), ghunnahSigns},
		{b.witness("signs: echo letters with sukun"), echoSigns},
		{b.witness("signs: ra by its vowel, or without one"), raSigns},
		{b.witness("signs: pauses, silences, prostrations"), pauseSigns},
		{b.witness("signs: single words"), singleSigns},
	}
	var last *page
	var buf []recite.Event
	for v := first; v < end; v++ {
		buf = e.Verse(buf[:0], v)
		p := lay(t, v, buf, last)
		for _, w := range ws {
			w.hear(w.stand, p)
		}
		last = p
	}
}

func lay(t *mushaf.Text, v int, events []recite.Event, last *page) *page {
	vs := &t.Verses[v]
	p := &page{t: t, v: v, ref: fmt.Sprintf("%d:%d", vs.Surah, vs.Ayah), next: []rune(t.Verses[0].Text)[0]}
	p.joined, p.stop = make([][]rules, len(vs.Words)), make([][]rules, len(vs.Words))
	for i := range vs.Words {
		p.joined[i], p.stop[i] = make([]rules, len(vs.Words[i].Letters)), make([]rules, len(vs.Words[i].Letters))
	}
	for _, e := range events {
		if e.Unwritten {
			continue // inside the name of an opening letter, or the long vowel of the Name: no sign shows it
		}
		if e.Holds(false, false) {
			p.joined[e.Word][e.Letter] |= of(e.Rule)
		}
		if e.When == recite.Stop {
			p.stop[e.Word][e.Letter] |= of(e.Rule)
		}
	}
	if joinsNext(t, v) {
		p.next = t.Verses[v+1].Words[0].Letters[0].Rune
	}
	if last != nil && joinsNext(t, v-1) {
		ws := t.Verses[v-1].Words
		p.prev, p.before = &ws[len(ws)-1], last.joined[len(ws)-1]
	}
	return p
}

// joinsNext reports whether verse v is followed by verse v+1 with no basmala between them.
func joinsNext(t *mushaf.Text, v int) bool {
	return v+1 < len(t.Verses) && (t.Verses[v+1].Ayah != 1 || t.Verses[v+1].Surah == 9)
}

// each calls f for every letter of the verse. The letters that open a surah have no signs but the
// maddah: opening.
func (p *page) each(f func(w, i int, l mushaf.Letter, held rules, opening bool)) {
	for w := range p.words() {
		op := p.opening(w)
		for i, l := range p.words()[w].Letters {
			f(w, i, l, p.joined[w][i], op)
		}
	}
}

func (p *page) words() []mushaf.Word { return p.t.Verses[p.v].Words }

// opening: letters that carry nothing but a maddah are read by their names. They are the first word
// of their verse.
func (p *page) opening(w int) bool { return w == 0 && Opening(&p.words()[0]) }

// Opening reports whether a verse's first word is one of the letters that open a surah.
func Opening(w *mushaf.Word) bool {
	for _, l := range w.Letters {
		if l.Marks&^mushaf.Maddah != 0 {
			return false
		}
	}
	return true
}

// after returns the first letter of the word after w.
func (p *page) after(w int) rune {
	if w+1 < len(p.words()) {
		return p.words()[w+1].Letters[0].Rune
	}
	return p.next
}

func (p *page) letter(w, i int) mushaf.Letter {
	ls := p.words()[w].Letters
	if i < 0 || i >= len(ls) {
		return mushaf.Letter{}
	}
	return ls[i]
}

const (
	vowels   = mushaf.Fatha | mushaf.Damma | mushaf.Kasra
	zeros    = mushaf.RoundZero | mushaf.UprightZero
	smallM   = mushaf.MeemHigh | mushaf.MeemLow
	voiced   = vowels | mushaf.Tanween | mushaf.Shadda | zeros
	hamzaOn  = mushaf.HamzaAbove | mushaf.HamzaBelow
	stackeds = mushaf.FathatanStacked | mushaf.DammatanStacked | mushaf.KasratanStacked
)

func tanween(l mushaf.Letter) bool {
	return l.Has(mushaf.Tanween) || l.Has(vowels) && l.Has(smallM)
}

func isNoon(l mushaf.Letter) bool {
	return (l.Rune == 'ن' || l.Rune == mushaf.SmallNoon) && !l.Has(voiced)
}

func isMeem(l mushaf.Letter) bool { return l.Rune == 'م' && !l.Has(voiced) }

func at(i int, l mushaf.Letter) string { return fmt.Sprintf("letter %d (U+%04X)", i+1, l.Rune) }

// equal: an engine that sees the signs finds exactly what the one that does not see them finds.
func equal(b *bench, t *mushaf.Text, seeing, blank Engine) {
	s := b.witness("signs: no use made of them, verses")
	var x, y []recite.Event
	for v := range t.Verses {
		x, y = seeing.Verse(x[:0], v), blank.Verse(y[:0], v)
		s.same(fmt.Sprintf("%d:%d", t.Verses[v].Surah, t.Verses[v].Ayah), 0, "events", fmt.Sprint(x), fmt.Sprint(y))
	}
}

// Package recite finds where every recitation rule acts: one riwayah, Hafs from 'Asim by the way of
// al-Shatibiyyah.
//
// It works in two layers. The sound layer (sound.go, article.go, opening.go) reads a word's letters
// and decides what each is in the reading: consonant, long vowel, hamzat wasl, silent. Then one
// file a rule family decides, from the sounds of a word and of its neighbours, the events of that
// word: always, when reading on, at a stop, at a start. The families, in the order in which they
// run:
//
//	heavy.go      heavy-letter, sad-as-seen
//	lam.go        heavy-lam, light-lam
//	ra.go         heavy-ra, light-ra, heavy-ra-sakinah, light-ra-sakinah
//	wasl.go       hamzat-wasl, madd-badal at a start
//	article.go    sun-lam, moon-lam
//	silent.go     silent-letter
//	ghunnah.go    ghunnah
//	noon.go       the six rules of noon sakinah and tanween
//	meem.go       the three rules of meem sakinah
//	idgham.go     idgham of two equal, kindred or near letters
//	qalqalah.go   qalqalah
//	madd.go       the long vowels
//	maddstop.go   the long vowels that a stop makes
//	stopform.go   the words whose ending a stop changes
//	signs.go      pause signs, silences, sajdah
//	single.go     imalah, ishmam, tas-hil
//	opening.go    the opening letters, in place of all others but signs
//
// The printed signs of assimilation are no input: see Blank.
package recite

import "sutur/generator/internal/mushaf"

// Engine finds events in one text. It keeps scratch space between calls: use one Engine a
// goroutine.
type Engine struct {
	t     *mushaf.Text
	words []word
	buf   []sound
	ctx   context
	marks []wordMark // words named by reference, in order of verse and word
	from  []int32    // index in marks of each verse's first, one more entry than verses
}

// New returns an engine over t.
func New(t *mushaf.Text) *Engine {
	e := &Engine{t: t, words: make([]word, 0, 160), buf: make([]sound, 0, 1024)}
	e.marks, e.from = markWords(t)
	return e
}

// context is what a family sees: the word, its neighbours when reading on, and where its events go.
type context struct {
	e          *Engine
	dst        []Event
	verse      int32
	index      int // of the word in its verse
	count      int // words in the verse
	cur        *word
	prev, next *word // nil at the two ends of the text
	w          *mushaf.Word
	mark       wordMark
}

type event struct{ *Event }

// add appends an event of rule on the letter of sound i.
func (c *context) add(i int, rule RuleID, count uint8, when When) event {
	l := c.cur.s[i].letter
	c.dst = append(c.dst, Event{Verse: c.verse, Word: uint16(c.index), Letter: l, Rule: rule, Count: count, When: when,
		Unwritten: c.cur.s[i].unwritten, CauseLetter: -1})
	return event{&c.dst[len(c.dst)-1]}
}

func (e event) cause(word int8, letter uint8) event {
	e.CauseWord, e.CauseLetter = word, int8(letter)
	return e
}

func (e event) detail(d Detail) event { e.Detail = d; return e }

func (e event) before() event { e.Before = true; return e }

var families = [...]func(*context){
	heavyRule, lamRule, raRule, waslRule, articleRule, silentRule, ghunnahRule, noonRule, meemRule, idghamRule,
	qalqalahRule, maddRule, maddStopRule, stopFormRule, singleRule,
}

// Verse appends every event of the verse at index v of the text, under all conditions, word by
// word. Reading on across the verse's end goes to the next verse, and from a surah's end to the
// basmala of the next (before surah 9 to its first verse); the last word of the text has nothing to
// read on to.
func (e *Engine) Verse(dst []Event, v int) []Event {
	vs := &e.t.Verses[v]
	e.words, e.buf = e.words[:0], e.buf[:0]
	if p := e.before(v); p >= 0 {
		ws := e.t.Verses[p].Words
		e.addWord(&ws[len(ws)-1])
	} else {
		e.words = append(e.words, word{})
	}
	for i := range vs.Words {
		e.addWord(&vs.Words[i])
	}
	n := e.after(v)
	if n >= 0 {
		e.addWord(&e.t.Verses[n].Words[0])
	}
	c := &e.ctx
	*c = context{e: e, dst: dst, verse: int32(v), count: len(vs.Words)}
	marks := e.marks[e.from[v]:e.from[v+1]]
	for i := range vs.Words {
		c.index, c.w, c.cur, c.prev, c.next, c.mark = i, &vs.Words[i], &e.words[i+1], nil, nil, wordMark{}
		if len(e.words[i].s) > 0 {
			c.prev = &e.words[i]
		}
		if i+2 < len(e.words) {
			c.next = &e.words[i+2]
		}
		if len(marks) > 0 && int(marks[0].word) == i {
			c.mark, marks = marks[0], marks[1:]
		}
		if c.cur.opening {
			openingRule(c)
		} else {
			for _, f := range families {
				f(c)
			}
		}
		signRule(c)
	}
	dst = c.dst
	c.dst = nil
	return dst
}

// addWord reads one more word. The sounds of a word that was read before stay where they were: when
// the buffer grows, the old one keeps them.
func (e *Engine) addWord(w *mushaf.Word) {
	e.words = append(e.words, word{})
	e.buf = e.words[len(e.words)-1].read(e.buf, w.Letters)
}

const tawbah = 9

// after returns the verse that reading on from the end of v goes to, or -1.
func (e *Engine) after(v int) int {
	if v+1 >= len(e.t.Verses) {
		return -1
	}
	if n := &e.t.Verses[v+1]; n.Ayah != 1 || n.Surah == tawbah {
		return v + 1
	}
	return 0 // the basmala
}

// before returns the verse that is read on from into the beginning of v, or -1.
func (e *Engine) before(v int) int {
	if v == 0 {
		return -1
	}
	if n := &e.t.Verses[v]; n.Ayah != 1 || n.Surah == tawbah {
		return v - 1
	}
	return 0
}

// Reading is a reader's choice of stops. The zero value stops at every verse end and nowhere else.
type Reading struct {
	Join map[int]bool    // verses (indices) read on past their end
	Stop map[[2]int]bool // verse and word (indices) after which the reader stops within the verse
}

// Reading appends the events of verse v that hold for the reading r.
func (e *Engine) Reading(dst []Event, v int, r Reading) []Event {
	from := len(dst)
	dst = e.Verse(dst, v)
	last := len(e.t.Verses[v].Words) - 1
	after := func(w int) bool { return w == last && !r.Join[v] || r.Stop[[2]int{v, w}] }
	before := func(w int) bool {
		if w > 0 {
			return after(w - 1)
		}
		p := e.before(v)
		return p < 0 || p != v-1 || !r.Join[p]
	}
	keep := dst[:from]
	for _, ev := range dst[from:] {
		if w := int(ev.Word); ev.Holds(before(w), after(w)) {
			keep = append(keep, ev)
		}
	}
	return keep
}

package recite

import "sutur/generator/internal/mushaf"

// kind says what a written letter is in the reading.
type kind uint8

const (
	consonant   kind = iota
	long             // a long vowel
	wasl             // hamzat wasl
	silent           // written and never read
	stopAlif         // upright zero: read only at a stop
	tanweenAlif      // the alif or ya after tanween with fatha: read only at a stop
	merged           // a seat written twice (68:6): no sound and no event of its own
)

type vowel uint8

const (
	sukun vowel = iota
	fatha
	damma
	kasra
)

// sound is one written letter as it is read, or an unwritten long vowel. v is the short vowel of a
// consonant (sukun for none) or the vowel that a long one draws out.
type sound struct {
	letter    uint8 // index in the word
	kind      kind
	cons      uint8
	v         vowel
	doubled   bool // shadda of its own
	tanween   bool
	marbuta   bool
	small     bool // small waw, ya or alif
	unwritten bool
	imalah    bool
	seen      bool // bears the small seen
	tasHil    bool
}

// word is one word's sounds with what several families ask of them.
type word struct {
	s       []sound
	opening bool
	first   int  // index of the first sound, hamzat wasl included
	last    int  // index of the last sound when reading on
	kept    bool // an alif with an upright zero is read at a stop, so that no vowel falls
	article int  // index of the article's lam where it is written apart, or -1
	name    int  // index of the doubled lam of the name Allah, or -1
}

// next returns the index of the sound after i in the same word, or -1. Silent letters are passed
// over.
func (w *word) next(i int) int {
	for i++; i < len(w.s); i++ {
		switch w.s[i].kind {
		case consonant, long, wasl:
			return i
		}
	}
	return -1
}

// prev returns the index of the sound before i in the same word, or -1.
func (w *word) prev(i int) int {
	for i--; i >= 0; i-- {
		switch w.s[i].kind {
		case consonant, long, wasl:
			return i
		}
	}
	return -1
}

// isDoubled reports whether the consonant at i is held double: by its own shadda or by the
// article's lam before it.
func (w *word) isDoubled(i int) bool {
	return w.s[i].doubled || i > 0 && i-1 == w.article && sun.has(w.s[i].cons)
}

// final returns the index of the consonant that a stop makes last, or -1 where the word ends in a
// long vowel that stays.
func (w *word) final() int {
	if w.kept {
		return -1
	}
	f := &w.s[w.last]
	if f.kind == consonant {
		return w.last
	}
	if w.isSilah(w.last) {
		return w.prev(w.last)
	}
	return -1
}

// stopAlif returns the index of the alif that only a stop reads, or -1.
func (w *word) stopAlif() int {
	for i := w.last + 1; w.kept && i < len(w.s); i++ {
		if w.s[i].kind == stopAlif {
			return i
		}
	}
	return -1
}

// isSilah reports whether the sound at i is the small waw or ya of the pronoun ha: the last of its
// word, after ha.
func (w *word) isSilah(i int) bool {
	if i != w.last || w.s[i].kind != long || !w.s[i].small || w.s[i].v == fatha {
		return false
	}
	p := w.prev(i)
	return p >= 0 && w.s[p].cons == ha && w.s[p].kind == consonant
}

const (
	anyFatha = mushaf.Fatha | mushaf.FathatanStacked | mushaf.FathatanOpen
	anyDamma = mushaf.Damma | mushaf.DammatanStacked | mushaf.DammatanOpen
	anyKasra = mushaf.Kasra | mushaf.KasratanStacked | mushaf.KasratanOpen
	anyVowel = anyFatha | anyDamma | anyKasra | mushaf.ImalahMark
	smallM   = mushaf.MeemHigh | mushaf.MeemLow
)

func vowelOf(m mushaf.Marks) vowel {
	switch {
	case m&(anyFatha|mushaf.ImalahMark) != 0:
		return fatha
	case m&anyDamma != 0:
		return damma
	case m&anyKasra != 0:
		return kasra
	}
	return sukun
}

// read decides what each letter of a word is in the reading. It asks for the letters, their vowels,
// shadda and zeros; a printed sukun, a maddah, the form of a tanween and the small meem decide
// nothing.
func (w *word) read(buf []sound, letters []mushaf.Letter) []sound {
	from := len(buf)
	w.article, w.name = -1, -1
	w.opening = isOpening(letters)
	for i := range letters {
		l := &letters[i]
		s := sound{letter: uint8(i), v: vowelOf(l.Marks)}
		if s.v != sukun {
			s.tanween = l.Marks&(mushaf.Tanween|smallM) != 0
			s.imalah = l.Marks&mushaf.ImalahMark != 0
		}
		s.doubled = i > 0 && l.Marks&mushaf.Shadda != 0
		before := sound{}
		for k := len(buf) - 1; k >= from; k-- {
			if buf[k].kind == consonant || buf[k].kind == long {
				before = buf[k]
				break
			}
		}
		carries := i+1 < len(letters) && letters[i+1].Rune == mushaf.SmallAlif && letters[i+1].Marks&mushaf.HamzaAbove == 0
		switch r := l.Rune; {
		case w.opening:
			s.cons = openingCons(r)
		case r == mushaf.AlifWasla:
			s.kind = wasl
		case l.Marks&mushaf.RoundZero != 0:
			s.kind = silent
		case l.Marks&mushaf.UprightZero != 0:
			s.kind, s.v = stopAlif, fatha
		case l.Marks&(mushaf.HamzaAbove|mushaf.HamzaBelow) != 0:
			s.cons = hamza
		case l.Marks&mushaf.TashilMark != 0:
			s.cons, s.v, s.tasHil = hamza, fatha, true
		case r == mushaf.SmallAlif:
			s.kind, s.v, s.small = long, fatha, true
		case r == mushaf.SmallNoon:
			s.cons = noon
		case r == 'ا' || r == 'ى' && s.v == sukun:
			s = longAlif(s, before, carries)
		case r == 'و' || r == mushaf.SmallWaw:
			s = wawOrYa(s, before, carries, waw, damma)
			s.small = r == mushaf.SmallWaw
		case r == 'ي' || r == 'ى' || r == mushaf.SmallYa || r == mushaf.SmallYaTop:
			twice := r == 'ي' && s.v == sukun && i+1 < len(letters) && letters[i+1].Rune == 'ي' && letters[i+1].Marks&mushaf.Shadda != 0
			s = wawOrYa(s, before, carries, ya, kasra)
			s.small = r == mushaf.SmallYa || r == mushaf.SmallYaTop
			if twice { // 68:6: one doubled ya written with two letters
				s.kind = merged
			}
		case r >= 0x620 && r <= 0x64A:
			s.cons = consOf[r-0x620]
			s.marbuta = r == 'ة'
			s.seen = l.Marks&(mushaf.SeenMark|mushaf.SeenLow) != 0
		}
		buf = append(buf, s)
	}
	w.s = buf[from:]
	w.bounds()
	if !w.opening {
		w.findArticle()
		if w.name >= 0 { // the long vowel of the Name is not written
			buf = append(buf, sound{})
			w.s = buf[from:]
			copy(w.s[w.name+2:], w.s[w.name+1:])
			w.s[w.name+1] = sound{letter: w.s[w.name].letter, kind: long, v: fatha, unwritten: true}
			w.bounds()
		}
	}
	return buf
}

// longAlif decides alif, or alif maqsurah without a vowel: long after fatha, a seat that a small
// alif reads, the alif of a tanween, or the silent alif after a plural waw and after a hamza's
// seat.
func longAlif(s, before sound, carries bool) sound {
	switch {
	case s.v != sukun: // a vowelled alif does not occur in the text
		s.cons = hamza
	case carries:
		s.kind = silent
	case before.kind == consonant && before.tanween && before.v == fatha:
		s.kind = tanweenAlif
	case before.kind == consonant && before.v == fatha:
		s.kind, s.v = long, fatha
	default:
		s.kind = silent
	}
	return s
}

func wawOrYa(s, before sound, carries bool, c uint8, v vowel) sound {
	switch {
	case s.v != sukun:
		s.cons = c
	case carries:
		s.kind = silent
	case before.kind == consonant && before.v == v && !before.tanween:
		s.kind, s.v = long, v
	default: // sakin after fatha
		s.cons = c
	}
	return s
}

func (w *word) bounds() {
	w.first, w.last, w.kept = -1, -1, false
	for i := range w.s {
		switch w.s[i].kind {
		case consonant, long, wasl:
			if w.first < 0 {
				w.first = i
			}
			w.last, w.kept = i, false
		case stopAlif:
			w.kept = true
		}
	}
	if w.first < 0 { // a word of silent letters alone does not occur in the text
		w.first, w.last = 0, 0
	}
}

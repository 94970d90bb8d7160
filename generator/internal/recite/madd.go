package recite

// Lengths at the default setting, in counts.
const (
	natural = 2 // madd tabii and those of its length
	joined  = 4 // madd muttasil, munfasil and silah before hamza: 4 or 5
	atStop  = 4 // madd arid and lin: 2, 4 or 6
	lasting = 6 // madd lazim
)

// maddRule: the long vowels (Tuhfat al-Atfal and al-Jazariyyah, on madd). What stands after the
// vowel decides; of two causes the stronger acts alone: lazim, muttasil, arid, munfasil, badal,
// tabii.
func maddRule(c *context) {
	w := c.cur
	for i := range w.s {
		s := &w.s[i]
		if s.kind != long {
			continue
		}
		plain := MaddTabii
		if p := w.prev(i); p >= 0 && w.s[p].cons == hamza {
			plain = MaddBadal
		}
		n := w.next(i)
		if n < 0 {
			maddAtEnd(c, i, plain)
			continue
		}
		t := &w.s[n]
		switch {
		case t.kind == consonant && (t.v == sukun || w.isDoubled(n)):
			d := BeforeDoubled
			if t.v == sukun && (n != w.article || !sun.has(w.s[n+1].cons)) {
				d = BeforeSukun
			}
			c.add(i, MaddLazim, lasting, Always).cause(0, t.letter).detail(d)
		case t.cons == hamza:
			if callsOrPoints(w, i) {
				c.add(i, MaddMunfasil, joined, Always).cause(0, t.letter)
			} else if e := c.add(i, MaddMuttasil, joined, Always).cause(0, t.letter); n == w.final() && !(t.tanween && t.v == fatha) {
				e.detail(SixAtStop)
			}
		case n == w.final() && !(t.tanween && t.v == fatha && !t.marbuta):
			c.add(i, plain, natural, Join)
			c.add(i, MaddArid, atStop, Stop).cause(0, t.letter)
		default:
			c.add(i, plain, natural, Always)
		}
	}
}

// maddAtEnd: a long vowel that ends its word.
func maddAtEnd(c *context, i int, plain RuleID) {
	w := c.cur
	toWasl := c.next != nil && c.next.isWasl()
	toHamza := c.next != nil && !toWasl && c.next.firstCons() == hamza
	switch {
	case w.isSilah(i):
		if toHamza {
			c.add(i, MaddSilahLong, joined, Join).cause(1, c.next.s[c.next.first].letter)
		} else if !toWasl {
			c.add(i, MaddSilahShort, natural, Join)
		}
	case toWasl:
		c.add(i, plain, natural, Stop)
	case toHamza:
		c.add(i, MaddMunfasil, joined, Join).cause(1, c.next.s[c.next.first].letter)
		c.add(i, plain, natural, Stop)
	default:
		c.add(i, plain, natural, Always)
	}
}

// prefixes are the one-letter words written together with a pointing ha or a calling ya.
var prefixes = setOf("ءبفكلو")

// callsOrPoints reports whether the long alif at i is that of calling (ya) or of pointing (ha),
// which are words of their own written together with the next: ya or ha with fatha and a small
// alif, at the word's beginning or after prefixes. 69:19 writes a full alif and is one word.
func callsOrPoints(w *word, i int) bool {
	s := w.s
	if i < 1 || s[i].v != fatha || s[i-1].v != fatha || s[i-1].cons != ya && s[i-1].cons != ha || s[i-1].doubled || !s[i].small {
		return false
	}
	return i == 1 || i == 2 && s[0].kind == consonant && s[0].v != sukun && prefixes.has(s[0].cons)
}

package recite

import "sutur/generator/internal/mushaf"

// isOpening reports whether a word is one of the opening letters: letters without any vowel, shadda
// or zero.
func isOpening(letters []mushaf.Letter) bool {
	for i := range letters {
		if letters[i].Marks&^mushaf.Maddah != 0 || letters[i].Rune == mushaf.AlifWasla || letters[i].Rune > 0x64A || letters[i].Rune == mushaf.Tatweel {
			return false
		}
	}
	return true
}

func openingCons(r rune) uint8 {
	if r == 'ا' {
		return hamza // the name alif begins with it
	}
	if r == 'ى' {
		return none
	}
	if r >= 0x620 && r <= 0x64A {
		return consOf[r-0x620]
	}
	return none
}

// lastOfName is the consonant that a letter's name ends in: noon for seen, noon and ayn, meem for
// lam and meem, dal for sad; none where no rule asks (fa of alif, kaf and qaf, and the names of two
// letters).
func lastOfName(c uint8) uint8 {
	switch c {
	case seen, noon, ayn:
		return noon
	case lam, meem:
		return meem
	case sad:
		return dal
	}
	return none
}

// openingRule: the opening letters are read by their names. Eight names have a long vowel (or, in
// ayn, a sakin ya) before a lasting sukun and are held for six counts, five end in it and are held
// for two, alif has none (Tuhfat al-Atfal, on the madd of the openings). Within and between the
// names the rules of noon, meem and qalqalah act on letters that are not written.
func openingRule(c *context) {
	w := c.cur
	for i := range w.s {
		n := w.s[i].cons
		switch {
		case w.s[i].cons == hamza:
			continue
		case openSix.has(n):
			e := c.add(i, MaddLazimLetter, lasting, Always)
			switch {
			case n == ayn:
				e.detail(FourOrSix)
			case n == meem && i == w.last && c.next != nil && c.next.isWasl(): // 3:1
				e.detail(TwoOrSix)
			}
		case openTwo.has(n):
			c.add(i, MaddTabii, natural, Always)
		}
		if raised.has(n) {
			c.add(i, HeavyLetter, 0, Always).detail(Degree1)
		}
		if n == ra {
			c.add(i, HeavyRa, 0, Always)
		}
		openingJoin(c, i)
	}
}

// openingJoin: the last consonant of the name at i before the sound that follows.
func openingJoin(c *context, i int) {
	w := c.cur
	end := lastOfName(w.s[i].cons)
	if end == none {
		return
	}
	from := len(c.dst)
	if end == dal {
		c.add(i, Qalqalah, 0, Always).detail(Inside)
	}
	into, word, letter, across := uint8(none), int8(0), uint8(0), false
	switch {
	case i+1 < len(w.s):
		into, letter = w.s[i+1].cons, w.s[i+1].letter
	case c.next != nil && !c.next.isWasl():
		into, word, letter, across = c.next.firstCons(), 1, c.next.s[c.next.first].letter, true
	}
	switch {
	case into == none:
	case end == noon && c.mark.kind == openingClear: // 36:1 and 68:1 stay clear when read on
		c.add(i, NoonIzhar, 0, Join).cause(word, letter)
	case end == noon && across:
		c.noonBefore(i, into, true).cause(word, letter)
	case end == noon:
		e := c.noonBefore(i, into, true).cause(word, letter) // names are words: they merge
		e.When = Always
	case end == meem && across:
		c.meemBefore(i, into, Join).cause(word, letter)
	case end == meem:
		c.meemBefore(i, into, Always).cause(word, letter)
	}
	for k := from; k < len(c.dst); k++ {
		c.dst[k].Unwritten = true
	}
}

package recite

// heavyRule: the seven raised letters are heavy wherever they sound (al-Jazariyyah, on the letters'
// qualities). The degree is that of the vowel when reading on: fatha with a long alif, fatha,
// damma, sukun, kasra (common practice of teachers).
func heavyRule(c *context) {
	w := c.cur
	for i := range w.s {
		s := &w.s[i]
		if s.kind != consonant || !raised.has(s.cons) {
			continue
		}
		if c.mark.kind == sadSeen || c.mark.kind == sadEither || c.mark.kind == sadPlain {
			if s.cons == sad {
				sadRule(c, i)
				if c.mark.kind == sadSeen {
					continue
				}
			}
		}
		if n := w.next(i); s.cons == qaf && s.v == sukun && n >= 0 && w.s[n].cons == kaf {
			continue // 77:20: merged whole
		}
		d := Degree4
		switch s.v {
		case fatha:
			d = Degree2
			if i+1 < len(w.s) && (w.s[i+1].kind == long || w.s[i+1].kind == silent && i+2 < len(w.s) && w.s[i+2].kind == long) {
				d = Degree1
			}
		case damma:
			d = Degree3
		case kasra:
			d = Degree5
		}
		c.add(i, HeavyLetter, 0, Always).detail(d)
	}
}

// sadRule: the four places where sad is, or may be, read as seen.
func sadRule(c *context, i int) {
	switch c.mark.kind {
	case sadSeen:
		c.add(i, SadAsSeen, 0, Always).detail(ReadSeen)
	case sadEither:
		c.add(i, SadAsSeen, 0, Always).detail(Either)
	default:
		c.add(i, SadAsSeen, 0, Always).detail(ReadSad)
	}
}

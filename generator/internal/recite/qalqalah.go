package recite

// qalqalahRule: the five letters with sukun, or stopped on, are sounded with an echo
// (al-Jazariyyah, on the letters' qualities; that a stop counts too is common practice). Not where
// the letter merges into the next.
func qalqalahRule(c *context) {
	w := c.cur
	final := w.final()
	for i := range w.s {
		s := &w.s[i]
		if s.kind != consonant || !echo.has(s.cons) {
			continue
		}
		switch {
		case i == final && s.v == sukun:
			merged := false
			if c.next != nil && !c.w.Silence {
				_, merged = merges(s.cons, c.next.s[c.next.first])
			}
			if merged {
				c.add(i, Qalqalah, 0, Stop).detail(AtStop)
			} else {
				c.add(i, Qalqalah, 0, Always).detail(Inside)
			}
		case s.v == sukun:
			if n := w.next(i); n < 0 {
				c.add(i, Qalqalah, 0, Always).detail(Inside)
			} else if _, merged := merges(s.cons, w.s[n]); !merged {
				c.add(i, Qalqalah, 0, Always).detail(Inside)
			}
		case i == final && !(s.tanween && s.v == fatha):
			d := AtStop
			if w.isDoubled(i) {
				d = AtStopDoubled
			}
			c.add(i, Qalqalah, 0, Stop).detail(d)
		}
	}
}

package recite

// stopFormRule: the words whose ending a stop changes, and how.
func stopFormRule(c *context) {
	w := c.cur
	if i := w.stopAlif(); i >= 0 {
		c.add(i, StopForm, 0, Stop).detail(AlifRead)
		return
	}
	if c.mark.kind == alifEither {
		c.add(len(w.s)-1, StopForm, 0, Stop).detail(Either)
		return
	}
	s := &w.s[w.last]
	if c.mark.kind == yaEither {
		c.add(w.last, StopForm, 0, Stop).detail(Either)
		return
	}
	if s.kind == long {
		switch {
		case w.isSilah(w.last):
			c.add(w.last, StopForm, 0, Stop).detail(SilahFalls)
		case c.next != nil && c.next.isWasl():
			c.add(w.last, StopForm, 0, Stop).detail(LongRead)
		}
		return
	}
	if s.kind != consonant || s.v == sukun {
		return
	}
	d := ToSukun
	p := w.prev(w.last)
	switch {
	case s.marbuta:
		d = ToHa
	case s.tanween && s.v == fatha:
		d = ToAlif
	case s.tanween:
		d = TanweenFalls
	case p >= 0 && w.s[p].kind == consonant && !w.isDoubled(w.last) &&
		(s.cons == ya && w.s[p].v == kasra || s.cons == waw && w.s[p].v == damma):
		d = ToLong
	}
	c.add(w.last, StopForm, 0, Stop).detail(d)
}

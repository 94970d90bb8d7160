package recite

// meemRule: meem sakinah before the letter that follows (Tuhfat al-Atfal, on meem sakinah).
func meemRule(c *context) {
	w := c.cur
	for i := range w.s {
		if s := &w.s[i]; s.kind != consonant || s.cons != meem || s.v != sukun {
			continue
		}
		if n := w.next(i); n >= 0 {
			c.meemBefore(i, w.s[n].cons, Always).cause(0, w.s[n].letter)
			continue
		}
		if c.next != nil && !c.next.isWasl() {
			c.meemBefore(i, c.next.firstCons(), Join).cause(1, c.next.s[c.next.first].letter)
		}
	}
}

func (c *context) meemBefore(i int, n uint8, when When) event {
	switch n {
	case ba:
		return c.add(i, MeemIkhfa, 2, when)
	case meem:
		return c.add(i, MeemIdgham, 2, when)
	}
	return c.add(i, MeemIzhar, 0, when)
}

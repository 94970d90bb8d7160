package recite

// noonRule: noon sakinah and tanween before the letter that follows (Tuhfat al-Atfal, on noon
// sakinah and tanween). Before hamzat wasl tanween takes a helping kasra and no rule acts.
func noonRule(c *context) {
	w := c.cur
	for i := range w.s {
		s := &w.s[i]
		if s.kind != consonant {
			continue
		}
		if !s.tanween && (s.cons != noon || s.v != sukun) {
			continue
		}
		if n := w.next(i); n >= 0 && !s.tanween {
			c.noonBefore(i, w.s[n].cons, false).cause(0, w.s[n].letter)
			continue
		}
		if c.next == nil || c.next.isWasl() {
			continue
		}
		c.noonBefore(i, c.next.firstCons(), true).cause(1, c.next.s[c.next.first].letter)
	}
}

// noonBefore adds the event of a noon before the consonant n, across words or inside one.
func (c *context) noonBefore(i int, n uint8, across bool) event {
	when := Always
	if across {
		when = Join
	}
	switch {
	case across && c.w.Silence: // 75:27: the silence keeps it clear
		return c.add(i, NoonIzhar, 0, when)
	case throat.has(n):
		return c.add(i, NoonIzhar, 0, when)
	case !across && (n == waw || n == ya):
		return c.add(i, NoonIzharMutlaq, 0, when)
	case mergeNasal.has(n):
		return c.add(i, NoonIdghamGhunnah, 2, when)
	case mergePlain.has(n):
		return c.add(i, NoonIdgham, 0, when)
	case n == ba:
		return c.add(i, NoonIqlab, 2, when)
	}
	e := c.add(i, NoonIkhfa, 2, when)
	if raised.has(n) {
		e.detail(HeavyGhunnah)
	}
	return e
}

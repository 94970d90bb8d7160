package recite

// singleRule: the rules that act in one word each: imalah (11:41), ishmam (12:11), tas-hil (41:44).
// The text's own sign tells the word.
func singleRule(c *context) {
	for i := range c.cur.s {
		s := &c.cur.s[i]
		switch {
		case s.imalah:
			c.add(i, Imalah, 0, Always)
		case s.tasHil:
			c.add(i, TasHil, 0, Always)
		}
	}
	if c.mark.kind == ishmamNoon {
		for i := range c.cur.s {
			if c.cur.s[i].cons == noon {
				c.add(i, Ishmam, 0, Always)
				return
			}
		}
	}
}

package recite

// silentRule: letters that are written and not read: the alif after a plural waw and after a
// hamza's seat, the letters with a round zero, the waw or ya that carries a small alif; and,
// reading on, the alif with an upright zero.
func silentRule(c *context) {
	for i := range c.cur.s {
		switch c.cur.s[i].kind {
		case silent:
			c.add(i, SilentLetter, 0, Always)
		case stopAlif:
			c.add(i, SilentLetter, 0, Join)
		}
	}
}

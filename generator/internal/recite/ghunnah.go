package recite

// ghunnahRule: noon and meem with shadda are held with a nasal sound for two counts (Tuhfat
// al-Atfal, on noon and meem with shadda; the length is common practice). A first letter that a
// word before doubles by merging has that event alone.
func ghunnahRule(c *context) {
	w := c.cur
	for i := range w.s {
		if s := &w.s[i]; s.kind == consonant && nasal.has(s.cons) && w.isDoubled(i) {
			c.add(i, Ghunnah, 2, Always)
		}
	}
}

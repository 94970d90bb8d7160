package recite

// lamRule: the lam of the name Allah is heavy after fatha or damma and light after kasra
// (al-Jazariyyah, on the lams). In a word that begins with hamzat wasl the vowel is that of the
// word before when reading on, and a fatha when starting.
func lamRule(c *context) {
	w := c.cur
	if w.name < 0 {
		return
	}
	i := w.name
	if w.s[w.first].kind != wasl {
		p := w.prev(i)
		if p == w.article && p >= 0 {
			p = w.prev(p)
		}
		if p >= 0 && w.s[p].kind == wasl {
			p = w.prev(p)
		}
		if p >= 0 && w.s[p].v == kasra {
			c.add(i, LightLam, 0, Always).cause(0, w.s[p].letter)
		} else if p >= 0 {
			c.add(i, HeavyLam, 0, Always).cause(0, w.s[p].letter)
		}
		return
	}
	if c.prev == nil || c.prev.endVowel() != kasra {
		c.add(i, HeavyLam, 0, Always)
		return
	}
	c.add(i, LightLam, 0, Join).before().cause(-1, c.prev.s[c.prev.last].letter)
	c.add(i, HeavyLam, 0, Start).before()
}

// endVowel is the vowel that a word ends in when read on to hamzat wasl: a long vowel is dropped to
// its short one, tanween takes a kasra, and the meem of 3:1 takes a fatha.
func (w *word) endVowel() vowel {
	s := &w.s[w.last]
	switch {
	case w.opening:
		return fatha
	case s.tanween:
		return kasra
	}
	return s.v
}

package recite

// maddStopRule: the long vowels that only a stop makes: madd iwad (the alif for tanween with
// fatha), madd lin (waw or ya sakin after fatha before the letter stopped on), the ya and waw that
// lose their vowel after kasra and damma, the alif with an upright zero.
func maddStopRule(c *context) {
	w := c.cur
	if i := w.stopAlif(); i >= 0 {
		c.add(i, MaddTabii, natural, Stop)
		return
	}
	f := w.final()
	if f < 0 {
		return
	}
	s := &w.s[f]
	if s.tanween && s.v == fatha && !s.marbuta {
		for i := f + 1; i < len(w.s); i++ {
			if w.s[i].kind == tanweenAlif {
				c.add(i, MaddIwad, natural, Stop).cause(0, s.letter)
				return
			}
		}
		c.add(f, MaddIwad, natural, Stop).Unwritten = true
		return
	}
	p := w.prev(f)
	if p < 0 || w.s[p].kind != consonant || w.isDoubled(f) || s.v == sukun {
		return
	}
	switch q := &w.s[p]; {
	case q.v == sukun && (q.cons == waw || q.cons == ya):
		c.add(p, MaddLin, atStop, Stop).cause(0, s.letter)
	case s.cons == ya && q.v == kasra && f == w.last, s.cons == waw && q.v == damma && f == w.last:
		c.add(f, MaddTabii, natural, Stop)
	}
}

package recite

// idghamRule: a sakin letter that merges into an equal, a kindred or a near one (Tuhfat al-Atfal,
// on equal, near and kindred letters; al-Jazariyyah, on idgham). Noon, meem and the article's lam
// go by rules of their own.
func idghamRule(c *context) {
	w := c.cur
	for i := range w.s {
		s := &w.s[i]
		if s.kind != consonant || s.v != sukun || i == w.article {
			continue
		}
		n, word, when := w.next(i), int8(0), Always
		into := w
		if n < 0 {
			if c.next == nil || c.w.Silence { // 69:28 and 83:14: the silence keeps them apart
				continue
			}
			into, n, word, when = c.next, c.next.first, 1, Join
		}
		if r, ok := merges(s.cons, into.s[n]); ok {
			e := c.add(i, r, 0, when).cause(word, into.s[n].letter)
			if s.cons == tta && into.s[n].cons == ta {
				e.detail(Incomplete)
			}
			if s.cons == qaf && into.s[n].cons == kaf { // 77:20: whole by default, incomplete accepted
				e.detail(Either)
			}
		}
	}
}

// merges gives the idgham of the sakin consonant a into the sound b.
func merges(a uint8, b sound) (RuleID, bool) {
	if b.kind != consonant || b.cons == none || a == noon || a == meem {
		return 0, false
	}
	if a == b.cons {
		return IdghamMithlayn, true
	}
	switch [2]uint8{a, b.cons} {
	case [2]uint8{ta, dal}, [2]uint8{ta, tta}, [2]uint8{dal, ta}, [2]uint8{dhal, zza}, [2]uint8{tha, dhal}, [2]uint8{ba, meem}, [2]uint8{tta, ta}:
		return IdghamMutajanisayn, true
	case [2]uint8{lam, ra}, [2]uint8{qaf, kaf}:
		return IdghamMutaqaribayn, true
	}
	return 0, false
}

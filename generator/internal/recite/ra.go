package recite

// raRule: heavy and light ra (al-Jazariyyah, on the ras), when reading on and at a stop.
func raRule(c *context) {
	w := c.cur
	for i := range w.s {
		if s := &w.s[i]; s.kind != consonant || s.cons != ra {
			continue
		}
		joined, cause, why := joinedRa(c, i)
		if c.mark.kind == raEither {
			why = Either
		}
		if i != w.final() {
			c.add(i, joined, 0, Always).because(cause).detail(why)
			continue
		}
		stopped, stopCause, either := stoppedRa(c, i)
		merges := i == w.last && w.s[i].v == sukun && c.next != nil && c.next.firstCons() == ra
		if merges { // one ra, the next word's
			c.add(i, stopped, 0, Stop).because(stopCause)
			continue
		}
		if joined == stopped {
			if either {
				why = EitherAtStop
			}
			c.add(i, joined, 0, Always).because(cause).detail(why)
			continue
		}
		c.add(i, joined, 0, Join).because(cause).detail(why)
		if e := c.add(i, stopped, 0, Stop).because(stopCause); either {
			e.detail(Either)
		}
	}
}

// because names a letter of the same word as the cause; -1 is none.
func (e event) because(letter int) event {
	e.CauseLetter = int8(letter)
	return e
}

func heavyOrLight(light bool) RuleID {
	if light {
		return LightRa
	}
	return HeavyRa
}

// joinedRa decides the ra at i when reading on, names the letter that decides, -1 for its own
// vowel, and says where it is heavy though no fatha or damma makes it so.
func joinedRa(c *context, i int) (RuleID, int, Detail) {
	w, s := c.cur, &c.cur.s[i]
	if s.imalah {
		return LightRa, -1, NoDetail
	}
	if s.v != sukun {
		return heavyOrLight(s.v == kasra), -1, NoDetail
	}
	p := w.prev(i)
	if p < 0 || w.s[p].kind == wasl { // the kasra before it, if any, is borrowed
		return HeavyRa, -1, AfterWasl
	}
	if w.s[p].v != kasra {
		return HeavyRa, int(w.s[p].letter), NoDetail
	}
	if n := w.next(i); n >= 0 && w.s[n].kind == consonant && raised.has(w.s[n].cons) && w.s[n].v != kasra {
		return HeavyRa, int(w.s[n].letter), RaisedAfter
	}
	return LightRa, int(w.s[p].letter), NoDetail
}

// stoppedRa decides the last ra at a stop. The last result says that both ways are accepted.
func stoppedRa(c *context, i int) (RuleID, int, bool) {
	w, s := c.cur, &c.cur.s[i]
	switch c.mark.kind {
	case raStopHeavy:
		return HeavyRa, -1, true
	case raStopLight:
		return LightRa, -1, true
	}
	if s.tanween && s.v == fatha { // the stop keeps the fatha and draws it out
		return HeavyRa, -1, false
	}
	for p := w.prev(i); p >= 0; p = w.prev(p) {
		q := &w.s[p]
		if q.kind == wasl {
			break
		}
		if q.kind == consonant && q.v == sukun && q.cons == ya {
			return LightRa, int(q.letter), false
		}
		if q.kind == consonant && q.v == sukun && q.cons != waw {
			continue
		}
		return heavyOrLight(q.v == kasra), int(q.letter), false
	}
	return HeavyRa, -1, false
}

// firstCons is the consonant a word begins with when it is read on to: none for hamzat wasl.
func (w *word) firstCons() uint8 {
	s := &w.s[w.first]
	if s.kind != consonant {
		return none
	}
	return s.cons
}

// isWasl reports whether the word begins with hamzat wasl.
func (w *word) isWasl() bool { return w.s[w.first].kind == wasl }

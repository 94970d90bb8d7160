package recite

// raRule: heavy and light ra (al-Jazariyyah, on the ras). A ra that is read with a vowel goes by
// that vowel: heavy-ra, light-ra. A ra without one, in the word or where the reader stops, goes by
// the letters around it: heavy-ra-sakinah, light-ra-sakinah.
func raRule(c *context) {
	w := c.cur
	for i := range w.s {
		if s := &w.s[i]; s.kind == consonant && s.cons == ra {
			raAt(c, i)
		}
	}
}

// raAt finds what the ra at i is when reading on and, where the word may end on it, at a stop.
func raAt(c *context, i int) {
	w, s := c.cur, &c.cur.s[i]
	joined := joinedRa(c, i)
	if c.mark.kind == raEither {
		joined.why = Either
	}
	if i != w.final() || s.tanween && s.v == fatha { // a stop keeps that fatha and draws it out
		joined.add(c, i, Always)
		return
	}
	stopped := stoppedRa(c, i)
	switch merges := i == w.last && s.v == sukun && c.next != nil && c.next.firstCons() == ra; {
	case merges: // one ra, the next word's
		stopped.add(c, i, Stop)
	case joined.rule == stopped.rule:
		joined.add(c, i, Always)
	default:
		joined.add(c, i, Join)
		stopped.add(c, i, Stop)
	}
}

// raEvent is what a ra is: its rule, the letter of its word that decides, -1 for its own vowel or
// none, and what else there is to say.
type raEvent struct {
	rule  RuleID
	cause int
	why   Detail
}

func (r raEvent) add(c *context, i int, when When) {
	e := c.add(i, r.rule, 0, when)
	e.CauseLetter, e.Detail = int8(r.cause), r.why
}

// sakinahRa is a ra without a vowel that is heavy or light because of the letter named.
func sakinahRa(light bool, cause int) raEvent {
	if light {
		return raEvent{LightRaSakinah, cause, NoDetail}
	}
	return raEvent{HeavyRaSakinah, cause, NoDetail}
}

// joinedRa decides the ra at i when reading on, and says where it is heavy though no fatha or damma
// makes it so.
func joinedRa(c *context, i int) raEvent {
	w, s := c.cur, &c.cur.s[i]
	switch {
	case s.imalah:
		return raEvent{LightRa, -1, Tilted}
	case s.v == kasra:
		return raEvent{LightRa, -1, NoDetail}
	case s.v != sukun:
		return raEvent{HeavyRa, -1, NoDetail}
	}
	p := w.prev(i)
	if p < 0 || w.s[p].kind == wasl { // the kasra before it, if any, is borrowed
		return raEvent{HeavyRaSakinah, -1, AfterWasl}
	}
	if w.s[p].v != kasra {
		return sakinahRa(false, int(w.s[p].letter))
	}
	if n := w.next(i); n >= 0 && w.s[n].kind == consonant && raised.has(w.s[n].cons) && w.s[n].v != kasra {
		return raEvent{HeavyRaSakinah, int(w.s[n].letter), RaisedAfter}
	}
	return sakinahRa(true, int(w.s[p].letter))
}

// stoppedRa decides the last ra of a word at a stop, where it has no vowel.
func stoppedRa(c *context, i int) raEvent {
	switch w := c.cur; c.mark.kind {
	case raStopHeavy:
		return raEvent{HeavyRaSakinah, -1, EitherAtStop}
	case raStopLight:
		return raEvent{LightRaSakinah, -1, EitherAtStop}
	default:
		for p := w.prev(i); p >= 0 && w.s[p].kind != wasl; p = w.prev(p) {
			switch q := &w.s[p]; {
			case q.kind == consonant && q.v == sukun && q.cons == ya:
				return sakinahRa(true, int(q.letter))
			case q.kind == consonant && q.v == sukun && q.cons != waw: // look one letter further
			default:
				return sakinahRa(q.v == kasra, int(q.letter))
			}
		}
		return sakinahRa(false, -1)
	}
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

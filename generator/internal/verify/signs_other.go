package verify

import (
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// A maddah stands exactly on the long vowels longer than two counts that do not depend on a stop,
// and on the opening letters of six counts.
func maddahSigns(s *stand, p *page) {
	longer := of(recite.MaddMuttasil, recite.MaddMunfasil, recite.MaddLazim, recite.MaddLazimLetter, recite.MaddSilahLong)
	p.each(func(w, i int, l mushaf.Letter, held rules, _ bool) {
		said := held.any(longer)
		if l.Has(mushaf.Maddah) || said {
			s.same(p.ref, w+1, at(i, l), word(l.Has(mushaf.Maddah), "maddah"), word(said, "maddah"))
		}
	})
}

// A round zero stands exactly on a letter that is never read, an upright zero on one that is read
// only at a stop; a waw or ya that carries a small alif is never read either. The engine cannot
// tell 291 of the 3,988 round zeros from the letters (a waw or ya, or an alif after a fatha) and
// sees those: for them this compares a reading with its source only.
func zeroSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, opening bool) {
		n := p.letter(w, i+1)
		carrier := n.Rune == mushaf.SmallAlif && !n.Has(hamzaOn) && !l.Has(voiced|mushaf.Sukun|hamzaOn) &&
			(l.Rune == 'و' || l.Rune == 'ى' || l.Rune == 'ي')
		shown := "read"
		switch {
		case l.Has(mushaf.RoundZero) || carrier:
			shown = "never read"
		case l.Has(mushaf.UprightZero):
			shown = "read at a stop"
		}
		said := "read"
		if held.any(of(recite.SilentLetter)) {
			said = "never read"
			if p.stop[w][i].any(long) {
				said = "read at a stop"
			}
		}
		if shown != "read" || said != "read" {
			s.same(p.ref, w+1, at(i, l), shown, said)
		}
	})
}

func waslSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, _ bool) {
		shown, said := l.Rune == mushaf.AlifWasla, held.any(of(recite.HamzatWasl))
		if shown || said {
			s.same(p.ref, w+1, at(i, l), word(shown, "wasl"), word(said, "wasl"))
		}
	})
}

// Pause signs, silences and places of prostration, word by word.
func pauseSigns(s *stand, p *page) {
	for w, x := range p.words() {
		held := p.joined[w][len(x.Letters)-1]
		for _, c := range []struct {
			name  string
			rule  recite.RuleID
			shown bool
		}{
			{"pause", recite.PauseSign, mushaf.IsPause(x.Pause)},
			{"silence", recite.Sakt, x.Silence},
			{"prostration", recite.Sajdah, x.Sajdah},
		} {
			if said := held.any(of(c.rule)); c.shown || said {
				s.same(p.ref, w+1, c.name, word(c.shown, "sign"), word(said, "sign"))
			}
		}
	}
}

// A ra that bears a vowel is heavy or light by it when all is joined; one that bears a sukun goes by
// the letters around it; one that bears nothing has merged. The engine sees the vowels: for them
// this compares a reading with its source only.
func raSigns(s *stand, p *page) {
	const light = mushaf.Kasra | mushaf.KasratanStacked | mushaf.KasratanOpen | mushaf.ImalahMark
	p.each(func(w, i int, l mushaf.Letter, held rules, opening bool) {
		if opening || l.Rune != 'ر' {
			return
		}
		shown, said := "merged", ""
		switch {
		case l.Has(light):
			shown = "light"
		case l.Has(voiced):
			shown = "heavy"
		case l.Has(mushaf.Sukun):
			shown = "no vowel"
		}
		for _, c := range []struct {
			name string
			rule rules
		}{
			{"heavy", of(recite.HeavyRa)}, {"light", of(recite.LightRa)},
			{"no vowel", of(recite.HeavyRaSakinah, recite.LightRaSakinah)},
		} {
			if held.any(c.rule) {
				said += c.name
			}
		}
		if said == "" {
			said = "merged"
		}
		s.same(p.ref, w+1, at(i, l), shown, said)
	})
}

// The signs of single words: imalah, ishmam (printed before the noon that bears it), tas-hil, the
// seen on a sad.
func singleSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, _ bool) {
		for _, c := range []struct {
			name string
			rule recite.RuleID
			on   bool
		}{
			{"imalah", recite.Imalah, l.Has(mushaf.ImalahMark)},
			{"ishmam", recite.Ishmam, p.letter(w, i-1).Has(mushaf.IshmamMark)},
			{"tas-hil", recite.TasHil, l.Has(mushaf.TashilMark)},
			{"seen on sad", recite.SadAsSeen, l.Has(mushaf.SeenMark | mushaf.SeenLow)},
		} {
			if said := held.any(of(c.rule)); c.on || said {
				s.same(p.ref, w+1, c.name, word(c.on, "sign"), word(said, "sign"))
			}
		}
	})
}

package verify

import (
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

var (
	idgham = of(recite.IdghamMithlayn, recite.IdghamMutajanisayn, recite.IdghamMutaqaribayn)
	long   = of(recite.MaddTabii, recite.MaddBadal, recite.MaddSilahShort, recite.MaddSilahLong, recite.MaddMuttasil,
		recite.MaddMunfasil, recite.MaddLazim)
)

// Every other letter without a vowel bears a sukun exactly where it is a consonant that is read by
// itself: not merged, not long, not silent, not the seat of a tanween.
func sukunSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, opening bool) {
		if opening || l.Has(voiced) || isNoon(l) || isMeem(l) || l.Rune == mushaf.AlifWasla {
			return
		}
		said := "sukun"
		switch {
		case held.any(idgham | long | of(recite.SunLam, recite.SilentLetter, recite.TasHil, recite.Imalah)):
			said = "none"
		case (l.Rune == 'ا' || l.Rune == 'ى') && i > 0 && tanween(p.letter(w, i-1)):
			said = "none" // the alif that a stop would read
		case l.Rune == 'ل' && i+1 < len(p.joined[w]) && p.joined[w][i+1].any(of(recite.HeavyLam, recite.LightLam)):
			said = "none" // the first lam of the Name
		case p.after(w) == mushaf.AlifWasla && p.stop[w][i].any(long):
			said = "none" // a long vowel that is dropped before hamzat wasl
		}
		s.same(p.ref, w+1, at(i, l), word(l.Has(mushaf.Sukun), "sukun"), said)
	})
}

// The first letter of a word has a shadda exactly where the word before merges into it wholly; so
// has the letter after a lam of the article that merges, and after a letter that merges inside a
// word.
func shaddaSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, opening bool) {
		var from rules
		var lead mushaf.Letter
		switch {
		case opening, i > 0 && !l.Has(vowels|mushaf.Tanween|mushaf.Shadda):
			return // nothing is read here that another letter could merge into
		case i > 0:
			lead, from = p.letter(w, i-1), p.joined[w][i-1]&(idgham|of(recite.SunLam))
		case w > 0:
			lead, from = tail(p.words()[w-1].Letters, p.joined[w-1])
		case p.prev != nil:
			lead, from = tail(p.prev.Letters, p.before)
		}
		whole := from.any(idgham|of(recite.SunLam, recite.NoonIdgham, recite.MeemIdgham)) && !(lead.Rune == 'ط' && l.Rune == 'ت') ||
			from.any(of(recite.NoonIdghamGhunnah)) && (l.Rune == 'ن' || l.Rune == 'م')
		if i == 0 && (l.Has(mushaf.Shadda) || whole) || i > 0 && whole {
			s.same(p.ref, w+1, at(i, l), word(l.Has(mushaf.Shadda), "shadda"), word(whole, "shadda"))
		}
	})
}

// tail gives the letter of a word that merges into the next word, and the merging rules on it.
func tail(ls []mushaf.Letter, held []rules) (mushaf.Letter, rules) {
	for i := len(ls) - 1; i >= 0; i-- {
		if m := held[i] & (idgham | merged | of(recite.MeemIdgham)); m != 0 {
			if !inside(ls, i) {
				return ls[i], m
			}
		}
	}
	return mushaf.Letter{}, 0
}

// inside reports whether another letter is read after ls[i] in its word.
func inside(ls []mushaf.Letter, i int) bool {
	for _, l := range ls[i+1:] {
		if l.Has(vowels | mushaf.Shadda | mushaf.Tanween) {
			return true
		}
	}
	return false
}

// The lam of the article is bare, and its letter doubled, exactly where it is a sun lam; it has a
// sukun where it is a moon lam. A lam before which nothing but hamzat wasl or the prefix lam
// stands, and which has no vowel, is the article's or is listed as an exception.
func lamSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, opening bool) {
		if opening || l.Rune != 'ل' {
			return
		}
		b := p.letter(w, i-1)
		prefixed := b.Rune == 'ل' && b.Has(mushaf.Fatha|mushaf.Kasra) && !b.Has(mushaf.Shadda) &&
			(i == 1 || i == 2 && (p.letter(w, 0).Rune == 'و' || p.letter(w, 0).Rune == 'ف'))
		place := i > 0 && !l.Has(voiced) && (b.Rune == mushaf.AlifWasla || prefixed)
		said := "none"
		switch {
		case held.any(of(recite.SunLam)):
			said = "sun"
		case held.any(of(recite.MoonLam)):
			said = "moon"
		case !l.Has(voiced) && i+1 < len(p.joined[w]) && p.joined[w][i+1].any(of(recite.HeavyLam, recite.LightLam)):
			said = "sun" // the Name: written as a merging lam, and goes by its own rule
		}
		shown := "none"
		if n := p.letter(w, i+1); l.Has(mushaf.Sukun) {
			shown = "moon"
		} else if !l.Has(voiced) && n.Has(mushaf.Shadda) {
			shown = "sun"
		}
		if place || said != "none" {
			s.same(p.ref, w+1, at(i, l), shown, said)
		}
	})
}

// An echo letter that bears a sukun is echoed when all is joined, and no other is.
func echoSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, opening bool) {
		if opening {
			return
		}
		var shown bool
		switch l.Rune {
		case 'ق', 'ط', 'ب', 'ج', 'د':
			shown = l.Has(mushaf.Sukun)
		}
		if said := held.any(of(recite.Qalqalah)); shown || said {
			s.same(p.ref, w+1, at(i, l), word(shown, "sukun"), word(said, "sukun"))
		}
	})
}

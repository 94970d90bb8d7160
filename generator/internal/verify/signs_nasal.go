package verify

import (
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

var (
	clear   = of(recite.NoonIzhar, recite.NoonIzharMutlaq)
	turned  = of(recite.NoonIqlab)
	merged  = of(recite.NoonIdghamGhunnah, recite.NoonIdgham)
	hidden  = of(recite.NoonIkhfa)
	noonAll = clear | turned | merged | hidden

	meemClear = of(recite.MeemIzhar)
	meemBare  = of(recite.MeemIkhfa, recite.MeemIdgham)
	meemAll   = meemClear | meemBare
)

// A noon without a vowel bears a sukun exactly where it is clear, a small meem where it turns to
// meem, and nothing where it is merged or hidden. No noon rule stands on a letter that is neither
// such a noon nor has tanween.
func noonSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, opening bool) {
		if opening || tanween(l) {
			return
		}
		shown := "no noon"
		switch {
		case !isNoon(l):
		case l.Has(mushaf.Sukun):
			shown = "clear"
		case l.Has(smallM):
			shown = "turned"
		default:
			shown = "merged or hidden"
		}
		if isNoon(l) || held.any(noonAll) {
			s.same(p.ref, w+1, at(i, l), shown, nasal(held, "no noon"))
		}
	})
}

// Tanween is stacked exactly where it is clear and before hamzat wasl, open where merged or hidden,
// and a vowel with a small meem where it turns to meem.
func tanweenSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, opening bool) {
		if opening || !tanween(l) {
			return
		}
		shown := "merged or hidden"
		switch {
		case l.Has(smallM):
			shown = "turned"
		case l.Has(stackeds):
			shown = "clear"
		}
		none := "no rule"
		if p.after(w) == mushaf.AlifWasla {
			none = "clear" // a helping kasra: the print keeps it stacked
		}
		s.same(p.ref, w+1, at(i, l), shown, nasal(held, none))
	})
}

func nasal(held rules, none string) string {
	switch {
	case held.any(clear):
		return "clear"
	case held.any(turned):
		return "turned"
	case held.any(merged | hidden):
		return "merged or hidden"
	}
	return none
}

// A meem without a vowel bears a sukun exactly where it is clear.
func meemSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, opening bool) {
		if opening || !isMeem(l) && !held.any(meemAll) {
			return
		}
		shown, said := "no meem", "no rule"
		if isMeem(l) {
			shown = "merged or hidden"
			if l.Has(mushaf.Sukun) {
				shown = "clear"
			}
		}
		switch {
		case held.any(meemClear):
			said = "clear"
		case held.any(meemBare):
			said = "merged or hidden"
		}
		s.same(p.ref, w+1, at(i, l), shown, said)
	})
}

// A noon or meem has ghunnah exactly where the print doubles it inside a word; on a first letter
// the shadda is that of merging, which the word before answers for.
func ghunnahSigns(s *stand, p *page) {
	p.each(func(w, i int, l mushaf.Letter, held rules, _ bool) {
		shadda := i > 0 && (l.Rune == 'ن' || l.Rune == 'م') && l.Has(mushaf.Shadda)
		if said := held.any(of(recite.Ghunnah)); shadda || said {
			s.same(p.ref, w+1, at(i, l), word(shadda, "shadda"), word(said, "shadda"))
		}
	})
}

func word(b bool, s string) string {
	if b {
		return s
	}
	return "none"
}

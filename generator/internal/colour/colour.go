// Package colour holds every colour of the site: those of the interface (tokens.go), and a computed
// colour and underline form for every rule family.
//
// No colour of a family is chosen by eye or taken from a print edition. In order:
//
//  1. wheel: equal steps of hue in OKLCH, the first half a step from 0, on two
//     fixed lightness levels a theme taken in turn, since at one level a
//     dichromat has only one axis left and hues fall together in pairs.
//  2. arrange: which hue goes to which family, so that families that follow each
//     other in the teaching sequence differ most, in full colour and under
//     simulated protanopia, deuteranopia and tritanopia, on paper and on dark.
//  3. forms: which underline goes to which family, so that those that look most
//     alike never share one. Colour never stands alone.
//
// The search is exact and takes a few milliseconds. The browser has the same formulas
// (site-src/app/colour/close.ts); testdata/vectors.json keeps them equal.
package colour

import "fmt"

// A Family is one family of rules as it is shown.
type Family struct {
	Name  string
	Light string // colour on paper, #rrggbb
	Dark  string // colour on the dark page, #rrggbb
	Form  string // underline: solid, double, dotted, dashed or wavy
}

// most is how many families can be told apart and arranged.
const most = 12

// Families gives each name its colours and form. The names are in the order in which the families
// are taught; the result has the same order and depends on their number alone. More than twelve
// names are an error.
func Families(names []string) ([]Family, error) {
	n := len(names)
	if n > most {
		return nil, fmt.Errorf("%d families of rules, but colours and lines tell at most %d apart", n, most)
	}
	hues := wheel(n)
	apart := distances(hues)
	order := arrange(apart)
	form := forms(order, apart)
	out := make([]Family, n)
	for i, name := range names {
		h := hues[order[i]]
		out[i] = Family{name, h.hex[0], h.hex[1], formNames[form[i]]}
	}
	return out, nil
}

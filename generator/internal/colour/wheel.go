package colour

import "math"

// A theme fixes lightness and the most chroma for the colours of one page.
//
// The figures were found by trying pairs of levels and caps on chroma (steps of 0.02, then of 0.01
// near the best) and keeping those that, taken together, do well on neighbours, on families of one
// form and on all pairs, with 4.5:1 on the page and a difference of at least 0.12 from the ink in
// every view; the deeper level on paper is one step above the best, to stand out from the ink.
type theme struct {
	level  [2]float64 // OKLCH lightness, taken in turn along the wheel
	chroma float64    // at most; less where sRGB ends before
}

var themes = [2]theme{
	{[2]float64{0.42, 0.55}, 0.10},
	{[2]float64{0.62, 0.77}, 0.12},
}

// A hue is one step of the wheel, with its colour in each theme.
type hue struct {
	degrees float64
	level   int
	hex     [2]string
}

// wheel gives n equal steps of hue.
func wheel(n int) []hue {
	hues := make([]hue, n)
	for i := range hues {
		h := hue{degrees: (float64(i) + 0.5) * 360 / float64(n), level: i % 2}
		for t := range themes {
			h.hex[t] = fit(themes[t].level[h.level], themes[t].chroma, h.degrees).hex()
		}
		hues[i] = h
	}
	return hues
}

// fit is the colour of that lightness and hue with the given chroma, or with the most that sRGB
// holds if that is less.
func fit(l, chroma, degrees float64) rgb {
	if c := polar(l, chroma, degrees).rgb(); c.inGamut() {
		return c
	}
	lo, hi := 0.0, chroma
	for hi-lo > 1e-6 {
		mid := (lo + hi) / 2
		if polar(l, mid, degrees).rgb().inGamut() {
			lo = mid
		} else {
			hi = mid
		}
	}
	return polar(l, lo, degrees).rgb()
}

// distances gives, for each two hues, the smallest difference over all themes and views, in
// millionths, so that sums and ties are exact on any machine.
func distances(hues []hue) [][]int {
	seen := make([][]lab, len(hues))
	for i, h := range hues {
		for _, s := range h.hex {
			c, err := parse(s)
			if err != nil {
				panic(err)
			}
			for v := range views {
				seen[i] = append(seen[i], views[v].seen(c).lab())
			}
		}
	}
	d := make([][]int, len(hues))
	for i := range d {
		d[i] = make([]int, len(hues))
		for j := range d[i] {
			least := math.Inf(1)
			for k := range seen[i] {
				least = math.Min(least, difference(seen[i][k], seen[j][k]))
			}
			d[i][j] = int(math.Round(least * 1e6))
		}
	}
	return d
}

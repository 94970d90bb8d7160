package e2e

import (
	"fmt"
	"image"
	"image/color"

	"sutur/generator/internal/engine"
)

// mask is which pixels of a piece of the screen are unlike its ground in grey.
type mask struct {
	w, h int
	on   []bool
}

func (m mask) at(x, y int) bool { return x >= 0 && y >= 0 && x < m.w && y < m.h && m.on[y*m.w+x] }

// dark makes the mask of a piece: its commonest grey is the ground, and what is a third of the way
// from black to white away from it is on.
func dark(im *image.RGBA, r image.Rectangle) mask {
	m := mask{r.Dx(), r.Dy(), make([]bool, r.Dx()*r.Dy())}
	var tones [256]int
	grey := func(x, y int) uint8 { return color.GrayModel.Convert(im.RGBAAt(r.Min.X+x, r.Min.Y+y)).(color.Gray).Y }
	for y := range m.h {
		for x := range m.w {
			tones[grey(x, y)]++
		}
	}
	ground := 0
	for i, n := range tones {
		if n > tones[ground] {
			ground = i
		}
	}
	for y := range m.h {
		for x := range m.w {
			m.on[y*m.w+x] = off(grey(x, y), uint8(ground)) > 85
		}
	}
	return m
}

// without is what m has and another mask has not, nor next to it: soft edges of the same stroke are
// no difference.
func (m mask) without(o mask) mask {
	out := mask{m.w, m.h, make([]bool, len(m.on))}
	for y := range m.h {
		for x := range m.w {
			if !m.at(x, y) {
				continue
			}
			near := false
			for dy := -2; dy <= 2; dy++ {
				for dx := -2; dx <= 2; dx++ {
					near = near || o.at(x+dx, y+dy)
				}
			}
			out.on[y*m.w+x] = !near
		}
	}
	return out
}

func (m mask) size() (n int) {
	for _, v := range m.on {
		if v {
			n++
		}
	}
	return n
}

// apart is how much of what either mask has the other has not, 0 to 1, where they lie best over
// each other; and how many pixels that is.
func apart(a, b mask) (part float64, pixels int) {
	part, pixels = 1, a.size()+b.size()
	if pixels == 0 {
		return 0, 0
	}
	for dy := -2; dy <= 2; dy++ {
		for dx := -2; dx <= 2; dx++ {
			either, one := 0, 0
			for y := -2; y < a.h+2; y++ {
				for x := -2; x < a.w+2; x++ {
					p, q := a.at(x, y), b.at(x+dx, y+dy)
					if p || q {
						either++
					}
					if p != q {
						one++
					}
				}
			}
			if either > 0 && float64(one)/float64(either) < part {
				part, pixels = float64(one)/float64(either), one
			}
		}
	}
	return part, pixels
}

// below is the piece of the screen under a letter of a word in which the sign of its state stands.
// It is found from the word's line, which is 2.15 letter sizes high, because engines disagree on
// how high a letter's box is. The letter itself is left out: WebKit's port for GTK lifts letters
// anew where their colour begins and ends.
func (p *page) below(word string, b box) image.Rectangle {
	p.t.Helper()
	w := eval[box](p, fmt.Sprintf(`(() => {
		const b = document.querySelector(%q).getBoundingClientRect();
		return { L: b.left, T: b.top, R: b.right, B: b.bottom };
	})()`, word))
	round := func(x float64) int { return int(x*engine.Scale + .5) }
	em := (w.B - w.T) / 2.15
	return image.Rect(round(b.L-3), round((w.T+w.B)/2+.58*em), round(b.R+3), round(w.B+.1*em))
}

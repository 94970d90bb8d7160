package e2e

import (
	"fmt"
	"math"
	"testing"

	"sutur/generator/internal/engine"
	"sutur/generator/internal/mushaf"
)

// shown opens lines on the shared screen by their address.
func (p *page) shown(s *server, query string) {
	p.t.Helper()
	p.open(s.address + "about.html") // the same page with another hash would not load anew
	p.open(s.address + "#/shared?" + query)
	p.wait("the shared screen", visible("main.board .w"))
	eval[any](p, "document.fonts.ready.then(() => new Promise(r => requestAnimationFrame(() => requestAnimationFrame(() => r(0)))))")
}

// ringed is where the rings stand, by verse, word and letter.
func (p *page) ringed() map[string]box {
	p.t.Helper()
	return eval[map[string]box](p, `Object.fromEntries([...document.querySelectorAll(".drawing ellipse")].map(e => {
		const b = e.getBoundingClientRect();
		return [e.dataset.t, { L: b.left, T: b.top, R: b.right, B: b.bottom }];
	}))`)
}

// wordBox is where a word is, without being brought into view.
func (p *page) wordBox(v, w int) box {
	p.t.Helper()
	return eval[box](p, fmt.Sprintf(`(b => ({ L: b.left, T: b.top, R: b.right, B: b.bottom }))(document.querySelector('[data-t=passage] .w[data-v="%d"][data-w="%d"]').getBoundingClientRect())`, v, w))
}

// drawnBox is where the first thing of a class is that is drawn.
func (p *page) drawnBox(class string) box {
	p.t.Helper()
	p.wait("a drawn "+class, fmt.Sprintf(`document.querySelector(".drawing g .%s")`, class))
	return eval[box](p, fmt.Sprintf(`(b => ({ L: b.left, T: b.top, R: b.right, B: b.bottom }))(document.querySelector(".drawing g .%s").getBoundingClientRect())`, class))
}

// foot is a height just below the letters of a word's line.
func (b box) foot() float64 { return b.T + .88*(b.B-b.T) }

func (b box) middle() (x, y float64) { return (b.L + b.R) / 2, (b.T + b.B) / 2 }

// TestSharedRings presses the letters of a line in every engine: the ring is around the letter that
// was pressed, and still is when the window has another width.
func TestSharedRings(t *testing.T) {
	s := serve(t, "/", built(t))
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	verse := text.Find(78, 19)
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.shown(s, "from=78:19&to=78:22")
		pressed := 0
		for w, word := range text.Verses[verse].Words {
			at, which := p.standing(text, verse, w)
			for i, l := range which {
				x, y := at[i].middle()
				if over(word, l+1) {
					y = p.wordBox(0, w).foot() - 20 // low, away from the small letter
				}
				p.press(x, y)
				p.frames()
				p.ringedAt(w, l, at[i])
				pressed++
			}
		}
		if rings := p.ringed(); len(rings) != pressed || pressed < 15 {
			t.Errorf("%d rings after %d presses", len(rings), pressed)
		}
		picture(t, "shared-rings-"+b.Name(), p.settled())
		p.resize(700, 600)
		p.frames()
		for w := range text.Verses[verse].Words {
			at, which := p.standing(text, verse, w)
			for i, l := range which {
				p.ringedAt(w, l, at[i])
			}
		}
		p.click("clear")
		p.wait("nothing drawn", `!document.querySelector(".drawing g ellipse")`)
	})
}

// over says whether letter l of a word is a small alif that stands over the letter before it.
func over(word mushaf.Word, l int) bool {
	const smallAlif = 0x670
	return l > 0 && l < len(word.Letters) && word.Letters[l].Rune == smallAlif && word.Letters[l].End-word.Letters[l].Start == 2
}

// standing is the boxes of the letters of a word that have a place of their own in the line, and
// which they are.
func (p *page) standing(text *mushaf.Text, v, w int) (at []box, which []int) {
	word, all := text.Verses[v].Words[w], ends(text, v, w)
	var to []int
	for l := range word.Letters {
		if over(word, l) {
			to[len(to)-1] = all[l]
			continue
		}
		to, which = append(to, all[l]), append(which, l)
	}
	return p.boxes(onLines(letterAt{w: w}), to), which
}

// ringedAt: a letter of the first verse has a ring around its middle.
func (p *page) ringedAt(w, l int, at box) {
	p.t.Helper()
	r, ok := p.ringed()[fmt.Sprintf("ring-0-%d-%d", w, l)]
	if !ok {
		p.t.Errorf("there is no ring at letter %d of word %d", l, w)
		return
	}
	x, y := at.middle()
	if rx, _ := r.middle(); math.Abs(rx-x) > 3 || r.T > y || r.B < y {
		p.t.Errorf("the ring of letter %d of word %d is %+v, the letter %+v", l, w, r, at)
	}
}

// TestSharedStrokes draws below words and around one in every engine, by mouse and by finger: below
// words a straight line comes under exactly these, around a word the stroke stays as it is, and
// both go with their words when the window has another width.
func TestSharedStrokes(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		for _, kind := range []engine.Kind{engine.Mouse, engine.Touch} {
			t.Run(string(kind), func(t *testing.T) {
				p := p.in(t)
				p.resize(engine.Width, engine.Height)
				p.shown(s, "from=78:19&to=78:22")
				p.longPresses(false)
				first, second := p.wordBox(0, 0), p.wordBox(0, 1)
				if first.T != second.T {
					t.Fatalf("the first two words are not on one line: %+v %+v", first, second)
				}
				p.point(kind, engine.Stroke(first.R-2, first.foot(), second.L+4, first.foot()+3, 14))
				line := p.drawnBox("under")
				p.atFoot(line, first.R, second.L, first)

				around := p.wordBox(0, 2)
				p.point(kind, roundStroke(around))
				ring := p.drawnBox("stroke")
				p.around(ring, around)
				picture(t, fmt.Sprintf("shared-strokes-%s-%s", kind, b.Name()), p.settled())

				p.resize(700, 500)
				p.frames()
				first, second = p.wordBox(0, 0), p.wordBox(0, 1)
				p.atFoot(p.drawnBox("under"), first.R, second.L, first)
				p.around(p.drawnBox("stroke"), p.wordBox(0, 2))
			})
		}
	})
}

// roundStroke goes around a word.
func roundStroke(b box) []engine.Step {
	x, y := b.middle()
	rx, ry := (b.R-b.L)/2+6, .38*(b.B-b.T)
	out := []engine.Step{{Do: engine.To, X: x + rx, Y: y}, {Do: engine.Down}}
	for i := 1; i <= 24; i++ {
		a := 2 * math.Pi * float64(i) / 24
		out = append(out, engine.Step{Do: engine.To, X: x + rx*math.Cos(a), Y: y + ry*math.Sin(a)})
	}
	return append(out, engine.Step{Do: engine.Up})
}

// atFoot: a line goes from one edge to another, below the middle of a word and within its line.
func (p *page) atFoot(line box, right, left float64, word box) {
	p.t.Helper()
	_, middle := word.middle()
	if math.Abs(line.R-right) > 4 || math.Abs(line.L-left) > 4 || line.T < middle || line.B > word.B+4 {
		p.t.Errorf("the line is %+v; it should go from %.0f to %.0f at the foot of %+v", line, right, left, word)
	}
}

// around: a stroke goes around a word and hardly further.
func (p *page) around(ring, word box) {
	p.t.Helper()
	x, _ := word.middle()
	rx, _ := ring.middle()
	if ring.R < word.R || ring.L > word.L || math.Abs(rx-x) > 3 || ring.R-ring.L > 1.6*(word.R-word.L)+24 {
		p.t.Errorf("the stroke is %+v, the word %+v", ring, word)
	}
}

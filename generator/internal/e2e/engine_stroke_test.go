package e2e

import (
	"fmt"
	"testing"

	"sutur/generator/internal/engine"
)

// held is what a pointer does that goes from one place to another and is not lifted.
func held(x0, y0, x1, y1 float64) []engine.Step {
	s := engine.Stroke(x0, y0, x1, y1, 12)
	return s[:len(s)-1]
}

var lifted = []engine.Step{{Do: engine.Up}}

// strokeOver is how many letters a stroke is shown over, adding marks or taking them away.
func (p *page) strokeOver() (on, off int) {
	p.t.Helper()
	n := eval[[2]int](p, `[".stroke:not(.off)", ".stroke.off"].map(s => document.querySelectorAll(s).length)`)
	return n[0], n[1]
}

// longWord brings a long word into view, clear of the scroll bar, with another after it on its line.
func (p *page) longWord() box {
	p.t.Helper()
	at := p.rest(`(() => {
		const all = [...document.querySelectorAll("[data-t=passage] .w")], box = w => w.getBoundingClientRect();
		const i = all.findIndex((w, i) => w.textContent.length > 7 && box(w).right < 350 && all[i + 1] && box(all[i + 1]).top === box(w).top);
		all[i].scrollIntoView({ block: "center", behavior: "instant" });
		const b = box(all[i]);
		return [b.left, b.top, b.right, b.bottom];
	})()`)
	return box{L: at[0], T: at[1], R: at[2], B: at[3]}
}

// TestStroke strokes along a word and past its end, and back: what will be marked is shown before
// the pointer lifts, marked then, in this word alone, and undone in one step. A stroke from a marked
// letter takes marks away; one that the browser breaks off does nothing.
func TestStroke(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		for _, kind := range []engine.Kind{engine.Touch, engine.Mouse} {
			t.Run(string(kind), func(t *testing.T) {
				p := p.in(t)
				p.lines(s, rule, surah, from, upTo)
				p.longPresses(false)
				at := p.longWord()
				y := (at.T + at.B) / 2
				p.point(kind, held(at.R-3, y, at.L-40, y))
				p.wait("a stroke to be seen", `document.querySelectorAll(".stroke").length > 2`)
				p.settled()
				shown, off := p.strokeOver()
				if n := p.marked(family); n != 0 || off != 0 {
					t.Errorf("before the pointer lifts %d letters are marked, and %d shown as unmarked", n, off)
				}
				picture(t, fmt.Sprintf("stroke-%s-%s", kind, b.Name()), p.settled())
				p.point(kind, lifted)
				p.wait("the marks", enabled("undo")+` && !document.querySelector(".stroke")`)
				words := eval[int](p, `new Set([...document.querySelectorAll(".w .signs")].map(e => e.closest(".w"))).size`)
				if words != 1 {
					t.Errorf("a stroke marks letters of %d words", words)
				}

				p.point(kind, held(at.R-3, y, at.L+3, y))
				p.wait("a stroke that takes away", `document.querySelectorAll(".stroke.off").length > 2`)
				p.settled()
				if on, off := p.strokeOver(); on != 0 || off != shown {
					t.Errorf("the stroke back is over %d and %d letters, want none and %d", on, off, shown)
				}
				p.point(kind, lifted)
				p.wait("the marks to go", `!document.querySelector(".w .signs")`)
				p.click("undo")
				p.wait("the marks again", `document.querySelector(".w .signs")`)
				p.click("undo")
				p.wait("no marks", `!document.querySelector(".w .signs") && document.querySelector("[data-t=undo]").disabled`)

				// There and most of the way back, and broken off.
				eval[any](p, `(globalThis.ids = [], document.querySelector(".sheet").addEventListener("pointerdown", e => ids.push(e.pointerId)), 0)`)
				p.point(kind, held(at.R-3, y, at.L-40, y))
				p.point(kind, []engine.Step{{Do: engine.To, X: at.R - 12, Y: y}})
				p.wait("a shorter stroke", fmt.Sprintf(`((n) => n > 0 && n < %d)(document.querySelectorAll(".stroke").length)`, shown))
				eval[any](p, `(document.querySelector(".glass").dispatchEvent(new PointerEvent("pointercancel", { bubbles: true, pointerId: ids.at(-1) })), 0)`)
				p.wait("the stroke to be dropped", `!document.querySelector(".stroke")`)
				p.point(kind, lifted)
				if n := p.marked(family); n != 0 {
					t.Errorf("a stroke that was broken off marks %d letters", n)
				}
			})
		}
	})
}

package e2e

import (
	"fmt"
	"image/color"
	"strings"
	"testing"
	"time"

	"sutur/generator/internal/engine"
)

// TestSessionInEngines is a child's first day: a whole session on a first visit, found again in the
// record, and then all of it once more without a network.
func TestSessionInEngines(t *testing.T) {
	inEngines(t, func(t *testing.T, b engine.Browser) {
		files := built(t)
		if b.Name() == "webkit" {
			files = overheard(t) // its driver does not tell what the console says
		}
		s := serve(t, "/a/b/", files)
		p := newTab(t, b)
		p.begin(s.address, "Test child")
		n := session(p)
		checkRecord(p, 1, n)
		p.stayedAt(s.address)
		p.reload()
		p.wait("the record after a reload", visible(hook("session")))
		checkRecord(p, 1, n)
		p.wait("everything to be stored", kept)
		p.stayedAt(s.address)
		for _, r := range p.requests {
			if strings.Contains(strings.ToLower(r), "child") {
				t.Errorf("a name is in an address: %s", r)
			}
		}
		p.calm()

		cut(p, s)
		served := s.served.Load()
		if failed := eval[string](p, `fetch("gone.txt", { cache: "no-store" }).then(() => "", e => String(e))`); failed == "" {
			t.Fatal("the network is not cut: this test would prove nothing")
		}
		p.reload()
		p.wait("the record without a network", visible(hook("session")))
		checkRecord(p, 1, n)
		n = session(p)
		checkRecord(p, 2, n)
		p.open(s.address + "lessons/" + rule + ".html")
		if h := p.text("h1"); h == "" {
			t.Error("the lesson shows nothing without a network")
		}
		if now := s.served.Load(); now != served {
			t.Errorf("the host answered %d requests while it was cut off", now-served)
		}
	})
}

// TestLessonColours looks at the first coloured example of a lesson page. Those among the examples
// have letters of the size that inColour knows the joins of; the large word above has wider ones.
func TestLessonColours(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.open(s.address + "lessons/" + rule + ".html#examples-to-read-together")
		p.wait("the examples", visible(".verses figure"))
		p.wait("coloured letters", fmt.Sprintf(`CSS.highlights.get("f-%s")?.size > 0`, family))
		// In a font of the device's own, letters would reach into their neighbours.
		p.wait("the reading font", `[...document.fonts].some(f => f.status === "loaded") && [...document.fonts].every(f => f.status !== "loading")`)
		// The word is cut in up to three: before the coloured letters, these, and after.
		ends := eval[[]int](p, fmt.Sprintf(`(() => {
			for (const r of CSS.highlights.get("f-%s")) {
				const w = r.startContainer.parentElement;
				if (!w.closest(".verses figure") || r.startOffset === 0) continue;
				w.id = "looked-at";
				return [r.startOffset, r.endOffset, w.firstChild.length].filter((x, i, all) => x !== all[i - 1]);
			}
			return [];
		})()`, family))
		if len(ends) < 2 {
			t.Fatalf("no word with a coloured letter after its first was found: %v", ends)
		}
		p.inColour("lesson", "#looked-at", ends, map[int]color.RGBA{1: p.colour("var(--c-" + family + ")")})
	})
}

// TestGestures strokes, holds and taps twice: the lines do what they are for, nothing is selected,
// and no menu comes up.
func TestGestures(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		for _, kind := range []engine.Kind{engine.Touch, engine.Mouse} {
			t.Run(string(kind), func(t *testing.T) {
				p := p.in(t)
				p.lines(s, rule, surah, from, upTo)
				eval[any](p, `(globalThis.menus = 0, addEventListener("contextmenu", e => { if (!e.defaultPrevented) menus++; }), 0)`)
				at := p.longWord()

				x, y := (at.L+at.R)/2, (at.T+at.B)/2
				nothing := func(after string) {
					t.Helper()
					if got := eval[string](p, `getSelection().toString()`); got != "" {
						t.Errorf("after %s %q is selected", after, got)
					}
					if n := eval[int](p, `menus`); n > 0 {
						t.Errorf("after %s a menu comes up", after)
					}
				}
				p.longPresses(false)
				p.point(kind, engine.Stroke(at.R-3, y, at.L+3, y, 12))
				p.wait("marks along the stroke", fmt.Sprintf(`CSS.highlights.get("f-%s")?.size > 2`, family))
				nothing("a stroke")
				// A press 50 ms after a stroke, which no finger makes, once came to no click.
				eval[any](p, `new Promise(r => setTimeout(r, 400))`)
				for p.count(hook("undo")+":not(:disabled)") > 0 {
					p.click("undo")
				}
				p.point(kind, engine.DoubleTap(x, y))
				eval[any](p, `new Promise(r => setTimeout(r, 400))`) // a double tap is known after the second only
				nothing("a double tap")
				if scale := eval[float64](p, `visualViewport.scale`); scale != 1 {
					t.Errorf("a double tap has enlarged the page %v times", scale)
				}
				if eval[bool](p, "Boolean("+large+")") { // the middle of a word may lie between two letters
					p.click("zoom-close")
					p.wait("the word to close", "!"+large)
				}
				p.longPresses(true)
				p.point(kind, engine.Hold(x, y, 900*time.Millisecond))
				p.wait("the enlarged word", visible(hook("zoom-close")))
				nothing("a long press")
				picture(t, fmt.Sprintf("zoom-%s-%s", kind, b.Name()), p.settled())
				p.click("zoom-close")
				nothing("closing the enlarged word")
			})
		}
	})
}

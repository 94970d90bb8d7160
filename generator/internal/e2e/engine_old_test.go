package e2e

import (
	"image/color"
	"testing"

	"sutur/generator/internal/engine"
	"sutur/generator/internal/mushaf"
)

// TestWithoutHighlights takes the highlights away, as in a browser that is too old for them: the
// whole word takes the colour, and no other word.
func TestWithoutHighlights(t *testing.T) {
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	const asks = "export const ranges = "
	s := serve(t, "/", edition(t, []change{
		{"site-src/app/painting/highlights.ts", asks, "delete globalThis.Highlight; delete CSS.highlights;\n" + asks},
	}))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		const surah, ayah = 96, 1
		p.lines(s, "qalqalah", surah, ayah, ayah)
		if eval[bool](p, `typeof Highlight !== "undefined" || Boolean(CSS.highlights)`) {
			t.Fatal("the highlights are still there: this test would prove nothing")
		}
		first, last := letter(text, text.Find(surah, ayah), 0, 1), letter(text, text.Find(surah, ayah), 4, 2)
		wrong := letter(text, text.Find(surah, ayah), 3, 1)
		p.tap(first)
		p.wait("the mark", enabled("undo"))
		p.wholeWords("old mark", text, map[int]color.RGBA{first.w: p.colour("var(--c-qalqalah)")})
		p.tap(wrong)
		p.wait("two marks", `document.querySelectorAll("[data-t=passage] .w.whole").length === 2`)
		p.check()
		p.wholeWords("old check", text, map[int]color.RGBA{
			first.w: p.colour("var(--found)"), last.w: p.colour("var(--missed)"), wrong.w: p.colour("var(--extra)"),
		})
	})
}

// wholeWords looks at all words of 96:1 at once.
func (p *page) wholeWords(what string, text *mushaf.Text, want map[int]color.RGBA) {
	p.t.Helper()
	p.still()
	boxes := eval[[]box](p, `(scrollTo({ top: 0, behavior: "instant" }), [...document.querySelectorAll("[data-t=passage] .w")].map(w => {
		const b = w.getBoundingClientRect();
		return { L: b.left, T: b.top, R: b.right, B: b.bottom };
	}))`)
	if n := len(text.Verses[text.Find(96, 1)].Words); len(boxes) != n {
		p.t.Fatalf("%d words are on the screen, want %d", len(boxes), n)
	}
	im, ink := p.settled(), p.colour("var(--ink)")
	picture(p.t, what+"-"+p.engine, im)
	for w, b := range boxes {
		r := b.inset(1.5).pixels()
		own, whole := want[w]
		for other, c := range want {
			if n := count(im, r, c); (other == w) != (n > 100) || other != w && n > 0 {
				p.t.Errorf("%s: word %d has %d pixels of %v, the colour of word %d", what, w+1, n, c, other+1)
			}
		}
		if n := count(im, r, ink); whole == (n > 0) && n > count(im, r, own)/20 || !whole && n < 100 {
			p.t.Errorf("%s: word %d has %d pixels of ink", what, w+1, n)
		}
	}
}

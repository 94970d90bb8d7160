package e2e

import (
	"image/color"
	"testing"

	"sutur/generator/internal/engine"
	"sutur/generator/internal/mushaf"
)

// TestWithoutHighlights takes the highlights away, as in a browser that is too
// old for them: the whole word takes the colour, and no other word.
func TestWithoutHighlights(t *testing.T) {
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	s := serve(t, "/", before(built(t), `delete globalThis.Highlight; delete CSS.highlights;`))
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

// wholeWords looks at all words of 96:1.
func (p *page) wholeWords(what string, text *mushaf.Text, want map[int]color.RGBA) {
	p.t.Helper()
	v := text.Find(96, 1)
	for w := range text.Verses[v].Words {
		ends := ends(text, v, w)
		at := map[int]color.RGBA{}
		if c, ok := want[w]; ok {
			at[0] = c
		}
		im, boxes := p.inColour(what, onLines(letterAt{w: w}), ends[len(ends)-1:], at)
		for other, c := range want {
			if n := count(im, boxes[0].pixels(), c); other != w && n > 0 {
				p.t.Errorf("%s: word %d has %d pixels of the colour of word %d", what, w+1, n, other+1)
			}
		}
	}
}

package e2e

import (
	"fmt"
	"testing"

	"github.com/chromedp/chromedp"

	"sutur/generator/internal/engine"
	"sutur/generator/internal/mushaf"
)

// longest is the word of the text with the most letters: its verse, and which word of it.
func longest(text *mushaf.Text) (v mushaf.Verse, w int) {
	most := 0
	for _, x := range text.Verses {
		for i, word := range x.Words {
			if n := len(word.Letters); n > most {
				v, w, most = x, i, n
			}
		}
	}
	return v, w
}

// TestLargeWordFits opens the longest word of the text large, on a phone and on a screen enlarged
// four times: the word is seen whole, nothing runs out at the sides, and every letter can be brought
// into view and pressed.
func TestLargeWordFits(t *testing.T) {
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	v, w := longest(text)
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.lines(s, rule, v.Surah, v.Ayah, v.Ayah)
		p.largeFits(w, len(v.Words[w].Letters))
		picture(t, "large-"+b.Name(), p.settled())
	})
	t.Run("enlarged", func(t *testing.T) {
		p := newPage(t)
		p.do(chromedp.EmulateViewport(320, 256))
		p.lines(s, rule, v.Surah, v.Ayah, v.Ayah)
		p.largeFits(w, len(v.Words[w].Letters))
	})
}

func (p *page) largeFits(w, letters int) {
	p.t.Helper()
	eval[any](p, fmt.Sprintf(`(document.querySelector('[data-t=passage] .w[data-w="%d"]').click(), 0)`, w))
	p.wait("the large word", visible(hook("zoom")))
	got := eval[struct {
		Buttons, Small, Hidden int
		Over, Out              float64
	}](p, `(() => {
		const box = document.querySelector(".zoom"), word = box.querySelector("[data-t=zoom-word]").getBoundingClientRect(), r = box.getBoundingClientRect();
		const all = [...box.querySelectorAll("button")];
		let small = 0, hidden = 0;
		for (const b of all) {
			b.scrollIntoView({ block: "center", behavior: "instant" });
			const at = b.getBoundingClientRect();
			if (at.width < 44 || at.height < 44) small++;
			if (!b.contains(document.elementFromPoint(at.left + at.width / 2, at.top + at.height / 2))) hidden++;
		}
		box.scrollTo(0, 0);
		return { Buttons: all.length, Small: small, Hidden: hidden, Over: box.scrollWidth - box.clientWidth, Out: Math.max(r.left - word.left, word.right - r.right, -r.left, r.right - innerWidth) };
	})()`)
	if got.Buttons != letters+1 || got.Small+got.Hidden > 0 || got.Over > 0 || got.Out > 0 {
		p.t.Errorf("of %d letters: %+v", letters, got)
	}
}

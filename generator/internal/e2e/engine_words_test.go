package e2e

import (
	"testing"

	"sutur/generator/internal/engine"
)

// TestReferenceWordsInEngines lays the reference words in every engine, for a person to look at
// (SUTUR_PICTURES): each is drawn.
func TestReferenceWordsInEngines(t *testing.T) {
	files := built(t)
	list := refWords(t)
	s := serve(t, "/", append(files, wordsFile(t, files)))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.open(s.address + "words.html")
		p.still()
		// All of them on one screen.
		boxes := eval[[]box](p, `(() => {
			const phone = new CSSStyleSheet();
			phone.replaceSync("body { grid-template-columns: repeat(3, minmax(0, 1fr)) !important; font: 9px/1.1 sans-serif !important } div { padding: 1px 3px !important } .text { font-size: 30px !important; line-height: 2 !important }");
			document.adoptedStyleSheets = [...document.adoptedStyleSheets, phone];
			return [...document.querySelectorAll(".w")].map(w => {
				const r = new Range();
				r.selectNodeContents(w);
				const b = r.getBoundingClientRect();
				return { L: b.left, T: b.top, R: b.right, B: b.bottom };
			});
		})()`)
		if len(boxes) != len(list) {
			t.Fatalf("%d words are on the page, want %d", len(boxes), len(list))
		}
		im := p.settled()
		picture(t, "words-"+b.Name(), im)
		for i, w := range list {
			r := boxes[i].pixels()
			if !r.In(im.Rect) {
				t.Errorf("%s is not on the screen: %v", w.ref, r)
			} else if n := dark(im, r).size(); n < 60*engine.Scale {
				t.Errorf("%s: %d pixels of ink", w.ref, n)
			}
		}
	})
}

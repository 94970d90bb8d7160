package e2e

import (
	"strings"
	"testing"
)

// TestAlikePencils marks with two pencils of one family: their marks have the same colour and shape,
// so a letter beside each says which pencil it was, in the row of pencils as well, and a screen
// reader says its name. A pencil alone in its family has none.
func TestAlikePencils(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.open(s.address + "#/lines?rule=noon-ikhfa&also=noon-izhar,qalqalah&from=78:12&to=78:30")
	p.wait("the lines", visible(hook("hand-noon-izhar")))
	p.do(waitFonts())
	if got := eval[string](p, `[...document.querySelectorAll(".hands .chip")].map(e => e.querySelector(".pencil-key")?.textContent ?? "-").join("")`); got != "ab-" {
		t.Errorf("the keys in the row of pencils are %q", got)
	}
	ikhfa, izhar, qalqalah := placesOf(t, "noon-ikhfa", 78, 12, 30)[0], placesOf(t, "noon-izhar", 78, 12, 30)[0], placesOf(t, "qalqalah", 78, 12, 30)[1]
	p.tap(ikhfa)
	p.click("hand-noon-izhar")
	p.tap(izhar)
	p.click("hand-qalqalah")
	p.tap(qalqalah)
	beside := func(a letterAt) string {
		return eval[string](p, `(w => (w.querySelector(".key")?.dataset.key ?? "-") + " " + w.getAttribute("aria-label"))(document.querySelector('`+onLines(a)+`'))`)
	}
	p.wait("three marks", `document.querySelectorAll("[data-t=passage] .signs").length === 3`)
	for _, x := range []struct {
		at        letterAt
		key, said string
	}{{ikhfa, "a ", "marked Hidden noon"}, {izhar, "b ", "marked Clear noon"}, {qalqalah, "- ", "marked"}} {
		if got := beside(x.at); !strings.HasPrefix(got, x.key) || !strings.Contains(got, x.said) {
			t.Errorf("the mark has %q, want %q and %q", got, x.key, x.said)
		}
	}
	p.calm()
}

package e2e

import (
	"fmt"
	"testing"

	"sutur/generator/internal/engine"
)

const givingHash = "#/give?rule=noon-ikhfa&also=ghunnah,stops&from=78:12&to=78:20"

// linkScreens are the screens of work and results, each with what is there once it is drawn.
func linkScreens(t *testing.T) []struct{ what, hash, there string } {
	links := vectors(t)
	return []struct{ what, hash, there string }{
		{"giving work", givingHash, visible(hook("qr"))},
		{"work", links[1], visible(hook("starting"))},
		{"work with a hostile line", links[4], visible(hook("starting"))},
		{"a result", links[8], visible(hook("taking"))},
		{"a link cut off", links[1][:60], visible(hook("unread"))},
		{"a link to be pasted", "#/result", visible(hook("paste-field"))},
		{"a result that is gone", "#/send?id=x", visible(hook("send-gone"))},
	}
}

// handed is what is sent and opened as a link.
func (l *looks) handed(p *page) {
	for _, x := range linkScreens(p.t.(*testing.T)) {
		l.at(p, x.what, x.hash, x.there)
	}
	l.at(p, "giving work again", givingHash, visible(hook("qr")))
	p.click("large")
	l.see(p, "a large picture", `document.querySelector("dialog.large[open]")`)
	p.click("small")
}

// TestAxeLinks: no violation on the screens of work and results, light and dark.
func TestAxeLinks(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.withAxe()
	p.open(s.address + vectors(t)[1])
	p.wait("work for a first learner", visible(hook("work-start")))
	p.axe("work for a first learner")
	p.begin(s.address, "Sara")
	for _, scheme := range []string{"light", "dark"} {
		p.scheme(scheme)
		for _, x := range linkScreens(t) {
			eval[bool](p, fmt.Sprintf(`location.hash = %q, true`, x.hash))
			p.wait(x.what, x.there)
			eval[bool](p, `new Promise(r => setTimeout(() => r(true), 300))`)
			p.axe(x.what + " " + scheme)
		}
	}
}

// TestLinkScreens: nothing is wider than the screen, what is drawn first comes first by Tab, and the
// picture is large and dark on light, also on a dark page.
func TestLinkScreens(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Maryam")
		for _, wide := range []int{334, 390, 1280} {
			p.resize(wide, 800)
			for _, x := range linkScreens(t) {
				p.open(s.address + "about.html")
				p.open(s.address + x.hash)
				p.wait(x.what, x.there)
				p.frames()
				what := fmt.Sprintf("%s at %d", x.what, wide)
				p.empty(what, `document.documentElement.scrollWidth > innerWidth ? "it is " + document.documentElement.scrollWidth + " wide" : ""`)
				p.empty(what, disordered)
			}
		}
		p.resize(390, 844)
		p.open(s.address + "about.html")
		p.open(s.address + givingHash)
		p.wait("the picture", visible(hook("qr")))
		link := p.text(hook("address"))
		eval[any](p, `(document.documentElement.dataset.theme = "dark", document.querySelector("[data-t=qr]").scrollIntoView({ block: "center", behavior: "instant" }), 0)`)
		if got := readQR(t, p.settled()); got != link {
			t.Errorf("the picture on a dark page says %q, want %q", got, link)
		}
		p.media("print")
		eval[any](p, `(document.querySelector("[data-t=qr]").scrollIntoView({ block: "center", behavior: "instant" }), 0)`)
		if got := readQR(t, p.settled()); got != link {
			t.Errorf("the picture on paper says %q, want %q", got, link)
		}
		if n := eval[int](p, `[...document.querySelectorAll("main button, main input, main fieldset, nav.tabs")].filter(e => e.getClientRects().length).length`); n > 0 {
			t.Errorf("%d controls are printed", n)
		}
		p.media("screen")
	})
}

package e2e

import (
	"fmt"
	"slices"
	"testing"

	"sutur/generator/internal/engine"
)

// drawnMarks is the place and size of everything that is drawn over and under marked letters, and
// how many letters are coloured.
func (p *page) drawnMarks() []string {
	p.t.Helper()
	return eval[[]string](p, fmt.Sprintf(`[String(CSS.highlights.get("f-%s")?.size),
		...[...document.querySelectorAll(".base > *")].map(e => e.getAttribute("class") + " " + e.style.cssText)]`, family))
}

// TestLateStyles opens pages whose style sheets come after their scripts, as on a slow network:
// WebKit runs the scripts before. What is measured and coloured is what it is otherwise. A lesson
// whose style sheets do not come at all is folded as well.
func TestLateStyles(t *testing.T) {
	s, f := harmed(t, "/", built(t), withoutWorker)
	const sheets, folded = "assets/*.css", `[...document.querySelectorAll(".part")].some(d => !d.open)`
	lesson := s.address + "lessons/" + rule + ".html"
	inEngines(t, func(t *testing.T, b engine.Browser) {
		f.set("", "")
		p := newTab(t, b)
		p.lines(s, rule, surah, from, upTo)
		lines := eval[string](p, `location.href`)
		marked := fmt.Sprintf(`CSS.highlights.get("f-%s")?.size > 0`, family)
		p.tap(places(t, rule, surah, from, upTo)[0])
		p.wait("the mark", marked)
		// The mark is drawn with the first look of the lines.
		for _, x := range []struct{ what, at, ready string }{{"a lesson", lesson, folded}, {"marked lines", lines, marked}} {
			look := func() []string {
				t.Helper()
				p.open("about:blank") // the same page with another hash would not load anew
				p.open(x.at)
				p.wait(x.what, x.ready)
				p.settled()
				return p.drawnMarks()
			}
			f.set("", "")
			usual := look()
			if len(usual) < 2 || usual[0] == "undefined" {
				t.Fatalf("%s: no letter is coloured: %q", x.what, usual)
			}
			f.set(sheets, late)
			if got := look(); !slices.Equal(got, usual) {
				t.Errorf("%s: with late styles\n%q\nis drawn, otherwise\n%q", x.what, got, usual)
			}
			if f.count() == 0 {
				t.Errorf("%s: no style sheet was late: this test would prove nothing", x.what)
			}
		}
		f.set(sheets, missing)
		p.open(lesson)
		p.wait("a lesson without its styles", folded)
		if n := p.count(".by-letter"); n != 0 || f.count() == 0 {
			t.Errorf("without style sheets (%d missing) %d words of the lesson are coloured by letter", f.count(), n)
		}
	})
}

// TestLateFont opens marked lines whose reading font comes after the first look and before the page
// is asked for anything more: marks that were measured in the device's own font are measured again.
func TestLateFont(t *testing.T) {
	s, f := harmed(t, "/", built(t), withoutWorker)
	p := newPage(t)
	p.before(`{
		const next = requestAnimationFrame.bind(window);
		const there = () => [...document.fonts].some(f => f.status === "loaded");
		window.requestAnimationFrame = run => next(function look(t) { there() ? run(t) : next(look); });
		new MutationObserver((_, o) => {
			if (!document.querySelector("[data-t=passage] .signs")) return;
			globalThis.font = there();
			o.disconnect();
		}).observe(document, { childList: true, subtree: true });
	}`)
	p.lines(s, rule, surah, from, upTo)
	p.tap(places(t, rule, surah, from, upTo)[0])
	p.wait("the mark", `document.querySelector("[data-t=passage] .signs")`)
	usual := p.drawnMarks()
	f.set("assets/*.woff2", late)
	p.reload()
	p.wait("the mark", `document.querySelector("[data-t=passage] .signs")`)
	eval[any](p, `document.fonts.ready.then(async () => { for (let i = 0; i < 6; i++) await new Promise(requestAnimationFrame); return 0; })`)
	if got := p.drawnMarks(); !slices.Equal(got, usual) {
		t.Errorf("with a late font\n%q\nis drawn, otherwise\n%q", got, usual)
	}
	if f.count() == 0 || eval[bool](p, `font ?? true`) {
		t.Error("the font was there at the first look: this test would prove nothing")
	}
}

package e2e

import (
	"fmt"
	"testing"

	"sutur/generator/internal/engine"
)

// joint is where the first two letters of the first word meet, on screen.
func (p *page) joint() (x, y float64) {
	p.t.Helper()
	text, err := theText()
	if err != nil {
		p.t.Fatal(err)
	}
	first := letter(text, text.Find(surah, from), 0, 0)
	at := p.rest(fmt.Sprintf(`(() => {
		const w = document.querySelector("[data-t=passage] .w"), r = new Range();
		w.scrollIntoView({ block: "center", behavior: "instant" });
		r.setStart(w.firstChild, %d);
		r.setEnd(w.firstChild, %d);
		const b = w.getBoundingClientRect();
		return [r.getBoundingClientRect().left, (b.top + b.bottom) / 2];
	})()`, first.from, first.to))
	return at[0], at[1]
}

const large = `document.querySelector("dialog.zoom")`

// hint is what the large word says to do.
func (p *page) hint() string { p.t.Helper(); return p.text(hook("zoom-hint")) }

// openByTap taps between two letters.
func (p *page) openByTap() {
	p.t.Helper()
	p.longPresses(false)
	p.press(p.joint())
	p.wait("the large word", visible(hook("zoom-close")))
}

// TestTapBetween taps where two letters meet: the word opens, says why the first time, and closes
// with the choice of a letter; it leaves nothing marked where none is chosen.
func TestTapBetween(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.lines(s, rule, surah, from, upTo)
		p.openByTap()
		if got := p.hint(); got != "Two letters are close here, so the word opens large. Tap the letter." {
			t.Errorf("the first time the word says %q", got)
		}
		picture(t, "tap-"+b.Name(), p.settled())
		p.click("zoom-letter-1")
		p.wait("the word to close", "!"+large)
		if n := p.marked(family); n != 1 {
			t.Errorf("%d letters are marked, want 1", n)
		}
		inDatabase[any](p, `return await all("settings")`) // after the write that the word is known
		p.reload()
		p.wait("the lines", visible(hook("next")))
		p.openByTap()
		if got := p.hint(); got != "Tap a letter." {
			t.Errorf("the second time the word says %q", got)
		}
		p.keys(engine.KeyEscape)
		p.wait("the word to close", "!"+large)
		p.openByTap()
		p.press(200, 12) // beside the dialog
		p.wait("the word to close", "!"+large)
		if n := p.marked(family); n > 1 {
			t.Errorf("closing the word has left %d marks, want 1 at most", n)
		}

		p.click("drawer")
		p.click("ask")
		p.press(p.joint())
		p.wait("the letter's panel", visible(hook("letter-name")))
		if eval[bool](p, "Boolean("+large+")") {
			t.Error("a tap that asks about a letter opens the word")
		}
	})
}

// TestTapLarge sets every word to open large: a tap in the middle of a letter opens it too, for a
// mouse as well.
func TestTapLarge(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "Nur")
	want := places(t, rule, surah, from, upTo)
	p.choose(rule, surah, from, upTo)
	p.tap(want[0])
	p.wait("a mark", enabled("undo"))
	eval[any](p, `(location.hash = "#/learner", 0)`)
	p.click("large-yes")
	p.wait("the choice", `document.querySelector('[data-t=large-yes]').getAttribute("aria-pressed") === "true"`)
	p.choose(rule, surah, from, upTo)
	p.tap(want[1])
	p.wait("the large word", visible(hook("zoom-close")))
	if got := p.hint(); got != "Tap a letter." {
		t.Errorf("the word says %q", got)
	}
	p.click(fmt.Sprintf("zoom-letter-%d", want[1].l))
	p.wait("the word to close", "!"+large)
	if n := p.marked(family); n != 2 {
		t.Errorf("%d letters are marked, want 2", n)
	}
	p.calm()
}

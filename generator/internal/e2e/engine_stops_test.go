package e2e

import (
	"fmt"
	"testing"

	"sutur/generator/internal/engine"
)

// TestStops presses a place to stop while letters are marked, and once they are checked: it moves
// then alone, by hand and by its key, and a screen reader is told either way. To press it is 44
// pixels each way, and takes nothing of a letter.
func TestStops(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.lines(s, rule, 2, 255, 255)
		const first = `document.querySelector("[data-t=passage] .stop:not(.end)")`
		stops := func() bool { t.Helper(); return eval[bool](p, first+`.getAttribute("aria-pressed") === "true"`) }
		said := func(want string) {
			t.Helper()
			p.wait("a screen reader to be told: "+want, fmt.Sprintf(`document.querySelector("[data-t=speech]").textContent.trim() === %q`, want))
		}
		press := func() { t.Helper(); p.press(p.place("[data-t=passage] .stop:not(.end)")) }
		// The keyboard goes to a word, and moves the stop after it.
		key := func(word int) {
			t.Helper()
			eval[any](p, fmt.Sprintf(`((sheet) => {
				const key = (key, ctrlKey) => sheet.dispatchEvent(new KeyboardEvent("keydown", { key, ctrlKey }));
				key("Home", true);
				for (let i = 0; i < %d; i++) key("ArrowLeft", true);
				key("s", false);
				return 0;
			})(document.querySelector("[data-t=passage]"))`, word))
		}
		word := eval[int](p, `Number(`+first+`.previousElementSibling.dataset.w)`)
		if !eval[bool](p, first+`.getAttribute("aria-disabled") === "true" && getComputedStyle(`+first+`).cursor === "default"`) {
			t.Error("while letters are marked a stop looks as if it could be moved")
		}
		press()
		said("Stops stay as they are while letters are marked. The pencil for stops moves them.")
		if stops() || p.marked(family) > 0 {
			t.Error("a press on a stop that stays moves it, or marks a letter")
		}

		key(0)
		said("There is no choice of stopping after this word.")
		key(word)
		said("Stops stay as they are while letters are marked. The pencil for stops moves them.")

		p.check()
		key(word)
		said("we stop here")
		if !stops() {
			t.Error("the stop is not moved")
		}
		press()
		said("we read on here")
		at := eval[struct{ Wide, High, Taken int }](p, `((stop) => {
			stop.scrollIntoView({ block: "center", behavior: "instant" });
			const b = stop.getBoundingClientRect(), on = (x, y) => document.elementFromPoint(x, y) === stop;
			const count = (n, f) => [...Array(n).keys()].filter(f).length;
			const x = b.left + b.width / 2, y = b.top + b.height / 2;
			const words = [...document.querySelectorAll("[data-t=passage] .w")].map(w => w.getBoundingClientRect());
			return {
				Wide: count(120, i => on(x - 60 + i, y)),
				High: count(120, i => on(x, y - 60 + i)),
				Taken: count(120, i => on(x - 60 + i, y) && words.some(w => w.left < x - 60 + i && x - 60 + i < w.right && w.top < y && y < w.bottom)),
			};
		})(`+first+`)`)
		if at.Wide < 44 || at.High < 44 || at.Taken > 0 {
			t.Errorf("the stop takes presses on %d by %d pixels, %d of them on a word; want 44 by 44 and none", at.Wide, at.High, at.Taken)
		}

		p.open(s.address + "about.html")
		p.open(s.address + "#/lines?rule=" + rule + "&also=stops&from=2:255&to=2:255")
		p.wait("the check again", visible(hook("again")))
		p.again()
		p.click("hand-stops")
		p.wait("stops that move", first+`.getAttribute("aria-disabled") === null`)
		press()
		said("we stop here")
		p.longPresses(false)
		p.press(p.place(`[data-t=passage] .w[data-w="1"]`))
		p.frames()
		p.wait("a step to undo", enabled("undo"))
		if eval[bool](p, "Boolean("+large+")") {
			t.Error("a word opens for a pencil that marks no letters")
		}
		p.click("undo")
		p.wait("the stop as it was", `!`+first+`.matches("[aria-pressed=true]")`)
	})
}

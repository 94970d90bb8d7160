package e2e

import (
	"fmt"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
)

// mouse sends one event of a mouse that has its left button down or up.
func (p *page) mouse(kind input.DispatchMouseEventType, x, y float64) {
	p.t.Helper()
	e := input.DispatchMouseEventParams{Type: kind, X: x, Y: y, Button: input.MouseButtonLeft, ClickCount: 1}
	if kind != input.DispatchMouseEventTypeMouseReleased {
		e.Buttons = 1
	}
	call(p, input.DispatchMouseEvent, e)
}

// place is the middle of an element that is brought into view.
func (p *page) place(selector string) (x, y float64) {
	p.t.Helper()
	at := p.rest(fmt.Sprintf(`(() => {
		const e = document.querySelector(%q);
		e.scrollIntoView({ block: "center", behavior: "instant" });
		const b = e.getBoundingClientRect();
		return [b.left + b.width / 2, b.top + b.height / 2];
	})()`, selector))
	return at[0], at[1]
}

// rest is the place that an expression gives as numbers, once the letters' font is there and the place
// has been the same for three frames: lines that were just opened may still move to where they were
// left.
func (p *page) rest(place string) []float64 {
	p.t.Helper()
	return eval[[]float64](p, fmt.Sprintf(`(async () => {
		const frame = () => new Promise(r => requestAnimationFrame(r));
		let at = [NaN];
		for (let same = 0; same < 3; ) {
			await document.fonts.ready;
			await frame();
			const now = %s;
			same = now.join() === at.join() ? same + 1 : 0;
			at = now;
		}
		return at;
	})()`, place))
}

// longPresses says whether a press that stays is a hold, which it is after 450 ms: a slow machine makes
// one of a press that is to be short, or of a stroke before it moves.
func (p *page) longPresses(yes bool) {
	p.t.Helper()
	p.delays(map[bool]string{true: `ms`, false: `ms === 450 ? 60_000 : ms`}[yes])
}

// TestPress holds controls down while what they belong to changes: no press is lost, and a slider
// stays under the finger.
func TestPress(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "One")
	p.open(s.address + "#/learner")
	p.wait("the name", visible(hook("nickname")))
	p.do(chromedp.SendKeys(chromedp.CSS(hook("nickname")), " and more"))
	// The field is left by the press; its change is kept and would draw the screen again before the
	// release.
	x, y := p.place(hook("add-learner"))
	p.mouse(input.DispatchMouseEventTypeMousePressed, x, y)
	for n := 0; ; n++ {
		kept := eval[bool](p, `new Promise((r, fail) => { const q = indexedDB.open("sutur"); q.onerror = fail; q.onsuccess = () => {
			const g = q.result.transaction("learners").objectStore("learners").getAll();
			g.onsuccess = () => { q.result.close(); r(g.result.some(l => l.name.includes("and more"))); };
		}; })`)
		if kept {
			break
		}
		if n == 1000 {
			t.Fatal("the name was not kept")
		}
	}
	eval[any](p, `new Promise(r => setTimeout(r, 200))`)
	p.mouse(input.DispatchMouseEventTypeMouseReleased, x, y)
	p.wait("a name to be asked for", `document.activeElement.id === "add-name" && document.activeElement.value === ""`)
	p.click("add-cancel")

	x, y = p.place(hook("size"))
	size := func() float64 {
		return eval[float64](p, `parseFloat(getComputedStyle(document.querySelector(".preview")).fontSize)`)
	}
	p.mouse(input.DispatchMouseEventTypeMousePressed, x, y)
	eval[any](p, fmt.Sprintf(`(globalThis.slider = document.querySelector(%q), 0)`, hook("size")))
	last := size()
	for i := range 3 {
		p.mouse(input.DispatchMouseEventTypeMouseMoved, x+float64(35*(i+1)), y)
		p.wait("greater letters", fmt.Sprintf(`parseFloat(getComputedStyle(document.querySelector(".preview")).fontSize) > %v`, last))
		last = size()
	}
	if !eval[bool](p, `slider.isConnected`) {
		t.Error("the slider was drawn again under the finger")
	}
	p.mouse(input.DispatchMouseEventTypeMouseReleased, x+105, y)
	p.wait("the size to be kept", `Number(document.querySelector('`+hook("size")+`').value) > 1.3`)
	p.calm()
}

// TestAddress draws the choice of lines again between the change of the address and the event that
// tells of it: the new address is shown all the same.
func TestAddress(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "One")
	p.open(s.address + "#/lines?rule=qalqalah&from=111:1&to=111:5")
	p.wait("the lines", visible(hook("verse-111-5")))
	p.clickOn(hook("menu") + " summary, summary" + hook("menu"))
	eval[any](p, `(navigator.clipboard.writeText = () => Promise.reject(new Error("no clipboard")), 0)`) // the notice then stays
	p.click("share")
	p.wait("a notice", visible(hook("notice-close")))
	eval[any](p, `(location.hash = "#/lines?rule=qalqalah", 0)`)
	p.wait("the choice", visible(hook("best-1")))
	eval[any](p, fmt.Sprintf(`(location.hash = "#/lines?rule=qalqalah&from=112:1&to=112:4", document.querySelector('%s').click(), 0)`, hook("notice-close")))
	p.wait("the new lines", visible(hook("verse-112-4")))
	p.calm()
}

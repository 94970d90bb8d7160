package e2e

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// sharedLines are lines with two pencils, longer than a window.
const sharedLines = "rule=noon-ikhfa&also=qalqalah&from=78:12&to=78:30"

// draws is how many rings, lines and strokes there are.
func (p *page) draws(rings, lines, strokes int) {
	p.t.Helper()
	p.wait(fmt.Sprintf("%d rings, %d lines and %d strokes", rings, lines, strokes), fmt.Sprintf(
		`[["ellipse", %d], [".under", %d], [".stroke", %d]].every(([s, n]) => document.querySelectorAll(".drawing g " + s).length === n)`, rings, lines, strokes))
}

// pen sends one event of a pen that touches the screen.
func (p *page) pen(kind input.DispatchMouseEventType, x, y float64) {
	p.t.Helper()
	e := input.DispatchMouseEventParams{Type: kind, X: x, Y: y, Button: input.MouseButtonLeft, ClickCount: 1, PointerType: input.DispatchMouseEventPointerTypePen}
	if kind != input.DispatchMouseEventTypeMouseReleased {
		e.Buttons = 1
	}
	call(p, input.DispatchMouseEvent, e)
}

// fingers puts fingers on places, moves those that are there, or lifts them all.
func (p *page) fingers(kind input.DispatchTouchEventType, at ...[2]float64) {
	p.t.Helper()
	points := []*input.TouchPoint{}
	for i, xy := range at {
		points = append(points, &input.TouchPoint{X: xy[0], Y: xy[1], ID: new(float64(i))})
	}
	call(p, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: kind, TouchPoints: points})
}

// TestShared goes from the lines to the shared screen and back: nothing but the text, uncoloured,
// and two buttons; no name, no notice; colours by the key; everything drawn is cleared with one press, and
// nothing of it is kept.
func TestShared(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "Nurunnisa")
	eval[any](p, `(location.hash = "#/lines?`+sharedLines+`", 0)`)
	p.wait("the lines", visible(hook("next")))
	p.clickOn(hook("menu") + " summary")
	p.click("restart")
	p.wait("a notice", visible(".notice"))
	p.clickOn(hook("menu") + " summary")
	p.click("shared")
	p.wait("the shared screen", visible("main.board .w"))
	p.do(waitFonts())
	if got := p.text("body"); strings.Contains(got, "Nurunnisa") || strings.Contains(eval[string](p, `document.title`), "Nurunnisa") {
		t.Errorf("the shared screen names the child: %s", got)
	}
	if got := eval[string](p, `[...document.querySelectorAll("button, a, nav, .notice")].filter(e => e.checkVisibility() && !e.matches(".skip")).map(e => e.dataset.t ?? e.className).join(" ")`); got != "key-noon-ikhfa key-qalqalah clear close" {
		t.Errorf("on the screen are %s", got)
	}
	p.sameText(12, 30)
	if n := eval[int](p, `CSS.highlights.size + document.querySelectorAll(".signs").length`); n != 0 {
		t.Errorf("%d marks before anybody has looked", n)
	}
	p.click("key-noon-ikhfa")
	want := len(places(t, "noon-ikhfa", 78, 12, 30))
	p.wait("the colours", fmt.Sprintf(`CSS.highlights.get("f-noon")?.size === %d`, want))
	p.click("key-noon-ikhfa")
	p.wait("no colours", `!CSS.highlights.get("f-noon")`)

	p.scrollUp()
	a := p.wordBox(0, 0)
	p.stroke(a.R-2, a.foot(), a.L+2, a.foot())
	p.draws(0, 1, 0)
	p.stroke(a.R-2, a.T+.5*(a.B-a.T), a.L+2, a.T+.6*(a.B-a.T))
	p.draws(0, 1, 1)
	b := p.wordBox(0, 1)
	x, y := b.middle()
	p.press(x, y)
	p.draws(1, 1, 1)
	p.keys("4")
	p.wait("a number", `document.querySelector(".drawing text").textContent === "4"`)
	p.press(p.drawnBox("under").middle())
	p.draws(1, 0, 1)
	p.undoKey()
	p.draws(1, 1, 1)
	p.click("clear")
	p.draws(0, 0, 0)
	p.undoKey()
	p.draws(1, 1, 1)
	p.keys(kb.Escape)
	p.draws(0, 0, 0)
	p.sameText(12, 30)
	p.keys(kb.Escape)
	p.wait("the lines again", visible(hook("next")))
	p.stayedAt(s.address)
	if drafts := eval[string](p, `new Promise(r => { const q = indexedDB.open("sutur"); q.onsuccess = () => {
		const g = q.result.transaction("drafts").objectStore("drafts").getAll();
		g.onsuccess = () => { q.result.close(); r(JSON.stringify(g.result.flatMap(d => d.marks))); };
	}; })`); drafts != "[]" {
		t.Errorf("of what was drawn is kept: %s", drafts)
	}
	p.click("back")
	p.calm()
}

// sameText: the words shown are those of the verified text.
func (p *page) sameText(from, to int) {
	p.t.Helper()
	text, err := theText()
	if err != nil {
		p.t.Fatal(err)
	}
	var want []string
	for a := from; a <= to; a++ {
		v := text.Verses[text.Find(78, a)]
		for _, w := range v.Words {
			want = append(want, v.Text[w.Start:w.End])
		}
	}
	got := eval[[]string](p, `[...document.querySelectorAll("[data-t=passage] .w")].map(e => [...e.childNodes].filter(n => n.nodeType === 3).map(n => n.data).join(""))`)
	if strings.Join(got, " ") != strings.Join(want, " ") {
		p.t.Errorf("the words shown are %v, want %v", got, want)
	}
}

func (p *page) scrollUp() { p.t.Helper(); eval[any](p, `(scrollTo(0, 0), 0)`) }

// stroke draws with the mouse from one place to another.
func (p *page) stroke(x0, y0, x1, y1 float64) {
	p.t.Helper()
	p.mouse(input.DispatchMouseEventTypeMousePressed, x0, y0)
	for i := range 12 {
		k := float64(i+1) / 12
		p.mouse(input.DispatchMouseEventTypeMouseMoved, x0+(x1-x0)*k, y0+(y1-y0)*k)
	}
	p.mouse(input.DispatchMouseEventTypeMouseReleased, x1, y1)
}

func (p *page) undoKey() {
	p.t.Helper()
	p.do(chromedp.KeyEvent("z", chromedp.KeyModifiers(2)))
}

// TestSharedPen draws with a pen: a hand beside it draws nothing, whether it comes after the pen or
// was there before.
func TestSharedPen(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.shown(s, sharedLines)
	p.longPresses(false)
	a, b := p.wordBox(0, 0), p.wordBox(1, 0)
	y := a.T + .5*(a.B-a.T)
	p.pen(input.DispatchMouseEventTypeMousePressed, a.R-2, y)
	for i := range 10 {
		p.pen(input.DispatchMouseEventTypeMouseMoved, a.R-2-float64(4*i), y+float64(i%3))
	}
	p.wait("the stroke as it grows", `document.querySelector(".live").getAttribute("d").includes("L") && document.querySelector(".pointer.on")`)
	bx, by := b.middle()
	p.fingers(input.DispatchTouchEventTypeTouchStart, [2]float64{bx, by})
	p.fingers(input.DispatchTouchEventTypeTouchMove, [2]float64{bx - 40, by + 5})
	p.fingers(input.DispatchTouchEventTypeTouchEnd)
	p.pen(input.DispatchMouseEventTypeMouseReleased, a.R-40, y)
	p.draws(0, 0, 1)
	p.wait("no pointer", `!document.querySelector(".pointer.on") && !document.querySelector(".live").getAttribute("d")`)

	// The hand comes first.
	eval[any](p, `new Promise(r => setTimeout(() => r(0), 700))`)
	p.fingers(input.DispatchTouchEventTypeTouchStart, [2]float64{bx, by})
	p.fingers(input.DispatchTouchEventTypeTouchMove, [2]float64{bx - 20, by + 5})
	p.pen(input.DispatchMouseEventTypeMousePressed, a.R-2, a.foot())
	for i := range 10 {
		p.pen(input.DispatchMouseEventTypeMouseMoved, a.R-2+(a.L-a.R+4)*float64(i+1)/10, a.foot())
	}
	p.fingers(input.DispatchTouchEventTypeTouchMove, [2]float64{bx - 60, by + 5})
	p.pen(input.DispatchMouseEventTypeMouseReleased, a.L+2, a.foot())
	p.fingers(input.DispatchTouchEventTypeTouchEnd)
	p.draws(0, 1, 1)

	x, y := p.wordBox(0, 1).middle()
	p.pen(input.DispatchMouseEventTypeMousePressed, x, y)
	p.pen(input.DispatchMouseEventTypeMouseReleased, x, y)
	p.draws(1, 1, 1)
	p.calm()
}

// TestSharedFingers: one finger draws on the text and scrolls beside it, two scroll everywhere and
// draw nothing; a finger that stays opens the numbers.
func TestSharedFingers(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	call(p, emulation.SetTouchEmulationEnabled, emulation.SetTouchEmulationEnabledParams{Enabled: true, MaxTouchPoints: 5})
	p.shown(s, sharedLines)
	drag := func(from, to float64, xs ...float64) {
		t.Helper()
		at := func(y float64) (out [][2]float64) {
			for i, x := range xs {
				out = append(out, [2]float64{x, y + float64(30*i)})
			}
			return out
		}
		if all := at(from); len(all) > 1 {
			p.fingers(input.DispatchTouchEventTypeTouchStart, all[0])
		}
		p.fingers(input.DispatchTouchEventTypeTouchStart, at(from)...)
		for i := range 12 {
			p.fingers(input.DispatchTouchEventTypeTouchMove, at(from+(to-from)*float64(i+1)/12)...)
			p.frames()
		}
		p.fingers(input.DispatchTouchEventTypeTouchEnd)
		p.frames()
	}
	drag(500, 300, 200)
	p.draws(0, 0, 1)
	if y := eval[float64](p, `scrollY`); y != 0 {
		t.Errorf("one finger on the text scrolls by %v", y)
	}
	drag(500, 300, 10)
	p.wait("the page to scroll", `scrollY > 100`)
	p.draws(0, 0, 1)
	p.scrollUp()
	drag(500, 300, 150, 240)
	p.wait("two fingers to scroll", `scrollY > 100`)
	p.draws(0, 0, 1)
	p.scrollUp()

	x, y := p.wordBox(0, 1).middle()
	p.fingers(input.DispatchTouchEventTypeTouchStart, [2]float64{x, y})
	p.wait("the numbers", visible(hook("numbers")))
	p.fingers(input.DispatchTouchEventTypeTouchEnd)
	p.draws(1, 0, 1)
	if small := eval[[]string](p, `[...document.querySelectorAll(".numbers button")].map(e => e.getBoundingClientRect()).filter(b => b.width < 44 || b.height < 44 || b.left < 0 || b.right > innerWidth || b.top < 0).map(b => JSON.stringify(b))`); len(small) > 0 {
		t.Errorf("numbers are small targets or not in sight: %s", small)
	}
	p.click("number-6")
	p.wait("the number at the ring", `document.querySelector(".drawing text").textContent === "6" && !document.querySelector(".numbers")`)
	p.calm()
}

// TestSharedKeys: the letters, the numbers, the size and the page by keyboard.
func TestSharedKeys(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.do(chromedp.EmulateViewport(1280, 800))
	p.shown(s, sharedLines)
	line := eval[float64](p, `document.querySelector("[data-t=passage] .w").getBoundingClientRect().height`)
	top := `Math.min(...[...document.querySelectorAll("[data-t=passage] .w")].map(e => e.getBoundingClientRect().top).filter(y => y > -4))`
	p.keys(kb.PageDown)
	p.wait("the page to turn", `scrollY > 100`)
	if y := eval[float64](p, top); y > 12 {
		t.Errorf("the first line in sight begins at %v", y)
	}
	if n := eval[float64](p, `scrollY`) / line; n < 2.5 {
		t.Errorf("the page turns by %.1f lines", n)
	}
	p.keys(kb.ArrowUp)
	p.wait("a line back", fmt.Sprintf(`scrollY < %f`, 2.6*line))
	p.keys(kb.PageUp)
	p.wait("the first page", `scrollY < 20`)

	size := `parseFloat(getComputedStyle(document.querySelector("[data-t=passage] .w")).fontSize)`
	was := eval[float64](p, size)
	p.keys("+")
	p.wait("larger letters", fmt.Sprintf(`%s > %f`, size, was*1.1))
	p.keys("-")
	p.keys("-")
	p.wait("smaller letters", fmt.Sprintf(`%s < %f`, size, was*.9))

	p.keys(kb.ArrowLeft)
	p.wait("the letter of the keyboard", visible(".board .caret"))
	p.keys(kb.ArrowLeft)
	p.keys(" ")
	p.wait("a ring around the second letter", `document.querySelector('[data-t="ring-0-0-1"]')`)
	p.keys("5")
	p.wait("a number", `document.querySelector(".drawing text").textContent === "5"`)
	p.keys("u")
	p.draws(1, 1, 0)
	p.keys("u")
	p.draws(1, 0, 0)
	if said := p.text(hook("speech")); !strings.Contains(said, "Letter 2 of") {
		t.Errorf("it is said %q", said)
	}
	p.calm()
}

// TestSharedResize: what is drawn stays on its letters when the letters get larger, the window
// narrower, and back: the ring on its letter, the stroke around its word.
func TestSharedResize(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.do(chromedp.EmulateViewport(1280, 800))
	p.shown(s, sharedLines)
	word := p.wordBox(0, 1)
	x, y := word.middle()
	rx, ry := (word.R-word.L)/2+10, .4*(word.B-word.T)
	p.mouse(input.DispatchMouseEventTypeMousePressed, x+rx, y)
	for i := range 24 {
		a := 2 * math.Pi * float64(i+1) / 24
		p.mouse(input.DispatchMouseEventTypeMouseMoved, x+rx*math.Cos(a), y+ry*math.Sin(a))
	}
	p.mouse(input.DispatchMouseEventTypeMouseReleased, x+rx, y)
	p.draws(0, 0, 1)
	at := letterAt{w: 2}
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	v := text.Find(78, 12)
	lx, ly := p.boxes(onLines(at), ends(text, v, 2))[1].middle()
	p.press(lx, ly)
	p.draws(1, 0, 1)
	for _, width := range []int64{1280, 390, 900, 320, 1920} {
		p.do(chromedp.EmulateViewport(width, 700))
		p.frames()
		p.around(p.drawnBox("stroke"), p.wordBox(0, 1))
		letters := p.boxes(onLines(at), ends(text, v, 2))
		p.ringedAt(2, 1, letters[1])
		if wide := eval[float64](p, `document.documentElement.scrollWidth`); wide > float64(width) {
			t.Errorf("at %d the page is %v wide", width, wide)
		}
	}
	p.calm()
}

// TestSharedAwake: the screen stays on while it is shown, is asked for again when the page is seen
// again, and is let go when it is left.
func TestSharedAwake(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.before(`
		globalThis.locks = [];
		Object.defineProperty(navigator, "wakeLock", { value: { request: async kind => {
			const lock = Object.assign(new EventTarget(), { kind, released: false, release: async () => { lock.released = true; } });
			locks.push(lock);
			return lock;
		} } });`)
	p.shown(s, sharedLines)
	p.wait("a lock", `locks.length === 1 && locks[0].kind === "screen" && !locks[0].released`)
	eval[any](p, `(locks[0].released = true, document.dispatchEvent(new Event("visibilitychange")), 0)`) // as browsers do when the page is hidden
	p.wait("another lock", `locks.length === 2 && !locks[1].released`)
	p.click("close")
	p.wait("the lines", visible(hook("next")))
	p.wait("the lock to be let go", `locks[1].released`)
	eval[any](p, `(document.dispatchEvent(new Event("visibilitychange")), 0)`)
	p.frames()
	if n := eval[int](p, `locks.length`); n != 2 {
		t.Errorf("%d locks were asked for", n)
	}
	p.calm()
}

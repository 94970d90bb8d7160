package e2e

import (
	"context"
	"fmt"
	"testing"

	"sutur/generator/internal/engine"
)

// crowded is lines with all that the bar can hold: counts, several pencils, stops.
const crowded = "#/lines?rule=madd-munfasil&also=noon-ikhfa,stops,qalqalah&from=78:12&to=78:20"

// resize gives the viewport a size; WebKit's window cannot be as narrow as a page enlarged four
// times, and is as narrow as it can be.
func (p *page) resize(width, height int) {
	p.t.Helper()
	if p.engine == "webkit" && width < engine.WebKitNarrow {
		p.t.Logf("WebKit's window is %d wide and not %d", engine.WebKitNarrow, width)
		width = engine.WebKitNarrow
	}
	p.must(func(ctx context.Context, _ string) error { return p.tab.Resize(ctx, width, height) }, "")
	p.frames()
}

// empty says what is wrong with a page, and is empty where nothing is.
func (p *page) empty(what, wrong string) {
	p.t.Helper()
	if got := eval[string](p, wrong); got != "" {
		p.t.Errorf("%s: %s", what, got)
	}
}

// quarter is an expression: what lies at the foot takes more than a quarter of the height, or the
// page is wider than the screen.
const quarter = `(() => {
	const foot = [...document.querySelectorAll(".thumb, .tabs")].map(e => e.getBoundingClientRect().height);
	const part = Math.max(...foot) / innerHeight, wide = document.documentElement.scrollWidth;
	return (part > .25 ? "the foot takes " + part.toFixed(3) + " of the height " : "") + (part ? "" : "there is no foot ") + (wide > innerWidth ? "the page is " + wide + " wide" : "");
})()`

// hidden is an expression: why what has the keyboard cannot be seen whole.
const hidden = `(() => {
	const e = document.activeElement, b = e.getBoundingClientRect(), foot = document.querySelector(".thumb").getBoundingClientRect();
	const name = (e.dataset.t ?? e.className) + " " + [b.top, b.bottom, b.left, b.right].map(Math.round).join();
	if (b.top < -2 || b.left < -2 || b.right > innerWidth + 2 || b.bottom > innerHeight + 2) return name + " is not on the screen";
	const top = document.elementsFromPoint((b.left + b.right) / 2, (b.top + b.bottom) / 2);
	const over = top.slice(0, top.indexOf(e) + 1 || undefined).find(x => !x.contains(e) && !e.contains(x) && !x.matches(".glass, .layer *"));
	return over ? name + " is under " + (over.dataset.t ?? over.className) : e.closest(".thumb") || b.bottom <= foot.top + 1 ? "" : name + " is behind the foot, from " + foot.top;
})()`

// covering is an expression: why no line of the text is left in sight above what matches.
func covering(selector string) string {
	return fmt.Sprintf(`(() => {
		const top = Math.min(...[...document.querySelectorAll(%q)].map(e => e.getBoundingClientRect().top));
		const line = parseFloat(getComputedStyle(document.querySelector(".text")).fontSize) * 1.5;
		return top >= line ? "" : "of the text " + top + " pixels are in sight, less than a line of " + line;
	})()`, selector)
}

// TestShortScreens turns a phone, and enlarges a page four times: what lies at the foot takes a
// quarter of the height at most, what has the keyboard is seen, and nothing that opens covers all
// of the text.
func TestShortScreens(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Maryam")
		for _, size := range [][2]int{{844, 390}, {320, 256}} {
			p.resize(size[0], size[1])
			t.Run(fmt.Sprintf("%dx%d", size[0], size[1]), func(t *testing.T) { p.in(t).short(s) })
		}
	})
}

func (p *page) short(s *server) {
	p.t.Helper()
	for _, at := range []string{"today", "rules", "record", "learner"} {
		p.open(s.address + "about.html")
		p.open(s.address + "#/" + at)
		p.wait(at, `document.querySelector(".screen main h1") && `+complete)
		p.empty(at, quarter)
	}
	p.open(s.address + "about.html")
	p.open(s.address + crowded)
	p.wait("the lines", visible(".bar"))
	eval[any](p, `(document.querySelector("[data-t=restart]").click(), 0)`)
	p.wait("a notice", visible(hook("notice-close")))
	p.frames()
	p.empty("a notice", covering(".notice"))
	eval[any](p, `(document.querySelector("[data-t=notice-close]").click(), 0)`)
	p.frames()
	p.empty("finding", quarter)
	if got := p.text(hook("whose")); got != "Maryam" {
		p.t.Errorf("the lines are those of %q", got)
	}

	p.tabTo(".w")
	for range 12 { // down the lines and up again
		p.empty("down", hidden)
		p.key(engine.KeyDown)
	}
	for range 4 {
		p.empty("up", hidden)
		p.key(engine.KeyUp)
	}
	p.key("e")
	p.wait("the panel", visible(hook("letter-close")))
	p.empty("the panel", covering(".thumb"))
	p.key(engine.KeyLeft)
	p.empty("the panel", hidden)
	p.key(engine.KeyEscape)
	for _, x := range []struct{ opener, box string }{{"case", ".case"}, {"drawer", ".help"}} {
		p.enter(hook(x.opener))
		p.wait(x.box, visible(x.box))
		p.empty(x.box, covering(".thumb, .case"))
		p.key(engine.KeyEscape)
		p.on("Escape of "+x.box, hook(x.opener))
	}
	eval[any](p, `(document.querySelector(".skip").focus(), 0)`)
	for {
		p.keys(engine.KeyTab)
		p.frames()
		p.empty("by Tab", hidden)
		if eval[bool](p, `document.activeElement.matches("[data-t=drawer]")`) {
			break
		}
	}
	for _, step := range []string{"next", "show-all", "next"} {
		p.enter(hook(step))
		p.frames()
		p.empty("after "+step, quarter)
	}
}

// disordered is an expression: controls that come by Tab before others that are drawn before them.
// What is fixed at the foot or the head is drawn last or first, however far the page is scrolled.
const disordered = `(() => {
	const far = e => {
		const box = e.closest(".tabs, .thumb");
		return !box ? 0 : box.getBoundingClientRect().top > innerHeight / 2 ? 1e6 : -1e6;
	};
	const all = [...document.querySelectorAll("#app :is(a[href], button, input, select, summary, [tabindex='0'])")]
		.filter(e => e.tabIndex >= 0 && !e.disabled && e.checkVisibility() && !e.matches(".skip, .hidden-file"))
		.map(e => { const b = e.getClientRects()[0], y = far(e); return { e, l: b.left, r: b.right, t: b.top + y, b: b.bottom + y }; });
	const name = x => x.e.dataset.t ?? x.e.innerText;
	const bad = [];
	all.slice(1).forEach((b, i) => {
		const a = all[i];
		if (a.e.contains(b.e) || b.e.contains(a.e)) return;
		const row = Math.min(a.b, b.b) - Math.max(a.t, b.t) > Math.min(a.b - a.t, b.b - b.t) / 2;
		const rtl = a.e.closest("[dir=rtl]") && b.e.closest("[dir=rtl]");
		if (row ? (rtl ? b.r > a.r : b.l < a.l) : b.b <= a.t + 2) bad.push(name(a) + " before " + name(b));
	});
	return all.length < 5 ? "only " + all.length + " controls" : bad.join("; ");
})()`

// TestTabOrder: what is drawn first comes first by Tab, on a phone and on a wide screen.
func TestTabOrder(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Maryam")
		for _, size := range [][2]int{{390, 844}, {1280, 800}} {
			p.resize(size[0], size[1])
			for _, x := range []struct{ at, there string }{
				{"#/today", `document.querySelector('[data-t^="next-"]')`},
				{"#/lines", visible(hook("open-1"))},
				{"#/rules", visible(hook("next"))},
				{"#/record", visible(hook("backup"))},
				{"#/learner", `document.querySelector("[data-t^=pencil-]")`},
				{crowded, visible(".bar")},
			} {
				p.open(s.address + "about.html")
				p.open(s.address + x.at)
				p.wait(x.at, x.there)
				p.frames()
				what := fmt.Sprintf("%s at %d", x.at, size[0])
				p.empty(what, disordered)
				p.keys(engine.KeyTab)
				if at := eval[string](p, focus); at != "skip" {
					t.Errorf("%s: Tab leads to %s first", what, at)
				}
				p.key(engine.KeyEnter)
				p.on("the skip link", ".w, h1")
				if now := eval[string](p, `location.hash.slice(0, 7)`); now != x.at[:7] {
					t.Errorf("%s: the skip link leads to %s", what, now)
				}
			}
		}
	})
}

// TestWideLines: on a wide screen the text has the room, and what lies below it is as wide.
func TestWideLines(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Maryam")
		p.resize(1280, 800)
		p.open(s.address + crowded)
		p.wait("the lines", visible(".bar"))
		p.frames()
		p.empty("the lines", `(() => {
			const [text, bar, last, name] = [".text", ".bar", ".handle", "[data-t=whose]"].map(s => document.querySelector(s).getBoundingClientRect());
			const inner = bar.left + parseFloat(getComputedStyle(document.querySelector(".bar")).paddingLeft);
			if (text.width < 1280 * .9) return "the text is " + text.width + " wide";
			if (Math.abs(inner - text.left) > 4 || Math.abs(last.right - text.right) > 16) return "the bar goes from " + inner + " to " + last.right + ", the text from " + text.left + " to " + text.right;
			return name.width > 0 && name.bottom < text.top ? "" : "the child's name is not over the lines";
		})()`)
		p.empty("the lines", quarter)
	})
}

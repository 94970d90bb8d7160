package e2e

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"sutur/generator/internal/engine"
)

// opened are the ids of the parts that are open.
const opened = `[...document.querySelectorAll(".part[open] > summary h2")].map(h => h.id)`

// motion emulates whether the reader has asked for less motion.
func (p *page) motion(value string) { p.t.Helper(); p.prefer("prefers-reduced-motion", value) }

// TestFirstMinute measures the first minute of every lesson on a phone, with the way back to
// today's lines above it: one screen and a half at most, one large word with a letter in colour,
// and the way to the lines.
func TestFirstMinute(t *testing.T) {
	files := built(t)
	s := serve(t, "/", files)
	p := newPage(t)
	seen, longest, where := 0, 0.0, ""
	for _, f := range files {
		if !strings.HasPrefix(f.Name, "lessons/") || !strings.Contains(string(f.Data), `class=minute`) && !strings.Contains(string(f.Data), `class="minute"`) {
			continue
		}
		seen++
		p.open(s.address + f.Name + "#/lines?rule=ghunnah&from=110:1&to=110:3")
		p.wait("the way back", visible(".back a"))
		p.wait("colour in the large word of "+f.Name, `(() => {
			const large = document.querySelector(".minute figure.large");
			return [...CSS.highlights].some(([name, h]) => name.startsWith("f-") && [...h].some(r => large.contains(r.startContainer)));
		})()`)
		height := eval[float64](p, `document.fonts.ready.then(() => document.querySelector(".minute .on a").getBoundingClientRect().bottom + scrollY)`)
		words := eval[int](p, `document.querySelector(".minute").innerText.split(/\s+/).length`)
		t.Logf("%s: %d words, %.2f screens", f.Name, words, height/844)
		if height > longest {
			longest, where = height, f.Name
		}
		if got := eval[[]string](p, opened); len(got) > 0 {
			t.Errorf("%s opens with %q", f.Name, got)
		}
	}
	if longest > 1.5*844 {
		t.Errorf("the first minute of %s takes %.2f screens", where, longest/844)
	}
	if seen < 30 {
		t.Errorf("only %d lessons were seen", seen)
	}
	p.calm()
}

// TestLessonFolds opens parts by a press, by the address and by a link; paper has them all, and
// they are as before when it is printed.
func TestLessonFolds(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.open(s.address + "lessons/ghunnah.html")
		p.wait("the parts folded", `document.querySelectorAll(".part").length > 5 && !document.querySelector(".part[open]")`)
		p.clickOn(".part:nth-of-type(2) > summary")
		if got := eval[[]string](p, opened); !slices.Equal(got, []string{"how-long-it-is-held"}) {
			t.Errorf("pressing the second heading opens %q", got)
		}
		for _, event := range []string{"beforeprint", "afterprint"} {
			eval[bool](p, fmt.Sprintf(`dispatchEvent(new Event(%q))`, event))
			shut := eval[int](p, `document.querySelectorAll(".part:not([open]), .check details:not([open])").length`)
			if (shut == 0) != (event == "beforeprint") {
				t.Errorf("%d parts and answers are folded after %s", shut, event)
			}
		}
		if got := eval[[]string](p, opened); !slices.Equal(got, []string{"how-long-it-is-held"}) {
			t.Errorf("after printing %q are open", got)
		}
		// What was drawn while its part was folded has its size, and stands under its word.
		eval[any](p, `document.fonts.ready.then(() => { for (const d of document.querySelectorAll("details")) d.open = true; })`)
		if off := eval[[]string](p, `[...document.querySelectorAll("[data-marks]")].filter(f => {
			const sign = f.querySelector("svg.signs")?.getBoundingClientRect(), word = f.querySelector(".by-letter .w, .w:has(.by-letter)")?.getBoundingClientRect();
			return !sign || !word || sign.width < 4 || sign.left < word.left - 8 || sign.right > word.right + 8;
		}).map(f => f.textContent)`); len(off) > 0 {
			t.Errorf("no shape stands under the letters of %q", off)
		}
		eval[any](p, `(() => { for (const d of document.querySelectorAll("details")) d.open = false; })()`)
		// The check: its answers open one by one.
		eval[any](p, `location.hash = "a-two-minute-check"`)
		p.wait("the check", visible(".check summary"))
		p.clickOn(".check summary")
		if n := p.count(".check details[open]"); n != 1 {
			t.Errorf("%d answers are open", n)
		}

		p.open(s.address + "about.html")
		p.open(s.address + "lessons/ghunnah.html#the-child-may-ask")
		p.wait("the part that the address names", `document.querySelector(".part[open] #the-child-may-ask")?.getBoundingClientRect().top < innerHeight`)
		p.wait("every other part to fold", `document.querySelectorAll(".part[open]").length === 1`)
		// A link to a part that has been folded again.
		eval[any](p, `(() => {
			document.querySelector("#the-child-may-ask").closest("details").open = false;
			const a = document.createElement("a");
			a.href = "#the-child-may-ask";
			a.className = "again";
			a.textContent = "Again";
			document.querySelector(".minute").append(a);
		})()`)
		p.clickOn("a.again")
		p.wait("the part opened again", `document.querySelector(".part[open] #the-child-may-ask")`)
	})
}

// TestLessonWithoutScript: all of the text is there, and on paper too.
func TestLessonWithoutScript(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.open(s.address + "lessons/madd-arid.html")
	p.wait("the parts folded", `!document.querySelector(".part[open]")`)
	eval[any](p, `addEventListener("beforeprint", () => { globalThis.shut = document.querySelectorAll("details:not([open])").length; })`)
	with := p.glyphs()
	if shut := eval[int](p, `globalThis.shut ?? -1`); shut != 0 {
		t.Errorf("%d parts and answers are folded while the page is printed", shut)
	}
	if n := p.count("details[open]"); n != 0 {
		t.Errorf("%d parts and answers stay open after printing", n)
	}
	call(p, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	p.open(s.address + "lessons/madd-arid.html")
	if n := p.count("details:not([open])"); n != 0 {
		t.Errorf("%d parts and answers are folded without a script", n)
	}
	if p.count(".turn-cards") > 0 || p.count(".beat button") > 0 {
		t.Error("there are buttons that nothing answers")
	}
	if n := p.count(".beat-dots i"); n != 2+4+6 {
		t.Errorf("%d dots, want those of 2, 4 and 6 counts", n)
	}
	if got := eval[bool](p, `[...document.querySelectorAll(".verses figure")].every(f => f.getBoundingClientRect().width > 250)`); !got {
		t.Error("the examples are not laid out as cards")
	}
	if without := p.glyphs(); without != with || with < 500 {
		t.Errorf("%d glyphs on paper with the script, %d without", with, without)
	}
}

// glyphs counts what a print of the page draws.
func (p *page) glyphs() (n int) {
	p.t.Helper()
	doc, err := readPDF(call(p, cdppage.PrintToPDF, cdppage.PrintToPDFParams{PaperWidth: 8.27, PaperHeight: 11}).Data)
	if err != nil {
		p.t.Fatal(err)
	}
	for _, page := range doc.Pages {
		n += len(page.Glyphs)
	}
	return n
}

// TestTodaysLines opens a lesson with the address of lines: the first link, the one below the minute
// and the first among the lines to try lead to them. Where they are offered anyway they come first.
func TestTodaysLines(t *testing.T) {
	s := serve(t, "/a/b/", built(t))
	p := newPage(t)
	p.open(s.address + "lessons/ghunnah.html")
	p.wait("the parts folded", `!document.querySelector(".part[open]")`)
	if n := p.count(".back:not([hidden]), .try-today:not([hidden])"); n > 0 {
		t.Errorf("%d links to today's lines in a lesson opened by itself", n)
	}
	offered := eval[[]string](p, `[...document.querySelectorAll(".try-lines a")].map(a => a.hash)`)
	if len(offered) < 2 {
		t.Fatalf("only %q are offered", offered)
	}
	for _, c := range []struct{ lines, name, first string }{
		{"#/lines?rule=ghunnah&from=110:1&to=110:3", "110:1–3", offered[0]},
		{"#/lines?from=112:4&to=112:4", "112:4", offered[0]},
		{"#/lines?from=113:4&to=114:2", "113:4–114:2", offered[0]},
		{offered[1], "", offered[1]},
	} {
		t.Run(c.lines, func(t *testing.T) {
			p.open(s.address + "about.html")
			p.open(s.address + "lessons/ghunnah.html" + c.lines)
			p.wait("the links", visible(".back a")+" && "+visible(".try-today a"))
			links := eval[[]string](p, `[...document.querySelectorAll("main a.main")].map(a => a.pathname + a.hash)`)
			if want := "/a/b/index.html" + c.lines; len(links) != 3 || slices.ContainsFunc(links, func(l string) bool { return l != want }) {
				t.Errorf("the large links lead to %q, want %s three times", links, want)
			}
			if got := p.text(".today-lines"); c.name != "" && got != c.name {
				t.Errorf("the lines are called %q, want %q", got, c.name)
			}
			if got := eval[string](p, `document.querySelector(".try-lines a").hash`); got != c.first {
				t.Errorf("%s are offered first, want %s", got, c.first)
			}
			if n := p.count(".try-lines figure"); n != len(offered) {
				t.Errorf("%d passages are offered, want %d", n, len(offered))
			}
		})
	}
	// What is no address of lines is left alone.
	p.open(s.address + "about.html")
	p.open(s.address + `lessons/ghunnah.html#/lines?from=1:1"onclick=x`)
	p.wait("the parts folded", `!document.querySelector(".part[open]")`)
	if n := p.count(".back:not([hidden])"); n > 0 {
		t.Error("a broken address is taken for lines")
	}
}

// TestExampleCards turns the examples by keys and by buttons; the next one peeps in, the last one
// comes wholly into view.
func TestExampleCards(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.motion("reduce")
	p.open(s.address + "lessons/ghunnah.html#examples-to-read-together")
	p.wait("the cards", visible(".turn-cards button"))
	const shown = `(() => {
		const row = document.querySelector(".verses").getBoundingClientRect();
		return [...document.querySelectorAll(".verses figure")].flatMap((f, i) => { const b = f.getBoundingClientRect(); return b.left > row.left - 2 && b.right < row.right + 2 ? [i] : []; });
	})()`
	is := func(after string, want int) {
		t.Helper()
		p.wait(fmt.Sprintf("card %d after %s", want, after), fmt.Sprintf(`%s.join() === "%d"`, shown, want))
	}
	last := p.count(".verses figure") - 1
	is("opening", 0)
	if !eval[bool](p, `document.querySelectorAll(".verses figure")[1].getBoundingClientRect().left < document.querySelector(".verses").getBoundingClientRect().right - 20`) {
		t.Error("the next card does not peep in")
	}
	eval[any](p, `document.querySelector(".verses").focus()`)
	for _, k := range []struct {
		name, key string
		want      int
	}{
		{"right", kb.ArrowRight, 1}, {"right again", kb.ArrowRight, 2}, {"left", kb.ArrowLeft, 1},
		{"the end", kb.End, last}, {"beyond it", kb.ArrowRight, last}, {"the beginning", kb.Home, 0}, {"before it", kb.ArrowLeft, 0},
	} {
		p.do(chromedp.KeyEvent(k.key))
		is(k.name, k.want)
	}
	p.clickOn(`.turn-cards [data-step="1"]`)
	is("the button", 1)
	p.clickOn(`.turn-cards [data-step="-1"]`)
	is("the button back", 0)
	p.wait("no way back at the first card", `document.querySelector('.turn-cards [data-step="-1"]').ariaDisabled === "true"`)
}

// tapAlong taps the button of a beat four times, by the page's own clock.
func (p *page) tapAlong() {
	p.t.Helper()
	eval[any](p, `new Promise(r => { let n = 0; const go = () => {
		document.querySelector(".beat-pad button").click();
		if (++n < 4) setTimeout(go, 400); else r(0);
	}; go(); })`)
}

// TestBeat taps a pace, which is kept, and fills dots by it; where motion is reduced they stand
// still.
func TestBeat(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.motion("no-preference")
	p.open(s.address + "lessons/madd-arid.html#how-long-it-is-held")
	p.wait("the button to tap", visible(".beat-pad button"))
	names := eval[[]string](p, `[...document.querySelectorAll(".beat-lengths button")].map(b => b.innerText.split("\n")[0].trim())`)
	if !slices.Equal(names, []string{"2 counts", "4 counts", "6 counts"}) {
		t.Errorf("lengths %q", names)
	}
	p.clickOn(".beat-pad button")
	if got := p.text(".beat-pace"); got != "Keep tapping." {
		t.Errorf("after one tap: %q", got)
	}
	p.tapAlong()
	p.wait("a pace", `/^One count takes \d\.\d seconds\.$/.test(document.querySelector(".beat-pace").textContent)`)
	pace := eval[float64](p, `Number(localStorage.getItem("sutur-pace"))`)
	if pace < 250 || pace > 1500 {
		t.Errorf("the pace kept is %v ms", pace)
	}
	p.reload()
	p.wait("the pace again", fmt.Sprintf(`document.querySelector(".beat-pace").textContent.includes((%v / 1000).toFixed(1))`, pace))
	p.clickOn(".beat-lengths li:nth-child(2) button")
	p.wait("a dot that fills", `document.querySelectorAll("[data-counts='4'] .on").length > 0`)
	p.wait("four dots, one after another", `document.querySelectorAll("[data-counts='4'] .on").length === 4`)
	if n := p.count(".beat-dots .on"); n != 4 {
		t.Errorf("%d dots are full", n)
	}
	p.motion("reduce")
	p.wait("still dots", `!document.querySelector(".beat button")`)
	if got := eval[string](p, `document.querySelector("[data-counts='6'] .beat-dots").textContent`); got != "123456" {
		t.Errorf("the still dots say %q", got)
	}
	p.calm()
}

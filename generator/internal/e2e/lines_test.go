package e2e

import (
	"cmp"
	"context"
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/chromedp"

	"sutur/generator/internal/build"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

var theText = sync.OnceValues(func() (*mushaf.Text, error) {
	abs, err := filepath.Abs(root)
	if err != nil {
		return nil, err
	}
	return build.Text(abs)
})

// letterAt is a letter on screen: verse of the lines, word, and where its letter begins and ends in
// the word, in UTF-16 units; all from 0.
type letterAt struct {
	v, w, l  int
	from, to int
}

// places asks the engine, not the page, for the letters that bear a rule in verses from-to of a
// surah when the reader stops at verse ends. Sounds that are not written are left out.
func places(t testing.TB, rule string, surah, from, to int) []letterAt {
	t.Helper()
	out := placesOf(t, rule, surah, from, to)
	if len(out) < 3 {
		t.Fatalf("%s has %d places in %d:%d-%d; these tests want three or more", rule, len(out), surah, from, to)
	}
	return out
}

// placesOf is the same for any number of places.
func placesOf(t testing.TB, rule string, surah, from, to int) []letterAt {
	t.Helper()
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	id, ok := recite.ParseRule(rule)
	if !ok {
		t.Fatalf("no rule %s", rule)
	}
	engine := recite.New(text)
	var out []letterAt
	for a := from; a <= to; a++ {
		v := text.Find(surah, a)
		for _, e := range engine.Reading(nil, v, recite.Reading{}) {
			if e.Rule != id || e.Unwritten {
				continue
			}
			at := letter(text, v, int(e.Word), int(e.Letter))
			at.v = a - from
			if !slices.Contains(out, at) {
				out = append(out, at)
			}
		}
	}
	return out
}

func letter(text *mushaf.Text, v, w, l int) letterAt {
	verse := &text.Verses[v]
	word := verse.Words[w]
	x := word.Letters[l]
	// Every rune of the text is one UTF-16 unit.
	return letterAt{0, w, l, len([]rune(verse.Text[word.Start:x.Start])), len([]rune(verse.Text[word.Start:x.End]))}
}

// hook is the selector of a hook that the page offers to tests.
func hook(name string) string { return fmt.Sprintf(`[data-t="%s"]`, name) }

// click clicks the element with a hook.
func (p *page) click(name string) { p.t.Helper(); p.clickOn(hook(name)) }

// clickOn brings an element into view and clicks its middle, once nothing else lies over it and it
// has stood still for two frames. A page may still move between the look and the press, which then
// hits something else: that is aimed anew. A press that lands on what stays must come to a click.
func (p *page) clickOn(selector string) {
	p.t.Helper()
	p.wait("a control "+selector, visible(selector))
	aim := fmt.Sprintf(`(async () => {
		const frame = () => new Promise(r => requestAnimationFrame(r));
		const find = () => [...document.querySelectorAll(%q)].find(e => e.getClientRects().length > 0 && !e.disabled);
		const place = e => {
			e?.scrollIntoView({ block: "nearest", behavior: "instant" });
			const b = e?.getBoundingClientRect(), at = b && [b.left + b.width / 2, b.top + b.height / 2];
			return at && e.contains(document.elementFromPoint(...at)) ? at : null;
		};
		const first = place(find());
		await frame();
		await frame();
		const e = find(), then = place(e);
		if (!first || !then || first.join() !== then.join()) return [];
		if (!globalThis.aim) {
			const note = x => {
				const a = globalThis.aim, on = a.e.contains(x.target), moved = a.at !== a.e.getBoundingClientRect().top;
				if (x.type === "click" && (on || moved)) a.state = on ? "clicked" : "beside";
				if (x.type === "pointerdown" && a.state === "nothing") a.state = on ? "pressed" : "beside";
			};
			for (const k of ["pointerdown", "click"]) addEventListener(k, note, true);
		}
		globalThis.aim = { state: "nothing", e, at: e.getBoundingClientRect().top };
		return then;
	})()`, selector)
	deadline, state := time.Now().Add(patience), "not at rest, or under something else"
	for time.Now().Before(deadline) {
		if at := eval[[]float64](p, aim); len(at) == 2 {
			p.press(at[0], at[1])
			if state = p.landed(deadline); state == "clicked" {
				return
			}
			if state != "beside" {
				break
			}
		}
	}
	p.t.Fatalf("the control %s is not clicked: %s\n%s", selector, state, p.describe())
}

// longPress is true where the last press in the journal took so long that it may have been taken for a
// long one; sinceUp is how long (ms) ago it ended.
const (
	lastUp    = `Number(globalThis.journal?.findLast(x => /^\d+ pointer(up|cancel) /.test(x))?.split(" ")[0])`
	lastDown  = `Number(globalThis.journal?.findLast(x => /^\d+ pointerdown /.test(x))?.split(" ")[0])`
	longPress = `(` + lastUp + ` - ` + lastDown + ` >= 400)`
	sinceUp   = `(performance.now() - ` + lastUp + `)`
)

// landed waits for what has become of a press: clicked, also where the page has gone on to another,
// or beside the control; so is a touch that a slow machine held until it was a long one, which
// clicks nothing. What it returns else is how far the press came.
func (p *page) landed(deadline time.Time) (state string) {
	const became = `(state => state === "pressed" && ` + longPress + ` && ` + sinceUp + ` > 1000 ? "beside" : state ?? "clicked")(globalThis.aim?.state)`
	for time.Now().Before(deadline) {
		ctx, cancel := context.WithTimeout(p.ctx, patience)
		var err error
		state, err = value[string](ctx, p, became)
		cancel()
		if err != nil || state == "clicked" || state == "beside" {
			return cmp.Or(state, "clicked")
		}
		time.Sleep(20 * time.Millisecond)
	}
	return state
}

// visible is an expression: an element is there and has a size.
func visible(selector string) string {
	return fmt.Sprintf(`[...document.querySelectorAll(%q)].some(e => e.getClientRects().length > 0 && !e.disabled)`, selector)
}

// text returns what an element shows, with white space made one.
func (p *page) text(selector string) string {
	p.t.Helper()
	return strings.Join(strings.Fields(eval[string](p, fmt.Sprintf(`document.querySelector(%q)?.innerText ?? ""`, selector))), " ")
}

// count returns how many elements there are.
func (p *page) count(selector string) int {
	p.t.Helper()
	return eval[int](p, fmt.Sprintf(`document.querySelectorAll(%q).length`, selector))
}

// tap puts the pointer on the middle of a letter at rest, as a finger would.
func (p *page) tap(a letterAt) {
	p.t.Helper()
	place := fmt.Sprintf(`(() => {
		const w = document.querySelector('[data-t=passage] .w[data-v="%d"][data-w="%d"]');
		w.scrollIntoView({ block: "center", behavior: "instant" });
		const r = new Range();
		r.setStart(w.firstChild, %d);
		r.setEnd(w.firstChild, %d);
		let b = r.getBoundingClientRect(), part = 2;
		// WebKit gives an alif joined with lam no width: it is the left half of what the lam has.
		for (let from = %[3]d; !b.width && from > 0; part = 4) {
			r.setStart(w.firstChild, --from);
			b = r.getBoundingClientRect();
		}
		return [b.left + b.width / part, b.top + b.height / 2];
	})()`, a.v, a.w, a.from, a.to)
	p.tapAt(func() (x, y float64) { at := p.rest(place); return at[0], at[1] })
	p.inLarge(a.l)
}

// tapAt taps a place, and once more where a slow machine has held the finger until the word opened.
func (p *page) tapAt(place func() (x, y float64)) {
	p.t.Helper()
	for {
		x, y := place()
		p.press(x, y)
		p.frames()
		if !eval[bool](p, `Boolean(document.querySelector("dialog.zoom")) && `+longPress) {
			return
		}
		p.click("zoom-close")
		p.wait("the held word to close", `!document.querySelector("dialog.zoom")`)
	}
}

// inLarge chooses the letter in the word that a finger's tap has opened, if it has.
func (p *page) inLarge(l int) {
	p.t.Helper()
	const open = `document.querySelector("dialog.zoom")`
	if p.tab == nil || !eval[bool](p, `new Promise(r => requestAnimationFrame(() => requestAnimationFrame(() => r(Boolean(`+open+`)))))`) {
		return
	}
	p.click(fmt.Sprintf("zoom-letter-%d", l))
	p.wait("the word to close", "!"+open)
}

// marked returns the letters that are coloured as marks on the lines, by the ranges of the
// highlights of the family.
func (p *page) marked(family string) int {
	p.t.Helper()
	return eval[int](p, fmt.Sprintf(`[...(CSS.highlights.get("f-%s") ?? [])].length`, family))
}

// begin opens the site and names a learner.
func (p *page) begin(address, name string) {
	p.t.Helper()
	p.open(address)
	p.wait("the first screen", drawn)
	p.wait("the field for a name", visible(hook("name")))
	eval[any](p, fmt.Sprintf(`(document.querySelector(%q).focus(), 0)`, hook("name")))
	p.keys(name)
	p.click("begin")
	p.wait("the card of today", `document.querySelector('[data-t^="next-"]')`)
}

// choose opens lines through the screen where they are chosen.
func (p *page) choose(rule string, surah, from, to int) {
	p.t.Helper()
	eval[any](p, `(location.hash = "#/lines", 0)`)
	p.wait("the choice of lines", visible(hook("open")))
	p.set("rule", rule)
	if rule != "" {
		p.wait("lines proposed for the rule", fmt.Sprintf(`document.querySelector(%q)?.innerText`, hook("choose-found")))
	}
	p.set("surah", fmt.Sprint(surah))
	p.set("from", fmt.Sprint(from))
	p.set("to", fmt.Sprint(to))
	p.click("open")
	p.wait("the lines", visible(hook(fmt.Sprintf("verse-%d-%d", surah, to))))
	eval[any](p, `document.fonts.ready.then(() => 0)`)
}

// set gives a field a value, as a choice by hand does.
func (p *page) set(name, value string) {
	p.t.Helper()
	eval[any](p, fmt.Sprintf(`(() => {
		const e = document.querySelector(%q);
		e.value = %q;
		e.dispatchEvent(new Event("input", { bubbles: true }));
		e.dispatchEvent(new Event("change", { bubbles: true }));
		if (e.value !== %[2]q) throw new Error(%[1]q + " does not take " + %[2]q);
		return 0;
	})()`, hook(name), value))
}

func waitFonts() chromedp.Action[chromedp.Void] {
	return chromedp.Evaluate[chromedp.Void](`document.fonts.ready.then(() => 0)`, chromedp.EvalAwaitPromise)
}

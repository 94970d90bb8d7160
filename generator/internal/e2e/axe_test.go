package e2e

import (
	"fmt"
	"os"
	"path"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/input"
)

// axe runs axe-core (Deque, MPL-2.0: rules drawn from WCAG 2 and ARIA) over the page as it stands
// and reports what it finds.
func (p *page) axe(where string) {
	p.t.Helper()
	type node struct {
		HTML    string `json:"html"`
		Summary string `json:"failureSummary"`
	}
	type violation struct {
		ID    string `json:"id"`
		Help  string `json:"help"`
		Nodes []node `json:"nodes"`
	}
	type result struct {
		Passes     int         `json:"passes"`
		Violations []violation `json:"violations"`
	}
	r := eval[result](p, `(async () => {
		await document.fonts.ready;
		await Promise.all(document.getAnimations().map(a => a.finished.catch(() => 0)));
		const r = await axe.run(document, {resultTypes: ["violations"]});
		return {passes: r.passes.length, violations: r.violations.map(v => ({id: v.id, help: v.help, nodes: v.nodes.slice(0, 4).map(n => ({html: n.html.slice(0, 200), failureSummary: n.failureSummary}))}))};
	})()`)
	if r.Passes < 5 {
		p.t.Errorf("%s: only %d rules were applied: this check sees nothing", where, r.Passes)
	}
	for _, v := range r.Violations {
		var at []string
		for _, n := range v.Nodes {
			at = append(at, "  "+n.HTML+"\n  "+strings.ReplaceAll(n.Summary, "\n", " "))
		}
		p.t.Errorf("%s: %s: %s\n%s", where, v.ID, v.Help, strings.Join(at, "\n"))
	}
}

// withAxe puts axe-core into every document that p opens from now on, as the browser's own script:
// the page's content policy stays as it is.
func (p *page) withAxe() {
	p.t.Helper()
	src, err := os.ReadFile(tool(p.t, "axe-core/axe.min.js"))
	if err != nil {
		p.t.Fatal(err)
	}
	p.before(string(src))
}

// prefer emulates what the reader has asked of the device: a media feature and its value.
func (p *page) prefer(name, value string) {
	p.t.Helper()
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: name, Value: value}}})
}

func (p *page) scheme(value string) { p.t.Helper(); p.prefer("prefers-color-scheme", value) }

// TestAxePages: no violation on any page that is read, light and dark.
func TestAxePages(t *testing.T) {
	files := built(t)
	s := serve(t, "/", files)
	p := newPage(t)
	p.withAxe()
	for _, scheme := range []string{"light", "dark"} {
		p.scheme(scheme)
		for _, f := range files {
			if path.Ext(f.Name) != ".html" || f.Name == "index.html" {
				continue
			}
			p.open(s.address + f.Name)
			eval[bool](p, `document.querySelectorAll("details").forEach(d => { d.open = true; }), true`)
			p.axe(f.Name + " " + scheme)
		}
	}
}

// TestAxeScreens: no violation on the app's screens, light and dark, for a family that has just
// begun and for one with a record.
func TestAxeScreens(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.withAxe()
	p.open(s.address)
	p.wait("the first screen", visible("main"))
	p.axe("first visit")
	p.begin(s.address, "Sara")
	session(p)
	p.wait("the session", visible(hook("open-session")))
	one := p.href("open-session")
	p.click("nav-learner")
	p.addLearner("Yusuf")
	for _, scheme := range []string{"light", "dark"} {
		p.scheme(scheme)
		for _, at := range []string{
			one, one + "&edit=1", "#/record?add=1", "#/record?session=nobody", "#/today", "#/lines", fmt.Sprintf("#/lines?rule=%s&from=%d:%d&to=%d:%d", rule, surah, from, surah, upTo), "#/rules", "#/record", "#/learner", "#/learners",
			fmt.Sprintf("#/print?rule=%s&from=%d:%d&to=%d:%d", rule, surah, from, surah, upTo), "#/print?sheet=answer&rule=noon-ikhfa&also=ghunnah,stops&from=78:12&to=78:16", "#/print?sheet=card", "#/print?sheet=record", "#/print?sheet=booklet&key=madd-lazim&answers=only", "#/shared?" + sharedLines, "#/nowhere",
		} {
			eval[bool](p, fmt.Sprintf(`location.hash = %q, true`, at))
			p.wait(at, fmt.Sprintf(`location.hash === %q && document.querySelector("main")?.innerText.length > 20`, at))
			eval[bool](p, `new Promise(r => setTimeout(() => r(true), 300))`) // what comes in after the first drawing
			p.wait(at+" with all that it waits for", complete)
			p.axe(at + " " + scheme)
		}
	}
}

// complete is true where no part is on its way: no screen, no record, no plan, and no pages.
const complete = `!document.querySelector("[aria-busy=true], [data-t=planning], [data-t=print-now]:disabled") && !document.querySelector("[data-t^=start-]:disabled")`

// TestAxeSteps: no violation at any step of the lines, light and dark: the enlarged word, the
// adult's help, the panel of a letter, what the check says, reading, and the end.
func TestAxeSteps(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.withAxe()
	p.begin(s.address, "Sara")
	want := places(t, rule, surah, from, upTo)
	for i, scheme := range []string{"light", "dark"} {
		p.scheme(scheme)
		p.choose(rule, surah, from, upTo)

		// A word is held until it opens.
		at := fmt.Sprintf(`[data-t=passage] .w[data-v="%d"][data-w="%d"]`, want[0].v, want[0].w)
		x, y := p.place(at)
		p.mouse(input.DispatchMouseEventTypeMousePressed, x, y)
		p.wait("the enlarged word", visible(hook("zoom")))
		p.mouse(input.DispatchMouseEventTypeMouseReleased, x, y)
		p.axe("enlarged word " + scheme)
		if small := eval[[]string](p, `[...document.querySelectorAll(".zoom-letter")].map(e => e.getBoundingClientRect()).filter(b => b.width < 44 || b.height < 44).map(b => b.width + " by " + b.height)`); len(small) > 0 {
			t.Errorf("letters of the enlarged word are small targets: %s", small)
		}
		p.click(fmt.Sprintf("zoom-letter-%d", want[0].l))
		p.wait("the letter to be marked", fmt.Sprintf(`document.querySelector('%s').getAttribute("aria-pressed") === "true"`, hook(fmt.Sprintf("zoom-letter-%d", want[0].l))))
		p.axe("marked letter of the enlarged word " + scheme)
		p.click("zoom-close")
		p.wait("the word to close", `!document.querySelector("dialog")`)
		if n := p.marked(family); n != 1 {
			t.Errorf("%d letters are marked, want 1", n)
		}

		p.click("drawer")
		p.wait("the help", visible(hook("hint")))
		p.axe("help " + scheme)
		p.click("ask")
		p.tap(want[1])
		p.wait("the letter's panel", visible(hook("letter-name")))
		p.axe("letter " + scheme)
		p.click("letter-close")

		p.click("next")
		p.wait("the way to look again", visible(hook("again")))
		p.axe("first look " + scheme)
		p.showAll()
		p.wait("what was missed", visible(hook("missed")))
		eval[bool](p, `document.querySelectorAll(".told").forEach(d => { d.open = true; }), true`)
		p.axe("check " + scheme)
		p.clickOn(hook("found") + " .word-link")
		p.wait("the letter's panel", visible(hook("letter-name")))
		if !eval[bool](p, `document.querySelector('`+hook("found")+`').open`) {
			t.Error("looking at a letter closes the list it was chosen from")
		}
		p.click("letter-close")
		p.click("next")
		p.wait("reading", `document.querySelector("main.lines")?.dataset.phase === "read"`)
		p.axe("read " + scheme)
		p.click("next")
		p.wait("the end", visible(hook("outcome-some")))
		p.axe("end " + scheme)
		p.click("outcome-some")
		p.wait("today again", `document.querySelector('[data-t^="next-"]')`)
		p.click("nav-record")
		p.wait("the total of the rule", fmt.Sprintf(`document.querySelector('%s')?.innerText.includes("found %d of %d")`, hook("total-"+rule), i+1, (i+1)*len(want)))
		p.axe("totals " + scheme)
	}
	p.calm()
}

package e2e

import (
	"fmt"
	"os"
	"path"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	cdppage "github.com/chromedp/cdproto/page"
)

// axe runs axe-core (Deque, MPL-2.0: rules drawn from WCAG 2 and ARIA) over the page as it stands and reports what it finds.
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

// withAxe puts axe-core into every document that p opens from now on, as the browser's own script: the page's content
// policy stays as it is.
func (p *page) withAxe() {
	p.t.Helper()
	src, err := os.ReadFile(tool(p.t, "axe-core/axe.min.js"))
	if err != nil {
		p.t.Fatal(err)
	}
	call(p, cdppage.AddScriptToEvaluateOnNewDocument, cdppage.AddScriptToEvaluateOnNewDocumentParams{Source: string(src)})
}

func (p *page) scheme(value string) {
	p.t.Helper()
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: value}}})
}

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

// TestAxeScreens: no violation on the app's screens, light and dark, for a family that has just begun and for one with a
// record.
func TestAxeScreens(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.withAxe()
	p.open(s.address)
	p.wait("the first screen", visible("main"))
	p.axe("first visit")
	p.begin(s.address, "Sara")
	session(p)
	for _, scheme := range []string{"light", "dark"} {
		p.scheme(scheme)
		for _, at := range []string{
			"#/today", "#/lines", fmt.Sprintf("#/lines?rule=%s&from=%d:%d&to=%d:%d", rule, surah, from, surah, upTo), "#/rules", "#/record", "#/learner",
			fmt.Sprintf("#/print?rule=%s&from=%d:%d&to=%d:%d", rule, surah, from, surah, upTo), "#/print?sheet=card", "#/print?sheet=record", "#/nowhere",
		} {
			eval[bool](p, fmt.Sprintf(`location.hash = %q, true`, at))
			p.wait(at, fmt.Sprintf(`location.hash === %q && document.querySelector("main")?.innerText.length > 20`, at))
			eval[bool](p, `new Promise(r => setTimeout(() => r(true), 300))`) // what comes in after the first drawing
			p.axe(at + " " + scheme)
		}
	}
}

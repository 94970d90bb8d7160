package e2e

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// covered lists the controls that the notice lies over and that cannot be scrolled free of it, and
// the main buttons that it lies over at all.
const covered = `(async () => {
	const frames = async () => { for (let i = 0; i < 3; i++) await new Promise(r => requestAnimationFrame(() => setTimeout(r))); };
	await frames();
	const notice = document.querySelector(".notice"), bad = [];
	const free = e => {
		const b = e.getBoundingClientRect(), n = notice.getBoundingClientRect();
		return b.bottom <= n.top || b.top >= n.bottom || b.right <= n.left || b.left >= n.right;
	};
	const seen = e => e.checkVisibility(); // what is folded away has its place all the same
	const name = e => e.dataset.t ?? e.innerText;
	for (const e of document.querySelectorAll("#app .main")) if (seen(e) && !free(e)) bad.push("main " + name(e));
	for (const e of document.querySelectorAll("#app :is(a, button, input, select, summary)")) {
		if (notice.contains(e) || !seen(e)) continue;
		e.scrollIntoView({ block: "nearest", behavior: "instant" });
		if (!free(e)) bad.push(name(e));
	}
	scrollTo(0, 0);
	return bad.join();
})()`

// TestNoticeCoversNothing shows a notice that stays, on every screen and in the narrowest and a
// common width of phones: the main button is not under it, and any other control can be scrolled
// free.
func TestNoticeCoversNothing(t *testing.T) {
	s := serve(t, "/", edition(t, everyKind(1)))
	p := newPage(t)
	p.begin(s.address, "Test child")
	p.wait("everything to be kept", kept)
	s.host.Set(edition(t, everyKind(2)))
	if state := eval[string](p, update); state != "installed" {
		t.Fatalf("the newer version is %s", state)
	}
	screens := []struct{ at, there string }{
		{"#/today", `document.querySelector('[data-t^="next-"]')`},
		{"#/lines?rule=qalqalah&from=111:1&to=111:5", visible(hook("next"))},
		{"#/lines", visible(hook("open-1"))},
		{"#/rules", visible(hook("next"))},
		{"#/record", `document.querySelector("main h1")`},
		{"#/learner", `document.querySelector("[data-t^=pencil-]")`},
		{"#/print", `document.querySelector("main.print .leaf")`},
	}
	look := func(what string) {
		t.Helper()
		if bad := eval[string](p, covered); bad != "" {
			t.Errorf("%s: the notice covers %s", what, bad)
		}
	}
	for _, size := range [][2]int64{{390, 844}, {320, 568}, {1280, 800}} {
		p.do(chromedp.EmulateViewport(size[0], size[1]))
		for _, x := range screens {
			p.open(s.address + "about.html")
			p.open(s.address + x.at)
			p.wait(x.at, x.there)
			said := "notice-update"
			if strings.HasPrefix(x.at, "#/lines?") { // where none is offered; so the link, which cannot be copied, is shown
				said = "notice-said"
				eval[any](p, `(navigator.clipboard.writeText = () => Promise.reject(new Error("no clipboard")), 0)`)
				p.inMenu("share")
			}
			p.wait("the notice", visible(hook(said)))
			what := fmt.Sprintf("%s at %d by %d", x.at, size[0], size[1])
			look(what)
			p.photo(fmt.Sprintf("notice-%s-%d", strings.ReplaceAll(x.at[2:min(len(x.at), 8)], "?", "-"), size[0]))
			if strings.HasPrefix(x.at, "#/lines?") {
				for p.count(hook("outcome-some")) == 0 {
					p.onwards()
					look(what + ", further")
				}
				p.photo(fmt.Sprintf("notice-end-%d", size[0]))
				p.click("step-back")
				p.waitDraft("read", 0)
			}
		}
	}
}

// closeNotice closes a notice that may have gone by itself.
func (p *page) closeNotice() {
	p.t.Helper()
	p.wait("no notice", `document.querySelector("[data-t=notice-close]")?.click() ?? `+noNotice)
}

// photo saves what Chromium shows in the folder that SUTUR_PICTURES names, if it names one: in the
// light and in the dark.
func (p *page) photo(name string) {
	p.t.Helper()
	if os.Getenv("SUTUR_PICTURES") == "" {
		return
	}
	for _, theme := range []string{"dark", "light"} {
		p.scheme(theme)
		p.save(name + "-" + theme)
	}
}

// save is photo as the page is now; the variable must be set.
func (p *page) save(name string) {
	p.t.Helper()
	dir := os.Getenv("SUTUR_PICTURES")
	png, err := chromedp.Run(p.ctx, chromedp.CaptureScreenshot())
	if err == nil {
		err = os.MkdirAll(dir, 0o755)
	}
	if err == nil {
		err = os.WriteFile(filepath.Join(dir, name+".png"), png, 0o644)
	}
	if err != nil {
		p.t.Fatal(err)
	}
}

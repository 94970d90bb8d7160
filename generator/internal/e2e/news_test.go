package e2e

import (
	"fmt"
	"slices"
	"testing"
)

// TestWhatIsNew: the offer of a newer version says what it brings that this one has not, in the words
// of the change log. In the middle of lines nothing is offered; after them it is.
func TestWhatIsNew(t *testing.T) {
	s := serve(t, "/a/b/", built(t))
	p := newPage(t)
	p.withAxe()
	p.begin(s.address, "")
	p.wait("everything to be stored", kept)
	const heading = "For families and teachers:\n\n"
	s.host.Set(edition(t, append(slices.Clone(onePage), change{"CHANGELOG.md", heading, heading + "- A new thing, in\n  two lines.\n- Another & one.\n"})))
	p.open(s.address + "#/lines?rule=qalqalah&from=111:1&to=111:5")
	p.wait("the lines", visible(hook("next")))
	eval[any](p, `navigator.serviceWorker.getRegistration().then(r => r.update()).then(() => 0)`)
	eval[any](p, `(async () => {
		while (!(await navigator.serviceWorker.getRegistration()).waiting) await new Promise(ok => setTimeout(ok, 50));
		return 0;
	})()`)
	p.tap(letterAt{0, 0, 0, 0, 1})
	p.wait("a mark", enabled("undo"))
	if n := p.count(hook("notice-update")); n > 0 {
		t.Error("a newer version is offered in the middle of lines")
	}
	p.click("back")
	p.wait("the notice of a newer version", visible(hook("notice-update")))
	p.click("notice-more")
	p.wait("what is new", visible(hook("news")))
	items := eval[[]string](p, fmt.Sprintf(`[...document.querySelectorAll(%q)].map(x => x.textContent)`, hook("news")+" li"))
	if want := []string{"A new thing, in two lines.", "Another & one."}; !slices.Equal(items, want) {
		t.Errorf("new is %q, want %q", items, want)
	}
	p.axe("what is new")
	p.click("news-later")
	p.wait("the dialog to close", `!`+visible(hook("news")))
	if p.count(hook("notice-update")) == 0 {
		t.Error("the offer is gone")
	}
	p.click("notice-more")
	p.wait("what is new", visible(hook("news")))
	eval[any](p, `(window.before = true, 0)`)
	p.click("news-take")
	p.wait("the page to come again", `!window.before && `+drawn)
	// Nothing is new to the version that is in use now.
	if got := eval[string](p, `fetch("news.json").then(r => r.json()).then(x => x[0])`); got != "A new thing, in two lines." {
		t.Errorf("the version in use says first: %q", got)
	}
	p.calm()
}

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"sutur/generator/internal/engine"
)

// TestSaid: what a screen reader is told of marks, steps, stops and Undo, also of the same twice;
// and the words of the lines are called by what is marked in them.
func TestSaid(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Nur")
		want := places(t, "qalqalah", 111, 1, 5)
		p.open(s.address + "#/lines?rule=qalqalah&from=111:1&to=111:5")
		p.wait("the lines", visible(hook("next")))
		label := func(v, w int) string {
			return eval[string](p, fmt.Sprintf(`document.querySelector('.w[data-v="%d"][data-w="%d"]').ariaLabel ?? ""`, v, w))
		}
		texts := `[...document.querySelectorAll("[data-t=passage] .w")].map(w => [...w.childNodes].filter(n => n.nodeType === 3).map(n => n.data).join("|")).join(" ")`
		text := eval[string](p, texts)

		p.tabTo(".w")
		for range 2 { // letters that are no place of the rule, and back
			p.key(engine.KeyEnter)
			p.said("ta, fatha, marked. Letter 1 of 3.")
			p.key(engine.KeyEnter)
			p.said("ta, fatha. Letter 1 of 3.")
		}
		if at := eval[string](p, `document.querySelector("main.lines").dataset.phase`); at != "find" {
			t.Fatalf("Enter on a word leads to %s", at)
		}
		p.key(engine.KeySp)
		if got := label(0, 0); !strings.HasSuffix(got, ": marked ta (letter 1)") {
			t.Errorf("a word with a mark is called %q", got)
		}
		eval[any](p, `(globalThis.told = [], new MutationObserver(l => l.forEach(m => m.addedNodes.forEach(n => n.data?.trim() && told.push(n.data)))).observe(
			document.querySelector("[data-t=speech]"), { childList: true, subtree: true }), 0)`)
		undone := "Undone: ta is no longer marked."
		p.enter(hook("undo"))
		p.said(undone)
		p.tabTo(".w")
		p.key(engine.KeySp)
		p.enter(hook("undo"))
		p.wait("to be told twice", fmt.Sprintf(`told.filter(x => x.trim() === %q).length === 2`, undone))

		for _, a := range want[:2] {
			p.mark(a)
		}
		p.mark(letterAt{})
		p.enter(hook("next"))
		p.wait("the check", fmt.Sprintf(atPhase, "check"))
		p.said("Step: check. " + p.text(hook("task")))
		if !strings.Contains(p.text(hook("task")), "2") {
			t.Errorf("the check says %q", p.text(hook("task")))
		}
		if n := p.count(`.w[aria-label*="missed"]`); n > 0 {
			t.Errorf("%d words tell what the check still keeps to itself", n)
		}
		p.enter(hook("show-all"))
		p.on("telling all places", hook("task"))
		if got := label(0, 0); !strings.Contains(got, "extra mark on ta") {
			t.Errorf("a word with a wrong mark is called %q", got)
		}
		for i, a := range want {
			how := map[bool]string{true: ": found ", false: ": missed "}[i < 2]
			if a.w == 0 && a.v == 0 {
				how = strings.TrimPrefix(how, ": ") // after the wrong one
			}
			if got := label(a.v, a.w); !strings.Contains(got, how) {
				t.Errorf("the word of place %d is called %q, want %q", i, got, how)
			}
		}
		p.enter(hook("next"))
		if got := label(want[0].v, want[0].w); !strings.Contains(got, "Qalqalah on ") {
			t.Errorf("a word with a place, when reading, is called %q", got)
		}
		for _, words := range []string{"we read on here", "we stop here", "we read on here", "we stop here"} {
			p.enter(".stop.end:not(:disabled)")
			p.said(words)
		}
		p.tabTo(".w")
		p.key("o")
		p.wait("the enlarged word", visible(hook("zoom")))
		if n := p.count(".zoom-letter[aria-pressed]"); n > 0 {
			t.Errorf("%d letters of the enlarged word look as if a press marked them", n)
		}
		if now := eval[string](p, texts); now != text {
			t.Errorf("the text has become %q, want %q", now, text)
		}
	})
}

// mark marks a letter in the enlarged word, which says that it is marked.
func (p *page) mark(a letterAt) {
	p.t.Helper()
	p.tabTo(".w")
	eval[any](p, fmt.Sprintf(`(document.querySelector('.w[data-v="%d"][data-w="%d"]').click(), 0)`, a.v, a.w))
	letter := hook(fmt.Sprintf("zoom-letter-%d", a.l))
	p.wait("the enlarged word", visible(letter))
	if a.l > 0 { // the first has the keyboard
		p.onTo(letter)
	}
	p.key(engine.KeySp)
	p.wait("the letter to be called marked", fmt.Sprintf(`document.querySelector('%s').ariaLabel.endsWith(", marked")`, letter))
	p.key(engine.KeyEscape)
	p.wait("the word to close", `!document.querySelector("dialog")`)
}

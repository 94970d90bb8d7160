package e2e

import (
	"fmt"
	"strings"
	"testing"

	"sutur/generator/internal/engine"
)

// focus is what has the keyboard: the name of the control, else its class or element, and "page"
// where nothing has it.
const focus = `(e => e === document.body || !e ? "page" : e.dataset.t ?? (e.className || e.nodeName))(document.activeElement)`

// key types one key, once the page has come to rest after what was done before.
func (p *page) key(keys ...string) {
	p.t.Helper()
	for _, k := range keys {
		p.frames()
		p.keys(k)
	}
	p.frames()
}

func (p *page) frames() {
	p.t.Helper()
	eval[any](p, `new Promise(r => requestAnimationFrame(() => setTimeout(() => requestAnimationFrame(() => setTimeout(() => r(0))))))`)
}

// tabTo goes by Tab, from the first control of the page on, to an element.
func (p *page) tabTo(selector string) {
	p.t.Helper()
	p.wait("a control "+selector, visible(selector))
	eval[any](p, `(document.querySelector(".skip").focus(), 0)`)
	p.onTo(selector)
}

// onTo goes by Tab, from where the keyboard is on, to an element.
func (p *page) onTo(selector string) {
	p.t.Helper()
	var way []string
	for range 80 {
		p.keys(engine.KeyTab)
		if eval[bool](p, fmt.Sprintf(`document.activeElement.matches(%q)`, selector)) {
			return
		}
		way = append(way, eval[string](p, focus))
	}
	p.t.Fatalf("Tab does not lead to %s: %s\n%s", selector, way, p.describe())
}

// enter goes to a control and presses it by keyboard.
func (p *page) enter(selector string) {
	p.t.Helper()
	p.tabTo(selector)
	p.key(engine.KeyEnter)
}

// on waits until the keyboard is on an element, and never on the page after that.
func (p *page) on(after, selector string) {
	p.t.Helper()
	p.wait("the keyboard on "+selector+" after "+after, fmt.Sprintf(`document.activeElement.matches(%q)`, selector))
	p.frames()
	if at := eval[string](p, focus); at == "page" {
		p.t.Errorf("after %s the keyboard is on the page", after)
	}
}

// said waits for what a screen reader is told.
func (p *page) said(words string) {
	p.t.Helper()
	p.wait("to be told "+words, fmt.Sprintf(`document.querySelector("[data-t=speech]")?.textContent.includes(%q)`, words))
}

const reading = "#/lines?rule=qalqalah&from=111:1&to=111:5"

// TestFocusInEngines walks through everything that takes away what the keyboard is on: each time it
// is somewhere else on the page afterwards, and where one expects it.
func TestFocusInEngines(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.open(s.address)
		p.wait("the field for a name", visible(hook("name")))
		p.tabTo(hook("name"))
		p.keys("Nur")
		p.onTo(hook("begin"))
		p.key(engine.KeyEnter)
		p.on("Begin", ".today h1")
		p.enter(hook("settled"))
		p.on("that they read well", hook("next-teach")+" h2")

		p.open(s.address + reading)
		p.wait("the lines", visible(hook("next")))
		p.focusOnLines()
		p.focusOnNotice()
		p.focusToTheEnd()

		p.putSessions(s, 3)
		p.open(s.address + "#/record")
		p.wait("the record", visible(hook("session")))
		p.focusInRecord(p.count(hook("session")))
		eval[any](p, `(location.hash = "#/learner", 0)`)
		p.enter(hook("remove-learner"))
		p.wait("the question", visible(hook("confirm")))
		p.key(engine.KeyEscape)
		p.on("Escape", hook("remove-learner"))
		p.key(engine.KeyEnter)
		p.wait("the question", visible(hook("confirm")))
		p.onTo(hook("confirm-remove"))
		p.key(engine.KeyEnter)
		p.wait("nobody", `!document.querySelector("[data-t=nickname]")`)
		p.on("removing the last learner", ".learner h1")
	})
}

// focusOnLines opens and closes what there is on the lines, by Enter and by Escape.
func (p *page) focusOnLines() {
	p.t.Helper()
	const word = ".w"
	summary := hook("menu") + " summary"
	p.tabTo(word)
	for _, how := range []string{"Close", "Escape"} {
		p.key("e")
		p.wait("the panel", visible(hook("letter-close")))
		if how == "Close" {
			p.onTo(hook("letter-close"))
			p.key(engine.KeyEnter)
		} else {
			p.key(engine.KeyEscape)
		}
		p.wait("no panel", "!("+visible(hook("letter-close"))+")")
		p.on(how+" of the letter", word)
	}
	p.key("o")
	p.wait("the enlarged word", visible(hook("zoom")))
	p.key(engine.KeyEscape)
	p.wait("the word to close", `!document.querySelector("dialog")`)
	p.on("Escape of the enlarged word", word)

	closed := `!document.querySelector("[data-t=menu]").open`
	p.enter(summary)
	p.wait("the menu", visible(hook("share")))
	p.onTo(hook("share"))
	p.key(engine.KeyEscape)
	p.wait("the menu to close", closed)
	p.on("Escape of the menu", summary)
	p.key(engine.KeyEnter)
	p.wait("the menu", visible(hook("share")))
	p.onTo(hook("share"))
	p.key(engine.KeyEnter)
	p.wait("the menu to close", closed)
	p.on("Share", summary)

	p.enter(hook("drawer"))
	p.wait("the help", visible(hook("answer")))
	p.onTo(hook("answer"))
	p.key(engine.KeyEscape)
	p.wait("the help to close", `document.querySelector("[data-t=drawer]").ariaExpanded === "false"`)
	p.on("Escape of the help", hook("drawer"))
	p.key(engine.KeyEnter)
	p.onTo(hook("ask"))
	p.key(engine.KeyEnter)
	p.on("asking", hook("task"))
	p.enter(hook("drawer"))
	p.onTo(hook("ask"))
	p.key(engine.KeyEnter)
	p.on("marking again", hook("ask"))
	p.key(engine.KeyEscape)
	p.on("Escape of the help", hook("drawer"))

	p.tabTo(word)
	p.key(engine.KeySp)
	p.wait("a mark", enabled("undo"))
	p.enter(hook("undo"))
	p.on("the last Undo", hook("task"))
}

// focusOnNotice closes a notice under the keyboard, and waits for one to go. Time runs three times as
// fast for what waits long.
func (p *page) focusOnNotice() {
	p.t.Helper()
	eval[any](p, `(() => {
		const own = setTimeout;
		window.setTimeout = (f, ms, ...a) => own(f, ms > 5000 ? ms / 3 : ms, ...a);
		return 0;
	})()`)
	notice := func() {
		p.t.Helper()
		p.enter(hook("menu") + " summary")
		p.onTo(hook("restart"))
		p.key(engine.KeyEnter)
		p.on("Start again", hook("task"))
		p.onTo(hook("notice-action"))
	}
	gone := `!document.querySelector(".notice")`
	notice()
	p.onTo(hook("notice-close"))
	eval[any](p, `new Promise(r => setTimeout(() => r(0), 4000))`)
	if at := eval[string](p, focus); at != "notice-close" {
		p.t.Errorf("a notice went from under the keyboard, which is on %s", at)
	}
	p.key(engine.KeyEnter)
	p.wait("no notice", gone)
	p.on("Close of the notice", "main *")
	notice()
	p.key(engine.KeyEnter)
	p.wait("no notice", gone)
	p.on("Undo of the notice", "main *")
	notice()
	p.tabTo(".w")
	p.wait("the notice to go", gone)
	p.on("the end of the notice", ".w")
}

// focusToTheEnd goes through the steps of a session.
func (p *page) focusToTheEnd() {
	p.t.Helper()
	for _, step := range []string{"check", "read", "done"} {
		p.enter(hook("next"))
		p.wait(step, fmt.Sprintf(atPhase, step))
		p.on(step, hook("task"))
		p.said("Step: " + step)
		if step == "check" {
			p.enter(hook("show-all"))
			p.on("telling all places", hook("task"))
			p.enter(".word-link")
			p.wait("the panel", visible(hook("letter-close")))
			p.onTo(hook("letter-close"))
			p.key(engine.KeyEnter)
			p.on("Close of a row's letter", ".word-link")
		}
	}
	p.enter(hook("outcome-some"))
	p.on("keeping the session", ".today h1")
	p.onTo(hook("notice-action"))
	p.key(engine.KeyEnter)
	p.wait("the question again", visible(hook("outcome-some")))
	p.on("Undo", "main.lines *")
}

// focusInRecord removes sessions, brings the first back, and then removes them all.
func (p *page) focusInRecord(n int) {
	p.t.Helper()
	left := func(n int) string {
		return fmt.Sprintf(`document.querySelectorAll('%s').length === %d`, hook("session"), n)
	}
	p.enter(hook("remove"))
	p.wait("a session less", left(n-1))
	p.on("Remove", hook("remove"))
	p.onTo(hook("notice-action"))
	p.key(engine.KeyEnter)
	p.wait("the session again", left(n))
	p.on("Undo", "main.record *")
	for ; n > 0; n-- {
		p.enter(hook("remove"))
		p.wait("a session less", left(n-1))
		p.on("Remove", "main.record *")
	}
	p.on("removing the last session", ".record h1")
}

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
		for _, words := range []string{"We read on here.", "We stop here.", "We read on here.", "We stop here."} {
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

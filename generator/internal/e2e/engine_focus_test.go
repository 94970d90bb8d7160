package e2e

import (
	"fmt"
	"testing"
	"time"

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

		for _, hours := range []int{24, 1} { // each in a list of its own; and in one, but around midnight
			p.putSessionsApart(s, 3, hours)
			p.open(s.address + "#/record")
			p.wait("the record", visible(hook("session")))
			p.focusInRecord(p.count(hook("session")))
		}
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

// delays has what waits in the page from now on wait as long as the expression says, in which ms is how
// long (ms) it would.
func (p *page) delays(expression string) {
	p.t.Helper()
	eval[any](p, `(own => { globalThis.setTimeout = (f, ms, ...a) => own(f, `+expression+`, ...a); return 0; })(globalThis.ownTimeout ??= setTimeout.bind(globalThis))`)
}

// hurry makes time run three times as fast for what waits long.
func (p *page) hurry() { p.t.Helper(); p.delays(`ms > 5000 ? ms / 3 : ms`) }

// past waits longer than a notice stays that offers nothing to do.
func (p *page) past() {
	p.t.Helper()
	eval[any](p, `new Promise(r => setTimeout(() => r(0), 4000))`)
}

const noNotice = `!document.querySelector(".notice")`

// focusOnNotice closes a notice, and uses one; one with something to do stays until then, with the
// keyboard on it or not.
func (p *page) focusOnNotice() {
	p.t.Helper()
	p.hurry()
	notice := func() {
		p.t.Helper()
		p.enter(hook("menu") + " summary")
		p.onTo(hook("restart"))
		p.key(engine.KeyEnter)
		p.on("Start again", hook("task"))
		p.onTo(hook("notice-action"))
	}
	notice()
	p.onTo(hook("notice-close"))
	p.past()
	if at := eval[string](p, focus); at != "notice-close" {
		p.t.Errorf("a notice went from under the keyboard, which is on %s", at)
	}
	p.tabTo(".w")
	p.past()
	if p.count(hook("notice-action")) == 0 {
		p.t.Error("a notice with Undo went by itself")
	}
	p.onTo(hook("notice-close"))
	p.key(engine.KeyEnter)
	p.wait("no notice", noNotice)
	p.on("Close of the notice", "main *")
	notice()
	p.key(engine.KeyEnter)
	p.wait("no notice", noNotice)
	p.on("Undo of the notice", "main *")
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
	p.delays(`ms`) // a notice goes after nine seconds, in which the keyboard must reach it
	p.enter(hook("remove"))
	p.wait("a session less", left(n-1))
	p.on("Remove", hook("remove"))
	p.onTo(hook("notice-action"))
	p.key(engine.KeyEnter)
	p.wait("the session again", left(n))
	p.on("Undo", "main.record *")
	p.wait("a notice with nothing to do", visible(hook("notice-back")))
	p.onTo(hook("notice-back") + " " + hook("notice-close"))
	p.hurry()
	time.Sleep(10 * time.Second)
	if at := eval[string](p, focus); at != "notice-close" {
		p.t.Errorf("a notice went from under the keyboard, which is on %s", at)
	}
	p.tabTo(hook("remove"))
	p.wait("the notice to go", noNotice)
	p.on("the end of the notice", hook("remove"))
	for ; n > 0; n-- {
		p.enter(hook("remove"))
		p.wait("a session less", left(n-1))
		p.on("Remove", "main.record *")
	}
	p.on("removing the last session", ".record h1")
}

package e2e

import (
	"fmt"
	"testing"
	"time"

	"sutur/generator/internal/engine"
)

// switchTo goes to another learner by two presses.
func (p *page) switchTo(id string) {
	p.t.Helper()
	p.clickOn(hook("switch") + " summary")
	p.click("switch-" + id)
}

// reads waits until a learner is the one whose lines or day is shown.
func (p *page) reads(name string) {
	p.t.Helper()
	p.wait(name+" to be shown", fmt.Sprintf(`document.querySelector("[data-t=whose]")?.innerText === %q`, name))
}

// inHand waits until the device has kept who reads: the page is left at once.
func (p *page) inHand(id string) {
	p.t.Helper()
	deadline := time.Now().Add(patience)
	for inDatabase[string](p, `return (await ask(db.transaction("settings").objectStore("settings").get("device"))).learner`) != id {
		if time.Now().After(deadline) {
			p.t.Fatal("who reads is not kept")
		}
	}
}

// inside fails the test where the page is wider than the screen.
func (p *page) inside(what string) {
	p.t.Helper()
	p.empty(what, `(w => w > innerWidth ? "the page is " + w + " wide" : "")(document.documentElement.scrollWidth)`)
}

// TestPeopleInEngines adds learners, or cancels that; switches between them from Today and on the
// same lines; begins from the view of everyone; and does so without a network too.
func TestPeopleInEngines(t *testing.T) {
	inEngines(t, func(t *testing.T, b engine.Browser) {
		files := built(t)
		if b.Name() == "webkit" {
			files = overheard(t)
		}
		s := serve(t, "/", files)
		p := newTab(t, b)
		p.begin(s.address, "Maryam")
		p.reads("Maryam")
		if p.count(hook("switch")) != 0 {
			t.Error("one learner alone can be switched")
		}
		p.click("nav-learner")
		p.cancelAdding()
		p.addLearner("Yusuf")
		ids := p.ids()
		p.click("nav-today")
		p.reads("Yusuf")
		p.switchTo(ids["Maryam"])
		p.reads("Maryam")
		p.wait("her day", `/Maryam/.test(document.querySelector("h1").innerText)`)
		p.inHand(ids["Maryam"])
		p.onSameLines(s, ids)
		p.fromEveryone(s, ids)
		p.open(s.address + "about.html")
		p.open(s.address + "#/learners")
		p.wait("everything to be stored", kept)
		p.stayedAt(s.address)
		p.calm()

		cut(p, s)
		p.reload()
		p.wait("everyone without a network", visible(hook("everyone")))
		p.addLearner("Sara")
		p.computed(3)
		p.click("start-" + p.ids()["Sara"])
		p.wait("the lines", visible(hook("next")))
		p.reads("Sara")
	})
}

// cancelAdding asks for a name and leaves it, by a press and by Escape: nothing is written.
func (p *page) cancelAdding() {
	p.t.Helper()
	for _, leave := range []func(){
		func() { p.click("add-cancel") },
		func() { p.key(engine.KeyEscape) },
	} {
		p.click("add-learner")
		p.nameNew("Nobody")
		leave()
		p.wait("the form to go", fmt.Sprintf(`!document.querySelector(%q)`, hook("add")))
		p.on("leaving the form", hook("add-learner"))
	}
	if got := p.ids(); len(got) != 1 {
		p.t.Errorf("after cancelling there are %v", got)
	}
}

// markLarge marks a letter in the enlarged word, which a screen reader's press on the word opens: a
// finger that a slow machine holds for long would leave it open.
func (p *page) markLarge(a letterAt) {
	p.t.Helper()
	eval[any](p, fmt.Sprintf(`(document.querySelector('.w[data-v="%d"][data-w="%d"]').click(), 0)`, a.v, a.w))
	p.click(fmt.Sprintf("zoom-letter-%d", a.l))
	p.click("zoom-close")
	p.wait("the word to close", `!document.querySelector("dialog")`)
}

// onSameLines marks the same lines for one learner and then for the other: each has marks of their
// own.
func (p *page) onSameLines(s *server, ids map[string]string) {
	p.t.Helper()
	at := places(p.t, "noon-ikhfa", 78, 12, 20)
	p.open(s.address + "about.html")
	p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:20")
	p.wait("the lines", visible(hook("next")))
	p.reads("Maryam")
	p.markLarge(at[0])
	p.waitDraft("find", 1)
	const marks = `document.querySelectorAll("[data-t=passage] .signs").length`
	where := eval[string](p, "location.hash")
	p.switchTo(ids["Yusuf"])
	p.reads("Yusuf")
	p.wait("lines without marks", visible(hook("next"))+" && "+marks+" === 0")
	p.markLarge(at[0])
	p.markLarge(at[1])
	p.wait("two marks", marks+" >= 2")
	p.switchTo(ids["Maryam"])
	p.reads("Maryam")
	p.wait("the one mark", visible(hook("next"))+" && "+marks+" === 1")
	if now := eval[string](p, "location.hash"); now != where {
		p.t.Errorf("the lines are at %s, want %s", now, where)
	}
	if got := inDatabase[map[string]int](p, `return Object.fromEntries((await all("drafts")).map(d => [d.learner, d.marks.length]))`); got[ids["Maryam"]] != 1 || got[ids["Yusuf"]] != 2 {
		p.t.Errorf("marks by learner: %v", got)
	}
}

// fromEveryone begins with a learner by one press, on a narrow screen and on a wide one.
func (p *page) fromEveryone(s *server, ids map[string]string) {
	p.t.Helper()
	for _, x := range []struct {
		width int
		name  string
	}{{320, "Yusuf"}, {1280, "Maryam"}} {
		p.resize(x.width, 844)
		p.open(s.address + "about.html")
		p.open(s.address + "#/today")
		p.wait("the way to others", visible(hook("switch")))
		p.clickOn(hook("switch") + " summary")
		p.inside(fmt.Sprintf("the list of learners at %d", x.width))
		p.click("everyone")
		p.computed(2)
		p.inside(fmt.Sprintf("everyone at %d", x.width))
		p.click("start-" + ids[x.name])
		p.wait("the lines", visible(hook("next")))
		p.reads(x.name)
		p.inside(fmt.Sprintf("the lines at %d", x.width))
	}
}

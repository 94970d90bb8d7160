package e2e

import (
	"fmt"
	"strings"
	"testing"

	"sutur/generator/internal/engine"
)

// inMenu presses a control in the menu of the lines.
func (p *page) inMenu(name string) {
	p.t.Helper()
	p.clickOn(hook("menu") + " summary")
	p.click(name)
}

// atStep waits for a step of the session.
func (p *page) atStep(phase string) {
	p.t.Helper()
	p.wait("the step "+phase, fmt.Sprintf(`document.querySelector("main.lines")?.dataset.phase === %q`, phase))
}

// TestSeveralPencils marks the same lines with one pencil after the other: each keeps its own marks,
// a letter may have two, the stops have a pencil of their own, and the record names all rules.
func TestSeveralPencils(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Test child")
		p.open(s.address + "#/lines?rule=noon-ikhfa&also=qalqalah&from=78:12&to=78:20")
		p.wait("two pencils", visible(hook("hand-qalqalah")))
		noon, echo := places(t, "noon-ikhfa", 78, 12, 20), placesOf(t, "qalqalah", 78, 12, 20)
		both := noon[0]
		p.tap(both)
		p.waitDraft("find", 1)
		p.click("hand-qalqalah")
		for i, a := range append(echo, both) {
			p.tap(a)
			p.waitDraft("find", 2+i)
		}
		if n := p.count(fmt.Sprintf(`[data-t=passage] .w[data-v="%d"][data-w="%d"] .signs path`, both.v, both.w)); n < 2 {
			t.Errorf("a letter with two marks has %d shapes", n)
		}
		if n := p.count("[data-t=passage] .counts"); n != 0 {
			t.Error("counts are asked of letters that are not held")
		}
		p.tap(both)
		p.waitDraft("find", 1+len(echo))
		p.click("case")
		p.click("pencil-stops")
		p.wait("the pencil of stops in hand", `document.querySelector("[data-t=hand-stops]").getAttribute("aria-pressed") === "true"`)
		if h := eval[string](p, `location.hash`); !strings.Contains(h, "also=qalqalah,stops") {
			t.Errorf("the address is %s", h)
		}
		p.click("stop-78-12-3")
		stops := func(what, pressed string) {
			t.Helper()
			p.wait(what, fmt.Sprintf(`document.querySelector("[data-t=stop-78-12-3]").getAttribute("aria-pressed") === %q`, pressed))
		}
		stops("the stop moved", "false")
		p.click("undo")
		stops("and back", "true")
		p.click("next")
		p.atStep("check")
		if got, want := p.text(hook("by-pencil")), fmt.Sprintf("Qalqalah: %d of %[1]d", len(echo)); !strings.Contains(got, want) {
			t.Errorf("the check says %q, without %q", got, want)
		}
		if got, want := p.text(hook("by-pencil")), fmt.Sprintf("Hidden noon: 1 of %d", len(noon)); !strings.Contains(got, want) {
			t.Errorf("the check says %q, without %q", got, want)
		}
		if p.count(hook("stops")+" .word-link") < 9 {
			t.Errorf("the stops: %q", p.text(hook("stops")))
		}
		p.onwards()
		p.atStep("read")
		p.click("next")
		p.click("outcome-some")
		p.wait("today again", `document.querySelector('[data-t^="next-"]')`)
		p.click("nav-record")
		p.wait("the record", visible(hook("session")))
		for _, w := range []string{"Hidden noon", "Qalqalah", fmt.Sprintf("%d of %[1]d", len(echo)), fmt.Sprintf("1 of %d", len(noon))} {
			if row := p.text(hook("session")); !strings.Contains(row, w) {
				t.Errorf("the record says %q, without %q", row, w)
			}
		}
		p.calm()
	})
}

// TestCountsAtLetters: where lengths differ, they are asked at each letter. A marked letter that is
// pressed is chosen first, so that its count can be changed; a second press, or the sign for it,
// takes the mark away.
func TestCountsAtLetters(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "")
	p.open(s.address + "#/lines?rule=noon-ikhfa&also=all-long&from=78:12&to=78:20")
	p.wait("the pencils", visible(hook("hand-all-long")))
	p.click("hand-all-long")
	at := places(t, "madd-tabii", 78, 12, 20)
	offered := `[...document.querySelectorAll(".counts [data-t^=count-]")].map(x => x.innerText).join()`
	if got := eval[string](p, offered); got != "2,4,6" {
		t.Errorf("offered: %s", got)
	}
	p.tap(at[0])
	p.waitDraft("find", 1)
	p.click("count-2")
	p.wait("its count", `document.querySelector("[data-t=passage] .count")?.innerText === "2"`)
	p.tap(at[1])
	p.waitDraft("find", 2)
	p.tap(at[0])
	p.wait("the first chosen", `document.querySelector("[data-t=count-2]").getAttribute("aria-pressed") === "true"`)
	p.click("count-4")
	p.wait("another count", `document.querySelector("[data-t=passage] .count")?.innerText === "4"`)
	p.waitDraft("find", 2)
	p.tap(at[0])
	p.waitDraft("find", 1)
	p.tap(at[1])
	p.wait("the other chosen", enabled("unmark"))
	p.click("unmark")
	p.waitDraft("find", 0)
	p.click("undo")
	p.waitDraft("find", 1)
	p.calm()
}

// TestRightForAnotherReason: a long vowel that is as long as those looked for, under another name, is
// no mistake.
func TestRightForAnotherReason(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "Test child")
	p.open(s.address + "#/lines?rule=madd-tabii&from=103:3&to=103:3")
	p.wait("the lines", visible(hook("next")))
	p.tap(placesOf(t, "madd-badal", 103, 3, 3)[0])
	p.waitDraft("find", 1)
	p.click("next")
	p.atStep("check")
	if p.told("alike") != 1 || p.told("extra") != 0 {
		t.Errorf("right for another reason: %q; on another letter: %q", p.text(hook("alike")), p.text(hook("extra")))
	}
	for _, w := range []string{"Yes, two counts too.", "comes later", "Long vowel after a hamza"} {
		if got := p.text(hook("alike")); !strings.Contains(got, w) {
			t.Errorf("the check says %q, without %q", got, w)
		}
	}
	p.onwards()
	p.click("next")
	p.click("outcome-some")
	p.wait("today again", `document.querySelector('[data-t^="next-"]')`)
	if n := inDatabase[int](p, `return (await all("sessions"))[0].extra`); n != 0 {
		t.Errorf("%d marks count against the child", n)
	}
	p.calm()
}

// TestOnPaper keeps sessions that were marked on paper: with the number found, and without.
func TestOnPaper(t *testing.T) {
	s := serve(t, "/", built(t))
	for _, c := range []struct{ said, want, not string }{
		{"", "on paper", " of "},
		{"2", "2 of ", "0 of "},
	} {
		t.Run("found "+c.said, func(t *testing.T) {
			p := newPage(t)
			p.begin(s.address, "Test child")
			p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:20")
			p.wait("the lines", visible(hook("next")))
			p.inMenu("on-paper")
			p.wait("the question", visible(hook("paper-noon-ikhfa")))
			if n := p.told("missed"); n != 0 {
				t.Errorf("%d places are shown before anybody looked again", n)
			}
			if c.said != "" {
				p.set("paper-noon-ikhfa", c.said)
				p.wait("how many are left", `/still hiding/.test(document.querySelector("[data-t=on-paper]").textContent)`)
			}
			p.click("next")
			p.atStep("read")
			p.click("next")
			p.click("outcome-alone")
			p.wait("today again", `document.querySelector('[data-t^="next-"]')`)
			p.click("nav-record")
			p.wait("the record", visible(hook("session")))
			row := p.text(hook("session"))
			if !strings.Contains(row, c.want) || strings.Contains(row, c.not) {
				t.Errorf("the record says %q, want %q and not %q", row, c.want, c.not)
			}
			p.calm()
		})
	}
}

// TestLinesWithoutLearner opens a link where nobody reads yet: what is marked stays, and belongs to
// the learner who is named at the end, or on Today.
func TestLinesWithoutLearner(t *testing.T) {
	s := serve(t, "/", built(t))
	const lines = "#/lines?rule=noon-ikhfa&from=78:12&to=78:20"
	at := places(t, "noon-ikhfa", 78, 12, 20)[1]
	inEngines(t, func(t *testing.T, b engine.Browser) {
		for _, way := range []string{"end", "today"} {
			t.Run(way, func(t *testing.T) {
				p := newTab(t, b)
				p.open(s.address + lines)
				p.wait("the lines", visible(hook("next")))
				p.tap(at)
				p.waitDraft("find", 1)
				p.reload()
				p.wait("the mark again", `document.querySelector("[data-t=passage] .signs")`)
				if way == "today" {
					p.click("back")
					p.wait("the first screen", visible(hook("begin")))
					p.click("begin")
					p.wait("what was left", visible(hook("resume")))
					eval[any](p, `(document.querySelector("[data-t=resume]").click(), 0)`)
					p.wait("the mark once more", `document.querySelector("[data-t=passage] .signs")`)
				}
				p.toEnd()
				if way == "end" {
					p.click("end-begin")
				}
				p.click("outcome-some")
				p.wait("today", `document.querySelector('[data-t^="next-"]')`)
				if got := inDatabase[string](p, `
					const [l] = await all("learners"), [x] = await all("sessions"), d = await all("drafts");
					return [x.learner === l.id, x.marks.length, d.length].join(" ")`); got != "true 1 0" {
					t.Errorf("the session is the learner's, its marks, drafts left: %s", got)
				}
				p.calm()
			})
		}
	})
}

// TestBack walks back from the end to the first step with every mark kept, also after the session was
// kept and that undone.
func TestBack(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Test child")
		p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:20")
		p.wait("the lines", visible(hook("next")))
		p.tap(places(t, "noon-ikhfa", 78, 12, 20)[1])
		p.waitDraft("find", 1)
		p.toEnd()
		p.click("outcome-some")
		p.click("notice-action")
		p.atStep("done")
		p.wait("the question how it went", visible(hook("outcome-some")))
		for _, step := range []string{"read", "check"} {
			p.click("step-back")
			p.atStep(step)
		}
		p.click("again")
		p.atStep("find")
		p.wait("the mark", `document.querySelector("[data-t=passage] .signs")`)
		p.waitDraft("find", 1)
		if got := inDatabase[string](p, `return [(await all("sessions")).length, (await all("drafts")).length].join(" ")`); got != "0 1" {
			t.Errorf("sessions and drafts: %s", got)
		}
		p.calm()
	})
}

// TestSecondWindow: a frame with the same lines stands for a second window, which not every driver
// opens. It is told, and takes over; then the first is told.
func TestSecondWindow(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Test child")
		p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:20")
		p.wait("the lines", visible(hook("next")))
		eval[any](p, `(document.body.append(Object.assign(document.createElement("iframe"), { src: location.href })), 0)`)
		const inFrame = `document.querySelector("iframe").contentDocument?.querySelector("[data-t=%s]")`
		p.wait("the second told", fmt.Sprintf(inFrame, "elsewhere"))
		if p.count(hook("elsewhere")) != 0 {
			t.Error("the first lost the lines")
		}
		eval[any](p, fmt.Sprintf("(("+inFrame+").click(), 0)", "take-over"))
		p.wait("the first told", visible(hook("elsewhere")))
		p.wait("the second has them", fmt.Sprintf(inFrame, "next"))
		eval[any](p, `(document.querySelector("iframe").remove(), 0)`)
		p.wait("the first has them again", visible(hook("next")))
		p.calm()
	})
}

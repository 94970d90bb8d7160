package e2e

import (
	"fmt"
	"path"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"sutur/generator/internal/recite"
)

// faults is what is seen where a part does not arrive or the record does not open.
func (l *looks) faults(t *testing.T) {
	files := built(t)
	s, f := harmed(t, "/", files)
	f.set(nameOf(t, files, "assets/main."), missing)
	p := l.page(t, `ServiceWorkerContainer.prototype.register = () => Promise.reject(new Error("refused"))`)
	p.open(s.address)
	l.see(p, "boot", gaveUp)
	f.set("data/s*", signIn)
	f.also(nameOf(t, files, "assets/print."), missing)
	p.open(s.address + "about.html")
	p.open(s.address)
	l.see(p, "not kept", `document.querySelector('[data-t=offline-again]')`)
	l.at(p, "no lines", "#/lines?rule=noon-ikhfa&from=78:12&to=78:16", visible(hook("text-error")))
	l.at(p, "no part", "#/print", visible(hook("part-again")))

	closed := l.page(t, `IDBFactory.prototype.open = () => { throw new DOMException("blocked", "SecurityError"); }`)
	closed.open(s.address)
	l.see(closed, "closed", visible(hook("closed")))

	f.set("", "")
	plain := l.page(t, `delete globalThis.Highlight`) // a browser that colours no ranges
	plain.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:16")
	plain.wait("the lines", visible(hook("verse-78-16")))
	plain.tap(places(t, rule, surah, from, upTo)[0])
	l.see(plain, "no ranges", `document.querySelector(".whole")`)
}

// pages is all that is read without the app, and the page of the app as it comes.
func (l *looks) pages(p *page, s *server) {
	p.open(s.address + "lessons/noon-ikhfa.html#/lines?rule=noon-ikhfa&from=78:12&to=78:16")
	l.see(p, "lesson", `document.querySelector(".by-letter") && `+visible(".back"))
	p.motion("no-preference")
	p.open(s.address + "lessons/madd-arid.html#how-long-it-is-held")
	p.wait("the counts", visible(".beat-lengths button"))
	eval[any](p, `(document.querySelector(".beat-lengths button").click(), 0)`)
	l.see(p, "counts", `document.querySelector(".beat-dots .on")`)
	var names []string
	for _, f := range built(p.t) {
		if path.Ext(f.Name) == ".html" {
			names = append(names, fmt.Sprintf("%q", s.address+f.Name))
		}
	}
	l.add(eval[looked](p, `(async () => look(...await Promise.all([`+strings.Join(names, ",")+`].map(
		n => `+documentOf("n")+`))))()`))
}

// day is the first visit, and the day of a learner who has done nothing yet.
func (l *looks) day(p *page, s *server) {
	p.open(s.address)
	l.see(p, "first visit", visible(hook("name")))
	p.begin(s.address, "Nur")
	l.see(p, "settling in", visible(hook("next-settle"))+" && "+visible(hook("sign")))
	p.click("settled")
	p.wait("the first rule", visible(hook("next-teach")))
	p.click("because")
	l.see(p, "teaching", visible(hook("other-lines")))
	l.at(p, "record empty", "#/record", visible(hook("empty")))
	p.drop(backupOf([]string{sessionOf("s1", "a", "")}, nil))
	l.see(p, "what a backup brings", visible(hook("reading")))
	p.click("reading-leave")
	l.at(p, "choice", "#/lines", visible(hook("best-1")))
	p.set("from", "5")
	p.set("to", "2")
	p.click("open")
	l.see(p, "choice refused", `document.querySelector('[data-t=problem]').textContent`)
	l.at(p, "bad link", "#/lines?from=115:1&to=115:2", visible(hook("open")))
}

// session is every phase of marking lines, and all that opens there.
func (l *looks) session(p *page, s *server) {
	want := places(p.t, rule, surah, from, upTo)
	p.choose(rule, surah, from, upTo)
	l.see(p, "lines", visible(hook("next")))
	x, y := p.place(fmt.Sprintf(`[data-t=passage] .w[data-v="%d"][data-w="%d"]`, want[0].v, want[0].w))
	p.mouse(input.DispatchMouseEventTypeMousePressed, x, y)
	p.wait("the enlarged word", visible(hook("zoom")))
	p.mouse(input.DispatchMouseEventTypeMouseReleased, x, y)
	p.click(fmt.Sprintf("zoom-letter-%d", want[0].l))
	eval[any](p, `((word) => {
		const r = new Range(), b = word.getBoundingClientRect();
		r.setStart(word.firstChild, 0);
		r.setEnd(word.firstChild, 2);
		word.dispatchEvent(new MouseEvent("click", { bubbles: true, clientX: r.getBoundingClientRect().left, clientY: (b.top + b.bottom) / 2 }));
		return 0;
	})(document.querySelector("[data-t=zoom-word]"))`)
	l.see(p, "zoom", `document.querySelector('.zoom-letter[aria-pressed=true]') && document.querySelector(".zoom-letter.near")`)
	p.click("zoom-close")
	l.strokes(p)
	p.tap(want[1])
	p.wait("the marks", fmt.Sprintf(`CSS.highlights.get("f-%s")?.size === 2`, family))
	p.click("count-2")
	l.see(p, "count", visible(".count"))
	eval[any](p, `(document.querySelector("[data-t=passage]").focus(), 0)`)
	p.do(chromedp.KeyEvent(kb.ArrowLeft))
	l.see(p, "caret", visible(".caret"))
	p.clickOn(hook("menu") + " summary")
	l.see(p, "menu", visible(hook("restart")))
	p.click("restart")
	l.see(p, "notice", visible(hook("notice-said")))
	p.click("notice-action")
	p.click("drawer")
	l.see(p, "drawer", visible(hook("hint")))
	text, err := theText()
	if err != nil {
		p.t.Fatal(err)
	}
	p.tap(letter(text, text.Find(surah, from), 0, 0)) // a wrong letter
	p.wait("the wrong mark", fmt.Sprintf(`CSS.highlights.get("f-%s").size === 3`, family))
	p.check()
	l.see(p, "check", visible(hook("missed"))+" && "+visible(hook("extra"))+" && "+visible(hook("found")))
	p.clickOn(hook("missed") + " .word-link")
	l.see(p, "letter", visible(".rule-why b"))
	p.click("letter-close")
	p.click("next")
	l.see(p, "read", `document.querySelector("main.lines").dataset.phase === "read"`)
	p.click("next")
	l.see(p, "end", visible(hook("outcome-some")))
	p.click("outcome-some")
	p.wait("today", `document.querySelector('[data-t^="next-"]')`)
	l.at(p, "two surahs", "#/lines?rule=madd-tabii&from=111:5&to=112:4", visible(".surah"))
	l.at(p, "stops", "#/lines?rule=noon-ikhfa&from=2:255&to=2:255", visible(".stop:not(.end)"))
	p.check()
	p.clickOn(".stop:not(.end)")
	p.again()
	l.see(p, "stops at rest", `document.querySelector(".stop:not(.end)[aria-disabled][aria-pressed=true]")`)
	l.at(p, "prostration", "#/lines?rule=madd-tabii&from=53:61&to=53:62", visible(".lined"))
	l.at(p, "copies", "#/lines?rule=madd-tabii&from=96:18&to=96:19", visible(hook("verse-96-19")))
	p.tap(places(p.t, "madd-tabii", 96, 18, 19)[0])
	p.click("drawer")
	p.click("answer")
	l.see(p, "answer", `document.querySelector(".again")`)
	l.several(p, s)
	l.shared(p)
	l.at(p, "left off", "#/today", visible(hook("resume")))
}

// strokes is a stroke that marks, and one that takes the marks away.
func (l *looks) strokes(p *page) {
	p.longPresses(false)
	x, y := p.place(`[data-t=passage] .w[data-v="0"][data-w="1"]`)
	for _, what := range []string{".stroke:not(.off)", ".stroke.off"} {
		p.mouse(input.DispatchMouseEventTypeMousePressed, x, y)
		p.mouse(input.DispatchMouseEventTypeMouseMoved, x-30, y)
		l.see(p, what, fmt.Sprintf(`document.querySelectorAll(%q).length > 1`, what))
		p.mouse(input.DispatchMouseEventTypeMouseReleased, x-30, y)
		p.wait("the end of the stroke", `!document.querySelector(".stroke")`)
	}
	p.longPresses(true)
}

// shared is the shared screen with everything that can be drawn on it; the lines stop at a pause
// sign, and read on at the end of a verse.
func (l *looks) shared(p *page) {
	l.at(p, "moved stops", "#/lines?from=2:255&to=2:256", visible(hook("next")))
	p.clickOn(".stop:not(.end)")
	p.clickOn(".stop.end")
	p.wait("the stops", `document.querySelector(".stop:not(.end)[aria-pressed=true]") && document.querySelector(".stop.end[aria-pressed=false]")`)
	l.at(p, "stops on the shared screen", "#/shared?from=2:255&to=2:256", visible(".board .stops")+` && document.querySelector(".board .ends[data-on]")`)
	l.at(p, "shared screen", "#/shared?rule=noon-ikhfa&also=noon-izhar&from=78:12&to=78:30", visible("main.board .w"))
	p.click("key-noon-ikhfa")
	l.see(p, "pencils of one colour", `document.querySelector(".base .key")`)
	x, y := p.place(`[data-t=passage] .w[data-v="0"][data-w="1"]`)
	p.mouse(input.DispatchMouseEventTypeMousePressed, x, y)
	p.wait("the numbers", visible(hook("numbers")))
	p.mouse(input.DispatchMouseEventTypeMouseReleased, x, y)
	p.keys("4")
	eval[any](p, `(document.querySelector(".numbers [data-t=number-4]").focus(), 0)`)
	l.see(p, "drawn", `document.querySelector(".drawing text")?.textContent === "4" && document.querySelector(".numbers [aria-pressed=true]")`)
	p.mouse(input.DispatchMouseEventTypeMousePressed, x, y)
	p.mouse(input.DispatchMouseEventTypeMouseMoved, x-30, y)
	l.see(p, "a stroke as it grows", visible(".drawing .pointer.on"))
	p.mouse(input.DispatchMouseEventTypeMouseReleased, x-30, y)
}

// several is lines with several pencils, their check, and what is said when another tab has them.
func (l *looks) several(p *page, s *server) {
	l.at(p, "pencils in hand", crowded, visible(".hands [aria-pressed=true]"))
	p.click("next")
	l.see(p, "check of several", visible(".by-pencil"))
	p.click("show-all")
	l.see(p, "stops told", visible(".told.stops h2"))
	q := p.beside()
	q.open(s.address + crowded)
	q.wait("that they are open elsewhere", visible(hook("elsewhere")))
	q.click("take-over")
	l.see(p, "elsewhere", visible(".elsewhere p"))
	q.close()
}

// record is a learner with many sessions: what is known, due and left off.
func (l *looks) record(p *page, s *server) {
	p.putSessions(s, 60)
	inDatabase[any](p, `
		const [l] = await all("learners"), to = db.transaction("taught", "readwrite").objectStore("taught");
		for (const [rule, known] of [["sakt", "2020-02-01"], ["madd-muttasil", ""]])
			await ask(to.put({ learner: l.id, rule, since: "2020-01-01", known }));
		return 0;`)
	p.open(s.address + "#/record")
	l.see(p, "record", visible(hook("more")))
	p.click("remove")
	l.see(p, "removed", visible(hook("notice-action")))
	p.clickOn(hook("removed") + " summary")
	p.click("forget")
	l.see(p, "gone for good", visible(hook("sure")))
	p.click("forget-keep")
	p.click("bring-back")
	p.open(s.address + "about.html")
	inDatabase[any](p, putRecord)
	p.open(s.address + "#/record")
	l.see(p, "notes", visible(hook("note")))
	p.click("open-session")
	l.see(p, "one session", visible(hook("marked")))
	p.click("correct")
	p.wait("the form", visible(hook("save-session")))
	p.set("edit-minutes", "soon")
	p.click("save-session")
	l.see(p, "correction refused", `document.querySelector("[aria-invalid=true]")`)
	p.click("discard")
	l.at(p, "session added", "#/record?add=1", visible(hook("save-session")))
	p.click("nav-record")
	p.putSessions(s, 60)
	p.open(s.address)
	l.at(p, "rules", "#/rules", visible(hook("next")))
	eval[any](p, `(document.querySelectorAll("main details").forEach(d => { d.removeAttribute("name"); d.open = true; }), 0)`)
	l.see(p, "rules opened", visible(hook("ready")))
	l.at(p, "today", "#/today", `document.querySelector('[data-t^="next-"]')`)
}

// learner is the settings, with pencils hard to tell apart and a second learner.
func (l *looks) learner(p *page) {
	l.at(p, "learner", "#/learner", visible(hook("pencil-noon")))
	p.set("pencil-noon", "#101010")
	l.see(p, "pencils", `document.querySelector("[data-t=pencil-said] li")`)
	p.click("pencil-back-noon")
	for _, theme := range []string{"dark", "light", "auto"} {
		p.click("theme-" + theme)
		l.see(p, "theme "+theme, `(document.documentElement.dataset.theme ?? "auto") === "`+theme+`"`)
	}
	p.click("remove-learner")
	l.see(p, "dialog", visible(hook("confirm")))
	p.click("keep")
	p.click("add-learner")
	l.see(p, "adding", visible(hook("add-name")))
	p.nameNew("Yusuf")
	p.click("add-confirm")
	l.see(p, "two learners", visible("fieldset.choice [data-t^=learner-]"))
	p.click("archive-learner")
	p.wait("the archive", visible(hook("archive")))
	p.clickOn(hook("archive") + " summary")
	l.see(p, "archive", visible(hook("archive")+" button"))
	p.clickOn(hook("archive") + " button")
	p.wait("two again", visible("fieldset.choice [data-t^=learner-]"))
	l.at(p, "everyone as a list", "#/learners", visible("ul[data-t=everyone]"))
	p.do(chromedp.EmulateViewport(1280, 844))
	p.wait("the table", visible("table"))
	p.computed(2)
	l.see(p, "everyone as a table", visible("table"))
	p.do(chromedp.EmulateViewport(390, 844))
	p.wait("the list", visible("ul[data-t=everyone]"))
	p.computed(2)
	p.click("tick-all")
	p.click("same-lines")
	p.wait("the lines of two", visible("main.lines "+hook("switch"))+" && "+visible(hook("next")))
	p.clickOn(hook("switch") + " summary")
	l.see(p, "lines of two", visible(hook("alone")))
	p.toEnd()
	l.see(p, "end of two", visible(hook("each")))
	l.at(p, "switch", "#/today", visible(hook("switch")))
}

// print is every sheet.
func (l *looks) print(p *page, s *server) {
	var all []string
	for r := recite.RuleID(0); r < recite.NumRules; r++ {
		all = append(all, r.String())
	}
	p.learner(s.address, all...)
	for _, x := range []struct{ what, hash string }{
		{"print both", "sheet=both&from=78:12&to=78:16&rule=noon-ikhfa"},
		{"print several", "sheet=both&from=78:12&to=78:16&rule=noon-ikhfa&also=ghunnah,stops"},
		{"print surahs", "sheet=both&from=111:1&to=112:4&rule=madd-tabii"},
		{"print prostration", "sheet=both&from=53:61&to=53:62&rule=madd-tabii&turn=landscape"},
		{"print sign", "sheet=practice&from=7:206&to=7:206&rule=madd-tabii"},
		{"print many", "sheet=both&surah=78&rule=noon-ikhfa&size=48"},
		{"print card", "sheet=card"},
		{"print record", "sheet=record&turn=landscape"},
		{"print booklet", "sheet=booklet&juz=29&lay=fold&size=30"},
		{"print wrong", "sheet=poster"},
	} {
		p.lay(s, "#/print?"+x.hash)
		l.see(p, x.what, visible(".leaf"))
	}
	eval[any](p, `(location.hash = "#/print?sheet=booklet&juz=30", 0)`)
	l.see(p, "print progress", visible(hook("print-progress")))
	p.lay(s, "#/print?sheet=practice&from=112:1&to=112:4&rule=noon-ikhfa")
	l.see(p, "print few", visible(hook("better-1")))
	p.set("pencil-noon", "#101010")
	l.see(p, "print pencils", `document.querySelector("[data-t=pencil-said] li")`)
}

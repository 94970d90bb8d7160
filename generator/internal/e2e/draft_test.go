package e2e

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// inDatabase runs script with db, the open database, and all, which reads a table; what it returns
// comes back.
func inDatabase[T any](p *page, script string) T {
	p.t.Helper()
	return eval[T](p, `(async () => {
		const ask = r => new Promise((ok, no) => { r.onsuccess = () => ok(r.result); r.onerror = () => no(r.error); });
		const db = await ask(indexedDB.open("sutur")), all = t => ask(db.transaction(t).objectStore(t).getAll());
		try { `+script+` } finally { db.close(); }
	})()`)
}

// beside opens one more tab of the same profile.
func (p *page) beside() *page {
	p.t.Helper()
	q := &page{t: p.t}
	q.ctx, q.close = chromedp.NewContext(browser, chromedp.WithExistingBrowserContext(chromedp.FromContext(p.ctx).BrowserContextID))
	p.t.Cleanup(q.close)
	if err := chromedp.Do(q.ctx); err != nil {
		p.t.Fatal(err)
	}
	if err := chromedp.Listen(q.ctx, q.listen); err != nil {
		p.t.Fatal(err)
	}
	q.do(chromedp.EmulateViewport(390, 844))
	return q
}

// waitStored waits until a script of inDatabase returns true.
func (p *page) waitStored(what, script string) {
	p.t.Helper()
	for deadline := time.Now().Add(patience); !inDatabase[bool](p, script); time.Sleep(50 * time.Millisecond) {
		if time.Now().After(deadline) {
			p.t.Fatalf("waited in vain for %s in the database\n%s", what, p.describe())
		}
	}
}

// waitDraft waits until the one draft on the device is at this step.
func (p *page) waitDraft(phase string, marks int) {
	p.t.Helper()
	p.waitStored("the draft at "+phase, fmt.Sprintf(`const d = await all("drafts"); return d.length === 1 && d[0].phase === %q && d[0].marks.length === %d;`, phase, marks))
}

const atPhase = `document.querySelector("main.lines")?.dataset.phase === %q`

// TestEveryStep leaves a session at each of its steps, by loading the page again, by closing it and
// by going back: each time it is there again, and Today offers it. Undo after keeping leads back to
// it too.
func TestEveryStep(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "")
	p.choose(rule, surah, from, upTo)
	p.tap(places(t, rule, surah, from, upTo)[0])
	p.wait("a mark", fmt.Sprintf(`CSS.highlights.get("f-%s")?.size === 1`, family))
	steps := []string{"find", "check", "read", "done"}
	for i, step := range steps {
		if i > 0 {
			p.onwards()
			p.wait(step, fmt.Sprintf(atPhase, step))
		}
		p.waitDraft(step, 1)
		p.reload()
		p.wait(step+" after loading again", fmt.Sprintf(atPhase, step))
		eval[any](p, `(history.back(), 0)`)
		p.wait("the screen before", `document.querySelector("#app").dataset.screen !== "lines"`)
		eval[any](p, `(history.forward(), 0)`)
		p.wait(step+" after going back", fmt.Sprintf(atPhase, step))
		p.open("about:blank")
		p.open(s.address)
		p.wait("the way back", visible(hook("resume")))
		eval[any](p, `(document.querySelector("[data-t=resume]").click(), 0)`)
		p.wait(step+" from today", fmt.Sprintf(atPhase, step))
		if step == "find" {
			p.wait("its mark", fmt.Sprintf(`CSS.highlights.get("f-%s")?.size === 1`, family))
		}
	}
	p.click("outcome-much")
	p.wait("today", `document.querySelector('[data-t^="next-"]')`)
	p.wait("no way back", `!document.querySelector('[data-t=resume]')`)
	p.click("notice-action")
	p.wait("the question again", visible(hook("outcome-some")))
	p.waitDraft("done", 1)
	if n := inDatabase[int](p, `return (await all("sessions")).length`); n != 0 {
		t.Errorf("%d sessions after undo", n)
	}
	p.click("outcome-some")
	p.click("nav-record")
	p.wait("the record", visible(hook("session")))
	if row := p.text(hook("session")); !strings.Contains(row, "With some help") {
		t.Errorf("the record says %q", row)
	}
	got := inDatabase[string](p, `const s = await all("sessions"); return [s.length, s[0].marks.length, (await all("drafts")).length].join()`)
	if got != "1,1,0" {
		t.Errorf("sessions, marks, drafts: %s", got)
	}
	p.calm()
}

// TestManyDrafts begins more sets of lines than are kept: none undoes another, the oldest go, and
// Today shows the newest and leads to the others.
func TestManyDrafts(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "")
	const sets, most = 22, 20
	for i := range sets {
		eval[any](p, fmt.Sprintf(`(location.hash = "#/lines?rule=qalqalah&from=78:%d&to=78:%[1]d", 0)`, i+1))
		p.wait("the lines", visible(hook(fmt.Sprintf("verse-78-%d", i+1)))+` && document.querySelector("main.lines [data-t=passage]")`)
		p.tap(letterAt{0, 0, 0, 0, 1})
		p.wait("a mark", enabled("undo"))
	}
	eval[any](p, `(location.hash = "#/today", 0)`)
	p.wait("the way back", visible(hook("resume")))
	p.wait("all of them", fmt.Sprintf(`document.querySelectorAll('[data-t=resume-other]').length === %d`, most-1))
	if text := p.text(hook("resume")); !strings.Contains(text, fmt.Sprint(sets)) {
		t.Errorf("the newest is %q, want verse %d", text, sets)
	}
	if n := inDatabase[int](p, `return (await all("drafts")).length`); n != most {
		t.Errorf("%d drafts are kept, want %d", n, most)
	}
	p.clickOn(hook("resume-others") + " summary")
	p.click("drop-draft")
	p.wait("one less", fmt.Sprintf(`document.querySelectorAll('[data-t=resume-other]').length === %d`, most-2))
	p.wait("the keyboard on the next row", `document.activeElement.dataset.t === "drop-draft"`)
	p.click("notice-action")
	p.wait("it again", fmt.Sprintf(`document.querySelectorAll('[data-t=resume-other]').length === %d`, most-1))
	// From the beginning, and back.
	eval[any](p, `(document.querySelector("[data-t=resume]").click(), 0)`)
	p.wait("the mark", enabled("undo")+` || CSS.highlights.get("f-qalqalah")?.size === 1`)
	p.clickOn(hook("menu") + " summary")
	p.click("restart")
	p.wait("no mark", `!(CSS.highlights.get("f-qalqalah")?.size)`)
	p.click("notice-action")
	p.wait("the mark again", `CSS.highlights.get("f-qalqalah")?.size === 1`)
	p.calm()
}

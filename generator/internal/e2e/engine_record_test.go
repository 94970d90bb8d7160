package e2e

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

	"sutur/generator/internal/engine"
)

// TestRecordInEngines opens a session of the record, corrects it and takes that back, removes it and
// brings it back after a reload, and adds one, in each engine; by keyboard and by touch.
func TestRecordInEngines(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.record(s, "")
		p.sessions("the record", 3)
		picture(t, "record-"+b.Name(), p.settled())
		before := p.stored("marked")
		p.click("open-session")
		p.wait("the marks", `CSS.highlights.get("f-noon")?.size === 2`)
		picture(t, "record-session-"+b.Name(), p.settled())
		p.click("correct")
		p.wait("the form", visible(hook("save-session")))
		picture(t, "record-edit-"+b.Name(), p.settled())
		p.set("edit-minutes", "٣٠")
		p.set("edit-day", "2020-02-29")
		p.click("went-much")
		p.click("save-session")
		p.wait("the correction", `document.querySelector("[data-t=facts]")?.innerText.includes("With a lot of help · 30 minutes") && document.querySelector("main").innerText.includes("February 29, 2020")`)
		p.click("notice-action")
		p.wait("what was there before", `document.querySelector("[data-t=facts]").innerText.includes("Read alone · 12 minutes")`)
		p.entries("after Undo", 3)
		if now := p.stored("marked"); !reflect.DeepEqual(now, before) {
			t.Errorf("Undo has brought back\n%v, want\n%v", now, before)
		}

		p.click("remove-session")
		p.sessions("one less", 2)
		p.entries("removed", 2)
		p.reload()
		p.sessions("one less after a reload", 2)
		p.enter(hook("removed") + " summary")
		p.click("bring-back")
		p.sessions("all again", 3)
		p.entries("brought back", 3)
		if now := p.stored("marked"); !reflect.DeepEqual(now, before) {
			t.Errorf("Bring back has brought\n%v, want\n%v", now, before)
		}

		p.enter(hook("add-session"))
		p.wait("the form", visible(hook("save-session")))
		p.addRule("ghunnah")
		p.set("edit-found-ghunnah", "۲")
		p.set("edit-of-ghunnah", "۳")
		p.click("went-alone")
		p.enter(hook("save-session"))
		p.wait("the new session", visible(hook("facts")))
		if text := p.text(hook("facts")); !strings.Contains(text, "Ghunnah · found 2 of 3") || !strings.Contains(text, "on paper") {
			t.Errorf("what was added says %q", text)
		}
		p.click("notice-action")
		p.entries("not added after all", 3)
		p.open(s.address + "about.html")
		p.open(s.address + "#/record")
		p.sessions("the record", 3)
		if by := eval[int](p, `document.documentElement.scrollWidth - innerWidth`); by > 0 {
			t.Errorf("the record is %d pixels too wide", by)
		}
		for _, name := range []string{"charts-sessions", "charts-found"} {
			box := eval[[]float64](p, fmt.Sprintf(`(b => [b.width, b.height])(document.querySelector('%s svg').getBoundingClientRect())`, hook(name)))
			if box[0] < 250 || box[1] < 50 {
				t.Errorf("the chart %s is %v large", name, box)
			}
		}
		p.media("print")
		p.wait("the page for paper", `!document.querySelector("[data-t=add-session]").getClientRects().length`)
		text := p.text("main")
		for _, want := range []string{"Printed on", "Week from", "Percent", "An-Naba 12–16"} {
			if !strings.Contains(text, want) {
				t.Errorf("on paper the record lacks %q", want)
			}
		}
		if strings.Contains(text, "Remove") || strings.Contains(text, "Backup") {
			t.Errorf("on paper the record has controls: %q", text)
		}
		picture(t, "record-paper-"+b.Name(), p.shot())
		p.media("screen")
		if b.Name() != "webkit" { // its driver does not tell what the console says
			p.calm()
		}
	})
}

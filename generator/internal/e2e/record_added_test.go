package e2e

import (
	"fmt"
	"reflect"
	"testing"
	"time"
)

// TestSessionAdded: a session of a day gone by is added from a form that nothing takes away but
// Save and Discard, and stands on its day.
func TestSessionAdded(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.record(s, "")
	p.click("add-session")
	p.wait("the form", visible(hook("save-session")))
	p.set("edit-from-surah", "114")
	p.set("edit-from", "١")
	p.set("edit-to", "6")
	if to := eval[string](p, `document.querySelector("[data-t=edit-to-surah]").value`); to != "114" {
		t.Errorf("the end stays in surah %s", to)
	}
	p.addRule("qalqalah")
	p.addRule("ghunnah")
	p.set("edit-found-ghunnah", "3")
	p.set("edit-note", "At grandmother’s")
	p.click("nav-today") // by mistake
	p.wait("today", `document.querySelector('[data-t^="next-"]')`)
	p.click("nav-record")
	p.wait("that it is not saved", visible(hook("unfinished")))
	p.reload()
	p.click("go-on")
	p.wait("what was typed", `document.querySelector("[data-t=edit-note]")?.value === "At grandmother’s" && document.querySelector("[data-t=edit-found-ghunnah]").value === "3"`)
	p.click("save-session")
	p.wait("what is missing", `document.querySelector("[data-t=bad-outcome]").innerText && document.querySelector("[data-t=bad-rule-ghunnah]").innerText.startsWith("Say both")`)
	p.set("edit-of-ghunnah", "3")
	p.click("went-some")
	day := eval[string](p, `(d => [d.getFullYear(), d.getMonth() + 1, d.getDate()].map(n => String(n).padStart(2, "0")).join("-"))(new Date(Date.now() - 12 * 864e5))`)
	p.set("edit-day", day)
	// Pressed twice, it is one session.
	eval[any](p, `(e => { e.click(); e.click(); return 0; })(document.querySelector("[data-t=save-session]"))`)
	p.wait("the session", visible(hook("facts")))
	p.entries("with the new one", 4)
	got := inDatabase[map[string]any](p, `return (await all("sessions")).find(x => x.note === "At grandmother’s")`)
	for field, want := range map[string]any{"day": day, "rule": "qalqalah", "found": 0.0, "missed": 0.0, "paper": true, "outcome": "some", "from": map[string]any{"s": 114.0, "a": 1.0}, "to": map[string]any{"s": 114.0, "a": 6.0}} {
		if !reflect.DeepEqual(got[field], want) {
			t.Errorf("%s is %v, want %v", field, got[field], want)
		}
	}
	eval[any](p, `(history.back(), 0)`) // the form is kept, and no place to go back to
	p.sessions("the record", 4)
	if where := eval[string](p, fmt.Sprintf(`[...document.querySelectorAll('%s')].map(e => e.querySelector("a").innerText).join("; ")`, hook("session"))); where != "An-Naba 12–16; An-Naba 12–16; An-Nas 1–6; An-Naba 12–16" {
		t.Errorf("the order of the days is %s", where)
	}
	p.click("notice-action")
	p.sessions("without it", 3)
	p.click("add-session")
	p.wait("an empty form", `document.querySelector("[data-t=edit-note]")?.value === ""`)
	p.set("edit-note", "x")
	p.click("discard")
	p.wait("the record", visible(hook("add-session")))
	if p.count(hook("unfinished")) > 0 {
		t.Error("what was discarded is still there")
	}
	p.click("notice-action")
	p.wait("what was discarded", `document.querySelector("[data-t=edit-note]")?.value === "x"`)
	p.calm()
}

// TestSessionRemoved: Undo waits; what was removed is listed after a reload, comes back whole, and
// goes for good after a second look only.
func TestSessionRemoved(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.record(s, "")
	p.sessions("the record", 3)
	before := p.stored("marked")
	p.click("remove")
	p.sessions("one less", 2)
	time.Sleep(10 * time.Second)
	p.click("notice-action")
	p.sessions("all again", 3)
	if now := p.stored("marked"); !reflect.DeepEqual(now, before) {
		t.Errorf("Undo has brought back\n%v, want\n%v", now, before)
	}
	p.click("remove")
	p.sessions("one less", 2)
	p.click("remove")
	p.sessions("two less", 1)
	p.reload()
	p.sessions("one after a reload", 1)
	removed := func(what string, n int) {
		t.Helper()
		p.wait(what, fmt.Sprintf(`document.querySelectorAll(%q).length === %d`, hook("removed-session"), n))
	}
	removed("what was removed", 2)
	if p.count(hook("removed")+"[open]") > 0 {
		t.Error("the list is not folded")
	}
	p.clickOn(hook("removed") + " summary")
	p.clickOn(hook("removed-session") + ":nth-child(2) " + hook("bring-back"))
	p.sessions("one brought back", 2)
	removed("one left", 1)
	if now := p.stored("marked"); !reflect.DeepEqual(now, before) {
		t.Errorf("Bring back has brought\n%v, want\n%v", now, before)
	}
	p.click("forget")
	p.wait("the second look", visible(hook("sure"))+` && document.activeElement.dataset.t === "forget-keep"`)
	p.click("forget-keep")
	p.wait("no question", "!"+visible(hook("sure")))
	removed("it stays", 1)
	p.click("forget")
	p.click("forget-sure")
	removed("it is gone", 0)
	p.wait("that it is said", visible(hook("notice-forgotten")))
	p.reload()
	p.sessions("the record after a reload", 2)
	removed("nothing to bring back", 0)
	if kept := inDatabase[string](p, `return (await all("gone")).map(x => x.id + " " + !!x.session).join()`); kept != "paper false" {
		t.Errorf("of what is gone for good is kept: %s", kept)
	}
	p.click("open-session")
	p.click("remove-session")
	p.sessions("one left, from the session's own page", 1)
	p.calm()
}

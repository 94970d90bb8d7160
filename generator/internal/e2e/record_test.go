package e2e

import (
	"encoding/json"
	"fmt"
	"reflect"
	"strings"
	"testing"
)

// putRecord replaces the sessions on the device by these of the one learner: one with marks of two
// pencils and a moved stop, one on paper, one of reading alone, each on its day before today.
const putRecord = `
	const [l] = await all("learners"), tx = db.transaction(["sessions", "months"], "readwrite"), to = tx.objectStore("sessions");
	to.clear();
	tx.objectStore("months").clear();
	const base = { learner: l.id, from: { s: 78, a: 12 }, to: { s: 78, a: 16 }, marks: [], stops: [], extra: 0, helped: false, outcome: "alone", found: 0, missed: 0 };
	const put = (id, ago, x) => {
		const at = new Date(Date.now() - ago * 864e5), two = n => String(n).padStart(2, "0");
		to.put({ ...base, id, day: [at.getFullYear(), two(at.getMonth() + 1), two(at.getDate())].join("-"), at: at.toISOString(), ...x });
	};
	put("marked", 1, { rule: "noon-ikhfa", found: 2, missed: 1, also: [{ rule: "qalqalah", found: 1, missed: 0 }], pencils: ["qalqalah"], looked: 2, minutes: 12, note: "Calm today.\n<b>Loud</b> \u202eat the end.",
		marks: [{ v: 0, w: 0, l: 1, count: 2 }, { v: 2, w: 1, l: 0, count: 0 }, { v: 2, w: 1, l: 1, count: 0, pencil: "qalqalah" }], stops: [[0, 1, true]] });
	put("paper", 9, { rule: "ghunnah", paper: true });
	put("alone", 20, { rule: "", outcome: "some" });
	await new Promise((ok, no) => { tx.oncomplete = ok; tx.onabort = no; });
	return 0;`

// record opens the record of a new learner with the sessions of putRecord, at an address below it.
func (p *page) record(s *server, at string) {
	p.t.Helper()
	p.begin(s.address, "Nur")
	p.open(s.address + "about.html")
	inDatabase[any](p, putRecord)
	p.open(s.address + "#/record" + at)
}

// stored returns a session as the device has it, without when it was changed last.
func (p *page) stored(id string) map[string]any {
	p.t.Helper()
	text := inDatabase[string](p, fmt.Sprintf(`return JSON.stringify((await all("sessions")).find(x => x.id === %q) ?? {})`, id))
	var out map[string]any
	if err := json.Unmarshal([]byte(text), &out); err != nil {
		p.t.Fatal(err)
	}
	delete(out, "updated")
	return out
}

// addRule chooses a rule in the form's list, which then shows its first line again.
func (p *page) addRule(rule string) {
	p.t.Helper()
	eval[any](p, fmt.Sprintf(`(e => { e.value = %q; e.dispatchEvent(new Event("change", { bubbles: true })); return 0; })(document.querySelector(%q))`, rule, hook("edit-more")))
	p.wait("the rule in the form", visible(hook("edit-rule-"+rule))+fmt.Sprintf(` && document.querySelector(%q).value === ""`, hook("edit-more")))
}

// sessions waits until so many are listed.
func (p *page) sessions(what string, n int) {
	p.t.Helper()
	p.wait(what, fmt.Sprintf(`document.querySelectorAll(%q).length === %d`, hook("session"), n))
}

// TestSessionOpened: a session shows its lines, what was marked and where, counts, rules, note and
// minutes; its address can be loaded again and gone back from, and one that is not there is said so.
func TestSessionOpened(t *testing.T) {
	s := serve(t, "/a/", built(t))
	p := newPage(t)
	p.record(s, "")
	p.sessions("the record", 3)
	p.click("open-session")
	look := func(when string) {
		t.Helper()
		p.wait("the session "+when, visible(hook("marked")))
		p.wait("colours "+when, `CSS.highlights.get("f-noon")?.size === 2`)
		for _, want := range []string{"An-Naba 12–16", "Nur\u2069, ", "Hidden noon · found 2 of 3", "Qalqalah · found 1 of 1", "Read alone · 12 minutes", "2 places were found before looking again", "Calm today.", "<b>Loud</b>", "3 letters marked", "One stop was moved."} {
			if text := p.text("main"); !strings.Contains(text, want) {
				t.Errorf("%s the session says %q, without %q", when, text, want)
			}
		}
	}
	look("opened")
	p.reload()
	look("loaded again")
	p.clickOn(hook("marked") + " summary")
	list := eval[[]string](p, fmt.Sprintf(`[...document.querySelectorAll('%s li')].map(e => e.innerText.replace(/\s+/g, " "))`, hook("marked")))
	if len(list) != 2 || !strings.HasPrefix(list[0], "Verse 12: ") || !strings.Contains(list[0], "(Hidden noon and 2 counts)") || !strings.Contains(list[1], "(Qalqalah)") {
		t.Errorf("the marks are %q", list)
	}
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	shown := eval[[]string](p, `[...document.querySelectorAll("[data-t=kept-lines] .verse")].map(e => e.textContent)`)
	for i, verse := range shown {
		if want := text.Verses[text.Find(78, 12+i)].Text; verse != want {
			t.Errorf("verse %d is shown as %q, want %q", 12+i, verse, want)
		}
	}
	if len(shown) != 5 {
		t.Errorf("%d verses are shown", len(shown))
	}
	eval[any](p, `(history.back(), 0)`)
	p.sessions("the record, by going back", 3)
	p.open(s.address + "about.html")
	p.open(s.address + "#/record?session=nobody")
	p.wait("that there is none", visible(hook("unknown-session")))
	p.open(s.address + "about.html")
	p.open(s.address + "#/record?session=%3Cimg%20src=x%3E&edit=1")
	p.wait("that there is none to correct", visible(hook("unknown-session")))
	p.click("all-sessions")
	p.sessions("all sessions", 3)
	p.calm()
}

// TestSessionCorrected: a correction changes what was said and nothing else, and its Undo brings
// back what was there before; what is wrong is said at its field and keeps nothing.
func TestSessionCorrected(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.record(s, "?session=marked")
	before := p.stored("marked")
	p.click("correct")
	p.wait("the form", visible(hook("save-session")))
	later := eval[string](p, `(d => [d.getFullYear(), d.getMonth() + 1, d.getDate()].map(n => String(n).padStart(2, "0")).join("-"))(new Date(Date.now() + 2 * 864e5))`)
	p.set("edit-day", later)
	p.set("edit-minutes", "soon")
	p.set("edit-found-noon-ikhfa", "4")
	p.click("save-session")
	p.wait("what is wrong", `document.querySelectorAll("[aria-invalid=true]").length === 4 && document.activeElement.dataset.t === "edit-day"`)
	for name, want := range map[string]string{"bad-day": "This day is still to come.", "bad-minutes": "“\u2068soon\u2069” is not a whole number.", "bad-rule-noon-ikhfa": "There cannot be fewer places than the \u20684\u2069 found."} {
		if got := p.text(hook(name)); got != want {
			t.Errorf("%s says %q, want %q", name, got, want)
		}
	}
	if now := p.stored("marked"); !reflect.DeepEqual(now, before) {
		t.Errorf("a refused form has changed %v to %v", before, now)
	}
	p.set("edit-day", eval[string](p, `document.querySelector("[data-t=edit-day]").max`))
	p.set("edit-minutes", "٢٥")
	p.set("edit-found-noon-ikhfa", "۳")
	p.set("edit-of-noon-ikhfa", "5")
	p.clickOn(hook("edit-rule-qalqalah") + " " + hook("drop-rule"))
	p.addRule("ghunnah")
	p.click("went-much")
	p.click("edit-paper")
	p.set("edit-note", "")
	p.click("save-session")
	p.wait("the session again", visible(hook("facts")))
	p.entries("after the correction", 3)
	want := map[string]any{"found": 3.0, "missed": 2.0, "minutes": 25.0, "paper": true, "outcome": "much",
		"also": []any{map[string]any{"rule": "ghunnah", "found": 0.0, "missed": 0.0}}, "pencils": []any{"ghunnah"}}
	now := p.stored("marked")
	for field, value := range before {
		if w, ok := want[field]; ok {
			value = w
		} else if field == "note" || field == "looked" {
			value = nil
		} else if field == "day" || field == "at" {
			continue
		}
		if !reflect.DeepEqual(now[field], value) {
			t.Errorf("%s is %v, want %v", field, now[field], value)
		}
	}
	if now["paper"] != true || now["day"] == before["day"] || len(now) != len(before)-1 {
		t.Errorf("kept is %v", now)
	}
	p.wait("what is shown", `document.querySelector("[data-t=facts]").innerText.includes("25 minutes")`)
	p.click("notice-action")
	p.wait("what was there before", `document.querySelector("[data-t=facts]").innerText.includes("Calm today.")`)
	p.entries("after Undo", 3)
	if now := p.stored("marked"); !reflect.DeepEqual(now, before) {
		t.Errorf("Undo has brought back\n%v, want\n%v", now, before)
	}
	p.calm()
}

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"sutur/generator/internal/engine"
)

// maryam opens the screen of a learner who has kept one session, of one rule.
func maryam(t *testing.T, s *server) *page {
	t.Helper()
	p := newPage(t)
	p.begin(s.address, "Maryam")
	p.toDone(s, "#/lines?rule=qalqalah&from=112:1&to=112:4")
	p.click("outcome-alone")
	p.wait("the day", `document.querySelector('[data-t^="next-"]')`)
	p.click("nav-learner")
	return p
}

// TestArchive puts a learner into the archive: in no list, nothing planned, everything kept; and
// brings them back.
func TestArchive(t *testing.T) {
	s := serve(t, "/", built(t))
	p := maryam(t, s)
	p.addLearner("Yusuf")
	ids := p.ids()
	p.click("learner-" + ids["Maryam"])
	p.wait("her name", `document.querySelector("[data-t=nickname]").value === "Maryam"`)
	p.click("archive-learner")
	p.wait("somebody else in hand", `document.querySelector("[data-t=nickname]").value === "Yusuf"`)
	if p.count("[data-t^=learner-]") != 0 {
		t.Error("one learner alone can be chosen")
	}
	for _, x := range []struct{ at, there string }{{"#/today", `[data-t^="next-"]`}, {"#/learners", "main.learners h1"}, {"#/record", "main.record h1"}} {
		p.open(s.address + "about.html")
		p.open(s.address + x.at)
		p.wait("the screen", visible(x.there))
		if x.at == "#/learners" {
			p.computed(1)
		}
		if strings.Contains(p.text("#app"), "Maryam") {
			t.Errorf("%s names who is archived", x.at)
		}
	}
	if n := inDatabase[int](p, `return (await all("sessions")).length`); n != 1 {
		t.Errorf("%d sessions are kept", n)
	}
	p.open(s.address + "about.html")
	p.open(s.address + "#/learner")
	p.wait("the archive", visible(hook("archive")))
	p.clickOn(hook("archive") + " summary")
	p.click("back-" + ids["Maryam"])
	p.wait("her again", `document.querySelector("[data-t=nickname]").value === "Maryam"`)
	if n := inDatabase[int](p, `return (await all("learners")).filter(l => l.archived).length`); n != 0 {
		t.Errorf("%d are archived still", n)
	}

	// With everyone archived, the first screen leads back to them.
	p.click("archive-learner")
	p.wait("somebody else in hand", `document.querySelector("[data-t=nickname]")?.value === "Yusuf"`)
	p.click("archive-learner")
	p.wait("nobody in hand", `!document.querySelector("[data-t=nickname]")`)
	p.open(s.address + "about.html")
	p.open(s.address + "#/today")
	p.clickOn(hook("all-archived") + " a")
	p.wait("the archive", visible(hook("archive")))
	p.calm()
}

// TestDelete asks twice: it names what goes, and saves a backup first where one is wanted.
func TestDelete(t *testing.T) {
	s := serve(t, "/", built(t))
	p := maryam(t, s)
	p.click("remove-learner")
	p.wait("what goes", visible(hook("goes")))
	said := p.text(hook("confirm"))
	for _, w := range []string{"Maryam", "one session", "one rule"} {
		if !strings.Contains(said, w) {
			t.Errorf("the question says %q, without %q", said, w)
		}
	}
	eval[any](p, `(globalThis.given = "", HTMLAnchorElement.prototype.click = function () { given = this.download; }, navigator.canShare = undefined, 0)`)
	p.click("save-first")
	p.wait("the backup", `given`)
	if name := eval[string](p, `given`); strings.Contains(name, "Maryam") || !strings.HasSuffix(name, ".json") {
		t.Errorf("the file is called %q", name)
	}
	p.wait("that it is saved", `document.querySelector("[data-t=confirm] [role=status]").innerText.includes("passed to your downloads")`)
	p.click("keep")
	p.wait("the question to go", `!document.querySelector("[data-t=confirm]")`)
	if len(p.ids()) != 1 {
		t.Error("who was kept is gone")
	}
	p.click("remove-learner")
	p.click("confirm-remove")
	p.wait("nobody", `!document.querySelector("[data-t=nickname]")`)
	if got := inDatabase[string](p, `return JSON.stringify([await all("learners"), await all("sessions"), await all("drafts"), await all("taught")])`); got != "[[],[],[],[]]" {
		t.Errorf("after deleting: %s", got)
	}
	p.calm()
}

// TestOwn: a learner's counts, letter size and colour are theirs, and dates can be corrected.
func TestOwn(t *testing.T) {
	s := serve(t, "/", built(t))
	p := maryam(t, s)
	p.addLearner("Yusuf")
	ids := p.ids()
	size := `document.documentElement.style.getPropertyValue("--size")`
	for _, x := range []struct{ pick, name, value string }{
		{"muttasil-5", "size", "1.5"}, {"munfasil-5", "", ""}, {"arid-6", "", ""}, {"lin-2", "", ""}, {"colour-7", "", ""},
	} {
		p.click(x.pick)
		p.wait(x.pick, `document.querySelector("[data-t=`+x.pick+`]").getAttribute("aria-pressed") === "true"`)
		if x.name != "" {
			p.set(x.name, x.value)
		}
	}
	p.wait("large letters", size+` === "1.5"`)
	p.click("learner-" + ids["Maryam"])
	p.wait("her letters", size+` === "1"`)
	for _, x := range []string{"muttasil-4", "munfasil-4", "arid-4", "lin-4", "colour-0"} {
		p.wait("her own "+x, `document.querySelector("[data-t=`+x+`]").getAttribute("aria-pressed") === "true"`)
	}
	p.set("since-qalqalah", "2026-01-05")
	p.wait("that it is kept", changedDate)
	since := func() string {
		return inDatabase[string](p, `return (await all("taught")).map(x => x.since).join()`)
	}
	if got := since(); got != "2026-01-05" {
		t.Errorf("begun on %s", got)
	}
	p.set("since-qalqalah", "2199-01-01")
	eval[any](p, `(document.querySelector("[data-t=since-qalqalah]").dispatchEvent(new Event("blur")), 0)`)
	p.wait("what is wrong", visible(hook("notice-date")))
	if got := since() + eval[string](p, `" " + document.querySelector("[data-t=since-qalqalah]").value`); got != "2026-01-05 2026-01-05" {
		t.Errorf("after a day that has not come: %s", got)
	}
	p.calm()
}

// changedDate is true once the notice is that of a date; an earlier one may stand there with its Undo.
const changedDate = `document.querySelector("[data-t=notice-said]")?.innerText.startsWith("Changed: ")`

// TestDateInHand types a date while another one comes from elsewhere: what is typed stays until the
// field is left, and Undo then shows what is kept, also with the keyboard in the field.
func TestDateInHand(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Maryam")
		taught := func(rule, since string) {
			inDatabase[any](p, fmt.Sprintf(`
				const [l] = await all("learners"), to = db.transaction("taught", "readwrite").objectStore("taught");
				await ask(to.put({ learner: l.id, rule: %q, since: %q, known: "" }));
				return 0;`, rule, since))
		}
		taught("sakt", "2020-01-01")
		taught("qalqalah", "2026-01-04")
		p.open(s.address + "about.html")
		p.open(s.address + "#/learner")
		field := func(rule string) string { return `document.querySelector("[data-t=since-` + rule + `]")` }
		shows := func(rule, day string) string { return field(rule) + `?.value === "` + day + `"` }
		p.wait("both dates", shows("sakt", "2020-01-01")+" && "+shows("qalqalah", "2026-01-04"))

		eval[any](p, `(`+field("qalqalah")+`.focus(), 0)`)
		p.set("since-qalqalah", "0202-01-05")
		taught("sakt", "2020-02-02")
		eval[any](p, `(new BroadcastChannel("sutur").postMessage(["taught"]), 0)`) // as a tab beside does
		p.wait("what the tab beside has kept", shows("sakt", "2020-02-02"))
		if !eval[bool](p, shows("qalqalah", "0202-01-05")) {
			t.Errorf("what is typed is taken out of the hands: %s", eval[string](p, field("qalqalah")+".value"))
		}
		p.set("since-qalqalah", "2026-01-05")
		p.wait("that it is kept", changedDate)
		eval[any](p, `(globalThis.first = document.querySelector("[data-t=notice-said]"), 0)`)
		p.set("since-qalqalah", "2026-01-06")
		p.wait("that it is kept too", changedDate+` && document.querySelector("[data-t=notice-said]") !== first`)
		eval[any](p, `(document.querySelector("[data-t=notice-action]").focus(), 0)`)
		p.key(engine.KeyEnter)
		p.wait("the date before, and the keyboard in the field", shows("qalqalah", "2026-01-05")+` && document.activeElement === `+field("qalqalah"))
		p.calm()
	})
}

package e2e

import (
	"fmt"
	"testing"
)

// entries waits until there are n sessions on the device, with their entries: the same sessions
// without their marks, each in its month.
func (p *page) entries(what string, n int) {
	p.t.Helper()
	p.waitStored(fmt.Sprintf("%d sessions and their entries: %s", n, what), fmt.Sprintf(`
		const tx = db.transaction(["sessions", "months"]), months = tx.objectStore("months");
		const [sessions, keys, values] = await Promise.all([ask(tx.objectStore("sessions").getAll()), ask(months.getAllKeys()), ask(months.getAll())]);
		const line = x => JSON.stringify(Object.entries(x).filter(([k]) => k !== "marks" && k !== "stops").sort());
		const there = keys.flatMap((k, i) => k === "made" ? [] : JSON.parse(values[i]).map(x => k.join() + line(x))).sort().join("\n");
		const want = sessions.map(x => [x.learner, x.day.slice(0, 7)].join() + line(x)).sort().join("\n");
		return there === want && (keys[0] === "made" || !sessions.length) && sessions.length === %d;`, n))
}

// TestEntriesFollow: whatever happens to sessions, their entries follow, and what comes back by
// Undo comes with its marks.
func TestEntriesFollow(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "One")
	p.choose(rule, surah, from, upTo)
	p.tap(places(t, rule, surah, from, upTo)[0])
	p.waitDraft("find", 1)
	for p.count(hook("outcome-some")) == 0 {
		p.onwards()
	}
	finish := func(outcome, what string, n int) {
		t.Helper()
		p.click(outcome)
		p.entries(what, n)
		p.wait("Today", visible("main.today")) // which comes once all is read again
	}
	finish("outcome-some", "kept", 1)
	p.click("notice-action")
	p.wait("the question again", visible(hook("outcome-some")))
	p.entries("undone", 0)
	finish("outcome-some", "kept again", 1)
	p.toDone(s, "#/lines?rule=qalqalah&from=111:1&to=111:5")
	finish("outcome-alone", "one more", 2)

	p.open(s.address + "#/record")
	p.wait("both", fmt.Sprintf(`document.querySelectorAll('%s').length === 2`, hook("session")))
	const whole = `return JSON.stringify((await all("sessions")).map(({ updated, ...x }) => x))`
	before := inDatabase[string](p, whole)
	p.clickOn(`li[data-t=session]:last-child [data-t=remove]`)
	p.entries("removed", 1)
	p.wait("its own Undo", visible(hook("notice-undo")+" "+hook("notice-action")))
	p.wait("the keyboard on the row beside", `document.activeElement.dataset.t === "remove"`)
	p.click("notice-action")
	p.entries("back", 2)
	if after := inDatabase[string](p, whole); after != before {
		t.Errorf("what came back is\n%s, want\n%s", after, before)
	}

	p.open(s.address + "#/learner")
	p.addLearner("Second")
	p.wait("somebody else", fmt.Sprintf(`document.querySelectorAll('[data-t^="learner-"]').length === 2`))
	p.toDone(s, "#/lines?rule=qalqalah&from=112:1&to=112:4")
	finish("outcome-alone", "of two", 3)
	p.open(s.address + "#/learner")
	p.click("remove-learner")
	p.click("confirm-remove")
	p.entries("one is gone", 2)
	p.calm()
}

// TestEntriesMadeAnew: entries that are missing or wrong are made of the sessions; nothing is said,
// and the record shows what there is.
func TestEntriesMadeAnew(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.unkept()
	p.begin(s.address, "")
	put := func(script string) {
		t.Helper()
		inDatabase[any](p, `const tx = db.transaction(["sessions", "months"], "readwrite"), sessions = tx.objectStore("sessions"), months = tx.objectStore("months");
			const keys = (await ask(months.getAllKeys())).filter(k => k !== "made"), first = await ask(months.get(keys[0])), [one] = await ask(sessions.getAll());
			`+script+`
			await new Promise((ok, no) => { tx.oncomplete = ok; tx.onabort = no; });
			return 0;`)
	}
	for _, c := range []struct {
		name, script string
		want         int
	}{
		{"none", `months.clear();`, 5},
		{"of another version", `months.put(99, "made");`, 5},
		{"without a version", `months.delete("made");`, 5},
		{"a month cut off", `months.put(first.slice(0, -9), keys[0]);`, 5},
		{"a month that is a number", `months.put(7, keys[0]);`, 5},
		{"a month that is no list", `months.put('{"id":"s0"}', keys[0]);`, 5},
		{"a damaged entry", `months.put(JSON.stringify(JSON.parse(first).map(x => ({ ...x, found: -1 }))), keys[0]);`, 5},
		{"an entry that is none", `months.put("[null]", keys[0]);`, 5},
		{"a month less", `months.delete(keys[0]);`, 5},
		{"a session more", `sessions.put({ ...one, id: "more" });`, 6},
		{"a session less", `sessions.delete(one.id);`, 4},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := p.in(t)
			p.putSessions(s, 5)
			p.open(s.address + "#/record")
			p.wait("five sessions", fmt.Sprintf(`document.querySelectorAll('%s').length === 5`, hook("session")))
			p.entries("before", 5)
			p.open(s.address + "about.html")
			put(c.script)
			p.open(s.address + "#/record")
			p.wait("the sessions", fmt.Sprintf(`document.querySelectorAll('%s').length === %d`, hook("session"), c.want))
			p.entries("after", c.want)
			if p.count(hook("notice-damaged")) > 0 {
				t.Error("it is told, but nothing was lost")
			}
		})
	}
	p.calm()
}

// TestLearnersLost: where no learner is left but sessions are, they are shown; nobody is welcomed
// as if there were none.
func TestLearnersLost(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.unkept()
	p.begin(s.address, "Test child")
	p.putSessions(s, 5)
	inDatabase[any](p, `await ask(db.transaction("learners", "readwrite").objectStore("learners").clear()); return 0;`)
	for range 2 {
		p.open(s.address + "about.html")
		p.open(s.address)
		p.wait("today", `document.querySelector('[data-t^="next-"]')`)
		if p.count(hook("first")) > 0 {
			t.Error("somebody is welcomed")
		}
		p.click("nav-record")
		p.wait("the sessions", fmt.Sprintf(`document.querySelectorAll('%s').length === 5`, hook("session")))
	}
	p.calm()
}

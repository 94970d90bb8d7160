package e2e

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"sutur/generator/internal/engine"
)

// writers are how many writes each tab makes of each kind.
const writers = 40

// writeHere is one tab's work, by its name: it keeps sessions of its own, removes every second one,
// brings every fourth back, and corrects the shared one, whose other fields another tab corrects, as
// with the learner. A name is "a" or "b".
const writeHere = `(async (store, sample, name) => {
	for (let i = 1; i <= %d; i++) {
		const id = name + i;
		await (` + saveOne + `)(sample(id, i), "", { s: 78, a: 1 + i }, [{ learner: "l", rule: "rule-" + name + i, since: "2026-01-01", known: "" }]);
		await store.changeSession("shared", name === "a" ? { note: "note " + i } : { outcome: "much", minutes: i });
		await store.changeLearner("l", name === "a" ? { name: "Name " + i } : { load: "many", colour: i %% 8 });
		if (i %% 2) await store.removeSession(id);
		if (i %% 4 === 1) await store.bringBack(id);
		await store.changeSession(id, { note: name });
	}
	return 0;
})`

// bothWrote tests what two tabs have left: all of both.
func (p *page) bothWrote() {
	p.t.Helper()
	var f found
	if err := json.Unmarshal([]byte(eval[string](p, agreement+`.then(x => JSON.stringify(x))`)), &f); err != nil {
		p.t.Fatal(err)
	}
	if len(f.Wrong) > 0 {
		p.t.Error(strings.Join(f.Wrong, "\n"))
	}
	// Of four sessions one is removed for good: the third.
	if there, gone := len(f.Sessions), len(f.Gone); there != 1+2*writers*3/4 || gone != 2*writers/4 {
		p.t.Errorf("%d sessions are there and %d gone, want %d and %d", there, gone, 1+2*writers*3/4, 2*writers/4)
	}
	got := inDatabase[string](p, `
		const [l] = await all("learners"), s = (await all("sessions")).find(x => x.id === "shared"), notes = (await all("sessions")).filter(x => x.note === x.id[0]).length;
		return [l.name, l.load, l.colour, s.note, s.outcome, s.minutes, (await all("taught")).length, notes].join();`)
	want := fmt.Sprintf("Name %d,many,%d,note %[1]d,much,%[1]d,%[3]d,%[4]d", writers, writers%8, 2*writers, 2*writers*3/4)
	if got != want {
		p.t.Errorf("kept: %s, want %s", got, want)
	}
}

// prepare keeps the learner and the session that both tabs change.
func (p *page) prepare(s *server) {
	p.t.Helper()
	p.openStore(s)
	eval[any](p, `(async () => {
		await `+putLearner+`;
		await (`+saveOne+`)((`+sampleSession+`)("shared", 1), "", { s: 78, a: 1 }, []);
		await store.all();
		return 0;
	})()`)
}

// TestTwoTabsWrite: two tabs write to the same records at the same time, and nothing that either
// has written is lost.
func TestTwoTabsWrite(t *testing.T) {
	s := serve(t, "/", withStore(t))
	work := fmt.Sprintf(writeHere, writers)
	run := func(window, name string) string {
		return fmt.Sprintf("%s(%s.store, %s, %q)", work, window, sampleSession, name)
	}
	t.Run("tabs", func(t *testing.T) {
		p := newPage(t)
		p.prepare(s)
		q := p.beside()
		q.openStore(s)
		eval[any](q, `(globalThis.work = `+run("window", "b")+`, 0)`)
		evalWithin[any](p, 5*patience, run("window", "a"))
		evalWithin[any](q, 5*patience, `work`)
		p.bothWrote()
		p.calm()
		q.calm()
	})
	inEngines(t, func(t *testing.T, b engine.Browser) { // drivers of some have one tab alone
		p := newTab(t, b)
		p.prepare(s)
		eval[any](p, `(document.body.append(Object.assign(document.createElement("iframe"), { src: "under-test.html" })), 0)`)
		p.wait("the frame", `frames[0]?.store`)
		if eval[bool](p, `!frames[0].store.saveSessions || store.saveSessions === frames[0].store.saveSessions`) {
			t.Fatal("the frame has the store of the page: this test proves nothing")
		}
		evalWithin[any](p, 5*patience, `Promise.all([`+run("window", "a")+`, `+run("frames[0]", "b")+`]).then(() => 0)`)
		p.bothWrote()
	})
}

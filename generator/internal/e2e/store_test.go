package e2e

import (
	"fmt"
	"path/filepath"
	"sync"
	"testing"

	"sutur/generator/internal/build"
	"sutur/generator/internal/bundle"
)

// storeEntries are modules of the browser's store: a page without the app can write to the record far
// more often with them than a hand could.
var storeEntries = []string{"store", "snapshot"}

var storeFiles = sync.OnceValues(func() (all []bundle.File, err error) {
	source, err := filepath.Abs(filepath.Join(root, build.SourceDir))
	if err != nil {
		return nil, err
	}
	for _, name := range storeEntries {
		out, diags := bundle.Script(source, "app/store/"+name+".ts")
		if len(diags) > 0 {
			return nil, fmt.Errorf("%v", diags)
		}
		global := fmt.Sprintf(`import * as %s from "./%s"; globalThis.%[1]s = %[1]s;`, name, out.Name)
		all = append(append(all, out.Files...), bundle.File{Name: name + "-under-test.js", Data: []byte(global)})
	}
	return all, nil
})

// storePage is a page without the app that has the store, and that of backups, as globals.
const storePage = "under-test.html"

// withStore is the site with that page beside it.
func withStore(t testing.TB) []bundle.File {
	t.Helper()
	out, err := storeFiles()
	if err != nil {
		t.Fatal(err)
	}
	page := `<!doctype html><html lang="en"><title>Store</title><link rel="icon" href="data:,"><main></main>`
	for _, name := range storeEntries {
		page += fmt.Sprintf(`<script type="module" src="%s-under-test.js"></script>`, name)
	}
	return append(built(t), append(out, bundle.File{Name: storePage, Data: []byte(page)})...)
}

// openStore opens that page.
func (p *page) openStore(s *server) {
	p.t.Helper()
	p.open(s.address + storePage)
	p.wait("the store", `window.store && window.snapshot`)
}

// saveOne keeps a session of the draft with an address ("" for none), with the place and the rules that
// follow from it.
const saveOne = `((session, at, now, added) => store.saveSessions({ learner: session.learner, at }, [{ session, place: { was: now, now }, added }]))`

// sampleSession is a function of an id and a number: a session of learner "l" whose fields follow from
// the number, so that a mixture of two states is seen.
const sampleSession = `(id, n) => {
	const day = "2026-" + String(1 + n % 12).padStart(2, "0") + "-" + String(1 + n % 28).padStart(2, "0");
	return {
		id, learner: "l", day, at: day + "T10:00:00.000Z", rule: "noon-ikhfa", from: { s: 78, a: 1 }, to: { s: 78, a: 5 },
		marks: Array.from({ length: n % 40 }, (_, i) => ({ v: 0, w: i, l: 0, count: 0 })), stops: [],
		found: n % 40, missed: n % 7, extra: n % 3, helped: false, outcome: ["alone", "some", "much"][n % 3],
	};
}`

// putLearner keeps learner "l".
const putLearner = `store.addLearner({ id: "l", name: "A", place: { s: 78, a: 1 }, settled: true, made: "2026-01-01T10:00:00.000Z", updated: "2026-01-01T10:00:00.000Z" })`

// agreement is an expression: what the months say that the sessions do not, of every session, and
// what the app would read; empty where all agree.
const agreement = `(async () => {
	const ask = r => new Promise((ok, no) => { r.onsuccess = () => ok(r.result); r.onerror = () => no(r.error); });
	const db = await ask(indexedDB.open("sutur")), tx = db.transaction(["sessions", "months", "gone"]);
	const all = name => ask(tx.objectStore(name).getAll());
	const [sessions, [version, ...months], gone] = await Promise.all([all("sessions"), all("months"), all("gone")]);
	db.close();
	const wrong = [], entries = months.flatMap(m => JSON.parse(m));
	const fields = x => JSON.stringify(Object.entries(x).filter(([k]) => !["marks", "stops"].includes(k)).sort());
	const sum = (list, f) => list.reduce((n, x) => n + x[f], 0);
	if (version !== 1) wrong.push("the months are of no version");
	if (entries.length !== sessions.length) wrong.push(entries.length + " entries of " + sessions.length + " sessions");
	for (const s of sessions) {
		const own = entries.filter(e => e.id === s.id);
		if (own.length !== 1 || fields(own[0]) !== fields(s)) wrong.push(s.id + ": " + own.map(fields) + " for " + fields(s));
		if (s.marks.length !== s.found) wrong.push(s.id + " is of two states");
		if (gone.some(g => g.id === s.id)) wrong.push(s.id + " is there and gone");
	}
	for (const f of ["found", "missed", "extra"]) if (sum(entries, f) !== sum(sessions, f)) wrong.push("the totals of " + f + " differ");
	return { wrong, sessions, gone };
})()`

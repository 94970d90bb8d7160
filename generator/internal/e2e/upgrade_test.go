package e2e

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"sutur/generator/internal/build"
	"sutur/generator/internal/engine"
)

// database is what a device holds: a table's name, then its records.
type database struct {
	Version  int
	Sessions []struct {
		Rule    string
		Marks   []markAt
		Also    []struct{ Rule string }
		Pencils []string
		Looked  *int
		Paper   bool
	}
	Drafts []struct {
		Marks []markAt
		Lines struct{ Also []string }
		Told  string
	}
	Damaged []struct{ Table string }
}

type markAt struct {
	V, W, L, Count int
	Pencil         string
}

// readKept reads the whole database of the page.
func (p *page) readKept() (k database) {
	p.t.Helper()
	raw := eval[string](p, `(async () => {
		const db = await new Promise((ok, no) => { const r = indexedDB.open("sutur"); r.onsuccess = () => ok(r.result); r.onerror = no; });
		const all = s => new Promise((ok, no) => { const r = db.transaction(s).objectStore(s).getAll(); r.onsuccess = () => ok(r.result); r.onerror = no; });
		const out = { version: db.version, sessions: await all("sessions"), drafts: await all("drafts") };
		if (db.objectStoreNames.contains("damaged")) out.damaged = await all("damaged");
		db.close();
		return JSON.stringify(out);
	})()`)
	if err := json.Unmarshal([]byte(raw), &k); err != nil {
		p.t.Fatal(err)
	}
	return k
}

// oldLetters are the marks of testdata's sessions and draft, letters counted as now: on 93:4 the
// alif of the long vowel and the ra; on 2:4 the heavy kha and the hamza; the draft's on the last
// letter of 92:13.3 and the ra of 93:4.
func (p *page) oldLetters(k database) {
	p.t.Helper()
	got := map[string][]markAt{}
	for _, s := range k.Sessions {
		got[s.Rule] = s.Marks
	}
	for rule, want := range map[string][]markAt{
		"madd-badal":   {{0, 0, 4, 2, ""}, {0, 0, 6, 0, ""}},
		"heavy-letter": {{0, 1, 6, 0, ""}, {0, 1, 4, 0, ""}},
	} {
		if !slices.Equal(got[rule], want) {
			p.t.Errorf("the marks of %s are %v, want %v", rule, got[rule], want)
		}
	}
}

// severalKept tests what version 5 keeps and no version before it: a session looked at again, with
// other rules and pencils, one on paper, and a draft that the check has told something.
func (p *page) severalKept(k database) {
	p.t.Helper()
	for _, s := range k.Sessions {
		paper := s.Rule == "heavy-letter"
		if s.Paper != paper || (s.Looked == nil) != paper || len(s.Also) != 0 == paper || len(s.Pencils) == 0 {
			p.t.Errorf("the session of %s is %+v", s.Rule, s)
		}
	}
	if d := k.Drafts[0]; d.Told != "some" || !slices.Equal(d.Lines.Also, []string{"ghunnah"}) {
		p.t.Errorf("the draft is %+v", d)
	}
}

// settingsKept tests the settings: until version 5 two lengths were chosen together, as were two
// others; version 6 chooses them one by one, a learner may have its own, and what was removed or
// corrected is known.
func (p *page) settingsKept(version int) {
	p.t.Helper()
	got := inDatabase[string](p, `
		const d = await new Promise((ok, no) => { const r = db.transaction("settings").objectStore("settings").get("device"); r.onsuccess = () => ok(r.result); r.onerror = no; });
		const [l] = await all("learners"), gone = await all("gone"), note = (await all("sessions")).map(x => x.note ?? "").join("");
		return JSON.stringify([d.madd, d.muttasil, d.munfasil, d.arid, d.lin, d.counting, l.own?.arid, l.colour, l.work?.say, gone.length, gone[0]?.session.found, note]);`)
	want := `[null,4,4,4,4,null,null,null,null,0,null,""]` // in JSON null, also for what is absent
	switch version {
	case 5:
		want = `[null,null,null,null,null,"every",null,null,null,0,null,""]`
	case 6:
		want = `[null,5,4,null,2,"every",6,3,"Slowly, please.",1,25,"With the window open"]`
	}
	if got != want {
		p.t.Errorf("settings and more are %s, want %s", got, want)
	}
}

// TestKeptByEarlierVersions opens the site over the databases that earlier versions left, and reads
// a backup that the first release saved: every mark stays on its letter, though letters are counted
// anew in the words it stands on, and the draft can be taken up again.
func TestKeptByEarlierVersions(t *testing.T) {
	abs, err := filepath.Abs(filepath.Join(root, build.SourceDir, "test", "data"))
	if err != nil {
		t.Fatal(err)
	}
	s := serve(t, "/", built(t))
	files, err := filepath.Glob(filepath.Join(abs, "database-*.json"))
	if err != nil {
		t.Fatal(err)
	}
	inEngines(t, func(t *testing.T, b engine.Browser) {
		for i := range files { // one of each version, also of the present one
			if i > 0 && b.Name() != "chromium" {
				break // the first goes through all upgrades
			}
			t.Run(fmt.Sprintf("database %d", i+1), func(t *testing.T) {
				s.upgraded(newTab(t, b), filepath.Join(abs, fmt.Sprintf("database-%d.json", i+1)), i+1, len(files))
			})
		}
	})

	t.Run("backup", func(t *testing.T) {
		p := newPage(t)
		p.open(s.address + "index.html#/record")
		p.restore(filepath.Join(abs, "backup-1.json"))
		p.wait("the backup to be read", visible(hook("notice-restored")))
		p.oldLetters(p.readKept())
		p.entries("of the backup", 2)
		p.calm()
	})
}

// putDatabase makes the database of an earlier version, of a file in test/data, with a damaged
// session besides, and leaves it open as globalThis.held.
const putDatabase = `new Promise((ok, no) => {
	const kept = %s, r = indexedDB.open("sutur", kept.version);
	r.onerror = no;
	r.onupgradeneeded = () => {
		const db = r.result;
		db.createObjectStore("learners", { keyPath: "id" });
		db.createObjectStore("sessions", { keyPath: "id" }).createIndex("learner", "learner");
		db.createObjectStore("taught", { keyPath: ["learner", "rule"] });
		db.createObjectStore("settings");
		db.createObjectStore("drafts", { keyPath: kept.version < 3 ? "learner" : ["learner", "at"] });
		if (kept.version > 2) db.createObjectStore("damaged", { autoIncrement: true });
		if (kept.version > 3) db.createObjectStore("months");
		if (kept.version > 5) db.createObjectStore("gone", { keyPath: "id" });
	};
	r.onsuccess = () => {
		const tx = r.result.transaction([...r.result.objectStoreNames], "readwrite");
		for (const s of ["learners", "sessions", "taught", "drafts", "gone"]) for (const x of kept[s] ?? []) tx.objectStore(s).put(x);
		tx.objectStore("sessions").put({ ...kept.sessions[0], id: "damaged", from: "93:4", marks: [null] });
		for (const s of ["settings", "months"]) for (const x of kept[s] ?? []) tx.objectStore(s).put(x.value, x.key);
		tx.oncomplete = () => { globalThis.held = r.result; ok(0); };
		tx.onabort = no;
	};
})`

// upgraded opens the site over the database that a version left, and in which a session is damaged.
func (s *server) upgraded(p *page, file string, version, present int) {
	t := p.t
	t.Helper()
	old, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	p.open(s.address + "about.html") // of the same origin, and it opens no database
	eval[any](p, fmt.Sprintf(putDatabase, old))
	eval[any](p, `(held.close(), 0)`)
	if k := p.readKept(); k.Version != version || len(k.Sessions) != 3 || len(k.Drafts) != 1 {
		t.Fatalf("the old database holds %+v", k)
	}
	p.open(s.address + "index.html")
	p.wait("the record", `document.querySelector("[data-t^=next-]")`)
	p.wait("the damaged session to be told of", visible(hook("notice-damaged")))
	p.entries("those that are whole", 2)
	k := p.readKept()
	if k.Version != present || len(k.Sessions) != 2 || len(k.Drafts) != 1 || len(k.Damaged) != 1 || k.Damaged[0].Table != "sessions" {
		t.Errorf("the database holds %+v", k)
	}
	p.oldLetters(k)
	want := []markAt{{0, 2, 6, 0, ""}, {12, 0, 6, 0, ""}}
	if version > 4 { // which knows several pencils
		want[0].Pencil = "ghunnah"
		p.severalKept(k)
	}
	p.settingsKept(version)
	if !slices.Equal(k.Drafts[0].Marks, want) {
		t.Errorf("the marks of the draft are %v, want %v", k.Drafts[0].Marks, want)
	}
	// Taken up again, the lines show the draft's mark on the ra of 93:4.
	p.wait("the way back to the draft", visible(hook("resume")))
	eval[any](p, `(document.querySelector("[data-t=resume]").click(), 0)`) // the link takes two lines: its middle is beside it
	p.wait("the lines", visible(hook("verse-93-4")))
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	ra := letter(text, text.Find(93, 4), 0, 6)
	p.wait("the mark on the ra", fmt.Sprintf(`[...(CSS.highlights.get("f-heavy") ?? [])].some(r =>
			r.startContainer.parentElement.matches('.w[data-v="12"][data-w="0"]') && r.startOffset === %d && r.endOffset === %d)`, ra.from, ra.to))
	// Opened once more it is not moved again.
	p.open(s.address + "index.html")
	p.wait("the record", `document.querySelector("[data-t^=next-]")`)
	p.oldLetters(p.readKept())
	p.calm()
}

package e2e

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"sutur/generator/internal/bundle"
)

// nameOf returns the name of the one file that begins with prefix.
func nameOf(t testing.TB, files []bundle.File, prefix string) string {
	t.Helper()
	for _, f := range files {
		if strings.HasPrefix(f.Name, prefix) {
			return f.Name
		}
	}
	t.Fatalf("no file begins with %s", prefix)
	return ""
}

// words is true once the page shows what to do instead of the app.
const words = `(() => { const b = document.getElementById("boot"); return !!b && getComputedStyle(b).visibility === "visible" && b.innerText.length > 100; })()`

// gaveUp is true once it shows that for good: before, the page tries once more by itself, and words that
// it shows meanwhile, because that takes long, go with the page.
const gaveUp = words + ` && document.documentElement.dataset.boot === "failed"`

// TestStartWithout: whatever part does not arrive on the first visit, in whatever way, the page
// says so, and the next visit is whole.
func TestStartWithout(t *testing.T) {
	files := built(t)
	main := nameOf(t, files, "assets/main.")
	for _, c := range []run{
		{main, missing}, {main, signIn}, {main, cutOff}, {main, oneByte}, {nameOf(t, files, "assets/boot."), signIn},
		{"assets/*.js", signIn}, {"assets/*.js", cutOff}, {"assets/*", missing},
	} {
		t.Run(string(c.how)+" "+c.file, func(t *testing.T) {
			s, f := harmed(t, "/", files)
			f.set(c.file, c.how)
			p := newPage(t)
			p.open(s.address + "#/record")
			if strings.Contains(c.file, "boot") { // what helps is not needed where nothing is wrong
				p.wait("the app", drawn)
				return
			}
			if c.file == main { // the page tries once more by itself, and then says so
				p.wait("a word about it", `document.documentElement.dataset.boot === "failed"`)
			}
			p.wait("words", words)
			if text := p.text("#boot"); !strings.Contains(text, "Try again") || !strings.Contains(text, "sign in") {
				t.Errorf("the page says %q", text)
			}
			f.set("", "")
			p.clickOn("#again")
			p.wait("the app", drawn+` && !document.getElementById("boot")`)
			p.wait("everything to be kept", kept)
		})
	}
}

// TestRescue: the record is saved as a backup although the app's script is missing, and the app
// reads it; a damaged record in it is set aside and told.
func TestRescue(t *testing.T) {
	files := built(t)
	s, f := harmed(t, "/", files)
	p := newPage(t)
	p.begin(s.address, "Test child")
	session(p)
	inDatabase[any](p, `
		const [s] = await all("sessions"), put = (t, x) => ask(db.transaction(t, "readwrite").objectStore(t).put(x));
		await put("sessions", { ...s, id: "second" });
		await put("sessions", { ...s, id: "damaged", from: { s: 78, a: 999 } });
		await put("sessions", { ...s, id: "no-json", found: 10n });
		return 0;`)
	// The browser has cleared the pages, and the network wants a sign-in.
	eval[any](p, clearKept)
	f.set(nameOf(t, files, "assets/main."), signIn)
	dir := t.TempDir()
	p.downloads(dir)
	p.open(s.address)
	p.wait("words", gaveUp)
	p.click("rescue")
	p.wait("the file to be said", visible("#told-saved"))
	var names []string
	for deadline := time.Now().Add(patience); len(names) == 0 && time.Now().Before(deadline); time.Sleep(50 * time.Millisecond) {
		names, _ = filepath.Glob(filepath.Join(dir, "*.json"))
	}
	if len(names) != 1 {
		t.Fatalf("%d files came", len(names))
	}
	data, err := os.ReadFile(names[0])
	if err != nil || !strings.Contains(string(data), "Test child") || !strings.Contains(string(data), rule) {
		t.Fatalf("the file holds %.300s (%v)", data, err)
	}
	f.set("", "")
	other := newPage(t)
	other.begin(s.address, "")
	other.click("nav-record")
	other.restore(names[0])
	for _, want := range []struct{ what, says string }{{"the file", "2 sessions added. 2 damaged records in the file were set aside"}, {"the same file", "nothing that is not here already. 2 damaged"}} {
		other.wait(want.what+" to be read", fmt.Sprintf(`document.querySelector('%s')?.innerText.includes(%q)`, hook("notice-restored"), want.says))
		other.entries(want.what, 2)
		if aside := inDatabase[string](other, `return (await all("damaged")).map(d => d.table + " " + d.record.id).sort().join()`); aside != "sessions damaged,sessions no-json" {
			t.Errorf("set aside: %s", aside)
		}
		other.give("restore", names[0])
	}
	other.open(s.address + "about.html")
	other.open(s.address + "#/record")
	other.wait("the line in the record", visible(hook("aside")))
	if other.count(hook("notice-damaged")) > 0 {
		t.Error("it is told twice")
	}
	// Where there is no record none is made, neither a file nor a database.
	third := newPage(t)
	f.set(nameOf(t, files, "assets/main."), signIn)
	third.open(s.address)
	third.wait("words", gaveUp)
	third.click("rescue")
	third.wait("that there is none to be said", visible("#told-none"))
	if dbs := eval[string](third, `indexedDB.databases().then(d => d.map(x => x.name).join())`); dbs != "" {
		t.Errorf("a database was made: %s", dbs)
	}
}

// clearKept removes the worker and all it keeps, as a browser does that needs room.
const clearKept = `(async () => {
	for (const k of await caches.keys()) await caches.delete(k);
	await (await navigator.serviceWorker.getRegistration())?.unregister();
	return 0;
})()`

// TestRepair: a damaged copy in the worker's own cache is repaired when it is used; without a
// signal the page says what is wrong, and Repair does it later.
func TestRepair(t *testing.T) {
	files := built(t)
	s, f := harmed(t, "/", files)
	p := newPage(t)
	p.open(s.address)
	p.wait("everything to be kept", kept)
	damage := func(name string) {
		t.Helper()
		n := eval[int](p, fmt.Sprintf(`(async () => {
			let n = 0;
			for (const k of await caches.keys()) {
				const c = await caches.open(k), u = new URL(%q, document.baseURI).href, r = await c.match(u);
				if (r) { await c.put(u, new Response(%q, { headers: r.headers })); n++; }
			}
			return n;
		})()`, name, signInPage))
		if n == 0 {
			t.Fatalf("%s is not kept", name)
		}
	}
	main := nameOf(t, files, "assets/main.")
	damage(main)
	damage("index.html")
	p.open(s.address)
	p.wait("the app, with both fetched again", drawn)
	if bad := p.offlineFiles(s, f, files); len(bad) > 0 {
		t.Errorf("wrong afterwards: %v", bad)
	}

	damage(main)
	f.off(true)
	p.open(s.address)
	p.wait("words without a signal", gaveUp)
	p.click("repair")
	p.wait("that it failed to be said", visible("#told-failed"))
	f.off(false)
	p.click("repair")
	p.wait("the app", drawn+` && !document.getElementById("boot")`)
	p.wait("the app to start", `document.querySelector("[data-t=nav-today]")`)

	// A part that is needed later: the screen says so, and the rest works.
	part := ""
	for _, fl := range files {
		if strings.HasPrefix(fl.Name, "assets/print.") {
			part = fl.Name
		}
	}
	damage(part)
	f.off(true)
	p.open(s.address + "#/print")
	p.wait("words about the part", visible(hook("part-again")))
	f.off(false)
	p.click("part-again")
	p.wait("the part", `!document.querySelector('[data-t=part-again]') && document.querySelector("main h1") && !document.querySelector("[aria-busy=true]")`)
}

// offlineFiles lists the files that are not kept as they should be.
func (p *page) offlineFiles(s *server, f *harm, files []bundle.File) []string {
	p.t.Helper()
	f.off(true)
	defer f.off(false)
	return p.wrongFiles(files)
}

// TestCleared: the browser has cleared what was kept and left the worker. With a signal it is kept
// again; without one there are words, not the browser's own.
func TestCleared(t *testing.T) {
	files := built(t)
	s, f := harmed(t, "/", files)
	p := newPage(t)
	p.open(s.address)
	p.wait("everything to be kept", kept)
	clear := func() {
		eval[any](p, `(async () => { for (const k of await caches.keys()) await caches.delete(k); return 0; })()`)
	}
	clear()
	f.off(true)
	p.visit(s.address)
	p.wait("words", `document.querySelector("h1")?.innerText.includes("not on this device")`)
	f.off(false)
	p.open(s.address)
	p.wait("the app", drawn)
	p.wait("all to be kept again", `document.querySelector('[data-t=offline]')?.innerText.includes("Kept on this device")`)
	if bad := p.offlineFiles(s, f, files); len(bad) > 0 {
		t.Errorf("wrong afterwards: %v", bad)
	}
}

// TestLessonFirst: a first visit to a page without the app keeps the site too.
func TestLessonFirst(t *testing.T) {
	files := built(t)
	s, f := harmed(t, "/a/b/", files)
	p := newPage(t)
	p.open(s.address + "lessons/noon-ikhfa.html")
	p.wait("everything to be kept", kept)
	if bad := p.offlineFiles(s, f, files); len(bad) > 0 {
		t.Errorf("wrong: %v", bad)
	}
	f.off(true)
	p.visit(s.address)
	p.wait("the app without a host", drawn)
}

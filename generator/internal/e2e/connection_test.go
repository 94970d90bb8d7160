package e2e

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/storage"

	"sutur/generator/internal/build"
	"sutur/generator/internal/engine"
)

// inFrame opens the site in a frame of a page without the app, which stands for another tab: drivers
// of some engines have one tab alone.
func (p *page) inFrame() {
	p.t.Helper()
	eval[any](p, `(document.body.append(Object.assign(document.createElement("iframe"), { src: "index.html", width: 380, height: 700 })), 0)`)
}

// framed is an expression: what the element with a hook says in the frame.
func framed(name string) string {
	return fmt.Sprintf(`(frames[0]?.document.querySelector('%s')?.innerText ?? "")`, hook(name))
}

// TestBlockedByOlderTab: a tab with an older version holds the database and does not let go. It is
// told soon, and the record shows by itself when that tab is closed.
func TestBlockedByOlderTab(t *testing.T) {
	s := serve(t, "/", built(t))
	old, err := os.ReadFile(filepath.Join(root, build.SourceDir, "test", "data", "database-3.json"))
	if err != nil {
		t.Fatal(err)
	}
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.open(s.address + "about.html")
		eval[any](p, fmt.Sprintf(putDatabase, old))
		p.inFrame()
		p.wait("words about it", framed("closed")+`.includes("older version")`)
		eval[any](p, `(held.close(), 0)`)
		p.wait("the record", `frames[0].document.querySelector('[data-t^="next-"]') && !frames[0].document.querySelector("[data-t=closed]")`)
		p.open(s.address + "about.html")
		if k := p.readKept(); k.Version < 4 || len(k.Sessions)+len(k.Damaged) != 3 {
			t.Errorf("the database holds %+v", k)
		}
	})
}

// TestSuperseded: another tab has a newer version. This one lets go of the database at once, is
// loaded again, and says why, once.
func TestSuperseded(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Test child")
		p.open(s.address + "about.html")
		p.inFrame()
		p.wait("the record", `frames[0]?.document.querySelector('[data-t^="next-"]')`)
		eval[any](p, `new Promise((ok, no) => { const r = indexedDB.open("sutur", 99); r.onblocked = r.onerror = no; r.onsuccess = () => { r.result.close(); ok(0); }; })`)
		p.wait("why it was loaded again", framed("notice-superseded")+`.includes("updated in another tab")`)
		// There is no newer version here for it to get.
		p.wait("why the record is closed", framed("closed")+`.includes("newer version")`)
		eval[any](p, `(frames[0].old = true, frames[0].location.reload(), 0)`)
		p.wait("the page again", `!frames[0].old && `+framed("closed")+` && !`+framed("notice-superseded"))
	})
}

// capture keeps the page's connections, so that a test can do to them what a browser does.
const capture = `globalThis.connections = new Set();
	const transaction = IDBDatabase.prototype.transaction;
	IDBDatabase.prototype.transaction = function (...x) {
		connections.add(this);
		if (globalThis.dying) { dying = false; this.close(); }
		return transaction.apply(this, x);
	};`

// TestConnectionLost: the browser ends the connection while the page is open. What is kept is read
// anew and shown, it is told, and what is done after is kept.
func TestConnectionLost(t *testing.T) {
	s := serve(t, "/", built(t))
	const lost = `notice-lost`
	for _, c := range []struct {
		name  string
		end   func(p *page)
		left  string // of the record
		shows string
	}{
		{"closed", func(p *page) {
			eval[any](p, `(connections.forEach(db => { db.close(); db.dispatchEvent(new Event("close")); }), 0)`)
		}, "One", visible(hook("nickname"))},
		{"cleared", func(p *page) {
			call(p, storage.ClearDataForOrigin, storage.ClearDataForOriginParams{Origin: strings.TrimSuffix(s.address, "/"), StorageTypes: "indexeddb"})
		}, "", `!document.querySelector('[data-t=nickname]')`},
		{"deleted", func(p *page) {
			other := p.beside()
			other.open(s.address + "about.html")
			eval[any](other, `new Promise((ok, no) => { const r = indexedDB.deleteDatabase("sutur"); r.onblocked = r.onerror = no; r.onsuccess = () => ok(0); })`)
		}, "", `!document.querySelector('[data-t=nickname]')`},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := newPage(t)
			p.unkept()
			p.before(capture)
			p.begin(s.address, "One")
			p.click("nav-learner")
			p.wait("the name", visible(hook("nickname")))
			c.end(p)
			p.wait("words about it", visible(hook(lost)))
			if text := p.text(hook(lost)); !strings.Contains(text, "backup") {
				t.Errorf("it says %q", text)
			}
			p.wait("what is left", c.shows)
			if got := inDatabase[string](p, `return (await all("learners")).map(l => l.name).join()`); got != c.left {
				t.Errorf("kept: %q, want %q", got, c.left)
			}
			p.click("theme-dark")
			p.settings("dark")
			p.calm()
		})
	}
}

// TestConnectionDead: the connection has died, as after a phone has slept, and nothing said so. The
// write is made by a new one.
func TestConnectionDead(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.unkept()
	p.before(capture)
	p.begin(s.address, "One")
	p.click("nav-learner")
	p.wait("the theme", visible(hook("theme-dark")))
	eval[any](p, `(globalThis.dying = true, document.querySelector("[data-t=theme-dark]").click(), 0)`)
	p.settings("dark")
	if eval[bool](p, `dying`) {
		t.Error("the connection never died: this test proves nothing")
	}
	p.calm()
}

// settings waits until the theme on the device is this one.
func (p *page) settings(theme string) {
	p.t.Helper()
	p.waitStored("the theme", fmt.Sprintf(`return (await all("settings")).map(x => x.theme).join("") === %q`, theme))
}

// TestFailedUpgrade: where an upgrade fails, nothing of it is kept, and the page says so.
func TestFailedUpgrade(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.unkept()
	p.open(s.address + "about.html")
	eval[any](p, `new Promise((ok, no) => {
		const r = indexedDB.open("sutur", 1);
		r.onerror = no;
		r.onupgradeneeded = () => r.result.createObjectStore("sessions", { keyPath: "id" }).put({ id: "one", rule: "madd-badal", from: { s: 93, a: 4 }, marks: [{ v: 0, w: 0, l: 5, count: 2 }] });
		r.onsuccess = () => { r.result.close(); ok(0); };
	})`) // without drafts, the step to version 2 moves the mark, then fails
	p.open(s.address)
	p.wait("words about it", visible(hook("closed")))
	if text := p.text(hook("closed")); !strings.Contains(text, "cannot be read") {
		t.Errorf("it says %q", text)
	}
	p.open(s.address + "about.html")
	if got := inDatabase[string](p, `const [one] = await all("sessions"); return [db.version, [...db.objectStoreNames], one.marks[0].l].join()`); got != "1,sessions,5" {
		t.Errorf("the database holds %s, want it as it was", got)
	}
	p.calm()
}

package e2e

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/storage"

	"sutur/generator/internal/build"

	cdppage "github.com/chromedp/cdproto/page"
)

// TestBlockedByOlderTab: a tab with an older version holds the database and does not let go. It is
// told soon, and the record shows by itself when that tab is closed.
func TestBlockedByOlderTab(t *testing.T) {
	s := serve(t, "/", built(t))
	old, err := os.ReadFile(filepath.Join(root, build.SourceDir, "test", "data", "database-3.json"))
	if err != nil {
		t.Fatal(err)
	}
	holder := newPage(t)
	holder.open(s.address + "about.html")
	eval[any](holder, fmt.Sprintf(putDatabase, old))
	p := holder.beside()
	p.open(s.address)
	begun := time.Now()
	p.wait("words about it", visible(hook("closed")))
	if took := time.Since(begun); took > 6*time.Second {
		t.Errorf("it was told after %v", took)
	}
	if text := p.text(hook("closed")); !strings.Contains(text, "older version") {
		t.Errorf("it says %q", text)
	}
	eval[any](holder, `(held.close(), 0)`)
	p.wait("the record", `document.querySelector('[data-t^="next-"]')`)
	if p.count(hook("closed")) > 0 {
		t.Error("it is said to be closed still")
	}
	p.open(s.address + "about.html")
	if k := p.readKept(); k.Version < 4 || len(k.Sessions)+len(k.Damaged) != 3 {
		t.Errorf("the database holds %+v", k)
	}
}

// TestSuperseded: another tab has a newer version. This one lets go of the database at once, is
// loaded again, and says why.
func TestSuperseded(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "Test child")
	other := p.beside()
	other.open(s.address + "about.html")
	eval[any](other, `new Promise((ok, no) => { const r = indexedDB.open("sutur", 99); r.onblocked = r.onerror = no; r.onsuccess = () => { r.result.close(); ok(0); }; })`)
	p.wait("why it was loaded again", visible(hook("notice-superseded")))
	if text := p.text(hook("notice-superseded")); !strings.Contains(text, "updated in another tab") {
		t.Errorf("it says %q", text)
	}
	// There is no newer version here for it to get.
	p.wait("why the record is closed", visible(hook("closed")))
	if text := p.text(hook("closed")); !strings.Contains(text, "newer version") {
		t.Errorf("it says %q", text)
	}
	p.reload()
	p.wait("why the record is closed", visible(hook("closed")))
	if p.count(hook("notice-superseded")) > 0 {
		t.Error("it is told twice")
	}
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
			call(p, cdppage.AddScriptToEvaluateOnNewDocument, cdppage.AddScriptToEvaluateOnNewDocumentParams{Source: capture})
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
	call(p, cdppage.AddScriptToEvaluateOnNewDocument, cdppage.AddScriptToEvaluateOnNewDocumentParams{Source: capture})
	p.begin(s.address, "One")
	p.click("nav-learner")
	p.wait("the theme", visible(hook("theme-dark")))
	eval[any](p, `(globalThis.dying = true, 0)`)
	p.click("theme-dark")
	p.settings("dark")
	if eval[bool](p, `dying`) {
		t.Error("the connection never died: this test proves nothing")
	}
	p.calm()
}

// settings waits until the theme on the device is this one.
func (p *page) settings(theme string) {
	p.t.Helper()
	for deadline := time.Now().Add(patience); ; time.Sleep(20 * time.Millisecond) {
		got := inDatabase[string](p, `return (await all("settings")).map(x => x.theme).join("")`)
		if got == theme {
			return
		}
		if time.Now().After(deadline) {
			p.t.Fatalf("the theme kept is %q, want %q", got, theme)
		}
	}
}

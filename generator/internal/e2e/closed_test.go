package e2e

import (
	"strings"
	"testing"
)

// TestClosed: where the record cannot be opened, the page says why, offers a way on, and never
// takes it for an empty one.
func TestClosed(t *testing.T) {
	s := serve(t, "/", built(t))
	made := func(version, stores string) string {
		return `new Promise((ok, no) => { const r = indexedDB.open("sutur", ` + version + `);
			r.onupgradeneeded = () => { for (const n of ` + stores + `) r.result.createObjectStore(n); };
			r.onsuccess = () => { r.result.close(); ok(0); }; r.onerror = no; })`
	}
	for _, c := range []struct {
		name, says string
		before     string // done on a page without the app
		always     string // done before every page
	}{
		{"never answers", "does not answer", "", `IDBFactory.prototype.open = () => Object.setPrototypeOf(new EventTarget(), IDBOpenDBRequest.prototype)`},
		{"of a newer version", "newer version", made("99", `[]`), ""},
		{"without stores", "cannot be read", `(async () => {
			const own = await new Promise(ok => { const r = indexedDB.open("sutur"); r.onsuccess = () => { const v = r.result.version; r.result.close(); ok(v); }; });
			await new Promise(ok => { indexedDB.deleteDatabase("sutur").onsuccess = ok; });
			return ` + made("own", `[]`) + `;
		})()`, ""},
		{"blocked", "keeps nothing", "", `IDBFactory.prototype.open = () => { throw new DOMException("blocked", "SecurityError"); }`},
		{"absent", "keeps nothing", "", `Object.defineProperty(globalThis, "indexedDB", { value: undefined })`},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := newPage(t)
			if c.before != "" {
				p.begin(s.address, "Test child") // a record, which must not be passed over
				p.open(s.address + "about.html")
				eval[any](p, c.before)
			}
			if c.always != "" {
				p.before(c.always)
			}
			screens := []string{"", "#/record", "#/learner"}
			if c.name == "never answers" { // each takes its time
				screens = screens[:1]
			}
			for _, at := range screens {
				p.open(s.address + "about.html")
				p.open(s.address + at)
				p.wait("words", visible(hook("closed")))
				if text := p.text("main"); !strings.Contains(text, c.says) || strings.Contains(text, "Welcome") || strings.Contains(text, "No session is kept yet") {
					t.Errorf("%q says %q, want %q in it", at, text, c.says)
				}
			}
			// Lines can be read all the same.
			p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:16")
			p.wait("the lines", visible(hook("verse-78-12")))
		})
	}
}

// TestNoWorker: a browser or an address that cannot keep the site says so.
func TestNoWorker(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.unkept()
	p.open(s.address)
	p.wait("the truth", `document.querySelector('[data-t=offline]')?.innerText.includes("cannot keep")`)
}

package e2e

import (
	"bytes"
	"fmt"
	"os"
	"path"
	"path/filepath"
	"strings"
	"testing"
	"time"

	cdpbrowser "github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/dom"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// TestUpdate: a newer version is fetched in the background, said politely, and used when the reader
// asks for it; what was kept stays.
func TestUpdate(t *testing.T) {
	s := serve(t, "/a/b/", built(t))
	p := newPage(t)
	p.begin(s.address, "")
	p.wait("everything to be stored", kept)
	session(p)
	s.host.Set(edition(t, onePage))
	served := s.served.Load()
	p.open(s.address + "#/record")
	p.do(chromedp.Reload())
	p.wait("the notice of a newer version", visible(hook("notice-update")+" "+hook("notice-action")))
	// Pages and other files with a fixed name are asked for again, and a page that is loaded asks
	// for a few by itself.
	most := int64(10)
	for _, f := range built(t) {
		if strings.Count(path.Base(f.Name), ".") < 2 {
			most++
		}
	}
	if n := s.served.Load() - served; n > most {
		t.Errorf("the update asked for %d files, at most %d are expected: those whose names carry a hash are there already", n, most)
	}
	eval[any](p, `(window.before = true, 0)`)
	p.click("notice-action")
	p.wait("the page to come again", `!window.before && `+drawn)
	s.stop()
	p.open(s.address + "about.html")
	if h := p.text("h1"); h != "A newer page" {
		t.Errorf("after the update the page says %q", h)
	}
	p.open(s.address + "#/record")
	p.wait("the record", visible(hook("session")))
}

// passedOn is true once a backup is said to be saved; an earlier notice may stand there.
const passedOn = `document.querySelector("[data-t=notice-said]")?.innerText.includes("passed to your downloads")`

// TestBackup saves the record to a file, reads it in another profile, and refuses what is no backup
// with nothing changed.
func TestBackup(t *testing.T) {
	s := serve(t, "/", built(t))
	dir := t.TempDir()
	p := newPage(t)
	p.begin(s.address, "Test child")
	n := session(p)
	p.downloads(dir)
	p.click("backup")
	p.wait("the download to be said", passedOn)
	var file string
	for deadline := time.Now().Add(patience); time.Now().Before(deadline); {
		if names, _ := filepath.Glob(filepath.Join(dir, "*.json")); len(names) == 1 {
			file = names[0]
			break
		}
		eval[any](p, `new Promise(r => setTimeout(() => r(0), 50))`)
	}
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatalf("no backup came: %v", err)
	}
	if !bytes.HasPrefix(data, []byte("{")) || !bytes.Contains(data, []byte("noon-ikhfa")) {
		t.Fatalf("the backup is %.200s", data)
	}

	other := newPage(t)
	other.begin(s.address, "")
	other.click("nav-record")
	give := func(name string, data []byte) {
		t.Helper()
		file := filepath.Join(dir, name)
		if err := os.WriteFile(file, data, 0o644); err != nil {
			t.Fatal(err)
		}
		other.give("restore", file)
	}
	for _, bad := range []struct {
		name string
		data []byte
	}{
		{"photo.json", []byte("\x89PNG")},
		{"other.json", []byte(`{"some":"thing"}`)},
		{"cut.json", data[:len(data)/2]},
		{"changed.json", bytes.Replace(data, []byte("noon-ikhfa"), []byte("noon\u0000"), 1)},
	} {
		give(bad.name, bad.data)
		other.wait(bad.name+" to be refused", fmt.Sprintf(`document.querySelector('[data-t="notice-refused"]')?.innerText.includes(%q)`, bad.name))
		if c := other.count(hook("session")); c != 0 {
			t.Errorf("%s brought %d sessions", bad.name, c)
		}
	}
	for i := range 2 { // the second time brings nothing twice
		eval[any](other, `(globalThis.was = document.querySelector("[data-t=notice-restored]"), 0)`)
		give("backup.json", data)
		if i == 0 {
			other.takeIn()
		}
		other.wait("the backup to be read", visible(hook("notice-restored"))+` && document.querySelector("[data-t=notice-restored]") !== was`)
	}
	// The session belongs to the learner of the backup, who can be taken in hand.
	if text := other.text(hook("notice-restored")); text == "" {
		t.Error("nothing is said")
	}
	kept := eval[string](other, `(async () => {
		const dbs = await indexedDB.databases();
		const db = await new Promise((ok, no) => { const r = indexedDB.open(dbs[0].name); r.onsuccess = () => ok(r.result); r.onerror = no; });
		const all = await new Promise((ok, no) => { const r = db.transaction("sessions").objectStore("sessions").getAll(); r.onsuccess = () => ok(r.result); r.onerror = no; });
		db.close();
		return all.map(s => s.rule + " " + s.found + " " + s.outcome).join();
	})()`)
	if want := fmt.Sprintf("noon-ikhfa %d some", n); kept != want {
		t.Errorf("the other profile holds %q, want %q", kept, want)
	}
}

// give hands files to a file input.
func (p *page) give(name string, files ...string) {
	p.t.Helper()
	p.wait("the place for a file", `document.querySelector('`+hook(name)+`')`)
	// By its object: the protocol's numbers of nodes are given anew whenever it looks at the page again.
	field := call(p, runtime.Evaluate, runtime.EvaluateParams{Expression: fmt.Sprintf("document.querySelector(%q)", hook(name))})
	call(p, dom.SetFileInputFiles, dom.SetFileInputFilesParams{Files: files, ObjectID: field.Result.ObjectID})
}

// TestPaper makes a PDF of lines: it holds the text and is not blank.
func TestPaper(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:20")
	p.wait("the lines", visible(hook("verse-78-20")))
	pdf := call(p, cdppage.PrintToPDF, cdppage.PrintToPDFParams{})
	if len(pdf.Data) < 10_000 {
		t.Errorf("the PDF has %d bytes", len(pdf.Data))
	}
	if strings.TrimSpace(p.text("main")) == "" {
		t.Error("the page is empty after printing")
	}
}

// takeIn reads the backup whose effect is shown.
func (p *page) takeIn() {
	p.t.Helper()
	p.wait("what the file brings", visible(hook("reading")))
	p.click("reading-take")
}

// restore reads a backup that brings something.
func (p *page) restore(file string) {
	p.t.Helper()
	p.give("restore", file)
	p.takeIn()
}

// downloads has the page's downloads kept in a folder.
func (p *page) downloads(dir string) {
	p.t.Helper()
	_, err := chromedp.CallBrowser(p.ctx, cdpbrowser.SetDownloadBehavior, cdpbrowser.SetDownloadBehaviorParams{
		Behavior: cdpbrowser.SetDownloadBehaviorBehaviorAllow, DownloadPath: dir, BrowserContextID: chromedp.FromContext(p.ctx).BrowserContextID,
	})
	if err != nil {
		p.t.Fatal(err)
	}
}

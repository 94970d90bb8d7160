package e2e

import (
	"bytes"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/engine"
	"sutur/generator/internal/site"
)

// hosted are the files of a site that belong together on a host: all but the one file.
func hosted(files []bundle.File) []bundle.File {
	return slices.DeleteFunc(files, func(f bundle.File) bool { return f.Name == site.OneFile })
}

// theFile writes the one file of a site into a folder and returns its address there.
func theFile(t testing.TB, files []bundle.File, dir string) string {
	t.Helper()
	for _, f := range files {
		if f.Name != site.OneFile {
			continue
		}
		name := filepath.Join(dir, filepath.Base(f.Name))
		if err := os.WriteFile(name, f.Data, 0o644); err != nil {
			t.Fatal(err)
		}
		return (&url.URL{Scheme: "file", Path: filepath.ToSlash(name)}).String()
	}
	t.Fatalf("the site has no %s", site.OneFile)
	return ""
}

// TestOneFileInEngines opens the one file from a folder, with no host and no network, and does there
// what is done on the site: a session, the record after a reload, a backup written and read, a
// lesson, a sheet to print.
func TestOneFileInEngines(t *testing.T) {
	inEngines(t, func(t *testing.T, b engine.Browser) {
		files := allFiles(t)
		if b.Name() == "webkit" {
			files = wholeEdition(t, listening) // its driver does not tell what the console says
		}
		dir := t.TempDir()
		address := theFile(t, files, dir)
		p := newTab(t, b)
		p.offline()
		p.begin(address, "Test child")
		n := session(p)
		checkRecord(p, 1, n)
		p.reload()
		p.wait("the record after a reload", visible(hook("session")))
		checkRecord(p, 1, n)
		p.saysWhatDiffers()
		text := p.backedUp()
		p.lessonWithin()
		p.lay(&server{address: address}, fmt.Sprintf("#/print?sheet=both&from=%d:%d&to=%[1]d:%[3]d&rule=%s", surah, from, upTo, rule))
		if l := p.leaves(); len(l) < 2 {
			t.Errorf("%d pages are laid for paper", len(l))
		}
		for _, u := range p.unfit() {
			t.Error(u)
		}
		if asked := eval[[]string](p, `performance.getEntriesByType("resource").map(e => e.name).filter(n => !/^(data|blob):/.test(n))`); len(asked) > 0 {
			t.Errorf("the file has asked for %v", asked)
		}
		p.calm()

		// The same file at another place.
		other := t.TempDir()
		p.open(theFile(t, files, other) + "#/record")
		p.wait("the record there", visible(hook("backup"))+" && document.querySelector('"+hook("restore")+"')")
		// What parts.html says of this in "this-file".
		apart := map[string]int{"chromium": 1, "firefox": 0, "webkit": 1}
		if n := p.count(hook("session")); n != apart[b.Name()] {
			t.Errorf("the file at another place shows %d sessions, want %d", n, apart[b.Name()])
		}
		p.drop(text)
		p.wait("the backup to be read", visible(hook("reading-take"))+" || "+visible(hook("notice-restored")))
		if p.count(hook("reading-take")) > 0 {
			p.click("reading-take")
		}
		p.sessions("the session of the backup", 1)
		p.calm()
	})
}

// saysWhatDiffers looks at what is said of the one file, on Today and on the screen of the learner.
func (p *page) saysWhatDiffers() {
	p.t.Helper()
	eval[any](p, `(sessionStorage.removeItem("sutur-said"), location.hash = "#/today", 0)`) // said once a visit
	p.reload()
	p.wait("what differs in the file, on Today", visible(hook("safe")+" "+hook("safe-file")))
	p.click("nav-learner")
	p.wait("what differs in the file", visible(hook("safe-panel")+" "+hook("safe-file")))
	if text := p.text(hook("safe-panel")); !strings.Contains(text, "one file") || strings.Contains(text, "home screen") {
		p.t.Errorf("the panel says %q", text)
	}
	p.wait("that all is in the file", fmt.Sprintf(`document.querySelector('%s')?.innerText.includes("in this file")`, hook("offline")))
}

// backedUp saves a backup and returns what is in it.
func (p *page) backedUp() string {
	p.t.Helper()
	eval[any](p, `(() => {
		const make = URL.createObjectURL;
		URL.createObjectURL = b => (void b.text().then(t => { globalThis.saved = t; }), make.call(URL, b));
		return 0;
	})()`)
	p.click("safe-backup")
	p.wait("the backup", `globalThis.saved`)
	p.closeNotice() // nothing is to move under what is pressed next
	return eval[string](p, `saved`)
}

// lessonWithin goes to a lesson, to a place in it, to the next one, and back to the app.
func (p *page) lessonWithin() {
	p.t.Helper()
	p.click("nav-today")
	p.wait("the card of today", `document.querySelector('[data-t^="next-"]')`)
	p.click("lessons")
	p.wait("the list of lessons", `document.querySelectorAll(".inside .lesson-list a").length > 30`)
	p.clickOn(fmt.Sprintf(`.lesson-list a[href$="%s.html"]`, rule))
	p.wait("the lesson", `document.querySelector(".inside main.lesson h1")`)
	p.wait("coloured letters", fmt.Sprintf(`CSS.highlights.get("f-%s")?.size > 0`, family))
	if p.tab != nil {
		picture(p.t, "one-file-lesson-"+p.engine, p.settled())
	}
	p.clickOn(".on a")
	p.wait("the lines to try", `document.getElementById("try").getBoundingClientRect().top < innerHeight`)
	p.clickOn(".try-lines a")
	p.wait("lines of the lesson", visible(hook("passage")))
	if n := eval[int](p, `[...document.querySelectorAll('style[data-sheet="one-file"]')].filter(s => s.media !== "not all").length`); n > 0 {
		p.t.Error("the style of pages stays in effect on the lines")
	}
}

// TestOneFileDamaged: a letter of the text that is another one is not shown, nor a file that is cut
// off taken for a whole one; and where nothing runs, the file says what it is.
func TestOneFileDamaged(t *testing.T) {
	files := allFiles(t)
	dir := t.TempDir()
	address := theFile(t, files, dir)
	name := filepath.Join(dir, "sutur.html")
	whole, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	put := func(data []byte) {
		t.Helper()
		if err := os.WriteFile(name, data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	p := newPage(t)
	at := bytes.Index(whole, []byte(`data-file="data/s078.`))
	at += bytes.IndexByte(whole[at:], '>') + 500
	other := bytes.Clone(whole)
	if other[at] = 'A'; whole[at] == 'A' {
		other[at] = 'B'
	}
	put(other)
	p.open(address + "#/lines?from=78:1&to=78:5")
	p.wait("words about the text", fmt.Sprintf(`document.querySelector('%s')?.innerText.includes("is not the verified text")`, hook("text-error")))
	if n := p.count(".w"); n > 0 {
		t.Errorf("%d words are shown", n)
	}
	p.open("about:blank")
	p.open(address + "#/lines?from=79:1&to=79:5")
	p.wait("a surah that is whole", visible(hook("verse-79-5")))

	put(whole[:len(whole)*3/4])
	p.open("about:blank")
	p.open(address)
	p.wait("words about the file", visible("#boot")+` && getComputedStyle(document.getElementById("boot")).visibility === "visible" && document.getElementById("boot").innerText.includes("cut off")`)

	put(whole)
	call(p, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	p.open("about:blank")
	p.open(address)
	text := p.text("noscript main")
	for _, want := range []string{"Open the file in a browser", "qualified teacher", "printed mushaf"} {
		if !strings.Contains(text, want) {
			t.Errorf("without scripts the file says %q, without %q", text, want)
		}
	}
	if n := p.count("#boot:not([hidden])"); n > 0 && eval[bool](p, visible("#boot")) {
		t.Error("without scripts it says that it has not started yet")
	}
}

// TestOneFileAsks: of a whole session in the one file Chromium tells no request but that for the file.
func TestOneFileAsks(t *testing.T) {
	address := theFile(t, allFiles(t), t.TempDir())
	p := newPage(t)
	p.withAxe()
	p.begin(address, "Test child")
	checkRecord(p, 1, session(p))
	p.lessonWithin()
	for _, screen := range []string{"read?page=about.html&at=this-file", "read?page=lessons%2F" + rule + ".html", "learner", "give?from=78:1&to=78:2"} {
		eval[any](p, fmt.Sprintf(`(location.hash = "#/%s", 0)`, screen))
		p.wait(screen, `document.querySelector(".screen main:not([aria-busy]) h1")`)
		p.axe("in the one file, " + screen)
	}
	p.calm()
	own := 0
	for _, r := range p.requests {
		at, _, _ := strings.Cut(r, "#")
		switch {
		case at == address:
			own++
		case !strings.HasPrefix(r, "data:") && !strings.HasPrefix(r, "blob:"):
			t.Errorf("a request for %s", r)
		}
	}
	if own == 0 {
		t.Error("not even the file was asked for: this check sees nothing")
	}
}

// TestOneFileFromSite: the site offers the one file, its worker leaves it to the host, and it works at
// an address as well.
func TestOneFileFromSite(t *testing.T) {
	s := serve(t, "/a/b/", allFiles(t))
	p := newPage(t)
	p.open(s.address)
	p.wait("everything to be stored", kept)
	p.open(s.address + "about.html")
	if n := p.count(`a[download][href="one-file/sutur.html"]`); n != 1 {
		t.Errorf("the page about Sutur offers it %d times", n)
	}
	const ask = `fetch("one-file/sutur.html", { method: "GET" }).then(async r => (await r.text()).length, () => 0)`
	if n := eval[int](p, ask); n < 1_000_000 {
		t.Errorf("from the host come %d characters", n)
	}
	p.open(s.address + "one-file/sutur.html")
	p.wait("the first screen", drawn)
	p.calm()
	p.open(s.address + "about.html")
	cut(p, s)
	if n := eval[int](p, ask); n != 0 {
		t.Errorf("without a network %d characters of something come in its place", n)
	}
}

package e2e

import (
	"fmt"
	"image"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"sutur/generator/internal/engine"
)

// A line of text that would do harm if it were taken for HTML.
const hostileSay = `<img src=x onerror="document.title='hit'"> & "twice"`

// give makes work of the session's lines and returns its link.
func (p *page) giveWork(s *server, say string) string {
	p.t.Helper()
	p.open(s.address + "about.html")
	p.open(fmt.Sprintf("%s#/lines?rule=%s&from=%d:%d&to=%[3]d:%[5]d", s.address, rule, surah, from, upTo))
	p.wait("the lines", visible(hook("next")))
	p.clickOn(hook("menu") + " summary")
	p.click("give")
	p.wait("the picture", visible(hook("qr")))
	p.click("times-2")
	p.set("say", say)
	p.wait("the line of text", fmt.Sprintf(`document.querySelector(%q).innerText.includes(%q)`, hook("words"), say))
	return p.text(hook("address"))
}

// openLink opens a link as from another program.
func (p *page) openLink(link string) {
	p.t.Helper()
	p.open("about:blank")
	p.open(link)
	p.wait("the first screen", drawn)
}

// shot at the picture of a link: what an outside decoder (jsqr) reads in what is seen.
func readQR(t *testing.T, im *image.RGBA) string {
	t.Helper()
	file := filepath.Join(t.TempDir(), "seen")
	if err := os.WriteFile(file, im.Pix, 0o644); err != nil {
		t.Fatal(err)
	}
	tool(t, "jsqr/dist/jsQR.js")
	out, err := exec.Command("node", filepath.Join(root, "site-src/test/qr.mjs"), file, fmt.Sprint(im.Rect.Dx()), fmt.Sprint(im.Rect.Dy())).CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	return string(out)
}

// TestWorkInEngines is the short way of work in every engine: the picture of its link is read by an
// outside decoder; the family opens it, does it, sends the result; the teacher takes it in.
func TestWorkInEngines(t *testing.T) {
	inEngines(t, func(t *testing.T, b engine.Browser) {
		files := built(t)
		if b.Name() == "webkit" {
			files = overheard(t)
		}
		s := serve(t, "/a/b/", files)
		p := newTab(t, b)
		p.begin(s.address, "Test child")
		link := p.giveWork(s, "Slowly.")
		p.click("large")
		p.wait("the picture over the screen", `document.querySelector("dialog.large[open]")`)
		if got := readQR(t, p.settled()); got != link {
			t.Fatalf("the picture says %q, want %q", got, link)
		}
		picture(t, "link-"+b.Name(), p.settled())
		p.click("small")
		p.wait("the form again", `!document.querySelector("dialog.large")`)

		p.openLink(link)
		p.wait("the work", visible(hook("work-start")))
		p.click("work-start")
		p.wait("the lines", visible(hook("next")))
		p.toEnd()
		p.click("outcome-alone")
		p.click("notice-more")
		p.wait("the result", visible(hook("qr")))
		result := p.text(hook("address"))

		// WebKit's driver has one device at a time: this one becomes the teacher's, where the session
		// was not held.
		p.open(s.address + "about.html")
		inDatabase[any](p, `const tx = db.transaction(["sessions", "months"], "readwrite");
			tx.objectStore("sessions").clear();
			tx.objectStore("months").clear();
			await new Promise(ok => { tx.oncomplete = ok; }); return 0;`)
		p.openLink(result)
		p.click("result-take")
		p.wait("that it is taken", visible(hook("result-there")))
		p.click("result-record")
		p.wait("the record", visible(hook("session")))
		p.entries("of the result", 1)
		p.calm()
		p.stayedAt(s.address)
	})
}

// TestWorkWithoutNetwork: a teacher gives work; the family opens it, does it and sends the result,
// and the teacher takes it in, all without a network, and once, however often it is opened.
func TestWorkWithoutNetwork(t *testing.T) {
	s := serve(t, "/a/b/", built(t))
	p, q := newPage(t), newPage(t)
	p.begin(s.address, "Aisha")
	p.open(s.address + "#/learner")
	p.wait("the learner", visible(hook("nickname")))
	link := p.giveWork(s, hostileSay)
	if strings.Contains(link, "Aisha") || len(link) > 300 {
		t.Errorf("the link is %q", link)
	}
	q.open(s.address)
	for _, x := range []*page{p, q} {
		x.wait("everything to be stored", kept)
	}
	cut(q, s)
	served := s.served.Load()

	q.openLink(link)
	q.wait("the work", visible(hook("work-start")))
	if got := q.text(hook("said")); got != hostileSay {
		t.Errorf("the teacher's line is shown as %q", got)
	}
	if got := q.text(hook("given-times")); got != "2 times this week" {
		t.Errorf("how often: %q", got)
	}
	q.set("work-name", "Yusuf")
	q.click("work-start")
	q.wait("the lines", visible(hook("next")))
	want := places(t, rule, surah, from, upTo)
	for _, a := range want[1:] {
		q.tap(a)
	}
	q.toEnd()
	q.click("outcome-some")
	q.wait("the work on Today", fmt.Sprintf(`document.querySelector(%q)?.innerText.includes("1 of 2")`, hook("work-done")))
	if got := q.text(hook("work")); !strings.Contains(got, hostileSay) {
		t.Errorf("Today says %q", got)
	}
	q.wait("the card of today", `document.querySelector('[data-t^="next-"]')`) // which moves what lies below
	q.click("send-result")
	q.wait("the result", visible(hook("qr")))
	q.set("say", "<b>Verse 14</b>")
	q.wait("the line of text", fmt.Sprintf(`document.querySelector(%q).innerText.includes("Verse 14")`, hook("words")))
	result, words := q.text(hook("address")), q.text(hook("words"))
	found := fmt.Sprintf("%d of %d found", len(want)-1, len(want))
	if !strings.Contains(words, found) || strings.Contains(words+result, "Yusuf") || len(result) > 300 {
		t.Errorf("the result is %q, %q", words, result)
	}

	p.openLink(result)
	p.wait("the result", visible(hook("result-take")))
	if got := p.text(hook("told-result")); !strings.Contains(got, found) || !strings.Contains(got, "With some help") || !strings.Contains(got, "<b>Verse 14</b>") {
		t.Errorf("the result says %q, without %q", got, found)
	}
	p.entries("before a press", 0)
	p.click("result-take")
	p.wait("that it is taken", visible(hook("result-there")))
	p.entries("of the result", 1)
	p.click("notice-action")
	p.wait("the question again", visible(hook("result-take")))
	p.entries("after Undo", 0)
	p.click("result-take")
	p.wait("that it is taken again", visible(hook("result-there")))
	p.openLink(result)
	p.wait("that it is there", visible(hook("result-there")))
	if n := p.count(hook("result-take")); n != 0 {
		t.Error("it can be taken in twice")
	}
	p.entries("after a second opening", 1)
	q.openLink(result)
	q.wait("that it is there", visible(hook("result-there")))
	q.entries("where it was held", 1)
	for _, x := range []*page{p, q} {
		if title := eval[string](x, `document.title`); title == "hit" || x.count("main img") > 0 {
			t.Error("a line of text became HTML")
		}
		x.calm()
	}
	if now := s.served.Load(); now != served {
		t.Errorf("the host answered %d requests while it was cut off", now-served)
	}
}

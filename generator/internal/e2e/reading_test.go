package e2e

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"sutur/generator/internal/engine"
)

// backupOf is a backup of the learners a and b with the given sessions and removed sessions.
func backupOf(sessions, gone []string) string {
	const at = "2026-03-01T10:00:00.000Z"
	learner := func(id, name string) string {
		return fmt.Sprintf(`{"id":%q,"name":%q,"place":{"s":78,"a":1},"settled":true,"made":%[3]q,"updated":%[3]q}`, id, name, at)
	}
	return fmt.Sprintf(`{"format":"sutur-backup","v":6,"saved":%q,"learners":[%s,%s],"taught":[],"sessions":[%s],"gone":[%s]}`,
		at, learner("a", "Amal"), learner("b", "Badr"), strings.Join(sessions, ","), strings.Join(gone, ","))
}

func sessionOf(id, learner, more string) string {
	return fmt.Sprintf(`{"id":%q,"learner":%q,"day":"2026-03-01","at":"2026-03-01T10:00:00.000Z","rule":"ghunnah","from":{"s":78,"a":12},"to":{"s":78,"a":16},
		"marks":[],"stops":[],"found":3,"missed":1,"extra":0,"helped":false,"outcome":"alone"%s}`, id, learner, more)
}

// brings says what the file is shown to bring, by learner.
func (p *page) brings(id string) string {
	p.t.Helper()
	p.wait("what the file brings", visible(hook("reading")))
	return p.words(hook("reading-" + id))
}

// words says what is to be read in an element, in one line, without the signs that keep names apart.
func (p *page) words(selector string) string {
	p.t.Helper()
	bare := strings.NewReplacer("\u2068", "", "\u2069", "").Replace(p.text(selector))
	return strings.Join(strings.Fields(bare), " ")
}

// recordNow is what the database holds: sessions with what was found, and those that were removed.
func (p *page) recordNow() string {
	p.t.Helper()
	return inDatabase[string](p, `
		const s = (await all("sessions")).map(s => s.learner + " " + s.id + " " + s.found).sort(), g = (await all("gone")).map(g => g.id + (g.session ? " kept" : ""));
		return [s.join(), g.join(), (await all("learners")).map(l => l.name).sort().join()].join("; ")`)
}

// TestReadingABackup: what a file would do is shown first, learner by learner. Nothing is written
// before it is taken, a learner can be left out, what was removed there goes here and can be brought
// back, and what was removed here stays so unless it is asked for.
func TestReadingABackup(t *testing.T) {
	s := serve(t, "/", built(t))
	file := func(name, data string) string {
		path := filepath.Join(t.TempDir(), name+".json")
		putFile(t, path, data)
		return path
	}
	first := file("first", backupOf([]string{sessionOf("s1", "a", ""), sessionOf("s2", "a", ""), sessionOf("s3", "b", "")}, nil))
	second := file("second", backupOf([]string{sessionOf("s1", "a", `,"found":4,"missed":0,"updated":"2026-04-01T10:00:00.000Z"`), sessionOf("s4", "a", "")},
		[]string{`{"id":"s2","learner":"a","at":"2026-04-01T10:00:00.000Z"}`}))
	p := newPage(t)
	p.withAxe()
	p.open(s.address + "#/record")
	p.wait("the record", visible(hook("backup")))

	p.give("restore", first)
	if got := p.brings("a"); got != "Amal A new learner. 2 sessions are added." {
		t.Errorf("of Amal: %q", got)
	}
	if got := p.recordNow(); got != "; ; " {
		t.Errorf("before it is taken the device holds %q", got)
	}
	p.axe("what a file brings")
	p.click("reading-leave")
	p.wait("the dialog to close", `!`+visible(hook("reading")))
	if got := p.recordNow(); got != "; ; " {
		t.Errorf("left, the device holds %q", got)
	}

	p.give("restore", first)
	p.brings("b")
	p.clickOn(hook("reading-b-on"))
	p.click("reading-take")
	p.wait("the backup to be read", visible(hook("notice-restored")))
	if got := p.recordNow(); got != "a s1 3,a s2 3; ; Amal" {
		t.Errorf("without Badr the device holds %q", got)
	}

	p.give("restore", second)
	if got := p.brings("a"); got != "Amal One session is added. One session is corrected. One session was removed there and is removed here." {
		t.Errorf("of Amal the second time: %q", got)
	}
	p.clickOn(hook("reading-b-on"))
	p.click("reading-take")
	p.wait("the session to be corrected", visible(hook("notice-restored")))
	if got := p.recordNow(); got != "a s1 4,a s4 3; s2 kept; Amal" {
		t.Errorf("then the device holds %q", got)
	}
	p.entries("those that are left", 2)

	// What was removed comes back from the first file only when it is asked for.
	p.give("restore", first)
	if got := p.brings("a"); got != "Amal One session stays as it is." {
		t.Errorf("of Amal the third time: %q", got)
	}
	p.clickOn(hook("reading-b-on"))
	p.wait("nothing to take", fmt.Sprintf(`document.querySelector('%s').disabled`, hook("reading-take")))
	p.clickOn(hook("reading-back"))
	p.click("reading-take")
	p.wait("the session to be back", visible(hook("notice-restored")))
	if got := p.recordNow(); got != "a s1 4,a s2 3,a s4 3; ; Amal" {
		t.Errorf("brought back, the device holds %q", got)
	}
	p.entries("all of them", 3)
	p.calm()
}

// drop gives a file with some text to the field for backups, as a driver without a file chooser can.
func (p *page) drop(text string) {
	p.t.Helper()
	eval[any](p, fmt.Sprintf(`(() => {
		const all = new DataTransfer(), field = document.querySelector('%s');
		all.items.add(new File([%q], "backup.json", { type: "application/json" }));
		field.files = all.files;
		field.dispatchEvent(new Event("change"));
		return 0;
	})()`, hook("restore"), text))
}

// TestReadingInEngines reads a file in every engine, twice.
func TestReadingInEngines(t *testing.T) {
	s := serve(t, "/", built(t))
	file := backupOf([]string{sessionOf("s1", "a", ""), sessionOf("s2", "b", "")}, nil)
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.open(s.address + "#/record")
		p.wait("the record", visible(hook("backup")))
		p.drop(file)
		p.takeIn()
		p.wait("the backup to be read", visible(hook("notice-restored")))
		if got := p.recordNow(); got != "a s1 3,b s2 3; ; Amal,Badr" {
			t.Errorf("the device holds %q", got)
		}
		p.closeNotice()
		p.drop(file)
		p.wait("words", visible(hook("notice-restored")))
		if p.count(hook("reading")) > 0 {
			t.Error("it is asked what to do with a file that brings nothing")
		}
		p.calm()
	})
}

// TestGive: the record of one learner goes to the share sheet where there is one that takes files,
// without the others and without a name in the file's name; else it is a download. When the record
// was saved last is said.
func TestGive(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	dir := t.TempDir()
	p.downloads(dir)
	p.open(s.address + "#/record")
	p.wait("the record", visible(hook("backup")))
	file := filepath.Join(t.TempDir(), "backup.json")
	putFile(t, file, backupOf([]string{sessionOf("s1", "a", ""), sessionOf("s2", "b", "")}, []string{`{"id":"s3","learner":"b","at":"2026-04-01T10:00:00.000Z"}`}))
	p.restore(file)
	p.wait("the backup to be read", visible(hook("notice-restored")))

	if got := p.text(hook("backed")); got != "Not saved yet." {
		t.Errorf("before a backup: %q", got)
	}
	p.click("backup")
	p.wait("the day of the backup", fmt.Sprintf(`document.querySelector('%s').innerText.startsWith("Last saved: ")`, hook("backed")))

	// A share sheet that takes text and no JSON, as in Chromium.
	eval[any](p, `(navigator.canShare = ({ files: [f] }) => f.type === "text/plain",
		navigator.share = async ({ files: [f] }) => { globalThis.given = [f.name, await f.text()]; }, 0)`)
	p.click("give")
	p.wait("the file to be given", `globalThis.given`)
	given := eval[[]string](p, `given`)
	if !strings.HasSuffix(given[0], ".txt") || strings.Contains(given[0], "Amal") {
		t.Errorf("the file is %q", given[0])
	}
	if !strings.Contains(given[1], "Amal") || !strings.Contains(given[1], `"s1"`) || strings.Contains(given[1], "Badr") || strings.Contains(given[1], `"s2"`) || strings.Contains(given[1], `"s3"`) {
		t.Errorf("the file holds %s", given[1])
	}
	// Another device reads it.
	text := filepath.Join(t.TempDir(), given[0])
	putFile(t, text, given[1])
	q := newPage(t)
	q.begin(s.address, "Zayd")
	q.open(s.address + "#/record")
	q.wait("the record", visible(hook("backup")))
	q.restore(text)
	q.wait("the file to be read", visible(hook("notice-restored")))
	if got := q.recordNow(); got != "a s1 3; ; Amal,Zayd" {
		t.Errorf("the other device holds %q", got)
	}

	// Thought better of it, nothing is said; without a share sheet the file is a download.
	eval[any](p, `(navigator.share = async () => { globalThis.givenUp = true; throw new DOMException("", "AbortError"); }, 0)`)
	p.closeNotice()
	p.click("give")
	p.wait("the share to be given up", `globalThis.givenUp`)
	p.still()
	if p.count(".notice") > 0 {
		t.Errorf("after a share that was given up: %q", p.text(".notice"))
	}
	before, err := filepath.Glob(filepath.Join(dir, "*"))
	if err != nil || len(before) != 1 {
		t.Fatalf("the downloads are %v (%v)", before, err)
	}
	if err := os.Remove(before[0]); err != nil {
		t.Fatal(err)
	}
	eval[any](p, `(navigator.canShare = () => false, 0)`)
	p.click("give")
	for deadline := time.Now().Add(patience); ; time.Sleep(50 * time.Millisecond) {
		if now, _ := filepath.Glob(filepath.Join(dir, "*.json")); len(now) == 1 {
			break
		}
		if time.Now().After(deadline) {
			t.Fatal("no file came")
		}
	}
	p.calm()
}

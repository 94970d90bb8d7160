package e2e

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"sutur/generator/internal/engine"
)

// keepOne reads some lines without a rule, and keeps the session.
func (p *page) keepOne(s *server) {
	p.t.Helper()
	p.open(s.address + "about.html")
	p.open(s.address + "#/lines?from=112:1&to=112:4")
	p.wait("the lines", visible(hook("next")))
	p.toEnd()
	p.click("outcome-alone")
	p.wait("today", `document.querySelector('[data-t^="next-"]')`)
}

// emptied removes the database, as a browser that clears what a page has kept, but leaves the mark.
func (p *page) emptied(s *server) {
	p.t.Helper()
	p.open(s.address + "about.html")
	eval[any](p, `new Promise((ok, no) => { const r = indexedDB.deleteDatabase("sutur"); r.onblocked = r.onerror = no; r.onsuccess = () => ok(0); })`)
}

const markHere = `localStorage.getItem("sutur-record")`

// TestEmptied: a record that the browser has lost is told of before a new one begins, and can be read
// from a backup there; one that the family has removed is not.
func TestEmptied(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.open(s.address)
		p.wait("a way to a backup on the first screen", visible(`label[for=restore]`))
		if p.count(hook("emptied")) > 0 || !strings.Contains(p.text("main"), "Used Sutur before?") {
			t.Errorf("a new device says %q", p.text("main"))
		}
		p.begin(s.address, "Nur")
		p.keepOne(s)
		p.wait("the mark", markHere)
		if mark := eval[string](p, markHere); !strings.Contains(mark, `"n":1`) || strings.Contains(mark, "Nur") {
			t.Errorf("the mark is %s", mark)
		}
		p.emptied(s)
		p.open(s.address)
		p.wait("words about it", visible(hook("emptied")))
		if text := p.text(hook("emptied")); !strings.Contains(text, "not here any more") || !strings.Contains(text, "the session of") || !strings.Contains(text, "Read a backup") {
			t.Errorf("it says %q", text)
		}
		picture(t, "emptied-"+b.Name(), p.settled())
		// Begun anew and removed by the family, nothing is missing.
		eval[any](p, fmt.Sprintf(`(document.querySelector(%q).focus(), 0)`, hook("name")))
		p.keys("Again")
		p.click("begin")
		p.wait("the card of today", `document.querySelector('[data-t^="next-"]')`)
		p.open(s.address + "#/learner")
		p.click("remove-learner")
		p.click("confirm-remove")
		p.wait("nobody", `!document.querySelector('[data-t=nickname]')`)
		if eval[bool](p, markHere+` !== null`) {
			t.Error("the mark is still there")
		}
		p.open(s.address + "#/today")
		p.wait("the first screen", visible(hook("begin")))
		if p.count(hook("emptied")) > 0 {
			t.Error("what the family has removed is told as lost")
		}
	})
}

// TestEmptiedIsRead reads a backup on the first screen; a mark that is damaged says nothing.
func TestEmptiedIsRead(t *testing.T) {
	s := serve(t, "/", built(t))
	file, err := filepath.Abs(filepath.Join(root, "site-src", "test", "data", "backup-1.json"))
	if err != nil {
		t.Fatal(err)
	}
	p := newPage(t)
	p.withAxe()
	p.open(s.address + "about.html")
	for _, mark := range []string{`null`, `{`, `{"day":"x","n":3}`, `{"day":"2026-01-05","n":-3}`, `[]`} {
		eval[any](p, fmt.Sprintf(`(localStorage.setItem("sutur-record", %q), 0)`, mark))
		p.open(s.address)
		p.wait("the first screen", visible(hook("begin")))
		if p.count(hook("emptied")) > 0 {
			t.Errorf("the mark %s is believed", mark)
		}
		p.open(s.address + "about.html")
	}
	eval[any](p, `(localStorage.setItem("sutur-record", '{"day":"2026-01-05","n":12}'), 0)`)
	p.open(s.address)
	p.wait("words about it", visible(hook("emptied")))
	if text := p.text(hook("emptied")); !strings.Contains(text, "12 sessions") || !strings.Contains(text, "5 Jan") && !strings.Contains(text, "Jan 5") {
		t.Errorf("it says %q", text)
	}
	p.axe("emptied")
	p.give("restore", file)
	p.click("reading-take")
	p.wait("the record", `document.querySelector('[data-t^="next-"]')`)
	p.entries("of the backup", 2)
	if p.count(hook("emptied")) > 0 {
		t.Error("it is still told as lost")
	}
	p.calm()
}

// asApple has Chromium pass for WebKit on a phone or a Mac of Apple's.
const asApple = `globalThis.GestureEvent = class extends Event {};
	Object.defineProperty(Navigator.prototype, "maxTouchPoints", { value: %d, configurable: true });
	StorageManager.prototype.persist = async () => false;
	StorageManager.prototype.persisted = async () => false;`

// TestSevenDays: where the browser clears what is kept after a week without a visit, Today says so
// with the first session, with the steps for the home screen and a backup; once a visit, and not for
// five days after it was put off.
func TestSevenDays(t *testing.T) {
	s := serve(t, "/", built(t))
	for _, c := range []struct {
		device, steps string
		touch         int
	}{{"phone", "Add to Home Screen", 5}, {"mac", "Add to Dock", 0}} {
		t.Run(c.device, func(t *testing.T) {
			p := newPage(t)
			p.unkept()
			p.withAxe()
			p.before(fmt.Sprintf(asApple, c.touch))
			p.begin(s.address, "Nur")
			if p.count(hook("safe")) > 0 {
				t.Error("it is said before a session is kept")
			}
			p.keepOne(s)
			p.wait("words about it", visible(hook("safe")))
			p.clickOn(hook("safe-home") + " summary")
			if text := p.text(hook("safe")); !strings.Contains(text, "seven days") || !strings.Contains(text, "Save a backup") {
				t.Errorf("it says %q", text)
			}
			if text := p.text(hook("safe-home") + " p"); !strings.Contains(text, c.steps) {
				t.Errorf("the steps are %q", text)
			}
			p.axe("today")
			// Once a visit.
			p.open(s.address + "#/record")
			p.wait("the record", visible(hook("session")))
			p.open(s.address + "#/today")
			p.wait("today", `document.querySelector('[data-t^="next-"]')`)
			p.open(s.address + "#/learner")
			p.wait("how it is kept", visible(hook("safe-panel")))
			if text := p.text(hook("safe-panel")); !strings.Contains(text, "seven days") || !strings.Contains(text, c.steps) || !strings.Contains(text, "No backup") {
				t.Errorf("the panel says %q", text)
			}
			p.axe("learner")
			p.open(s.address + "#/today")
			p.wait("today", `document.querySelector('[data-t^="next-"]')`)
			if p.count(hook("safe")) > 0 {
				t.Error("it is said twice in a visit")
			}
			// The next visit says it again, until it is put off.
			again := func(what string, want bool) {
				t.Helper()
				p.open(s.address + "about.html")
				eval[any](p, `(sessionStorage.clear(), 0)`)
				p.open(s.address)
				p.wait("today", `document.querySelector('[data-t^="next-"]')`)
				if want {
					p.wait(what, visible(hook("safe")))
					return
				}
				eval[any](p, `new Promise(r => setTimeout(() => r(0), 700))`) // it would come late
				if p.count(hook("safe")) > 0 {
					t.Errorf("%s: it is said: %s", what, p.text(hook("safe")))
				}
			}
			again("it in the next visit", true)
			p.click("safe-later")
			p.wait("it to go", `!document.querySelector('[data-t=safe]')`)
			again("the visit after", false)
			eval[any](p, `(localStorage.setItem("sutur-put-off", Date.now() - 6 * 864e5), 0)`)
			again("after six days, with a backup due", true)
			p.clickOn(hook("safe") + " " + hook("safe-backup"))
			p.wait("the day of the backup", `!document.querySelector('[data-t=safe] [data-t=safe-backup]')`)
			p.waitStored("the day", `return Boolean((await all("settings"))[0]?.backed)`)
			again("after six days, with a backup", false)
			// Opened by an icon, it is not concerned.
			p.before(`Object.defineProperty(Navigator.prototype, "standalone", { value: true })`)
			eval[any](p, `(localStorage.removeItem("sutur-put-off"), 0)`)
			again("by its icon", false)
			p.open(s.address + "#/learner")
			p.wait("how it is kept", fmt.Sprintf(`document.querySelector(%q)?.innerText.includes("on the home screen here")`, hook("safe-panel")))
			p.calm()
		})
	}
}

// TestAskedOnce: persistent storage is asked for with the first session and not before, the notice
// says why, and where it is granted nothing more is said.
func TestAskedOnce(t *testing.T) {
	s := serve(t, "/", built(t))
	for _, granted := range []bool{true, false} {
		t.Run(fmt.Sprint(granted), func(t *testing.T) {
			p := newPage(t)
			p.unkept()
			p.before(fmt.Sprintf(`globalThis.asked = 0;
				StorageManager.prototype.persist = async () => { asked++; sessionStorage.granted = "%t"; return %[1]t; };
				StorageManager.prototype.persisted = async () => sessionStorage.granted === "true";`, granted))
			p.begin(s.address, "Nur")
			if n := eval[int](p, `asked`); n != 0 {
				t.Errorf("asked %d times with the learner", n)
			}
			p.keepOne(s)
			p.wait("the question", `asked === 1`)
			if text := p.text(hook("notice-said")); !strings.Contains(text, "asked not to clear it") {
				t.Errorf("the notice says %q", text)
			}
			if granted {
				eval[any](p, `new Promise(r => setTimeout(() => r(0), 500))`)
				if p.count(hook("safe")) > 0 {
					t.Errorf("it says %q", p.text(hook("safe")))
				}
				p.open(s.address + "#/learner")
				p.wait("that it is kept for good", fmt.Sprintf(`document.querySelector(%q)?.innerText.includes("for good")`, hook("safe-kept")))
			} else {
				p.wait("words about it", visible(hook("safe")))
				if text := p.text(hook("safe")); !strings.Contains(text, "private window") {
					t.Errorf("it says %q", text)
				}
				p.keepOne(s)
				if text := p.text(hook("notice-said")); strings.Contains(text, "asked") {
					t.Errorf("with the second session the notice says %q", text)
				}
			}
			p.calm()
		})
	}
}

// TestOffer: what Chromium offers for the home screen is held back until somebody presses it where
// it is said what it is for.
func TestOffer(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.unkept()
	p.begin(s.address, "Nur")
	held := eval[bool](p, `(() => {
		const offer = new Event("beforeinstallprompt", { cancelable: true });
		offer.prompt = async () => { globalThis.prompted = (globalThis.prompted ?? 0) + 1; };
		dispatchEvent(offer);
		return offer.defaultPrevented;
	})()`)
	if !held {
		t.Error("the offer is shown at once")
	}
	p.click("nav-learner")
	p.click("safe-install")
	p.wait("the offer", `globalThis.prompted === 1`)
	p.wait("no second one", `!document.querySelector('[data-t=safe-install]')`)
	p.calm()
}

// TestQuestion: Firefox would show a question, so that Today says first what it is for, and asks when
// the button is pressed; the other engines decide by themselves.
func TestQuestion(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Nur")
		eval[any](p, `(navigator.storage && (navigator.storage.persist = async () => { globalThis.asked = true; return false; }), 0)`)
		p.open(s.address + "#/lines?from=112:1&to=112:4")
		p.wait("the lines", visible(hook("next")))
		p.toEnd()
		p.click("outcome-alone")
		p.wait("words about it", visible(hook("safe")))
		firefox := b.Name() == "firefox"
		if text := p.text(hook("safe")); strings.Contains(text, "will ask") != firefox || strings.Contains(text, "seven days") {
			t.Errorf("it says %q", text)
		}
		if asked := eval[bool](p, `globalThis.asked === true`); asked == firefox && eval[bool](p, `Boolean(navigator.storage?.persist)`) {
			t.Errorf("asked by itself: %t", asked)
		}
		p.resize(390, 1400)
		picture(t, "safe-today-"+b.Name(), p.settled())
		if firefox {
			p.click("safe-ask")
			p.wait("the question", `globalThis.asked === true`)
			p.wait("no second one", `!document.querySelector('[data-t=safe]')`)
			if text := p.text(hook("notice-said")); !strings.Contains(text, "did not agree") {
				t.Errorf("refused, it says %q", text)
			}
			p.click("notice-close")
		}
		p.open(s.address + "#/learner")
		p.wait("how it is kept", visible(hook("safe-panel")))
		p.clickOn(hook("safe-home") + " summary")
		p.wait("the steps", fmt.Sprintf(`document.querySelector(%q).open`, hook("safe-home")))
		p.resize(390, 3000)
		picture(t, "safe-learner-"+b.Name(), p.settled())
		p.calm()
	})
}

// TestReadWithoutSignal: a backup can be read on the first screen with the network cut, and Today
// says how the record is kept.
func TestReadWithoutSignal(t *testing.T) {
	s := serve(t, "/", built(t))
	file, err := filepath.Abs(filepath.Join(root, "site-src", "test", "data", "backup-1.json"))
	if err != nil {
		t.Fatal(err)
	}
	p := newPage(t)
	p.open(s.address)
	p.wait("everything to be stored", kept)
	s.stop()
	p.reload()
	p.wait("the first screen", visible(`label[for=restore]`))
	p.give("restore", file)
	p.click("reading-take")
	p.wait("the record", `document.querySelector('[data-t^="next-"]')`)
	p.wait("words of how it is kept", visible(hook("safe")))
	p.calm()
}

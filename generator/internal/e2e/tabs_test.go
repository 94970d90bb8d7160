package e2e

import (
	"fmt"
	"testing"
	"time"

	"github.com/chromedp/cdproto/input"
)

// toDone goes to the last step of some lines.
func (p *page) toDone(s *server, hash string) {
	p.t.Helper()
	p.open(s.address + hash)
	p.wait("the lines", visible(hook("next")))
	p.toEnd()
	p.wait("the question how it went", visible(hook("outcome-some")))
}

// sessionsKept waits until today is shown, and counts the sessions on the device.
func (p *page) sessionsKept() int {
	p.t.Helper()
	p.wait("today", `document.querySelector("#app").dataset.screen === "today"`)
	return inDatabase[int](p, `return (await all("sessions")).length`)
}

// TestOnePress keeps a session once, however it is pressed.
func TestOnePress(t *testing.T) {
	s := serve(t, "/", built(t))
	const lines = "#/lines?rule=qalqalah&from=111:1&to=111:5"
	for _, c := range []struct {
		name   string
		press  func(p *page)
		double bool
	}{
		{"a double click", func(p *page) {
			x, y := p.place(hook("outcome-some"))
			for n := range int64(2) {
				for _, kind := range []input.DispatchMouseEventType{input.DispatchMouseEventTypeMousePressed, input.DispatchMouseEventTypeMouseReleased} {
					call(p, input.DispatchMouseEvent, input.DispatchMouseEventParams{Type: kind, X: x, Y: y, Button: input.MouseButtonLeft, ClickCount: n + 1})
				}
			}
		}, true},
		{"a double tap", func(p *page) {
			x, y := p.place(hook("outcome-some"))
			for range 2 {
				call(p, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: input.DispatchTouchEventTypeTouchStart, TouchPoints: []*input.TouchPoint{{X: x, Y: y}}})
				call(p, input.DispatchTouchEvent, input.DispatchTouchEventParams{Type: input.DispatchTouchEventTypeTouchEnd, TouchPoints: []*input.TouchPoint{}})
			}
		}, true},
		{"all three answers at once", func(p *page) {
			eval[any](p, `(document.querySelectorAll("[data-t^=outcome-]").forEach(b => { b.click(); b.click(); }), 0)`)
		}, false},
		{"the Enter key held down", func(p *page) {
			eval[any](p, `(document.querySelector("[data-t=outcome-some]").focus(), 0)`)
			for i := range 5 {
				again := i > 0
				call(p, input.DispatchKeyEvent, input.DispatchKeyEventParams{Type: input.DispatchKeyEventTypeKeyDown, Key: "Enter", Code: "Enter", Text: "\r", WindowsVirtualKeyCode: 13, AutoRepeat: &again})
			}
			call(p, input.DispatchKeyEvent, input.DispatchKeyEventParams{Type: input.DispatchKeyEventTypeKeyUp, Key: "Enter", Code: "Enter", WindowsVirtualKeyCode: 13})
		}, false},
	} {
		t.Run(c.name, func(t *testing.T) {
			var p *page
			for range 5 {
				p = newPage(t)
				p.begin(s.address, "")
				p.toDone(s, lines)
				began := time.Now()
				c.press(p)
				// Two presses that a slow machine holds apart are no double one: the second is Today's.
				if !c.double || time.Since(began) < 250*time.Millisecond {
					break
				}
			}
			if n := p.sessionsKept(); n != 1 {
				t.Errorf("%d sessions are kept", n)
			}
			p.calm()
		})
	}
	t.Run("two tabs", func(t *testing.T) {
		p := newPage(t)
		p.begin(s.address, "")
		p.toDone(s, lines)
		q := p.beside()
		q.open(s.address + lines)
		q.wait("the question there too", visible(hook("outcome-much")))
		for _, x := range []*page{p, q} {
			eval[any](x, `(setTimeout(() => document.querySelector("[data-t=outcome-much]").click(), 300), 0)`)
		}
		if a, b := p.sessionsKept(), q.sessionsKept(); a != 1 || b != 1 {
			t.Errorf("%d sessions are kept, then %d", a, b)
		}
		if n := inDatabase[int](p, `return (await all("drafts")).length`); n != 0 {
			t.Errorf("%d drafts are left", n)
		}
	})
}

// TestRecordInTwoTabs changes different things in two tabs: both changes stay, each tab shows what
// the other did, and who was removed does not come back.
func TestRecordInTwoTabs(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "One")
	q := p.beside()
	q.open(s.address + "#/learner")
	q.wait("the name", visible(hook("nickname")))

	p.open(s.address + "#/learner")
	p.wait("the name", visible(hook("nickname")))
	p.set("nickname", "Two")
	q.wait("the name in the other tab", `document.querySelector('[data-t=nickname]').value === "Two"`)
	q.set("place-surah", "80")
	p.wait("the place in the first", `document.querySelector('[data-t=place-surah]').value === "80"`)
	p.click("muttasil-5")
	q.wait("the count in the other", `document.querySelector('[data-t=muttasil-5]').getAttribute("aria-pressed") === "true"`)
	q.click("theme-dark")
	p.wait("the theme in the first", `document.documentElement.dataset.theme === "dark"`)
	got := inDatabase[string](p, `const [l] = await all("learners"), [d] = await all("settings"); return [l.name, l.place.s, l.own.muttasil, d.theme].join()`)
	if got != "Two,80,5,dark" {
		t.Errorf("kept: %s", got)
	}

	// What one tab remembers does not undo what the other did, even where it heard nothing.
	deaf := p.beside()
	deaf.before(`delete globalThis.BroadcastChannel`)
	deaf.open(s.address + "#/learner")
	deaf.wait("the name", visible(hook("nickname")))
	p.set("nickname", "Three")
	deaf.set("place-surah", "90")
	deaf.wait("its place", `document.querySelector('[data-t=place-surah]').value === "90"`)
	p.waitStored("both", `const [l] = await all("learners"); return l.name + l.place.s === "Three90"`)

	// A learner removed in one tab does not come back by what is done in the other.
	q.open(s.address + "#/lines?rule=qalqalah&from=111:1&to=111:5")
	q.wait("the lines", visible(hook("next")))
	p.click("remove-learner")
	p.click("confirm-remove")
	p.wait("nobody", `!document.querySelector('[data-t=nickname]')`)
	q.wait("nobody there either", `!document.querySelector('[data-t=whose]')`)
	q.tap(letterAt{0, 0, 0, 0, 1})
	q.toEnd()
	eval[any](q, `(document.querySelector("[data-t=outcome-some]")?.click(), 0)`)
	eval[any](q, `new Promise(r => setTimeout(() => r(0), 500))`)
	if got := inDatabase[string](p, `return JSON.stringify([await all("learners"), await all("sessions"), await all("drafts")])`); got != "[[],[],[]]" {
		t.Errorf("after removing: %s", got)
	}
	p.calm()
	q.calm()
}

// TestSameLinesInTwoTabs: lines open in two tabs are one session, which one tab has in hand: the
// other is told, follows, changes nothing, and may take over; and it goes on when the first is left.
func TestSameLinesInTwoTabs(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "")
	q := p.beside()
	const lines = "#/lines?rule=qalqalah&from=111:1&to=111:5"
	p.open(s.address + lines)
	p.wait("the lines", visible(hook("next")))
	q.open(s.address + lines)
	q.wait("the word that they are open elsewhere", visible(hook("elsewhere")))
	marks := func(n int) string {
		return fmt.Sprintf(`document.querySelectorAll("[data-t=passage] .signs").length === %d`, n)
	}
	drafts := func(want string) {
		t.Helper()
		got := inDatabase[string](p, `const d = await all("drafts"); return d.length + " " + d[0].marks.length`)
		if got != want {
			t.Errorf("drafts and marks: %s, want %s", got, want)
		}
	}
	p.tap(letterAt{0, 0, 0, 0, 1})
	p.wait("a mark", marks(1))
	q.wait("it in the other tab", marks(1))
	q.tap(letterAt{1, 0, 0, 0, 1})
	q.click("take-over")
	q.wait("the lines in hand", visible(hook("next")))
	q.wait("no mark by the tap before", marks(1))
	p.wait("the first tab told", visible(hook("elsewhere")))
	q.tap(letterAt{1, 0, 0, 0, 1})
	q.wait("two marks", marks(2))
	p.wait("both in the first", marks(2))
	drafts("1 2")
	q.open(s.address + "#/today")
	p.wait("the lines in hand again", visible(hook("next")))
	p.tap(letterAt{2, 0, 0, 0, 1})
	p.wait("three marks", marks(3))
	eval[any](p, `new Promise(r => setTimeout(() => r(0), 300))`)
	drafts("1 3")
	p.calm()
	q.calm()
}

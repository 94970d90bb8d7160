package e2e

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// TestSignIn is the commonest fault in life: a public network answers everything with its sign-in
// page and status 200. SUTUR_PICTURES names a folder for pictures of what is seen.
func TestSignIn(t *testing.T) {
	v := versions(t)
	shot := func(p *page, name string) {
		for _, w := range []int64{1280, 390} {
			p.do(chromedp.EmulateViewport(w, 844))
			p.photo(fmt.Sprintf("sign-in-%s-%d", name, w))
		}
	}

	t.Run("first visit, all of it", func(t *testing.T) {
		s, f := harmed(t, "/", v[0])
		f.set("*", signIn)
		p := newPage(t)
		p.open(s.address)
		if h := p.text("h1"); h != "Free network" {
			t.Errorf("the page says %q", h)
		}
		f.set("", "")
		p.open(s.address)
		p.wait("the app", alive)
		p.wait("everything to be kept", kept)
		p.is(s, f, v, 0)
	})

	t.Run("first visit, after the page itself", func(t *testing.T) {
		s, f := harmed(t, "/", v[0])
		f.set("*", signIn)
		f.right("index.html")
		p := newPage(t)
		p.open(s.address)
		p.wait("words", words)
		shot(p, "first-nothing-else")
		f.set("*", signIn)
		f.right("index.html")
		f.right(nameOf(t, v[0], "assets/style."))
		f.right(nameOf(t, v[0], "assets/boot."))
		p.open(s.address)
		p.wait("words", gaveUp)
		shot(p, "first-script")
		f.set("data/*", signIn)
		p.open(s.address)
		p.wait("words", `document.querySelector("[role=alert] h1")`)
		if text := p.text("[role=alert]"); !strings.Contains(text, "sign-in page") {
			t.Errorf("the page says %q", text)
		}
		shot(p, "first-catalogue")
		f.set("data/s*", signIn)
		p.open(s.address + "about.html") // else only the part after # would change
		p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:16")
		p.wait("words", `document.querySelector("[data-t=text-error]")`)
		shot(p, "first-surah")
		p.open(s.address + "about.html")
		p.open(s.address + "#/today")
		p.wait("words about what is kept", `document.querySelector('[data-t=offline]')?.innerText.includes("sign in")`)
		shot(p, "first-keeping")
		f.set("", "")
		p.click("offline-again")
		p.wait("everything to be kept", kept)
		shot(p, "first-kept")
		p.is(s, f, v, 0)
	})

	t.Run("update", func(t *testing.T) {
		v, s, f, p := keepFirst(t)
		s.host.Set(v[1])
		f.set("*", signIn)
		f.right("sw.js")
		if state := p.next(); state != "redundant" {
			t.Errorf("the newer version is %s", state)
		}
		p.open(s.address)
		p.wait("the app", alive)
		shot(p, "update")
		p.is(s, f, v, 0)
		f.set("", "")
		p.next()
		p.is(s, f, v, 1)
	})

	t.Run("later visit", func(t *testing.T) {
		v, s, f, p := keepFirst(t)
		p.begin(s.address, "Test child")
		f.set("*", signIn)
		p.open(s.address)
		p.wait("the app", alive)
		p.wait("the card of today", `document.querySelector('[data-t^="next-"]')`)
		shot(p, "later")
		session(p)
		if state := eval[string](p, update); state != "refused" {
			t.Errorf("the sign-in page as a worker is %s", state)
		}
		p.is(s, f, v, 0)
	})
}

package e2e

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"

	"sutur/generator/internal/colour"
	"sutur/generator/internal/engine"
)

// network tells the page that the network is gone, or back: by the driver where it can.
func (p *page) network(there bool) {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	err := p.tab.Offline(ctx, !there)
	if errors.Is(err, engine.ErrCannot) {
		name := map[bool]string{true: "online", false: "offline"}[there]
		eval[any](p, fmt.Sprintf(`(Object.defineProperty(navigator, "onLine", { value: %t, configurable: true }), dispatchEvent(new Event(%q)), 0)`, there, name))
	} else if err != nil {
		p.t.Fatal(err)
	}
}

// TestSign: Today has one sign that everything is kept, and that the network is gone when it is. It
// says more when it is opened, and nothing moves when it comes.
func TestSign(t *testing.T) {
	files := built(t)
	s := serve(t, "/a/b/", files)
	const summary = `document.querySelector("[data-t=sign] summary")?.innerText`
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Nur")
		room := eval[float64](p, `document.querySelector("[data-t=offline]").offsetHeight`)
		p.wait("everything to be kept", kept+` && `+visible(hook("sign")))
		if text := eval[string](p, summary); text != "Kept on this device" {
			t.Errorf("the sign says %q", text)
		}
		if now := eval[float64](p, `document.querySelector("[data-t=offline]").offsetHeight`); now > max(room, 44) {
			t.Errorf("the sign takes %v pixels, its room was %v", now, room)
		}
		if text := p.text("main"); strings.Count(text, "Kept on this device") != 1 {
			t.Errorf("it is not said once: %q", text)
		}
		p.clickOn(hook("sign") + " summary")
		p.wait("the version", visible(hook("version")))
		want := "Version " + versionOf(files)[:8] + "."
		if text := p.text(hook("sign")); !strings.Contains(text, "without a network") || !strings.Contains(text, want) {
			t.Errorf("it says %q, want %q in it", text, want)
		}
		picture(t, "sign-"+b.Name(), p.settled())
		p.network(false)
		p.wait("that the network is gone", summary+` === "No network: everything works"`)
		picture(t, "sign-gone-"+b.Name(), p.settled())
		p.network(true)
		p.wait("that it is back", summary+` === "Kept on this device"`)
		p.calm()
	})
}

// TestBarsColour: the colour of the browser's own bars is that of the page, by the family's choice or
// else by the system's; on lesson pages too.
func TestBarsColour(t *testing.T) {
	s := serve(t, "/", built(t))
	const light, dark = colour.PaperLight, colour.PaperDark
	bars := `[...document.querySelectorAll("meta[name=theme-color]")].map(m => m.content).join(" ")`
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Nur")
		for _, c := range []struct{ theme, want string }{{"dark", dark + " " + dark}, {"light", light + " " + light}, {"auto", light + " " + dark}} {
			p.open(s.address + "#/learner")
			p.click("theme-" + c.theme)
			p.wait("the theme "+c.theme, fmt.Sprintf(`%s === %q`, bars, c.want))
			if c.theme != "auto" {
				paper := eval[string](p, `getComputedStyle(document.documentElement).getPropertyValue("--paper").trim()`)
				if !strings.HasPrefix(c.want, paper) {
					t.Errorf("the page is %s, the bars are %s", paper, c.want)
				}
			}
			p.settingsOf(c.theme)
			p.open(s.address + "lessons/noon-ikhfa.html")
			p.wait("the bars of a lesson in "+c.theme, fmt.Sprintf(`%s === %q`, bars, c.want))
		}
		p.calm()
	})
}

// settingsOf waits until the theme is noted where the next page looks for it.
func (p *page) settingsOf(theme string) {
	p.t.Helper()
	p.wait("the note of the theme", fmt.Sprintf(`localStorage.getItem("sutur-theme") === %q`, theme))
}

// offer is what Chromium sends where the app can be installed.
const offer = `(() => {
	const offer = new Event("beforeinstallprompt", { cancelable: true });
	offer.prompt = async () => { globalThis.prompted = (globalThis.prompted ?? 0) + 1; };
	dispatchEvent(offer);
	return 0;
})()`

// TestHomeWord: the way to the home screen is told on Today with the second session, alone, with the
// browser's own offer or the steps of the device; put away, it does not come again.
func TestHomeWord(t *testing.T) {
	s := serve(t, "/", built(t))
	granted := `StorageManager.prototype.persist = StorageManager.prototype.persisted = async () => true;`
	for _, c := range []struct {
		name, script, says string
		offered            bool
	}{
		{"offered", "", "Add Sutur to this device", true},
		{"by hand", `globalThis.GestureEvent = class extends Event {}; Object.defineProperty(Navigator.prototype, "maxTouchPoints", { value: 5 });`, "Add to Home Screen", false},
		{"no way", "", "", false},
		{"by its icon", `Object.defineProperty(Navigator.prototype, "standalone", { value: true });`, "", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := newPage(t)
			p.withAxe()
			p.before(granted + c.script)
			p.begin(s.address, "Nur")
			p.keepOne(s)
			today := func() {
				t.Helper()
				p.wait("today", `document.querySelector('[data-t^="next-"]')`)
				if c.offered {
					eval[any](p, offer)
				}
				p.wait("everything to be kept", visible(hook("sign")))
				p.frames()
			}
			today()
			p.click("notice-close")
			if p.count(hook("home")) > 0 {
				t.Error("it is said with the first session")
			}
			p.keepOne(s)
			today()
			if p.count(hook("home")) > 0 {
				t.Error("it is said beside a notice")
			}
			p.click("notice-close")
			if c.says == "" {
				p.wait("no notice", `!document.querySelector(".notice")`)
				if p.count(hook("home")) > 0 {
					t.Errorf("it says %q", p.text(hook("home")))
				}
				return
			}
			p.wait("the word", visible(hook("home")))
			if text := p.text(hook("home")); !strings.Contains(text, c.says) {
				t.Errorf("it says %q", text)
			}
			p.axe("home")
			p.do(chromedp.EmulateViewport(390, 1300))
			p.photo("home-" + strings.ReplaceAll(c.name, " ", "-"))
			if c.offered {
				p.clickOn(hook("home") + " " + hook("safe-install"))
				p.wait("the browser's offer", `globalThis.prompted === 1`)
				p.open(s.address + "about.html")
				p.open(s.address)
				today()
			}
			p.click("home-no")
			p.wait("it to go", `!document.querySelector("[data-t=home]")`)
			if got := inDatabase[string](p, `return (await all("settings")).map(x => x.noHome).join("")`); got != "true" {
				t.Errorf("kept: %q", got)
			}
			p.open(s.address + "about.html")
			p.open(s.address)
			today()
			if p.count(hook("home")) > 0 {
				t.Error("it comes again")
			}
			p.calm()
		})
	}
}

// TestManifestInChromium: the browser has nothing to say against the manifest; below a path the app
// is its own, and what it offers lies inside.
func TestManifestInChromium(t *testing.T) {
	s := serve(t, "/a/b/", built(t))
	p := newPage(t)
	p.open(s.address)
	p.wait("everything to be kept", kept)
	m := call(p, cdppage.GetAppManifest, cdppage.GetAppManifestParams{})
	for _, e := range m.Errors {
		t.Errorf("the manifest: %d:%d %s", e.Line, e.Column, e.Message)
	}
	for _, e := range call(p, cdppage.GetInstallabilityErrors, cdp.Empty{}).InstallabilityErrors {
		if e.ErrorID != "in-incognito" { // profiles of tests are such
			t.Errorf("it cannot be installed: %s", e.ErrorID)
		}
	}
	if id := call(p, cdppage.GetAppID, cdp.Empty{}).AppID; id != s.address {
		t.Errorf("the app is %s, want %s", id, s.address)
	}
	if m.Manifest == nil || len(m.Manifest.Shortcuts) != 4 || len(m.Manifest.Screenshots) < 4 || m.Manifest.ShareTarget == nil {
		t.Fatalf("the browser has read %+v", m.Manifest)
	}
	screens := map[string]string{"Today": "today", "Lines": "choose", "Record": "record", "Everyone": "learners"}
	for _, x := range m.Manifest.Shortcuts {
		if !strings.HasPrefix(x.URL, s.address+"#/") {
			t.Errorf("%s leads to %s", x.Name, x.URL)
		}
		p.open(x.URL)
		p.wait(x.Name, fmt.Sprintf(`document.getElementById("app").dataset.screen === %q`, screens[x.Name]))
	}
	if got := m.Manifest.ShareTarget.Action; got != s.address+"brought" {
		t.Errorf("what is shared goes to %s", got)
	}
}

// TestNotch: nothing that is read or pressed lies below the notch, the round corners or the bar at the
// foot of a phone.
func TestNotch(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "Nur")
	for _, c := range []struct{ w, h, top, right, bottom, left int64 }{{390, 844, 47, 0, 34, 0}, {844, 390, 0, 47, 21, 47}} {
		p.do(chromedp.EmulateViewport(c.w, c.h))
		call(p, emulation.SetSafeAreaInsetsOverride, emulation.SetSafeAreaInsetsOverrideParams{Insets: &emulation.SafeAreaInsets{Top: &c.top, Right: &c.right, Bottom: &c.bottom, Left: &c.left}})
		for _, at := range []struct{ address, there string }{
			{"#/today", `document.querySelector('[data-t^="next-"]')`},
			{"#/lines?rule=noon-ikhfa&from=78:12&to=78:16", visible(hook("next"))},
			{"#/lines?rule=noon-ikhfa", visible(hook("best-1"))},
			{"#/shared?rule=noon-ikhfa&from=78:12&to=78:16", visible("main.board .w")},
			{"#/record", visible(hook("empty"))},
			{"lessons/noon-ikhfa.html", visible("article")},
		} {
			p.open(s.address + "about.html")
			p.open(s.address + at.address)
			p.wait(at.address, at.there)
			wrong := eval[string](p, fmt.Sprintf(`(() => {
				scrollTo(0, 0);
				const bad = [], own = e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim()) || e.matches("a, button, input");
				for (const e of document.querySelectorAll("body *")) {
					if (!own(e) || !e.checkVisibility({ checkVisibilityCSS: true }) || e.closest(".skip, .hidden, [aria-hidden=true]")) continue;
					const b = e.getBoundingClientRect(), fixed = e.closest(".tabs, .said, .thumb, .board-foot");
					if (!b.width || b.top > innerHeight) continue;
					if (b.left < %d || b.right > innerWidth - %d || b.top < %d || fixed && b.bottom > innerHeight - %d)
						bad.push((e.dataset.t ?? e.className ?? e.nodeName) + " " + [b.left, b.top, b.right, b.bottom].map(Math.round));
				}
				if (document.documentElement.scrollWidth > innerWidth) bad.push("scrolls sideways");
				return bad.join("; ");
			})()`, c.left, c.right, c.top, c.bottom))
			if wrong != "" {
				t.Errorf("%dx%d %s: %s", c.w, c.h, at.address, wrong)
			}
			p.photo(fmt.Sprintf("notch-%d-%.8s", c.w, strings.Trim(strings.ReplaceAll(at.address, "/", "-"), "#-")))
		}
	}
	p.calm()
}

package e2e

import (
	"fmt"
	"path"
	"strings"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/storage"
	"github.com/chromedp/chromedp"

	"sutur/generator/internal/bundle"
)

// keepFirst opens version 1 in a new profile until all of it is kept.
func keepFirst(t *testing.T) (v [3][]bundle.File, s *server, f *harm, p *page) {
	t.Helper()
	v = versions(t)
	s, f = harmed(t, "/", v[0])
	p = newPage(t)
	p.open(s.address)
	p.wait("everything to be kept", kept)
	return v, s, f, p
}

// is fails the test unless the app is wholly version n (from 0).
func (p *page) is(s *server, f *harm, v [3][]bundle.File, n int) {
	p.t.Helper()
	if which, wrong := p.whole(s, f, v[:]...); wrong != "" || which != n {
		p.t.Errorf("version %d is kept, want %d: %s", which+1, n+1, wrong)
	}
}

// next looks for a newer version, takes it if it is whole, and returns what became of it.
func (p *page) next() string {
	p.t.Helper()
	state := eval[string](p, update)
	if state == "installed" {
		eval[string](p, takeOver)
	}
	return state
}

// TestThreeVersions: the second never comes whole, the third does.
func TestThreeVersions(t *testing.T) {
	v, s, f, p := keepFirst(t)
	s.host.Set(v[1])
	f.set(nameOf(t, v[1], "assets/main."), down)
	if state := p.next(); state != "redundant" {
		t.Errorf("a version that did not come is %s", state)
	}
	f.set("", "")
	p.is(s, f, v, 0)
	s.host.Set(v[2])
	p.next()
	p.is(s, f, v, 2)
}

// oneVersion is true once one version alone is kept.
const oneVersion = `globalThis.versions === 1 || void caches.keys().then(k => { globalThis.versions = k.filter(x => /[0-9a-f]{16}$/.test(x)).length; })`

// TestWaitingVersion: the second is whole and nobody takes it; the third comes.
func TestWaitingVersion(t *testing.T) {
	v, s, f, p := keepFirst(t)
	s.host.Set(v[1])
	if state := eval[string](p, update); state != "installed" {
		t.Errorf("the second version is %s", state)
	}
	p.is(s, f, v, 0)
	s.host.Set(v[2])
	p.next()
	p.is(s, f, v, 2)
	// What nobody used is not kept for ever.
	p.open(s.address)
	p.wait("the app", alive)
	p.wait("one version", oneVersion)
}

// TestVersionOnTheWay: the third is put in place while the second is fetched.
func TestVersionOnTheWay(t *testing.T) {
	for _, at := range sampleOf(5, 40, 1, 20) {
		t.Run(fmt.Sprint(at), func(t *testing.T) {
			v, s, f, p := keepFirst(t)
			s.host.Set(v[1])
			var n atomic.Int64 // requests come side by side
			f.watch(func(name string) {
				if name != "sw.js" && n.Add(1) == int64(at) {
					s.host.Set(v[2])
				}
			})
			p.next()
			if _, wrong := p.whole(s, f, v[:]...); wrong != "" {
				t.Errorf("while it lasts: %s", wrong)
			}
			if bad := heals(p, s, f, v[2]); bad != "" {
				t.Errorf("afterwards: %s", bad)
			}
		})
	}
}

// TestBackToOlder: the host goes back to a version that it had before.
func TestBackToOlder(t *testing.T) {
	v, s, f, p := keepFirst(t)
	for _, n := range sampleOf(1, 0, 2, 0) {
		s.host.Set(v[n])
		p.next()
		p.is(s, f, v, n)
	}
}

// TestStaleCopies: a cache on the way still gives pages of the version before, or the browser's own
// does.
func TestStaleCopies(t *testing.T) {
	for _, name := range sampleOf("index.html", "lessons/index.html", "about.html", "manifest.webmanifest") {
		t.Run(name, func(t *testing.T) {
			v, s, f, p := keepFirst(t)
			f.old = map[string][]byte{}
			for _, fl := range v[0] {
				f.old[fl.Name] = fl.Data
			}
			s.host.Set(v[1])
			f.set(name, stale)
			p.next()
			if _, wrong := p.whole(s, f, v[:]...); wrong != "" {
				t.Errorf("while it lasts: %s", wrong)
			}
			f.set("", "")
			if bad := heals(p, s, f, v[1]); bad != "" {
				t.Errorf("afterwards: %s", bad)
			}
		})
	}
}

// TestTwoTabs: one tab is in the middle of a session when the other takes a newer version, and the
// host has nothing else any more. The first goes on with the files of its own version, to the end.
func TestTwoTabs(t *testing.T) {
	v, s, f, p := keepFirst(t)
	p.begin(s.address, "Test child")
	p.choose(rule, surah, from, upTo)
	other := p.another()
	other.open(s.address)
	other.wait("the app", alive)
	s.host.Set(v[1])
	eval[string](other, update)
	other.click("notice-action")
	other.wait("the newer version", alive+` && document.documentElement.dataset.edition === "2"`)

	call(p, cdppage.BringToFront, cdp.Empty{})
	if p.count(hook("notice-update")) > 0 {
		t.Error("a newer version is offered in the middle of a session")
	}
	session(p)
	if e := eval[string](p, `document.documentElement.dataset.edition`); e != "1" {
		t.Errorf("the tab in the middle of a session is version %s now", e)
	}
	own := map[string]bool{"": true}
	for _, fl := range v[0] {
		own[path.Base(fl.Name)] = true
	}
	p.mu.Lock()
	for _, r := range p.requests {
		name, _, _ := strings.Cut(r, "#")
		if !own[path.Base(name)] && !strings.HasPrefix(path.Base(name), "127.0.0.1") && !strings.HasPrefix(name, "blob:") {
			t.Errorf("it was given %s, which is not of its version", name)
		}
	}
	p.mu.Unlock()
	p.do(chromedp.Reload())
	p.wait("the newer version here too", alive+` && document.documentElement.dataset.edition === "2"`)
	p.wait("the record", visible(hook("session")))
	p.is(s, f, v, 1)
	// With no page of it left, the older version goes.
	other.close()
	p.open(s.address + "#/record")
	p.wait("one version", oneVersion)
}

// TestNoRoom: a full device is told, and what was kept stays usable.
func TestNoRoom(t *testing.T) {
	v, s, f, p := keepFirst(t)
	quota := func(p *page, bytes float64) {
		call(p, storage.OverrideQuotaForOrigin, storage.OverrideQuotaForOriginParams{Origin: strings.TrimSuffix(s.address, "/"), QuotaSize: &bytes})
	}
	used := eval[float64](p, `navigator.storage.estimate().then(e => e.usage)`)
	quota(p, used+20_000)
	s.host.Set(v[1])
	if state := p.next(); state != "redundant" {
		t.Errorf("a version that has no room is %s", state)
	}
	p.wait("words about it", visible(hook("notice-no-room")))
	p.is(s, f, v, 0)
	quota(p, used*20)
	p.next()
	p.is(s, f, v, 1)

	first := newPage(t)
	first.open(s.address + "about.html")
	quota(first, 200_000)
	first.open(s.address)
	first.wait("words about it", `document.querySelector('[data-t=offline]')?.innerText.includes("no room")`)
	first.wait("the app all the same", alive)
	quota(first, used*20)
	first.click("offline-again")
	first.wait("everything to be kept", kept)
	first.is(s, f, v, 1)
}

// TestFailureIsLast: others are on their way still when a file fails, and done after it. What they
// say of how far it is must not come after the failure, which is tried again. It is said at every
// tenth file, so ten files are tried.
func TestFailureIsLast(t *testing.T) {
	v := versions(t)
	for _, file := range v[0][100:110] {
		t.Run(file.Name, func(t *testing.T) {
			s, f := harmed(t, "/", v[0])
			f.set(file.Name, down)
			f.watch(func(name string) {
				if name != file.Name {
					time.Sleep(20 * time.Millisecond)
				}
			})
			p := newPage(t)
			p.open(s.address)
			p.wait("words about it", `document.querySelector('[data-t=offline]')?.innerText.includes("Not everything is kept yet")`)
			eval[any](p, `new Promise(r => setTimeout(() => r(0), 300))`)
			if said := p.text(hook("offline")); !strings.Contains(said, "Not everything is kept yet") {
				t.Errorf("after the failure it says %q", said)
			}
		})
	}
}

// TestInterrupted: the first visit is broken off; the next one goes on where it stopped, says how
// far it is, and when it is safe to go.
func TestInterrupted(t *testing.T) {
	v := versions(t)
	s, f := harmed(t, "/", v[0])
	f.set("lessons/ra.html", down)
	p := newPage(t)
	p.open(s.address)
	p.wait("words about it", `document.querySelector('[data-t=offline]')?.innerText.includes("Not everything is kept yet")`)
	f.set("", "")
	served := s.served.Load()
	seen := make(chan struct{})
	onwards := sync.OnceFunc(func() { close(seen) })
	defer onwards()
	f.watch(func(name string) {
		if strings.HasPrefix(name, "lessons/") {
			<-seen
		}
	})
	p.open(s.address)
	p.wait("how far it is", `/\d+ of \d+ files/.test(document.querySelector('[data-t=offline]')?.innerText)`)
	onwards()
	p.wait("that it is safe to go", `document.querySelector('[data-t=offline]')?.innerText.includes("Kept on this device")`)
	if n := s.served.Load() - served; n > int64(len(v[0])) {
		t.Errorf("it was begun anew: %d requests for %d files", n, len(v[0]))
	}
	p.is(s, f, v, 0)
}

// TestEarlierWorker: a worker of the first release kept a damaged script. The next version repairs
// it, without a button that this page does not have.
func TestEarlierWorker(t *testing.T) {
	v := versions(t)
	for _, broken := range []string{"assets/main.", "index.html"} {
		t.Run(broken, func(t *testing.T) {
			var names []string
			var site []bundle.File
			for _, fl := range v[0] {
				if fl.Name == "sw.js" {
					continue
				}
				if strings.HasPrefix(fl.Name, broken) {
					fl.Data = []byte(signInPage)
				}
				names = append(names, fl.Name)
				site = append(site, fl)
			}
			worker := fmt.Sprintf(earlierWorker, "0123456789abcdef", "'"+strings.Join(names, "','")+"'")
			site = append(site, bundle.File{Name: "sw.js", Data: []byte(worker)})
			s, f := harmed(t, "/", site)
			p := newPage(t)
			p.open(s.address + "licences/MIT.txt") // which has no policy of its own
			eval[any](p, `navigator.serviceWorker.register("/sw.js").then(() => navigator.serviceWorker.ready).then(() => 0)`)
			p.open(s.address + "about.html")
			p.wait("everything to be kept", kept)
			p.visit(s.address)
			if p.try(alive, time.Second) {
				t.Fatal("nothing is broken: this test would prove nothing")
			}
			s.host.Set(v[1])
			for range 3 { // a family opens it again
				p.visit(s.address)
				if p.try(alive, 5*time.Second) {
					break
				}
			}
			p.wait("the app", alive)
			p.is(s, f, v, 1)
		})
	}
}

// earlierWorker does what the worker of the first release did: it keeps whatever comes with a good
// status, and asks for nothing twice.
const earlierWorker = `const version = '%s', files = [%s], NAME = 'sutur:' + registration.scope + ':' + version;
addEventListener('install', e => e.waitUntil((async () => {
	const c = await caches.open(NAME);
	for (const f of ['./', ...files]) { const u = new URL(f, registration.scope).href; await c.put(u, await fetch(u)); }
})()));
addEventListener('activate', e => e.waitUntil(clients.claim()));
addEventListener('fetch', e => e.respondWith(caches.open(NAME).then(c => c.match(e.request, { ignoreSearch: true })).then(r => r ?? fetch(e.request))));
`

package e2e

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"sync"
	"testing"

	"github.com/chromedp/chromedp"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/engine"
)

// The engines, each started once, by the first test that wants it.
var engines = []struct {
	name  string
	start func() (engine.Browser, error)
}{
	{"chromium", once(func() (engine.Browser, error) {
		if err := startBrowser(); err != nil {
			return nil, err
		}
		return engine.OverChromium(browser)
	})},
	{"firefox", once(func() (engine.Browser, error) { return engine.Firefox(false) })},
	{"webkit", once(engine.WebKit)},
}

var running struct {
	sync.Mutex
	list []engine.Browser
}

func once(start func() (engine.Browser, error)) func() (engine.Browser, error) {
	return sync.OnceValues(func() (engine.Browser, error) {
		b, err := start()
		if err == nil {
			running.Lock()
			defer running.Unlock()
			running.list = append(running.list, b)
		}
		return b, err
	})
}

func closeEngines() {
	for _, b := range running.list {
		b.Close()
	}
}

// inEngines runs a test in every engine.
func inEngines(t *testing.T, f func(t *testing.T, b engine.Browser)) {
	for _, e := range engines {
		t.Run(e.name, func(t *testing.T) {
			b, err := e.start()
			if err != nil {
				t.Fatal(err)
			}
			f(t, b)
		})
	}
}

// inOne is an engine that a test is about.
func inOne(t *testing.T, name string) engine.Browser {
	t.Helper()
	for _, e := range engines {
		if e.name == name {
			b, err := e.start()
			if err != nil {
				t.Fatal(err)
			}
			return b
		}
	}
	t.Fatalf("no engine is called %s", name)
	return nil
}

// newTab is newPage in any engine. Its screen has engine.Scale pixels for each CSS pixel, and it is
// touched where the engine's driver has fingers.
func newTab(t testing.TB, b engine.Browser) *page {
	t.Helper()
	ctx, cancel := context.WithTimeout(context.Background(), patience)
	defer cancel()
	s, err := b.New(ctx)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(s.Close)
	return &page{t: t, ctx: context.Background(), close: s.Close, tab: s, engine: b.Name()}
}

// in is the same tab in a subtest.
func (p *page) in(t testing.TB) *page {
	return &page{t: t, ctx: p.ctx, close: p.close, tab: p.tab, engine: p.engine}
}

// lines opens lines by their address, with the finding of a rule begun anew.
func (p *page) lines(s *server, rule string, surah, from, to int) {
	p.t.Helper()
	p.open(s.address + "about.html") // the same page with another hash would not load anew
	// What was marked before there is a learner is kept as well.
	eval[any](p, `(async () => {
		if (!(await indexedDB.databases()).some(d => d.name === "sutur")) return 0;
		const db = await new Promise((ok, no) => {
			const r = indexedDB.open("sutur");
			r.onsuccess = () => ok(r.result);
			r.onerror = () => no(r.error);
		});
		await new Promise(ok => {
			const tx = db.transaction("drafts", "readwrite");
			tx.objectStore("drafts").clear();
			tx.oncomplete = ok;
		});
		db.close();
		return 0;
	})()`)
	p.open(fmt.Sprintf("%s#/lines?rule=%s&from=%d:%d&to=%[3]d:%[5]d", s.address, rule, surah, from, to))
	p.wait("the lines", visible(hook(fmt.Sprintf("verse-%d-%d", surah, to)))+` && document.querySelector("main.lines")?.dataset.phase === "find"`)
	eval[any](p, "document.fonts.ready.then(() => 0)")
}

// must calls a method of the tab.
func (p *page) must(f func(context.Context, string) error, arg string) {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	if err := f(ctx, arg); err != nil {
		p.t.Fatalf("%v\n%s", err, p.describe())
	}
}

// press touches a place, or clicks on it.
func (p *page) press(x, y float64) {
	p.t.Helper()
	if p.tab != nil {
		p.point(engine.Touch, engine.Tap(x, y))
		return
	}
	p.do(chromedp.MouseClickXY(x, y))
}

func (p *page) point(kind engine.Kind, steps []engine.Step) {
	p.t.Helper()
	p.must(func(ctx context.Context, _ string) error { return p.tab.Point(ctx, kind, steps) }, "")
}

// keys types text into what has the focus.
func (p *page) keys(text string) {
	p.t.Helper()
	if p.tab != nil {
		p.must(p.tab.Type, text)
		return
	}
	p.do(chromedp.KeyEvent(text))
}

// offline takes the network away where the driver can; the host is stopped by whoever asks for it.
func (p *page) offline() {
	p.t.Helper()
	p.must(func(ctx context.Context, _ string) error {
		err := p.tab.Offline(ctx, true)
		if errors.Is(err, engine.ErrCannot) {
			return nil
		}
		return err
	}, "")
}

// asked gathers what a tab's page has asked for since it was loaded.
func (p *page) asked() {
	p.t.Helper()
	if p.tab == nil {
		return
	}
	list := eval[[]string](p, `[location.href, ...performance.getEntriesByType("resource").map(e => e.name)]`)
	p.mu.Lock()
	defer p.mu.Unlock()
	p.requests = append(p.requests, list...)
}

// hear gathers what a tab's console has said: from its driver, or else from the page, if overheard
// serves it.
func (p *page) hear() {
	if p.tab == nil {
		return
	}
	list, err := p.tab.Trouble()
	if errors.Is(err, engine.ErrCannot) {
		ctx, cancel := context.WithTimeout(p.ctx, patience)
		defer cancel()
		var data json.RawMessage
		if data, err = p.tab.Eval(ctx, `JSON.parse(sessionStorage.getItem("overheard") ?? "null") ?? []`); err == nil {
			err = json.Unmarshal(data, &list)
		}
	}
	p.mu.Lock()
	defer p.mu.Unlock()
	if p.trouble = list; err != nil {
		p.trouble = append(p.trouble, err.Error())
	}
}

// overheard is the site made so that it keeps what goes wrong in it for hear.
func overheard(t testing.TB) []bundle.File {
	t.Helper()
	return edition(t, listening)
}

// listening makes it so.
var listening = func() []change {
	const listen = `{
	const keep = (...words: unknown[]) => {
		const list = [...JSON.parse(sessionStorage.getItem("overheard") ?? "[]"), words.map(String).join(" ")];
		sessionStorage.setItem("overheard", JSON.stringify(list));
	};
	// What is on its way when the page is left fails, as an element and not as a script.
	let leaving = false;
	for (const k of ["beforeunload", "pagehide"]) addEventListener(k, () => { leaving = true; });
	addEventListener("error", e => (leaving && e.target !== window) || keep("error:", e.message, e.filename, e.lineno, (e.target as any)?.src ?? (e.target as any)?.href ?? ""), true);
	addEventListener("unhandledrejection", e => keep("unhandled:", e.reason));
	addEventListener("securitypolicyviolation", e => keep("refused:", e.violatedDirective, e.blockedURI));
	for (const k of ["error", "warn"] as const) {
		const own = console[k];
		console[k] = (...a: unknown[]) => { keep(k + ":", ...a); own.apply(console, a); };
	}
}
early();
`
	return []change{
		{"site-src/app/main.ts", "early();\n", listen},
		{"site-src/app/lesson.ts", "early();\n", listen},
	}
}()

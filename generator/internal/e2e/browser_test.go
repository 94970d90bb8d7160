package e2e

import (
	"context"
	"encoding/json"
	"fmt"
	"net/url"
	"os"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"

	"sutur/generator/internal/engine"
)

// patience is how long a test waits for anything. It is far more than a fast machine needs: speed
// is measured in benchmarks, not here.
const patience = 60 * time.Second

var browser context.Context // the one browser; nil until the first page

func TestMain(m *testing.M) {
	code := m.Run()
	closeEngines()
	if closeBrowser != nil {
		closeBrowser()
	}
	os.Exit(code)
}

var closeBrowser func()

var startBrowser = sync.OnceValue(func() (err error) {
	browser, closeBrowser, err = engine.StartChromium()
	return err
})

// page is one tab in a profile of its own.
type page struct {
	t     testing.TB
	ctx   context.Context
	close context.CancelFunc
	// For a test that runs in every engine; nil for one in Chromium alone.
	tab    engine.Session
	engine string

	mu       sync.Mutex
	trouble  []string // console errors and uncaught exceptions
	requests []string // every address the page asked for
}

// newPage opens an empty tab of 390 by 844 CSS pixels.
func newPage(t testing.TB) *page {
	t.Helper()
	if err := startBrowser(); err != nil {
		t.Fatal(err)
	}
	return openTab(t, chromedp.WithNewBrowserContext())
}

// another opens one more tab of the same profile.
func (p *page) another() *page {
	p.t.Helper()
	return openTab(p.t, chromedp.WithExistingBrowserContext(chromedp.FromContext(p.ctx).BrowserContextID))
}

func openTab(t testing.TB, profile chromedp.ContextOption) *page {
	t.Helper()
	return tabOf(t, browser, profile)
}

// tabOf is openTab in a browser of its own.
func tabOf(t testing.TB, browser context.Context, profile chromedp.ContextOption) *page {
	t.Helper()
	p := &page{t: t}
	ctx, cancel := chromedp.NewContext(browser, profile)
	t.Cleanup(cancel)
	p.ctx, p.close = ctx, cancel
	// The first action binds the tab to its context, which must outlive it: no time limit here.
	if err := chromedp.Do(ctx); err != nil {
		t.Fatal(err)
	}
	if err := chromedp.Listen(ctx, p.listen); err != nil {
		t.Fatal(err)
	}
	p.do(chromedp.EmulateViewport(390, 844))
	p.before(journal)
	return p
}

// before has every page of the tab begin with a script.
func (p *page) before(script string) {
	p.t.Helper()
	call(p, cdppage.AddScriptToEvaluateOnNewDocument, cdppage.AddScriptToEvaluateOnNewDocumentParams{Source: script})
}

// journal notes the last presses and changes of address, and where they went.
const journal = `{
	const list = globalThis.journal = [];
	const note = e => {
		const t = e.target, name = t.dataset?.t ?? t.className ?? t.nodeName ?? "";
		list.push([Math.round(performance.now()), e.type, name, e.clientX === undefined ? location.hash : Math.round(e.clientX) + "," + Math.round(e.clientY)].join(" "));
		if (list.length > 24) list.shift();
	};
	for (const k of ["pointerdown", "pointerup", "pointercancel", "click", "submit", "hashchange"]) addEventListener(k, note, true);
}`

func (p *page) listen(ev any) {
	p.mu.Lock()
	defer p.mu.Unlock()
	switch ev := ev.(type) {
	case *runtime.EventConsoleAPICalled:
		if ev.Type == runtime.ConsoleAPICalledTypeError || ev.Type == runtime.ConsoleAPICalledTypeWarning || ev.Type == runtime.ConsoleAPICalledTypeAssert {
			var words []string
			for _, a := range ev.Args {
				words = append(words, string(a.Value)+a.Description)
			}
			p.trouble = append(p.trouble, fmt.Sprintf("console %s: %s", ev.Type, strings.Join(words, " ")))
		}
	case *runtime.EventExceptionThrown:
		p.trouble = append(p.trouble, "exception: "+exception(ev.ExceptionDetails))
	case *log.EventEntryAdded:
		if ev.Entry.Level == log.EntryLevelError || ev.Entry.Level == log.EntryLevelWarning {
			p.trouble = append(p.trouble, fmt.Sprintf("log %s: %s %s", ev.Entry.Source, ev.Entry.Text, ev.Entry.URL))
		}
	case *network.EventRequestWillBeSent:
		p.requests = append(p.requests, ev.Request.URL)
	}
}

func exception(d *runtime.ExceptionDetails) string {
	if d.Exception != nil {
		return d.Text + " " + d.Exception.Description
	}
	return d.Text
}

// do runs actions and fails the test if one of them fails or takes too long.
func (p *page) do(actions ...chromedp.Action[chromedp.Void]) {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	if err := chromedp.Do(ctx, actions...); err != nil {
		p.t.Fatalf("%v\n%s", err, p.describe())
	}
}

// describe shows where the page stands, for a failed test.
func (p *page) describe() string {
	ctx, cancel := context.WithTimeout(p.ctx, 5*time.Second)
	defer cancel()
	at, _ := value[string](ctx, p, `location.href`)
	text, _ := value[string](ctx, p, `document.body ? document.body.innerText.slice(0, 1500) : ""`)
	presses, _ := value[string](ctx, p, `(globalThis.journal ?? []).join("\n")`)
	p.hear()
	p.mu.Lock()
	defer p.mu.Unlock()
	return fmt.Sprintf("at %s\n--- shown:\n%s\n--- presses:\n%s\n--- trouble:\n%s", at, text, presses, strings.Join(p.trouble, "\n"))
}

// open goes to an address and waits until the page has loaded.
func (p *page) open(address string) {
	p.t.Helper()
	if p.tab != nil {
		p.must(p.tab.Open, address)
		p.note()
		return
	}
	p.do(chromedp.Navigate(address))
}

// note begins the journal of a page in any engine. Without it a failure only says less.
func (p *page) note() {
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	value[any](ctx, p, "(() => { "+journal+" return 0; })()")
}

// reload loads the page again.
func (p *page) reload() {
	p.t.Helper()
	if p.tab != nil {
		p.must(func(ctx context.Context, _ string) error { return p.tab.Reload(ctx) }, "")
		p.note()
		return
	}
	p.do(chromedp.Reload())
}

// call sends one command of the protocol.
func call[P, R any](p *page, cmd cdp.Command[P, R], params P) R {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, patience)
	defer cancel()
	r, err := chromedp.Call(ctx, cmd, params)
	if err != nil {
		p.t.Fatalf("%s: %v\n%s", cmd.Method, err, p.describe())
	}
	return r
}

// eval runs script in the page and returns its value; promises are awaited.
func eval[T any](p *page, script string) T {
	p.t.Helper()
	return evalWithin[T](p, patience, script)
}

// evalWithin is eval for what takes long.
func evalWithin[T any](p *page, limit time.Duration, script string) T {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, limit)
	defer cancel()
	v, err := value[T](ctx, p, script)
	if err != nil {
		p.t.Fatalf("%v\n%s", err, p.describe())
	}
	return v
}

// value is eval for one who takes the error. For a test in every engine, script is one expression.
func value[T any](ctx context.Context, p *page, script string) (v T, err error) {
	if p.tab == nil {
		return chromedp.Run(ctx, chromedp.Evaluate[T](script, chromedp.EvalAwaitPromise))
	}
	data, err := p.tab.Eval(ctx, script)
	if err == nil {
		err = json.Unmarshal(data, &v)
	}
	return v, err
}

// wait waits until the expression is true.
func (p *page) wait(what, expression string) {
	p.t.Helper()
	deadline := time.Now().Add(patience)
	for {
		ctx, cancel := context.WithTimeout(p.ctx, patience)
		ok, err := value[bool](ctx, p, "Boolean("+expression+")")
		cancel()
		if ok {
			return
		}
		if time.Now().After(deadline) {
			p.t.Fatalf("waited in vain for %s (%v)\n%s", what, err, p.describe())
		}
		time.Sleep(50 * time.Millisecond)
	}
}

// calm fails the test if the page complained about anything.
func (p *page) calm() {
	p.t.Helper()
	p.hear()
	p.mu.Lock()
	defer p.mu.Unlock()
	for _, s := range p.trouble {
		p.t.Errorf("the page complains: %s", s)
	}
}

// stayedAt fails the test if the page asked any other origin for anything.
func (p *page) stayedAt(address string) {
	p.t.Helper()
	home, err := url.Parse(address)
	if err != nil {
		p.t.Fatal(err)
	}
	p.asked()
	p.mu.Lock()
	defer p.mu.Unlock()
	if len(p.requests) == 0 {
		p.t.Error("no request was seen at all: this check sees nothing")
	}
	for _, r := range p.requests {
		u, err := url.Parse(strings.TrimPrefix(r, "blob:"))
		if err != nil || u.Scheme == "data" {
			continue
		}
		if u.Scheme != home.Scheme || u.Host != home.Host {
			p.t.Errorf("a request left the site: %s", r)
		}
	}
}

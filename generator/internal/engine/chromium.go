package engine

import (
	"context"
	"fmt"
	"strings"
	"sync"
	"time"

	cdpbrowser "github.com/chromedp/cdproto/browser"
	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
)

// chromium is one Chromium; its context is chromedp's.
type chromium struct {
	ctx     context.Context
	close   context.CancelFunc
	version string
}

// StartChromium starts Chromium for chromedp. The context is the browser's: a tab is a context
// below it.
func StartChromium(more ...chromedp.ExecAllocatorOption) (context.Context, context.CancelFunc, error) {
	path, err := ChromiumPath()
	if err != nil {
		return nil, nil, err
	}
	opts := append(chromedp.DefaultExecAllocatorOptions[:],
		chromedp.ExecPath(path),
		chromedp.NoSandbox,
		chromedp.Flag("disable-quic", true),
		chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-gpu", true),
		chromedp.Flag("host-resolver-rules", "MAP * ~NOTFOUND, EXCLUDE 127.0.0.1"),
	)
	alloc, cancelAlloc := chromedp.NewExecAllocator(context.Background(), append(opts, more...)...)
	ctx, cancel := chromedp.NewContext(alloc)
	if err := chromedp.Do(ctx); err != nil {
		cancel()
		cancelAlloc()
		return nil, nil, fmt.Errorf("start %s: %w", path, err)
	}
	return ctx, func() { cancel(); cancelAlloc() }, nil
}

// Chromium starts Chromium.
func Chromium() (Browser, error) {
	ctx, cancel, err := StartChromium()
	if err != nil {
		return nil, err
	}
	b, err := OverChromium(ctx)
	if err != nil {
		cancel()
		return nil, err
	}
	b.(*chromium).close = cancel
	return b, nil
}

// OverChromium takes a browser that StartChromium has started, and leaves it to its owner to close.
func OverChromium(browser context.Context) (Browser, error) {
	v, err := chromedp.CallBrowser(browser, cdpbrowser.GetVersion, cdp.Empty{})
	if err != nil {
		return nil, err
	}
	_, version, _ := strings.Cut(v.Product, "/")
	return &chromium{ctx: browser, close: func() {}, version: version}, nil
}

func (b *chromium) Name() string    { return "chromium" }
func (b *chromium) Version() string { return "Chromium " + b.version }
func (b *chromium) Close()          { b.close() }

func (b *chromium) New(ctx context.Context) (Session, error) {
	return b.tab(ctx, chromedp.WithNewBrowserContext())
}

func (b *chromium) tab(ctx context.Context, store ...chromedp.ContextOption) (Session, error) {
	s := &chromiumTab{}
	s.ctx, s.cancel = chromedp.NewContext(b.ctx, store...)
	// The first action binds the tab to its context, which must outlive it: no time limit here.
	if err := chromedp.Do(s.ctx); err != nil {
		s.cancel()
		return nil, err
	}
	if err := chromedp.Listen(s.ctx, s.heard); err != nil {
		s.cancel()
		return nil, err
	}
	under, done := s.under(ctx)
	defer done()
	if err := chromedp.Do(under, chromedp.EmulateViewport(Width, Height, chromedp.EmulateScale(Scale))); err != nil {
		s.cancel()
		return nil, err
	}
	return s, s.send(ctx, func(ctx context.Context) error {
		_, err := chromedp.Call(ctx, emulation.SetTouchEmulationEnabled, emulation.SetTouchEmulationEnabledParams{Enabled: true, MaxTouchPoints: 1})
		return err
	})
}

// chromiumTab is a tab in a browser context, a store of its own.
type chromiumTab struct {
	ctx    context.Context
	cancel context.CancelFunc

	mu      sync.Mutex
	trouble []string

	// The last press of the mouse, and which one it was of a double click.
	x, y  float64
	at    time.Time
	press int64
	// Where the pointer is, and whether it is down.
	toX, toY float64
	down     bool
}

func (s *chromiumTab) heard(ev any) {
	said := ""
	switch ev := ev.(type) {
	case *runtime.EventConsoleAPICalled:
		if ev.Type == runtime.ConsoleAPICalledTypeError || ev.Type == runtime.ConsoleAPICalledTypeWarning || ev.Type == runtime.ConsoleAPICalledTypeAssert {
			var words []string
			for _, a := range ev.Args {
				words = append(words, string(a.Value)+a.Description)
			}
			said = fmt.Sprintf("console %s: %s", ev.Type, strings.Join(words, " "))
		}
	case *runtime.EventExceptionThrown:
		said = "exception: " + ev.ExceptionDetails.Text
		if e := ev.ExceptionDetails.Exception; e != nil {
			said += " " + e.Description
		}
	case *log.EventEntryAdded:
		if ev.Entry.Level == log.EntryLevelError || ev.Entry.Level == log.EntryLevelWarning {
			said = fmt.Sprintf("log %s: %s %s", ev.Entry.Source, ev.Entry.Text, ev.Entry.URL)
		}
	}
	if said != "" {
		s.mu.Lock()
		defer s.mu.Unlock()
		s.trouble = append(s.trouble, said)
	}
}

// under is the tab's context with the limits of ctx.
func (s *chromiumTab) under(ctx context.Context) (context.Context, context.CancelFunc) {
	under, cancel := context.WithCancel(s.ctx)
	stop := context.AfterFunc(ctx, cancel)
	return under, func() { stop(); cancel() }
}

func (s *chromiumTab) send(ctx context.Context, f func(context.Context) error) error {
	under, done := s.under(ctx)
	defer done()
	err := f(under)
	if err != nil && ctx.Err() != nil {
		return ctx.Err()
	}
	return err
}

package engine

import (
	"cmp"
	"context"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"time"
)

// firefox is one Firefox without a screen.
type firefox struct {
	*bidi
	run       *process
	profile   string
	version   string
	temporary bool // the profile goes with the browser

	mu   sync.Mutex
	tabs map[string]*firefoxTab // by their context
}

var bidiAt = regexp.MustCompile(`WebDriver BiDi listening on (ws://\S+)`)

// quiet keeps Firefox from asking other hosts for anything, gives it the scroll bars and the touch of
// a phone, and keeps files apart from each other, as readers have it and remote control would not;
// the rest is set by that.
const quiet = `user_pref("app.update.disabledForTesting", true);
user_pref("browser.shell.checkDefaultBrowser", false);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("network.captive-portal-service.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("network.dns.disableIPv6", true);
user_pref("dom.w3c_touch_events.enabled", 1);
user_pref("network.proxy.type", 0);
user_pref("security.fileuri.strict_origin_policy", true);
user_pref("ui.useOverlayScrollbars", 1);
user_pref("toolkit.telemetry.server", "data:,");
`

// Firefox starts Firefox. With forced, every page is shown in forced colours: Firefox takes them
// from a setting, not from the driver.
func Firefox(forced bool) (Browser, error) {
	path, err := FirefoxPath()
	if err != nil {
		return nil, err
	}
	prefs := quiet
	if forced {
		prefs += `user_pref("browser.display.document_color_use", 2);` + "\n"
	}
	return tries("Firefox", func() (Browser, error) {
		profile, err := os.MkdirTemp("", "firefox")
		if err != nil {
			return nil, err
		}
		f, err := startFirefox(path, profile, prefs)
		if err != nil {
			os.RemoveAll(profile)
			return nil, err
		}
		f.temporary = true
		return f, nil
	})
}

func startFirefox(path, profile, prefs string) (_ *firefox, err error) {
	f := &firefox{profile: profile, tabs: map[string]*firefoxTab{}}
	ok := false
	defer func() {
		if !ok {
			f.Close()
		}
	}()
	if err := os.WriteFile(filepath.Join(profile, "user.js"), []byte(prefs), 0o644); err != nil {
		return nil, err
	}
	at := make(chan string, 1)
	cmd := exec.Command(path, "--headless", "--no-remote", "--profile", profile, "--remote-debugging-port", "0")
	cmd.Env = append(os.Environ(), "HOME="+profile, "MOZ_HEADLESS=1")
	f.run, err = launch(cmd, func(line string) {
		if m := bidiAt.FindStringSubmatch(line); m != nil {
			select {
			case at <- m[1]:
			default:
			}
		}
	})
	if err != nil {
		return nil, err
	}
	ctx, cancel := context.WithTimeout(context.Background(), startTime)
	defer cancel()
	select {
	case address := <-at:
		if f.bidi, err = dialBidi(ctx, address+"/session", f.heard); err != nil {
			return nil, err
		}
	case <-f.run.done:
		return nil, fmt.Errorf("Firefox: %s", f.run.last())
	case <-ctx.Done():
		return nil, fmt.Errorf("Firefox does not answer: %s", f.run.last())
	}
	var got struct {
		Capabilities struct{ BrowserVersion string }
	}
	if err := f.call(ctx, "session.new", map[string]any{"capabilities": struct{}{}}, &got); err != nil {
		return nil, err
	}
	f.version = got.Capabilities.BrowserVersion
	if err := f.call(ctx, "session.subscribe", map[string]any{"events": []string{said, leaves, arrives, stays}}, nil); err != nil {
		return nil, err
	}
	ok = true
	return f, nil
}

func (f *firefox) Name() string    { return "firefox" }
func (f *firefox) Version() string { return "Firefox " + f.version }

func (f *firefox) Close() {
	if f.bidi != nil {
		ctx, cancel := context.WithTimeout(context.Background(), 5*time.Second)
		f.call(ctx, "browser.close", nil, nil)
		cancel()
	}
	if f.run != nil {
		f.run.end()
	}
	if f.temporary {
		os.RemoveAll(f.profile)
	}
}

// Events of BiDi: something was said in the console; a tab's page is about to be left, for one that
// then is there, or that cannot be had.
const (
	said    = "log.entryAdded"
	leaves  = "browsingContext.navigationStarted"
	arrives = "browsingContext.navigationCommitted"
	stays   = "browsingContext.navigationFailed"
)

// heard hands an event to its tab.
func (f *firefox) heard(method string, params json.RawMessage) {
	var e struct {
		Level, Text, Context string
		Source               struct{ Context string }
		Timestamp            int64 // ms since 1970
	}
	if json.Unmarshal(params, &e) != nil {
		return
	}
	f.mu.Lock()
	defer f.mu.Unlock()
	t := f.tabs[cmp.Or(e.Source.Context, e.Context)]
	if t == nil {
		return
	}
	switch method {
	case said:
		if e.Level == "error" || strings.HasPrefix(e.Level, "warn") {
			t.trouble = append(t.trouble, complaint{e.Timestamp, e.Level + ": " + e.Text})
		}
	case leaves:
		t.leave(e.Timestamp)
	case arrives, stays:
		t.left(e.Timestamp)
	}
}

func (f *firefox) New(ctx context.Context) (Session, error) {
	var user struct{ UserContext string }
	if err := f.call(ctx, "browser.createUserContext", nil, &user); err != nil {
		return nil, err
	}
	return f.tab(ctx, user.UserContext)
}

// tab opens a tab in a user context; "default" is the profile's own store.
func (f *firefox) tab(ctx context.Context, user string) (Session, error) {
	var tab struct{ Context string }
	if err := f.call(ctx, "browsingContext.create", map[string]any{"type": "tab", "userContext": user}, &tab); err != nil {
		return nil, err
	}
	t := &firefoxTab{f: f, user: user, context: tab.Context}
	f.mu.Lock()
	f.tabs[t.context] = t
	f.mu.Unlock()
	return t, t.Resize(ctx, Width, Height)
}

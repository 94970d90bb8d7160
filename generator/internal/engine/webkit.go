package engine

import (
	"bytes"
	"context"
	"encoding/base64"
	"encoding/json"
	"errors"
	"fmt"
	"image"
	"image/png"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"sync"
	"time"
)

// webkit is WebKitGTK's driver, which starts a MiniBrowser for each session.
type webkit struct {
	wire
	screen, driver *process
	browser, home  string
	version        string

	one sync.Mutex // the driver takes one session at a time
}

// WebKit starts WebKitGTK's driver on a display of its own.
func WebKit() (Browser, error) {
	driver, browser, xvfb, err := webkitPaths()
	if err != nil {
		return nil, err
	}
	return tries("WebKit", func() (Browser, error) { return startWebKit(driver, browser, xvfb) })
}

func startWebKit(driver, browser, xvfb string) (Browser, error) {
	screen, name, err := display(xvfb)
	if err != nil {
		return nil, err
	}
	b := &webkit{screen: screen, browser: browser}
	ok := false
	defer func() {
		if !ok {
			b.Close()
		}
	}()
	if b.home, err = os.MkdirTemp("", "webkit"); err != nil {
		return nil, err
	}
	port, err := freePort()
	if err != nil {
		return nil, err
	}
	cmd := exec.Command(driver, "--host=127.0.0.1", "--port="+strconv.Itoa(port))
	cmd.Env = append(os.Environ(), "DISPLAY="+name, "GDK_BACKEND=x11", "GDK_SCALE="+strconv.Itoa(Scale),
		"LIBGL_ALWAYS_SOFTWARE=1", "WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS=1", "NO_AT_BRIDGE=1", "GTK_THEME=Adwaita",
		"HOME="+b.home, "XDG_RUNTIME_DIR="+b.home, "XDG_CACHE_HOME="+filepath.Join(b.home, "cache"),
		"XDG_DATA_HOME="+filepath.Join(b.home, "data"), "XDG_CONFIG_HOME="+filepath.Join(b.home, "config"))
	if b.driver, err = launch(cmd, nil); err != nil {
		return nil, err
	}
	b.base = "http://127.0.0.1:" + strconv.Itoa(port)
	ctx, cancel := context.WithTimeout(context.Background(), startTime)
	defer cancel()
	for b.call(ctx, http.MethodGet, "/status", nil, nil) != nil {
		select {
		case <-b.driver.done:
			return nil, fmt.Errorf("WebKitWebDriver: %s", b.driver.last())
		case <-ctx.Done():
			return nil, fmt.Errorf("WebKitWebDriver does not answer: %s", b.driver.last())
		case <-time.After(20 * time.Millisecond):
		}
	}
	s, err := b.New(ctx) // a first session, for the version, and to know that it can be had
	if err != nil {
		return nil, err
	}
	s.Close()
	ok = true
	return b, nil
}

func freePort() (int, error) {
	l, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return 0, err
	}
	defer l.Close()
	return l.Addr().(*net.TCPAddr).Port, nil
}

func (b *webkit) Name() string    { return "webkit" }
func (b *webkit) Version() string { return "WebKitGTK " + b.version }

func (b *webkit) Close() {
	for _, p := range []*process{b.driver, b.screen} {
		if p != nil {
			p.end()
		}
	}
	if b.home != "" {
		os.RemoveAll(b.home)
	}
}

func (b *webkit) New(ctx context.Context) (Session, error) {
	b.one.Lock()
	s := &webkitTab{b: b}
	if err := s.begin(ctx); err != nil {
		s.Close()
		return nil, fmt.Errorf("a session of WebKit: %w\n%s", err, b.driver.last())
	}
	return s, nil
}

type webkitTab struct {
	wire
	b    *webkit
	once sync.Once
}

func (s *webkitTab) begin(ctx context.Context) error {
	var got struct {
		SessionID    string
		Capabilities struct{ BrowserVersion string }
	}
	// Full screen takes MiniBrowser's bars away, below whose width its window cannot be made.
	want := map[string]any{"capabilities": map[string]any{"alwaysMatch": map[string]any{
		"webkitgtk:browserOptions": map[string]any{"binary": s.b.browser, "args": []string{"--automation", "--full-screen"}},
	}}}
	if err := s.b.call(ctx, http.MethodPost, "/session", want, &got); err != nil {
		return err
	}
	s.base = s.b.base + "/session/" + got.SessionID
	s.b.version = got.Capabilities.BrowserVersion
	minute := 60_000
	if err := s.post(ctx, "/timeouts", map[string]any{"script": minute, "pageLoad": minute}, nil); err != nil {
		return err
	}
	return s.Resize(ctx, Width, Height)
}

// WebKitNarrow is the least width of MiniBrowser's window, in CSS pixels.
const WebKitNarrow = 334

// Resize waits until the window has its size.
func (s *webkitTab) Resize(ctx context.Context, width, height int) error {
	if width < WebKitNarrow {
		return cannot("webkit", fmt.Sprintf("a width of %d", width))
	}
	if err := s.post(ctx, "/window/rect", map[string]any{"x": 0, "y": 0, "width": width, "height": height}, nil); err != nil {
		return err
	}
	for {
		v, err := s.Eval(ctx, "[innerWidth, innerHeight, devicePixelRatio].join()")
		if want := fmt.Sprintf(`"%d,%d,%d"`, width, height, Scale); err == nil && string(v) == want {
			return nil
		}
		select {
		case <-ctx.Done():
			return fmt.Errorf("the window has the size %s (%v), want %d,%d,%d", v, err, width, height, Scale)
		case <-time.After(20 * time.Millisecond):
		}
	}
}

func (s *webkitTab) post(ctx context.Context, path string, body, into any) error {
	return s.call(ctx, http.MethodPost, path, body, into)
}

func (s *webkitTab) Close() {
	s.once.Do(func() {
		defer s.b.one.Unlock()
		if s.base == "" {
			return
		}
		ctx, cancel := context.WithTimeout(context.Background(), 10*time.Second)
		defer cancel()
		s.call(ctx, http.MethodDelete, "", nil, nil)
	})
}

func (s *webkitTab) Open(ctx context.Context, address string) error {
	return s.post(ctx, "/url", map[string]any{"url": address}, nil)
}

func (s *webkitTab) Reload(ctx context.Context) error { return s.post(ctx, "/refresh", nil, nil) }

func (s *webkitTab) Eval(ctx context.Context, expression string) (json.RawMessage, error) {
	var got struct{ Ok, Error *string }
	err := s.post(ctx, "/execute/async", map[string]any{"args": []any{}, "script": `const done = arguments[arguments.length - 1];
		` + wrapped(expression) + `.then(v => done({ ok: v }), e => done({ error: String(e?.stack ? e + "\n" + e.stack : e) }));`}, &got)
	if err != nil {
		return nil, err
	}
	if got.Error != nil {
		return nil, errors.New(*got.Error)
	}
	if got.Ok == nil {
		return nil, errors.New("the script gave nothing")
	}
	return json.RawMessage(*got.Ok), nil
}

// Point: WebKitGTK's driver takes a finger for a mouse, so a mouse it is.
func (s *webkitTab) Point(ctx context.Context, _ Kind, steps []Step) error {
	return s.post(ctx, "/actions", map[string]any{"actions": pointer(Mouse, steps)}, nil)
}

func (s *webkitTab) Type(ctx context.Context, text string) error {
	return s.post(ctx, "/actions", map[string]any{"actions": keystrokes(text)}, nil)
}

func (s *webkitTab) Screenshot(ctx context.Context) (image.Image, error) {
	var data string
	// What is not painted yet is not in the picture.
	if _, err := s.Eval(ctx, "new Promise(r => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => r(0)))))"); err != nil {
		return nil, err
	}
	if err := s.call(ctx, http.MethodGet, "/screenshot", nil, &data); err != nil {
		return nil, err
	}
	return picture(data)
}

func picture(base64png string) (image.Image, error) {
	raw, err := base64.StdEncoding.DecodeString(base64png)
	if err != nil {
		return nil, err
	}
	return png.Decode(bytes.NewReader(raw))
}

func (s *webkitTab) Offline(context.Context, bool) error { return cannot("webkit", "offline") }

func (s *webkitTab) Media(_ context.Context, m Media) error {
	if m == (Media{}) {
		return nil
	}
	return cannot("webkit", fmt.Sprintf("media %+v", m))
}

func (s *webkitTab) Print(context.Context) ([]byte, error) { return nil, cannot("webkit", "print") }

func (s *webkitTab) Trouble() ([]string, error) { return nil, cannot("webkit", "console") }

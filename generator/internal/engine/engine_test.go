package engine

import (
	"context"
	"errors"
	"fmt"
	"net/http"
	"net/http/httptest"
	"os"
	"strings"
	"testing"
	"time"
)

const probe = `<!doctype html><meta name="viewport" content="width=device-width"><title>probe</title>
<style>body { margin: 0; height: 2000px; background: #fff } div { position: absolute; inset: 100px auto auto 100px; width: 50px; height: 50px; background: #0a0 }
@media print { div { background: #00a } } input { position: absolute; top: 300px }</style><div></div><input>
<script>globalThis.log = [];
for (const k of ["pointerdown", "pointermove", "pointerup", "click", "dblclick"]) addEventListener(k, e => log.push(k));
console.warn("careful")</script>`

// TestDrivers holds each driver to what Session promises, and to what it says it cannot do.
func TestDrivers(t *testing.T) {
	srv := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/html")
		fmt.Fprint(w, probe)
	}))
	t.Cleanup(srv.Close)
	for _, e := range []struct {
		name    string
		start   func() (Browser, error)
		cannot  string // of offline, print, media, console, touch, narrow
		version string
	}{
		{"chromium", Chromium, "", "Chromium "},
		{"firefox", func() (Browser, error) { return Firefox(false) }, "media", "Firefox "},
		{"webkit", WebKit, "offline print media console touch narrow", "WebKitGTK "},
	} {
		t.Run(e.name, func(t *testing.T) {
			b, err := e.start()
			if err != nil {
				t.Fatal(err)
			}
			t.Cleanup(b.Close)
			t.Log(b.Version())
			if b.Name() != e.name || !strings.HasPrefix(b.Version(), e.version) || len(b.Version()) < len(e.version)+3 {
				t.Errorf("this is %s %s", b.Name(), b.Version())
			}
			ctx, cancel := context.WithTimeout(t.Context(), 2*time.Minute)
			defer cancel()
			s, err := b.New(ctx)
			if err != nil {
				t.Fatal(err)
			}
			defer s.Close()
			cannot := e.cannot
			// Debian 12 without its updates has Firefox 140, whose driver has no command for it
			// yet; 153 has.
			if b.Name() == "firefox" && strings.HasPrefix(b.Version(), "Firefox 140.") {
				cannot += " offline"
			}
			promised(t, ctx, s, srv.URL, func(what string) bool { return !strings.Contains(cannot, what) })
		})
	}
}

func promised(t *testing.T, ctx context.Context, s Session, address string, can func(string) bool) {
	must := func(what string, err error) {
		t.Helper()
		if err != nil {
			t.Fatalf("%s: %v", what, err)
		}
	}
	is := func(expression, want string) {
		t.Helper()
		v, err := s.Eval(ctx, expression)
		if err != nil || string(v) != want {
			t.Errorf("%s is %s (%v), want %s", expression, v, err, want)
		}
	}
	may := func(what string, err error) {
		t.Helper()
		if can(what) && err != nil || !can(what) && !errors.Is(err, ErrCannot) {
			t.Errorf("%s: %v", what, err)
		}
	}
	must("open", s.Open(ctx, address))
	is("[innerWidth, innerHeight, devicePixelRatio]", fmt.Sprintf("[%d,%d,%d]", Width, Height, Scale))
	is("new Promise(r => setTimeout(() => r({ a: [1, null] }), 10))", `{"a":[1,null]}`)
	is("undefined", "null")
	if _, err := s.Eval(ctx, `Promise.reject(new Error("no luck"))`); err == nil || !strings.Contains(err.Error(), "no luck") {
		t.Errorf("an error of the page is %v", err)
	}
	im, err := s.Screenshot(ctx)
	must("screenshot", err)
	if b := im.Bounds(); b.Dx() != Width*Scale || b.Dy() != Height*Scale {
		t.Errorf("the picture has %v", b)
	}
	if r, g, b, _ := im.At(125*Scale, 125*Scale).RGBA(); r>>8 > 20 || g>>8 < 150 || b>>8 > 20 {
		t.Errorf("the green square is %d %d %d", r>>8, g>>8, b>>8)
	}
	must("move", s.Point(ctx, Mouse, []Step{{Do: To, X: 20, Y: 20}}))
	is("log.splice(0).length >= 0", "true")
	must("tap", s.Point(ctx, Touch, Tap(125, 125)))
	is(`new Promise(r => { const look = () => log.includes("click") ? r(log.splice(0).filter(k => k !== "pointermove").join(" ")) : setTimeout(look, 10); look(); })`,
		`"pointerdown pointerup click"`)
	must("stroke", s.Point(ctx, Mouse, Stroke(100, 200, 200, 210, 5)))
	is(`log.splice(0).filter(k => k === "pointermove").length > 3`, "true")
	must("double tap", s.Point(ctx, Mouse, DoubleTap(250, 250)))
	is(`log.splice(0).includes("dblclick")`, "true")
	_, err = s.Eval(ctx, `document.querySelector("input").focus()`)
	must("focus", err)
	must("type", s.Type(ctx, "Ab c\u0644"+KeyBackspace))
	is(`document.querySelector("input").value`, `"Ab c"`)

	list, err := s.Trouble()
	may("console", err)
	if can("console") && !strings.Contains(strings.Join(list, "\n"), "careful") {
		t.Errorf("the console said %q", list)
	}
	pdf, err := s.Print(ctx)
	may("print", err)
	if can("print") && !strings.HasPrefix(string(pdf), "%PDF") {
		t.Errorf("print gave %.10q", pdf)
	}
	may("media", s.Media(ctx, Media{Print: true}))
	is(`matchMedia("print").matches`, fmt.Sprint(can("media")))
	must("media", s.Media(ctx, Media{}))
	may("offline", s.Offline(ctx, true))
	if can("offline") {
		is(`fetch("/x").then(() => "on", () => "off")`, `"off"`)
		is("navigator.onLine", "false")
		must("online", s.Offline(ctx, false))
	}
	for _, size := range [][2]int{{320, 256}, {844, 390}, {1280, 800}} {
		err := s.Resize(ctx, size[0], size[1])
		if size[0] < WebKitNarrow && !can("narrow") {
			if !errors.Is(err, ErrCannot) {
				t.Errorf("resize to %v: %v", size, err)
			}
			continue
		}
		must("resize", err)
		is("[innerWidth, innerHeight, devicePixelRatio]", fmt.Sprintf("[%d,%d,%d]", size[0], size[1], Scale))
	}
	must("reload", s.Reload(ctx))
	is("document.title", `"probe"`)
}

// TestMissing: a browser that is not there is said in one line, with its package.
func TestMissing(t *testing.T) {
	t.Setenv("PATH", t.TempDir())
	for _, v := range []string{"CHROMIUM", "FIREFOX", "WEBKIT_DRIVER", "WEBKIT_BROWSER"} {
		t.Setenv(v, "")
		os.Unsetenv(v)
	}
	for what, start := range map[string]func() (Browser, error){
		"chromium": Chromium, "firefox": func() (Browser, error) { return Firefox(false) }, "webkit2gtk": WebKit,
	} {
		b, err := start()
		if err == nil {
			b.Close()
			t.Errorf("%s starts though it is on no path", what)
		} else if !strings.Contains(err.Error(), "install the package "+what) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: %v", what, err)
		}
	}
}

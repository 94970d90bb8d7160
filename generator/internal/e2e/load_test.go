package e2e

import (
	"bytes"
	"compress/gzip"
	"io"
	"net/http"
	"net/http/httptest"
	"path"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"

	"sutur/generator/internal/bundle"
)

// drawn is true once the app has put its first screen up.
const drawn = `document.querySelector("#app") && document.querySelector("#app").getAttribute("aria-busy") !== "true" && document.querySelector("#app").children.length > 0`

// kept is true once the service worker has stored everything and serves the page.
const kept = `navigator.serviceWorker && navigator.serviceWorker.controller && navigator.serviceWorker.controller.state === "activated"`

func TestLoads(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.open(s.address)
	p.wait("the first screen", drawn)
	p.wait("everything to be stored", kept)
	p.calm()
	p.stayedAt(s.address)
}

func TestBelowAPath(t *testing.T) {
	s := serve(t, "/a/b/", built(t))
	p := newPage(t)
	for _, at := range []string{"", "index.html", "lessons/index.html", "about.html"} {
		p.open(s.address + at)
		if !strings.Contains(at, "/") && at != "about.html" {
			p.wait("the first screen", drawn)
		}
	}
	p.open(s.address)
	p.wait("everything to be stored", kept)
	if scope := eval[string](p, `navigator.serviceWorker.ready.then(r => r.scope)`); scope != s.address {
		t.Errorf("the service worker serves %s, want %s", scope, s.address)
	}
	p.calm()
	p.stayedAt(s.address)
}

// TestHostThatDeclaresGzip: some hosts call every .gz file a content encoding, and the browser then
// unpacks it before the page sees it.
func TestHostThatDeclaresGzip(t *testing.T) {
	s := serve(t, "/", built(t), func(h http.Handler) http.Handler {
		return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			if path.Ext(r.URL.Path) == ".gz" {
				w.Header().Set("Content-Encoding", "gzip")
			}
			h.ServeHTTP(w, r)
		})
	})
	p := newPage(t)
	p.open(s.address)
	p.wait("the first screen", drawn)
	p.wait("everything to be stored", kept)
	s.stop()
	p.do(chromedp.Reload())
	p.wait("the first screen without a host", drawn)
}

// TestNoSidewaysScroll looks at every page in the widths of a phone and of a desk.
func TestNoSidewaysScroll(t *testing.T) {
	files := built(t)
	s := serve(t, "/", files)
	p := newPage(t)
	for _, v := range []struct{ w, h int64 }{{320, 640}, {390, 844}, {1280, 800}} {
		p.do(chromedp.EmulateViewport(v.w, v.h))
		for _, f := range files {
			if path.Ext(f.Name) != ".html" {
				continue
			}
			p.open(s.address + f.Name)
			if f.Name == "index.html" {
				p.wait("the first screen", drawn)
			}
			if over := eval[int](p, `document.documentElement.scrollWidth - document.documentElement.clientWidth`); over > 0 {
				t.Errorf("%s at %d pixels scrolls sideways by %d", f.Name, v.w, over)
			}
		}
	}
	p.calm()
}

// TestWithoutScript reads the pages as they are with scripting off.
func TestWithoutScript(t *testing.T) {
	files := built(t)
	s := serve(t, "/", files)
	p := newPage(t)
	call(p, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	lessons := 0
	for _, f := range files {
		if path.Ext(f.Name) != ".html" {
			continue
		}
		p.open(s.address + f.Name)
		text := eval[string](p, `document.querySelector("main").innerText`)
		if len(strings.TrimSpace(text)) < 80 {
			t.Errorf("%s shows only %q", f.Name, text)
		}
		if strings.HasPrefix(f.Name, "lessons/") && f.Name != "lessons/index.html" {
			lessons++
		}
	}
	if lessons == 0 {
		t.Error("there is no lesson page")
	}
	p.calm()
}

// TestFirstOpenOverTheWire counts what a phone loads before the service worker starts to store the
// rest, with the text files compressed as hosts do it.
func TestFirstOpenOverTheWire(t *testing.T) {
	s := serve(t, "/", built(t), gzipped)
	p := newPage(t)
	var total float64
	err := chromedp.Listen(p.ctx, func(ev any) {
		if ev, ok := ev.(*network.EventLoadingFinished); ok {
			p.mu.Lock()
			total += ev.EncodedDataLength
			p.mu.Unlock()
		}
	})
	if err != nil {
		t.Fatal(err)
	}
	p.open(s.address)
	p.wait("the first screen", drawn)
	p.mu.Lock()
	defer p.mu.Unlock()
	t.Logf("first open: %.0f bytes in %d requests", total, len(p.requests))
	if total == 0 || total > 150_000 {
		t.Errorf("first open takes %.0f bytes, at most 150000 are expected; asked for %v", total, p.requests)
	}
}

// gzipped sends pages, scripts and styles compressed.
func gzipped(h http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		rec := httptest.NewRecorder()
		h.ServeHTTP(rec, r)
		for k, v := range rec.Header() {
			w.Header()[k] = v
		}
		data := rec.Body.Bytes()
		if t := rec.Header().Get("Content-Type"); strings.HasPrefix(t, "text/") || strings.Contains(t, "svg") {
			var b bytes.Buffer
			z := gzip.NewWriter(&b)
			z.Write(data)
			z.Close()
			data = b.Bytes()
			w.Header().Set("Content-Encoding", "gzip")
		}
		w.WriteHeader(rec.Code)
		w.Write(data)
	})
}

// replace returns files with one that begins with prefix changed, unpacked and packed again if it
// is a .gz file.
func replace(t testing.TB, files []bundle.File, prefix string, change func([]byte) []byte) []bundle.File {
	t.Helper()
	for i, f := range files {
		if !strings.HasPrefix(f.Name, prefix) {
			continue
		}
		r, err := gzip.NewReader(bytes.NewReader(f.Data))
		if err != nil {
			t.Fatal(err)
		}
		raw, err := io.ReadAll(r)
		if err != nil {
			t.Fatal(err)
		}
		changed := change(raw)
		if bytes.Equal(changed, raw) {
			t.Fatalf("%s was not changed", f.Name)
		}
		var b bytes.Buffer
		z := gzip.NewWriter(&b)
		z.Write(changed)
		z.Close()
		files[i].Data = b.Bytes()
		return files
	}
	t.Fatalf("no file begins with %s", prefix)
	return nil
}

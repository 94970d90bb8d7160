package host

import (
	"net/http/httptest"
	"strings"
	"testing"

	"sutur/generator/internal/bundle"
)

func TestHost(t *testing.T) {
	var h Host
	get := func(method, path string) (int, string, string) {
		w := httptest.NewRecorder()
		h.ServeHTTP(w, httptest.NewRequest(method, path, nil))
		return w.Code, w.Header().Get("Content-Type"), w.Body.String()
	}
	if code, _, body := get("GET", "/"); code != 503 || !strings.Contains(body, "not built yet") {
		t.Errorf("before a build: %d %q", code, body)
	}
	h.Set([]bundle.File{{Name: "index.html", Data: []byte("home")}, {Name: "lessons/index.html", Data: []byte("list")},
		{Name: "data/s001.ab.bin.gz", Data: []byte{0x1f, 0x8b}}, {Name: "sw.js", Data: []byte("1")}})
	for _, c := range []struct {
		method, path string
		code         int
		kind, body   string
	}{
		{"GET", "/", 200, "text/html; charset=utf-8", "home"},
		{"GET", "/index.html", 200, "text/html; charset=utf-8", "home"},
		{"GET", "/lessons/", 200, "text/html; charset=utf-8", "list"},
		{"GET", "/data/s001.ab.bin.gz", 200, "application/gzip", "\x1f\x8b"},
		{"GET", "/sw.js", 200, "text/javascript; charset=utf-8", "1"},
		{"GET", "/../go.mod", 404, "text/plain; charset=utf-8", "../go.mod is not part of the site\n"},
		{"GET", "/lessons", 404, "text/plain; charset=utf-8", "lessons is not part of the site\n"},
		{"POST", "/", 405, "text/plain; charset=utf-8", "GET and HEAD are accepted\n"},
	} {
		if code, kind, body := get(c.method, c.path); code != c.code || kind != c.kind || body != c.body {
			t.Errorf("%s %s: got %d %q %q", c.method, c.path, code, kind, body)
		}
	}
}

// TestLoopback: only a request that names this machine is answered.
func TestLoopback(t *testing.T) {
	var h Host
	h.Set([]bundle.File{{Name: "index.html", Data: []byte("home")}})
	for _, c := range []struct {
		host string
		code int
	}{
		{"127.0.0.1", 200},
		{"127.0.0.1:8420", 200},
		{"127.8.9.10:80", 200},
		{"[::1]", 200},
		{"[::1]:8420", 200},
		{"localhost", 200},
		{"LocalHost.:8420", 200},
		{"sutur.localhost:8420", 200},
		{"", 421},
		{"example.org", 421},
		{"example.org:8420", 421},
		{"192.168.1.20:8420", 421},
		{"127.0.0.1.example.org", 421},
		{"localhost.example.org", 421},
		{"notlocalhost", 421},
		{"0.0.0.0:8420", 421},
	} {
		r := httptest.NewRequest("GET", "/", nil)
		r.Host = c.host
		w := httptest.NewRecorder()
		Loopback(&h).ServeHTTP(w, r)
		if w.Code != c.code || (w.Body.String() == "home") != (c.code == 200) {
			t.Errorf("%q: %d %q, want %d", c.host, w.Code, w.Body.String(), c.code)
		}
	}
}

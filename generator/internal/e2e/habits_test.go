package e2e

import (
	"bytes"
	"compress/gzip"
	"net/http"
	"net/http/httptest"
	"path"
	"slices"
	"strings"
	"testing"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/engine"
)

// What some static hosts do to files. Each gets the answer of a plain host and gives its own.
var habits = map[string]func(http.Handler) http.Handler{
	// .gz is declared as the encoding of what is in it, and the browser unpacks it.
	"gz as an encoding": answering(func(w http.ResponseWriter, r *http.Request, h http.Handler) {
		if path.Ext(r.URL.Path) == ".gz" {
			w.Header().Set("Content-Encoding", "gzip")
		}
		h.ServeHTTP(w, r)
	}),
	// Names come without .html, and index.html is the folder.
	"names without html": answering(func(w http.ResponseWriter, r *http.Request, h http.Handler) {
		dir, name := path.Split(r.URL.Path)
		switch {
		case name == "index.html":
			http.Redirect(w, r, dir, http.StatusMovedPermanently)
		case path.Ext(name) == ".html":
			http.Redirect(w, r, strings.TrimSuffix(r.URL.Path, ".html"), http.StatusPermanentRedirect)
		case name != "" && path.Ext(name) == "":
			r.URL.Path += ".html"
			h.ServeHTTP(w, r)
		default:
			h.ServeHTTP(w, r)
		}
	}),
	// No type is known but those of pages, scripts and styles, without which nothing runs anywhere.
	"types unknown": answering(func(w http.ResponseWriter, r *http.Request, h http.Handler) {
		ext := path.Ext(r.URL.Path)
		if ext == ".html" || ext == "" || ext == ".js" || ext == ".css" {
			h.ServeHTTP(w, r)
			return
		}
		h.ServeHTTP(&typed{w, "text/plain"}, r)
	}),
	// Everything is compressed on the way for whoever takes that.
	"compresses": answering(func(w http.ResponseWriter, r *http.Request, h http.Handler) {
		if !strings.Contains(r.Header.Get("Accept-Encoding"), "gzip") {
			h.ServeHTTP(w, r)
			return
		}
		rec := httptest.NewRecorder()
		h.ServeHTTP(rec, r)
		for k, v := range rec.Header() {
			w.Header()[k] = v
		}
		var b bytes.Buffer
		z := gzip.NewWriter(&b)
		z.Write(rec.Body.Bytes())
		z.Close()
		w.Header().Set("Content-Encoding", "gzip")
		w.Header().Del("Content-Length")
		w.WriteHeader(rec.Code)
		w.Write(b.Bytes())
	}),
	// A page stands in for whatever is missing, and is no error.
	"a page for what is missing": answering(func(w http.ResponseWriter, r *http.Request, h http.Handler) {
		rec := httptest.NewRecorder()
		h.ServeHTTP(rec, r)
		if rec.Code == http.StatusNotFound {
			w.Header().Set("Content-Type", "text/html")
			w.Write([]byte("<!doctype html><title>Nothing here</title>"))
			return
		}
		h.ServeHTTP(w, r)
	}),
}

func answering(f func(http.ResponseWriter, *http.Request, http.Handler)) func(http.Handler) http.Handler {
	return func(h http.Handler) http.Handler {
		return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) { f(w, r, h) })
	}
}

// typed answers with one media type, whatever the host says.
type typed struct {
	http.ResponseWriter
	is string
}

func (w *typed) WriteHeader(code int) {
	w.Header().Set("Content-Type", w.is)
	w.ResponseWriter.WriteHeader(code)
}

func (w *typed) Write(b []byte) (int, error) {
	w.Header().Set("Content-Type", w.is)
	return w.ResponseWriter.Write(b)
}

// TestHostHabits opens the site on hosts with habits, below a path: everything is kept, and with the
// host gone every file is the right one and a session can be done.
func TestHostHabits(t *testing.T) {
	files := built(t)
	for name, habit := range habits {
		t.Run(name, func(t *testing.T) {
			s := serve(t, "/a/b/", files, habit)
			p := newPage(t)
			p.open(s.address)
			p.wait("the first screen", drawn)
			p.wait("everything to be stored", kept)
			s.stop()
			rest := files
			if name == "gz as an encoding" { // what the browser has unpacked is kept so
				rest = slices.DeleteFunc(slices.Clone(files), func(f bundle.File) bool { return path.Ext(f.Name) == ".gz" })
			}
			if bad := p.wrongFiles(rest); len(bad) > 0 {
				t.Errorf("wrong are %v", bad)
			}
			p.begin(s.address, "")
			checkRecord(p, 1, session(p))
			p.open(s.address + "about.html")
			if h := p.text("h1"); h == "" {
				t.Error("a page shows nothing")
			}
		})
	}
}

// TestHostHabitsInEngines does a session on a host with all of these habits in every engine.
func TestHostHabitsInEngines(t *testing.T) {
	files := built(t)
	inEngines(t, func(t *testing.T, b engine.Browser) {
		s := serve(t, "/a/b/", files, habits["types unknown"], habits["gz as an encoding"], habits["names without html"])
		p := newTab(t, b)
		p.open(s.address + "lessons/index.html")
		p.wait("the lessons", `document.querySelector("h1")`)
		p.begin(s.address, "A")
		checkRecord(p, 1, session(p))
		p.calm()
	})
}

package e2e

import (
	"net/http"
	"net/http/httptest"
	"path"
	"strings"
	"sync"
	"testing"
	"time"

	"sutur/generator/internal/bundle"
)

// fault is a way in which a host or the line to it fails.
type fault string

// One file is harmed in one of these ways, or the host goes down when it is asked for.
const (
	missing fault = "missing" // 404
	cutOff  fault = "cut"     // half of it, as if it were all
	signIn  fault = "html"    // the sign-in page of a network, with status 200
	oneByte fault = "byte"    // one byte changed
	late    fault = "late"    // right, but after a while
	down    fault = "down"    // no answer, and none to anything after it
	stale   fault = "stale"   // that of the version before
)

var faults = []fault{missing, cutOff, signIn, oneByte, late, down}

const signInPage = "<!doctype html><html lang=\"en\"><title>Sign in</title><h1>Free network</h1><p>Please sign in to go on.</p>"

// harm is a habit of a server: it harms the files that it is told to.
type harm struct {
	mu    sync.Mutex
	files map[string]fault  // by name or pattern; "*" means every file
	old   map[string][]byte // the version before, for stale
	gone  bool
	met   int               // files harmed so far
	seen  func(name string) // called before every answer, without the lock
}

// harmed serves files with faults to be set later.
func harmed(t testing.TB, prefix string, files []bundle.File, habits ...func(http.Handler) http.Handler) (*server, *harm) {
	t.Helper()
	f := &harm{files: map[string]fault{}}
	s := serve(t, prefix, files, append(habits, func(h http.Handler) http.Handler {
		return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
			f.answer(h, strings.TrimPrefix(r.URL.Path, prefix), w, r)
		})
	})...)
	return s, f
}

// set harms one file from now on; no name heals everything.
func (f *harm) set(name string, how fault) {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.files, f.gone, f.met = map[string]fault{}, false, 0
	if name != "" {
		f.files[name] = how
	}
}

// right leaves one file right while a pattern harms it.
func (f *harm) right(name string) { f.also(name, "") }

// also harms one file more.
func (f *harm) also(name string, how fault) {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.files[name] = how
}

func (f *harm) count() int {
	f.mu.Lock()
	defer f.mu.Unlock()
	return f.met
}

// watch has seen called with the name of each file before it is answered, from several goroutines.
func (f *harm) watch(seen func(name string)) {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.seen = seen
}

// off takes the whole host away, or brings it back.
func (f *harm) off(gone bool) {
	f.mu.Lock()
	defer f.mu.Unlock()
	f.gone = gone
}

// find returns what is to be done to a file, and who watches.
func (f *harm) find(name string) (how fault, gone bool, seen func(name string)) {
	f.mu.Lock()
	defer f.mu.Unlock()
	if name == "" || strings.HasSuffix(name, "/") {
		name += "index.html"
	}
	for pattern, h := range f.files {
		if like, _ := path.Match(pattern, name); like || pattern == "*" {
			how = h
		}
	}
	if exact, ok := f.files[name]; ok {
		how = exact
	}
	if how == down {
		f.gone = true
	}
	if how != "" {
		f.met++
	}
	return how, f.gone, f.seen
}

func (f *harm) answer(h http.Handler, name string, w http.ResponseWriter, r *http.Request) {
	how, gone, seen := f.find(name)
	if seen != nil {
		seen(name)
	}
	if gone {
		panic(http.ErrAbortHandler) // closes the connection without an answer
	}
	rec := httptest.NewRecorder()
	h.ServeHTTP(rec, r)
	for k, v := range rec.Header() {
		w.Header()[k] = v
	}
	data := rec.Body.Bytes()
	switch how {
	case missing:
		http.Error(w, "not found", http.StatusNotFound)
		return
	case cutOff:
		data = data[:len(data)/2]
	case signIn:
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		data = []byte(signInPage)
	case oneByte:
		data = append([]byte(nil), data...)
		data[len(data)/2] ^= 1
	case stale:
		data = f.old[name]
	case late:
		time.Sleep(700 * time.Millisecond)
	}
	w.WriteHeader(rec.Code)
	w.Write(data)
}

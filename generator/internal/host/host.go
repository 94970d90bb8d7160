// Package host serves a built site from memory, as a plain static host would: for the serve command
// and for the tests that drive the site in a browser.
package host

import (
	"mime"
	"net/http"
	"path"
	"strings"
	"sync/atomic"

	"sutur/generator/internal/bundle"
)

// types of files whose extension systems name differently or not at all.
var types = map[string]string{
	".html":        "text/html; charset=utf-8",
	".css":         "text/css; charset=utf-8",
	".js":          "text/javascript; charset=utf-8",
	".svg":         "image/svg+xml",
	".png":         "image/png",
	".woff2":       "font/woff2",
	".gz":          "application/gzip",
	".txt":         "text/plain; charset=utf-8",
	".webmanifest": "application/manifest+json",
}

// Host is an http.Handler over the files of a site. Set may be called while it serves.
type Host struct {
	files atomic.Pointer[map[string][]byte]
}

// Set replaces the files. A name that ends in "index.html" is served for its folder too.
func (h *Host) Set(files []bundle.File) {
	m := make(map[string][]byte, len(files))
	for _, f := range files {
		m[f.Name] = f.Data
	}
	h.files.Store(&m)
}

// ServeHTTP answers GET and HEAD. Nothing is kept by the browser without asking again, so that a
// rebuilt site is seen at once.
func (h *Host) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	if r.Method != http.MethodGet && r.Method != http.MethodHead {
		w.Header().Set("Allow", "GET, HEAD")
		http.Error(w, "GET and HEAD are accepted", http.StatusMethodNotAllowed)
		return
	}
	name := strings.TrimPrefix(r.URL.Path, "/")
	if name == "" || strings.HasSuffix(name, "/") {
		name += "index.html"
	}
	files := h.files.Load()
	if files == nil {
		http.Error(w, "the site is not built yet", http.StatusServiceUnavailable)
		return
	}
	data, ok := (*files)[name]
	if !ok {
		http.Error(w, name+" is not part of the site", http.StatusNotFound)
		return
	}
	t, ok := types[path.Ext(name)]
	if !ok {
		t = mime.TypeByExtension(path.Ext(name))
	}
	head := w.Header()
	if t != "" {
		head.Set("Content-Type", t)
	}
	head.Set("Cache-Control", "no-cache")
	head.Set("X-Content-Type-Options", "nosniff")
	w.Write(data) // a reader that goes away is no error of ours
}

package e2e

import (
	"fmt"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"sutur/generator/internal/build"
	"sutur/generator/internal/bundle"
	"sutur/generator/internal/diag"
	"sutur/generator/internal/host"
)

// root is the project's folder.
const root = "../../.."

// siteFiles builds the site once for all tests.
var siteFiles = sync.OnceValues(func() ([]bundle.File, error) {
	abs, err := filepath.Abs(root)
	if err != nil {
		return nil, err
	}
	files, ds := build.Site(abs)
	if diag.HasError(ds) {
		diag.Print(os.Stderr, ds)
		return nil, fmt.Errorf("the site cannot be built: %d diagnostics above", len(ds))
	}
	return files, nil
})

// documentOf is an expression: the document of a page of the site, read without being shown. The
// pages' policy lets nothing but their own code make a document of a text.
func documentOf(name string) string {
	return fmt.Sprintf(`new Promise((ok, no) => {
		const x = new XMLHttpRequest();
		x.open("GET", %s);
		x.responseType = "document";
		x.onload = () => ok(x.response);
		x.onerror = no;
		x.send();
	})`, name)
}

// built is the site as a host has it.
func built(t testing.TB) []bundle.File {
	t.Helper()
	return hosted(allFiles(t))
}

// allFiles is the same with the one file, which stands beside it.
func allFiles(t testing.TB) []bundle.File {
	t.Helper()
	files, err := siteFiles()
	if err != nil {
		t.Fatal(err)
	}
	return slices.Clone(files)
}

// server is a static host that can be stopped and started again at the same address.
type server struct {
	t        testing.TB
	host     host.Host
	address  string // http://127.0.0.1:PORT/a/b/
	handler  http.Handler
	port     string
	listener net.Listener
	srv      *http.Server
	served   atomic.Int64 // requests answered
}

// serve serves files below prefix, such as "/" or "/a/b/", with the habits of some hosts around it.
func serve(t testing.TB, prefix string, files []bundle.File, habits ...func(http.Handler) http.Handler) *server {
	t.Helper()
	s := &server{t: t, port: "0"}
	s.host.Set(files)
	s.handler = http.StripPrefix(strings.TrimSuffix(prefix, "/"), http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		s.served.Add(1)
		s.host.ServeHTTP(w, r)
	}))
	for _, h := range habits {
		s.handler = h(s.handler)
	}
	s.start()
	s.address = "http://127.0.0.1:" + s.port + prefix
	t.Cleanup(s.stop)
	return s
}

func (s *server) start() {
	s.t.Helper()
	l, err := net.Listen("tcp", "127.0.0.1:"+s.port)
	if err != nil {
		s.t.Fatal(err)
	}
	_, s.port, _ = net.SplitHostPort(l.Addr().String())
	s.listener, s.srv = l, &http.Server{Handler: s.handler}
	go s.srv.Serve(l)
}

// stop closes the port and every connection.
func (s *server) stop() {
	s.listener.Close() // the server may not have taken it over yet
	s.srv.Close()
}

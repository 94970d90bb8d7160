package e2e

import (
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// tool returns the path of a test tool that npm has put below site-src.
func tool(t testing.TB, name string) string {
	t.Helper()
	p, err := filepath.Abs(filepath.Join(root, "site-src", "node_modules", filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(p); err != nil {
		t.Fatalf("%s is not there: make test installs it, and so does npm ci in site-src", name)
	}
	return p
}

// TestHTML runs an HTML validator (html-validate, its presets recommended and standard) over every
// page as it is served.
func TestHTML(t *testing.T) {
	dir, n := t.TempDir(), 0
	for _, f := range allFiles(t) {
		if path.Ext(f.Name) != ".html" {
			continue
		}
		to := filepath.Join(dir, filepath.FromSlash(f.Name))
		if err := os.MkdirAll(filepath.Dir(to), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(to, f.Data, 0o644); err != nil {
			t.Fatal(err)
		}
		n++
	}
	config, err := filepath.Abs(filepath.Join(root, "site-src", "htmlvalidate.json"))
	if err != nil {
		t.Fatal(err)
	}
	run := func(dir string) ([]byte, error) {
		return exec.Command("node", tool(t, "html-validate/bin/html-validate.mjs"), "--config", config, "--formatter", "text", dir).CombinedOutput()
	}
	if out, err := run(dir); err != nil {
		t.Errorf("%d pages, %v:\n%s", n, err, out)
	}
	if n < 40 {
		t.Errorf("only %d pages were seen", n)
	}
	// The validator is at work: it rejects a page with a fault.
	bad := t.TempDir()
	if err := os.WriteFile(filepath.Join(bad, "bad.html"), []byte("<!doctype html><html lang=en><title>x</title><p id=a><p id=a>"), 0o644); err != nil {
		t.Fatal(err)
	}
	if out, err := run(bad); err == nil || !strings.Contains(string(out), "no-dup-id") {
		t.Errorf("an id that comes twice is accepted: %v %s", err, out)
	}
}

var (
	elsewhere = regexp.MustCompile(`(?i)(?:[a-z][a-z0-9+.-]*:)?//[a-z0-9.-]+\.[a-z]{2,}[^\s"'<>)]*`)
	namespace = regexp.MustCompile(`^http://www\.w3\.org/(?:2000/svg|1999/xlink|1999/xhtml)$`)
)

// TestNoOtherHost reads every file of text: none names an address on another host. Licence texts
// may, and so may the names of XML namespaces, which are no addresses.
func TestNoOtherHost(t *testing.T) {
	read := 0
	for _, f := range allFiles(t) {
		switch path.Ext(f.Name) {
		case ".html", ".css", ".js", ".json", ".webmanifest", ".svg":
		default:
			continue
		}
		read++
		for _, a := range elsewhere.FindAllString(string(f.Data), -1) {
			if !namespace.MatchString(a) {
				t.Errorf("%s names %s", f.Name, a)
			}
		}
	}
	if read < 45 {
		t.Errorf("only %d files were read", read)
	}
	for _, a := range []string{"https://example.org/x", "//example.org", "HTTP://a.example.org"} {
		if !elsewhere.MatchString(`src="` + a + `"`) {
			t.Errorf("%s is not seen", a)
		}
	}
}

package copies

import (
	"bytes"
	"compress/gzip"
	"context"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"sutur/generator/internal/bundle"
)

var files = []bundle.File{
	{Name: "about.html", Data: []byte("<p>about")},
	{Name: "assets/main.js", Data: []byte("1")},
	{Name: "data/s001.gz", Data: packed("text")},
	{Name: "index.html", Data: []byte("<p>index")},
}

func packed(s string) []byte {
	var b bytes.Buffer
	w := gzip.NewWriter(&b)
	w.Write([]byte(s))
	w.Close()
	return b.Bytes()
}

func listed(t *testing.T) []Listed {
	t.Helper()
	list, err := ParseList(List(files).Data)
	if err != nil || len(list) != len(files) {
		t.Fatalf("the list holds %d files (%v), want %d", len(list), err, len(files))
	}
	return list
}

// put writes the site with its list into a folder.
func put(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	for _, f := range append(slices.Clone(files), List(files)) {
		name := filepath.Join(dir, f.Name)
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, f.Data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

// TestSha256sum: the list is one that sha256sum checks, which nobody here wrote.
func TestSha256sum(t *testing.T) {
	tool, err := exec.LookPath("sha256sum")
	if err != nil {
		t.Skip("no sha256sum (GNU coreutils) on this machine")
	}
	dir := put(t)
	check := func() ([]byte, error) {
		c := exec.Command(tool, "--strict", "-c", ListName)
		c.Dir = dir
		return c.CombinedOutput()
	}
	if out, err := check(); err != nil {
		t.Errorf("sha256sum: %v\n%s", err, out)
	}
	if err := os.WriteFile(filepath.Join(dir, "index.html"), []byte("<p>other"), 0o644); err != nil {
		t.Fatal(err)
	}
	if out, err := check(); err == nil {
		t.Errorf("sha256sum finds nothing wrong:\n%s", out)
	}
}

func TestFolder(t *testing.T) {
	dir := put(t)
	list := listed(t)
	if got, err := Check(context.Background(), list, Folder(dir)); err != nil || len(got) > 0 {
		t.Errorf("a true copy: %v, %v", got, err)
	}
	os.WriteFile(filepath.Join(dir, "assets/main.js"), []byte("2"), 0o644)
	os.Remove(filepath.Join(dir, "about.html"))
	os.Remove(filepath.Join(dir, "index.html"))
	outside := filepath.Join(t.TempDir(), "index.html")
	os.WriteFile(outside, files[3].Data, 0o644)
	os.Symlink(outside, filepath.Join(dir, "index.html"))
	os.WriteFile(filepath.Join(dir, "more.txt"), nil, 0o644)
	os.WriteFile(filepath.Join(dir, ".hidden"), nil, 0o644)
	got, err := Check(context.Background(), list, Folder(dir))
	if err != nil {
		t.Fatal(err)
	}
	var words []string
	for _, p := range got {
		words = append(words, strings.Join(strings.Fields(p.String())[:2], " "))
	}
	if want := []string{"about.html is", "assets/main.js differs:", "index.html cannot"}; !slices.Equal(words, want) {
		t.Errorf("the copy: %q, want %q", got, want)
	}
	if extra, err := Folder(dir).Extra(list); err != nil || !slices.Equal(extra, []string{"more.txt"}) {
		t.Errorf("beside the site: %v, %v", extra, err)
	}
	if _, err := Check(context.Background(), list, Folder(filepath.Join(dir, "none"))); err == nil {
		t.Error("no error for a folder that is not there")
	}
}

// TestHost compares copies behind what hosts do: names without .html, a redirected index, .gz files
// declared as compressed, and other media types.
func TestHost(t *testing.T) {
	byName := map[string][]byte{}
	for _, f := range files {
		byName[f.Name] = f.Data
	}
	odd := http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		name := strings.TrimPrefix(r.URL.Path, "/below/")
		switch {
		case name == "index.html":
			http.Redirect(w, r, "/below/", http.StatusMovedPermanently)
			return
		case name == "":
			name = "index.html"
		case strings.HasSuffix(name, ".html"):
			http.Redirect(w, r, strings.TrimSuffix(r.URL.Path, ".html"), http.StatusFound)
			return
		case byName[name+".html"] != nil:
			name += ".html"
		}
		data, ok := byName[name]
		if !ok {
			http.NotFound(w, r)
			return
		}
		w.Header().Set("Content-Type", "application/octet-stream")
		if strings.HasSuffix(name, ".gz") {
			w.Header().Set("Content-Encoding", "gzip")
		}
		w.Write(data)
	})
	s := httptest.NewServer(odd)
	defer s.Close()
	list := listed(t)
	for _, address := range []string{s.URL + "/below", s.URL + "/below/", s.URL + "/below/index.html?x#/today"} {
		h, err := NewHost(address)
		if err != nil {
			t.Fatal(err)
		}
		if got, err := Check(context.Background(), list, h); err != nil || len(got) > 0 {
			t.Errorf("%s: %v, %v", address, got, err)
		}
	}
	delete(byName, "data/s001.gz")
	byName["about.html"] = []byte("<p>about <script>")
	h, _ := NewHost(s.URL + "/below/")
	got, err := Check(context.Background(), list, h)
	if err != nil || len(got) != 2 || got[0].Name != "about.html" || got[1] != (Problem{"data/s001.gz", "is missing"}) {
		t.Errorf("an altered copy: %v, %v", got, err)
	}
	s.Close()
	if _, err := Check(context.Background(), list, h); err == nil {
		t.Error("no error for a host that does not answer")
	}
	for _, bad := range []string{"", "sutur.example", "ftp://host/", "http://", "http://%zz/", "file:///tmp"} {
		if _, err := NewHost(bad); err == nil {
			t.Errorf("%q is taken for an address", bad)
		}
	}
}

var badLists = []string{
	"",
	"\n",
	"zz  index.html\n",
	strings.Repeat("0", 64) + " index.html\n",
	strings.Repeat("0", 64) + "  ../index.html\n",
	strings.Repeat("0", 64) + "  /etc/passwd\n",
	strings.Repeat("0", 64) + "  a?b\n",
	strings.Repeat(strings.Repeat("0", 64)+"  a\n", 2),
}

func TestParseList(t *testing.T) {
	for _, bad := range badLists {
		if list, err := ParseList([]byte(bad)); err == nil {
			t.Errorf("%q is taken for %v", bad, list)
		}
	}
}

func FuzzParseList(f *testing.F) {
	for _, bad := range badLists {
		f.Add([]byte(bad))
	}
	f.Add(List(files).Data)
	f.Fuzz(func(t *testing.T, data []byte) {
		list, err := ParseList(data)
		if err != nil {
			return
		}
		for i, l := range list {
			if !filepath.IsLocal(l.Name) || i > 0 && list[i-1].Name >= l.Name {
				t.Errorf("name %q of %q", l.Name, data)
			}
		}
	})
}

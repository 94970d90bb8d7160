package site

import (
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"sutur/generator/internal/bundle"
)

func built(pairs ...string) []bundle.File {
	files := []bundle.File{{Name: "index.html", Data: []byte("home")}, {Name: "sw.js", Data: []byte("1")}}
	for i := 0; i < len(pairs); i += 2 {
		files = append(files, bundle.File{Name: pairs[i], Data: []byte(pairs[i+1])})
	}
	return files
}

func check(t *testing.T, out string, want ...string) {
	t.Helper()
	files, err := read(out)
	if err != nil {
		t.Fatal(err)
	}
	if got := slices.Sorted(maps.Keys(files)); !slices.Equal(got, want) {
		t.Errorf("%s holds %v, want %v", out, got, want)
	}
	beside, err := os.ReadDir(filepath.Dir(out))
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range beside {
		if e.Name() != filepath.Base(out) {
			t.Errorf("%s is left beside the site", e.Name())
		}
	}
}

func TestWrite(t *testing.T) {
	out := filepath.Join(t.TempDir(), "dist")
	if changed, err := Write(out, built("data/a", "1", "gone", "x")); err != nil || !changed {
		t.Fatal(changed, err)
	}
	check(t, out, "data/a", "gone", "index.html", "sw.js")
	if changed, err := Write(out, built("data/a", "1", "gone", "x")); err != nil || changed {
		t.Errorf("the same files: changed %t, %v", changed, err)
	}
	if changed, err := Write(out, built("data/a", "2")); err != nil || !changed {
		t.Errorf("other files: changed %t, %v", changed, err)
	}
	check(t, out, "data/a", "index.html", "sw.js")
	if i, err := os.Stat(out); err != nil || i.Mode().Perm() != 0o755 {
		t.Errorf("the site's folder has mode %v", i.Mode())
	}
}

func TestWriteFails(t *testing.T) {
	out := filepath.Join(t.TempDir(), "dist")
	if _, err := Write(out, built("a", "1")); err != nil {
		t.Fatal(err)
	}
	// A name that is a file and a folder cannot be written.
	if _, err := Write(out, built("a", "1", "a/b", "2")); err == nil || !strings.Contains(err.Error(), "a/b") {
		t.Errorf("got %v", err)
	}
	check(t, out, "a", "index.html", "sw.js")
}

func TestWriteRefusesOtherFolders(t *testing.T) {
	out := filepath.Join(t.TempDir(), "letters")
	if err := os.MkdirAll(out, 0o755); err != nil {
		t.Fatal(err)
	}
	if _, err := Write(out, built()); err != nil {
		t.Errorf("an empty folder: %v", err)
	}
	if err := os.Remove(filepath.Join(out, "sw.js")); err != nil {
		t.Fatal(err)
	}
	if _, err := Write(out, built("a", "1")); err == nil || !strings.Contains(err.Error(), "is accepted") {
		t.Errorf("a folder of something else: %v", err)
	}
	check(t, out, "index.html")
}

func TestWriteThroughLink(t *testing.T) {
	dir := t.TempDir()
	real, link := filepath.Join(dir, "real", "dist"), filepath.Join(dir, "dist")
	if err := os.MkdirAll(real, 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(real, link); err != nil {
		t.Skip("this system has no symbolic links:", err)
	}
	if _, err := Write(link, built()); err != nil {
		t.Fatal(err)
	}
	if i, err := os.Lstat(link); err != nil || i.Mode()&os.ModeSymlink == 0 {
		t.Error("the link was replaced")
	}
	check(t, real, "index.html", "sw.js")
}

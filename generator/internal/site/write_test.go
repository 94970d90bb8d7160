package site

import (
	"errors"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"
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

// check looks for the files of a site, and for nothing beside it. The list need not be named.
func check(t *testing.T, out string, want ...string) {
	t.Helper()
	f, err := look(out)
	if err != nil {
		t.Fatal(err)
	}
	maps.Copy(f.foreign, f.own)
	delete(f.foreign, ListName)
	if got := slices.Sorted(maps.Keys(f.foreign)); !slices.Equal(got, want) {
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
	if err := os.Remove(filepath.Join(out, ListName)); err != nil { // without it nobody knows who wrote the rest
		t.Fatal(err)
	}
	if _, err := Write(out, built("a", "1")); err == nil || !strings.Contains(err.Error(), "is accepted") {
		t.Errorf("a folder of something else: %v", err)
	}
	check(t, out, "index.html", "sw.js")
}

// put writes files into dir; a name that ends in a slash makes a folder.
func put(t *testing.T, dir string, names ...string) {
	t.Helper()
	for _, n := range names {
		p := filepath.Join(dir, n)
		if err := os.MkdirAll(filepath.Dir(p), 0o755); err != nil {
			t.Fatal(err)
		}
		if strings.HasSuffix(n, "/") {
			if err := os.MkdirAll(p, 0o755); err != nil {
				t.Fatal(err)
			}
		} else if err := os.WriteFile(p, []byte("mine"), 0o600); err != nil {
			t.Fatal(err)
		}
	}
}

// TestWriteLeavesOthersThings: whatever somebody puts into a built site stays.
func TestWriteLeavesOthersThings(t *testing.T) {
	dir := t.TempDir()
	out, elsewhere := filepath.Join(dir, "dist"), filepath.Join(t.TempDir(), "photos")
	put(t, elsewhere, "data/a", "child.jpg")
	if _, err := Write(out, built("data/a", "1", "data/gone", "x")); err != nil {
		t.Fatal(err)
	}
	put(t, out, "CNAME", ".git/HEAD", ".git/refs/tags/", "data/notes.txt")
	for link, to := range map[string]string{"photos": elsewhere, "data/photo.jpg": filepath.Join(elsewhere, "child.jpg")} {
		if err := os.Symlink(to, filepath.Join(out, link)); err != nil {
			t.Skip("this system has no symbolic links:", err)
		}
	}
	if err := pipe(filepath.Join(out, "pipe")); err != nil {
		t.Skip("this system has no pipes:", err)
	}
	if _, err := Write(out, built("data/a", "2")); err != nil {
		t.Fatal(err)
	}
	check(t, out, ".git/HEAD", ".git/refs/tags", "CNAME", "data/a", "data/notes.txt", "data/photo.jpg", "index.html", "photos", "pipe", "sw.js")
	check(t, elsewhere, "child.jpg", "data/a")
	if data, err := os.ReadFile(filepath.Join(elsewhere, "data/a")); err != nil || string(data) != "mine" {
		t.Errorf("a file behind a link became %q, %v", data, err)
	}
	// Nothing is done twice.
	if changed, err := Write(out, built("data/a", "2")); err != nil || changed {
		t.Errorf("the same files: changed %t, %v", changed, err)
	}
}

// TestWriteRefusesToReplace: what somebody put where the site has a file of its own is named, and
// nothing changes.
func TestWriteRefusesToReplace(t *testing.T) {
	for _, c := range []struct{ name, theirs, says string }{
		{"file", "data/b", "data/b is no file"},
		{"file where a folder comes", "assets", "assets is no file"},
		{"folder where a file comes", "about.html/x", "about.html/x stands where"},
	} {
		t.Run(c.name, func(t *testing.T) {
			out := filepath.Join(t.TempDir(), "dist")
			if _, err := Write(out, built("data/a", "1")); err != nil {
				t.Fatal(err)
			}
			put(t, out, c.theirs)
			_, err := Write(out, built("data/b", "1", "assets/x", "2", "about.html", "3"))
			if err == nil || !strings.Contains(err.Error(), c.says) {
				t.Errorf("got %v", err)
			}
			want := []string{c.theirs, "data/a", "index.html", "sw.js"}
			slices.Sort(want)
			check(t, out, want...)
		})
	}
}

// TestWriteAfterLink: a folder of the site that has become a link is not followed, neither to write
// nor to remove.
func TestWriteAfterLink(t *testing.T) {
	out, elsewhere := filepath.Join(t.TempDir(), "dist"), filepath.Join(t.TempDir(), "theirs")
	if _, err := Write(out, built("data/a", "1")); err != nil {
		t.Fatal(err)
	}
	if err := os.RemoveAll(filepath.Join(out, "data")); err != nil {
		t.Fatal(err)
	}
	put(t, elsewhere, "a")
	if err := os.Symlink(elsewhere, filepath.Join(out, "data")); err != nil {
		t.Skip("this system has no symbolic links:", err)
	}
	if _, err := Write(out, built("data/a", "2")); err == nil || !strings.Contains(err.Error(), "data is no file") {
		t.Errorf("got %v", err)
	}
	if _, err := Write(out, built()); err != nil {
		t.Error(err)
	}
	check(t, elsewhere, "a")
	check(t, out, "data", "index.html", "sw.js")
}

// TestWriteOverEarlier: a site from before there were lists is known by its worker.
func TestWriteOverEarlier(t *testing.T) {
	out := filepath.Join(t.TempDir(), "dist")
	put(t, out, "index.html", "assets/main.js", "CNAME")
	worker := `(()=>{var p={version:"0123456789abcdef",files:["assets/main.js","index.html"]}})()`
	if err := os.WriteFile(filepath.Join(out, "sw.js"), []byte(worker), 0o644); err != nil {
		t.Fatal(err)
	}
	if _, err := Write(out, built()); err != nil {
		t.Fatal(err)
	}
	check(t, out, "CNAME", "index.html", "sw.js")
}

// TestWriteSweeps: what runs that were stopped left is removed, what others put into it comes back,
// and a folder of a run that goes on stays.
func TestWriteSweeps(t *testing.T) {
	dir := t.TempDir()
	out := filepath.Join(dir, "dist")
	site := func(name string, files ...string) {
		t.Helper()
		p := filepath.Join(dir, name)
		if err := os.Mkdir(p, 0o755); err != nil {
			t.Fatal(err)
		}
		if err := fill(p, built(files...)); err != nil {
			t.Fatal(err)
		}
	}
	const nobody = "999999999" // larger than any process number
	site(".dist.new-p"+nobody+"-1", "data/a", "1")
	if err := os.Remove(filepath.Join(dir, ".dist.new-p"+nobody+"-1", "sw.js")); err != nil { // half written
		t.Fatal(err)
	}
	put(t, dir, ".dist.new-p"+nobody+"-2/", ".dist.new-123/index.html", ".dist.new-123/assets/main.js", ".dist.new-photos/child.jpg")
	// Stopped between the two renames of a system that cannot exchange folders.
	site(".dist.new-p"+nobody+"-3-old", "data/old", "1")
	put(t, dir, ".dist.new-p"+nobody+"-3-old/CNAME")
	mine := ".dist.new-p" + strconv.Itoa(os.Getppid()) + "-4" // of a process that runs
	site(mine)
	if err := sweep(out); err != nil {
		t.Fatal(err)
	}
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, e := range entries {
		names = append(names, e.Name())
	}
	if want := []string{".dist.new-p" + strconv.Itoa(os.Getppid()) + "-4", ".dist.new-photos", "dist"}; !slices.Equal(names, want) {
		t.Errorf("left are %v, want %v", names, want)
	}
	for _, n := range []string{"CNAME", "data/old", "sw.js"} {
		if _, err := os.Lstat(filepath.Join(out, n)); err != nil {
			t.Error(err)
		}
	}
}

// TestAlwaysOne: at every moment there is a whole site, so that a run may be killed at any.
func TestAlwaysOne(t *testing.T) {
	dir := t.TempDir()
	out := filepath.Join(dir, "dist")
	put(t, dir, "a/", "b/")
	if err := exchange(filepath.Join(dir, "a"), filepath.Join(dir, "b")); errors.Is(err, errors.ErrUnsupported) {
		t.Skip("this system cannot exchange folders")
	}
	if _, err := Write(out, built("n", "0")); err != nil {
		t.Fatal(err)
	}
	done := make(chan error)
	go func() {
		for i := range 300 {
			if _, err := Write(out, built("n", strconv.Itoa(i))); err != nil {
				done <- err
				return
			}
		}
		done <- nil
	}()
	looks := 0
	for {
		select {
		case err := <-done:
			if err != nil || looks < 100 {
				t.Errorf("%v after %d looks", err, looks)
			}
			return
		default:
			looks++
			if _, err := os.Lstat(filepath.Join(out, "index.html")); err != nil {
				t.Fatalf("look %d: %v", looks, err)
			}
		}
	}
}

// TestInTurn: what is done where two folders cannot be exchanged.
func TestInTurn(t *testing.T) {
	dir := t.TempDir()
	put(t, dir, "a/new", "b/old")
	away, err := inTurn(filepath.Join(dir, "a"), filepath.Join(dir, "b"))
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range []string{filepath.Join(away, "old"), filepath.Join(dir, "b", "new")} {
		if _, err := os.Lstat(p); err != nil {
			t.Error(err)
		}
	}
	if away, err = inTurn(filepath.Join(dir, "none"), filepath.Join(dir, "b")); err == nil {
		t.Error("a folder that is not there was moved into place")
	}
	if _, err := os.Lstat(filepath.Join(dir, "b", "new")); err != nil {
		t.Error(err)
	}
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
	if err := os.RemoveAll(real); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(real, nil, 0o644); err != nil {
		t.Fatal(err)
	}
	if _, err := Write(link, built()); err == nil || !strings.Contains(err.Error(), "is no folder") {
		t.Errorf("a file in place of the folder: %v", err)
	}
}

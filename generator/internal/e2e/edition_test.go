package e2e

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"sutur/generator/internal/build"
	"sutur/generator/internal/bundle"
	"sutur/generator/internal/diag"
)

// change is one edit of a source file, the first place of old becoming new. A file without an old
// text is a new one.
type change struct{ file, old, new string }

// onePage makes a version that differs in one page.
var onePage = []change{{"site-src/pages/about.html", "<h1>About Sutur</h1>", "<h1>A newer page</h1>"}}

// everyKind makes version n, which differs in a file of every kind: pages, both scripts and a part
// they share, the style sheet, the catalogue. The page tells its version in data-edition, and that
// of the shared part in data-chunk.
func everyKind(n int) []change {
	mark := func(name string) string { return fmt.Sprintf("document.documentElement.dataset.%s = '%d';\n", name, n) }
	return []change{
		{"site-src/pages/about.html", "<h1>About Sutur</h1>", fmt.Sprintf("<h1>About Sutur %d</h1>", n)},
		{"site-src/app/main.ts", "early();\n", "early();\n" + mark("edition")},
		{"site-src/app/lesson.ts", "early();\n", "early();\n" + mark("edition")},
		{"site-src/app/i18n.ts", "const table: ", mark("chunk") + "const table: "},
		{"site-src/style/base.css", "body {", fmt.Sprintf(".edition-%d { color: red; }\nbody {", n)},
		{"rules-content/rules/noon.json", `"short": "`, fmt.Sprintf(`"short": "Version %d. `, n)},
	}
}

var editions struct {
	sync.Mutex
	made map[string][]bundle.File
}

// edition builds the project as it would be after the changes, as a host has it; each once.
func edition(t testing.TB, changes []change) []bundle.File {
	t.Helper()
	return hosted(wholeEdition(t, changes))
}

// wholeEdition is the same with the one file, which stands beside it.
func wholeEdition(t testing.TB, changes []change) []bundle.File {
	t.Helper()
	editions.Lock()
	defer editions.Unlock()
	key := fmt.Sprint(changes)
	if files, ok := editions.made[key]; ok {
		return append([]bundle.File(nil), files...)
	}
	dir := changedProject(t, changes)
	files, ds := build.Site(dir)
	if diag.HasError(ds) {
		var b strings.Builder
		diag.Print(&b, ds)
		t.Fatalf("the changed project does not build:\n%s", b.String())
	}
	if editions.made == nil {
		editions.made = map[string][]bundle.File{}
	}
	editions.made[key] = files
	return append([]bundle.File(nil), files...)
}

// changedProject copies what the project is built of, and the folders named besides, and makes the
// changes there.
func changedProject(t testing.TB, changes []change, besides ...string) string {
	t.Helper()
	dir := t.TempDir()
	dirs := []string{"rules-content", "LICENSES", "site-src/app", "site-src/fonts", "site-src/icons", "site-src/pages", "site-src/strings", "site-src/style", "site-src/vendor"}
	for _, d := range append(dirs, besides...) {
		if err := os.CopyFS(filepath.Join(dir, d), os.DirFS(filepath.Join(root, d))); err != nil {
			t.Fatal(err)
		}
	}
	log, err := os.ReadFile(filepath.Join(root, build.LogFile))
	if err != nil {
		t.Fatal(err)
	}
	putFile(t, filepath.Join(dir, build.LogFile), string(log))
	for _, c := range changes {
		name := filepath.Join(dir, c.file)
		data, err := os.ReadFile(name)
		if (err == nil) != (c.old != "") || !bytes.Contains(data, []byte(c.old)) {
			t.Fatalf("%s: %v; it should hold %q", c.file, err, c.old)
		}
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, bytes.Replace(data, []byte(c.old), []byte(c.new), 1), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

package golden

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// TestCheck: what is equal passes, the first difference is named, and the variable writes.
func TestCheck(t *testing.T) {
	file := filepath.Join(t.TempDir(), "x")
	t.Setenv("UPDATE_GOLDEN", "1")
	Check(t, file, []byte("one\ntwo\n"))
	t.Setenv("UPDATE_GOLDEN", "")
	Check(t, file, []byte("one\ntwo\n"))
	for got, want := range map[string]string{
		"one\nzwei\n": "from line 2 on:\n got zwei\nwant two\n", "one": "from line 2 on:\n got (the end)\nwant two\n",
	} {
		r := &recorder{TB: t}
		if Check(r, file, []byte(got)); !strings.Contains(r.said, want) {
			t.Errorf("%q: %q", got, r.said)
		}
	}
}

// recorder keeps what a failing test would say.
type recorder struct {
	testing.TB
	said string
}

func (r *recorder) Helper()                           {}
func (r *recorder) Errorf(format string, args ...any) { r.said += fmt.Sprintf(format, args...) }

// TestEveryFileIsRead: each file of a testdata folder is named in a string of a test beside that
// folder. Seeds of fuzz targets are read by the go command.
func TestEveryFileIsRead(t *testing.T) {
	root := os.DirFS("..")
	n := 0
	err := fs.WalkDir(root, ".", func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.Contains(p, "/testdata/") || strings.Contains(p, "/testdata/fuzz/") {
			return err
		}
		n++
		dir, _, _ := strings.Cut(p, "/testdata/")
		if !named(t, filepath.Join("..", dir), path.Base(p)) {
			t.Errorf("no test of %s reads %s", dir, p)
		}
		return nil
	})
	if err != nil || n == 0 {
		t.Fatal(n, err)
	}
}

// named reports whether a test file of dir has a string that ends in name.
func named(t *testing.T, dir, name string) (found bool) {
	files, err := filepath.Glob(filepath.Join(dir, "*_test.go"))
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range files {
		tree, err := parser.ParseFile(token.NewFileSet(), f, nil, parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(tree, func(n ast.Node) bool {
			if l, ok := n.(*ast.BasicLit); ok && l.Kind == token.STRING {
				s, err := strconv.Unquote(l.Value)
				found = found || err == nil && strings.HasSuffix(s, name)
			}
			return !found
		})
	}
	return found
}

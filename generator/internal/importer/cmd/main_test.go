package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestRun: bad input is one line and leaves the folder as it was.
func TestRun(t *testing.T) {
	dir := t.TempDir()
	file := func(name, data string) string {
		t.Helper()
		p := filepath.Join(dir, name)
		if err := os.WriteFile(p, []byte(data), 0o644); err != nil {
			t.Fatal(err)
		}
		return p
	}
	a, b, numbers := file("a.json", "[]"), file("b.json", "[]"), file("n.ts", "")
	text, bare := filepath.Join(dir, "text"), filepath.Join(dir, "bare")
	for _, d := range []string{text, bare} {
		if err := os.Mkdir(d, 0o755); err != nil {
			t.Fatal(err)
		}
	}
	file("text/corrections.json", "[]")
	for _, c := range []struct {
		name string
		args []string
		code int
		says string
	}{
		{"no arguments", nil, 2, "four arguments are expected"},
		{"one too many", []string{a, b, numbers, text, "x"}, 2, "four arguments are expected"},
		{"no such source", []string{filepath.Join(dir, "gone"), b, numbers, text}, 2, "gone"},
		{"no corrections", []string{a, b, numbers, bare}, 2, "corrections.json"},
		{"not the reviewed text", []string{a, b, numbers, text}, 1, "text A has SHA-256"},
	} {
		var out, errs bytes.Buffer
		if code := run(c.args, &out, &errs); code != c.code || out.Len() > 0 || strings.Count(errs.String(), "\n") != 1 || !strings.Contains(errs.String(), c.says) {
			t.Errorf("%s: exit %d, %q, %q", c.name, code, out.String(), errs.String())
		}
	}
	if files, err := os.ReadDir(text); err != nil || len(files) != 1 {
		t.Errorf("the folder holds %v, %v", files, err)
	}
}

// Package golden holds what tests find against files that were looked at once and are kept, so that
// a change of results is seen. UPDATE_GOLDEN=1 in the environment writes them all anew.
package golden

import (
	"bytes"
	"os"
	"testing"
)

// Check fails the test where got is not what the file holds, and names the first line that differs.
func Check(t testing.TB, file string, got []byte) {
	t.Helper()
	if os.Getenv("UPDATE_GOLDEN") != "" {
		if err := os.WriteFile(file, got, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if bytes.Equal(got, want) {
		return
	}
	g, w := bytes.Split(got, []byte("\n")), bytes.Split(want, []byte("\n"))
	n := 0
	for n < len(g) && n < len(w) && bytes.Equal(g[n], w[n]) {
		n++
	}
	t.Errorf("%s differs from line %d on:\n got %s\nwant %s\nLook at what changed, then run with UPDATE_GOLDEN=1", file, n+1, line(g, n), line(w, n))
}

// line is line i, cut to what a reader can take in.
func line(lines [][]byte, i int) []byte {
	if i >= len(lines) {
		return []byte("(the end)")
	}
	return lines[i][:min(len(lines[i]), 300)]
}

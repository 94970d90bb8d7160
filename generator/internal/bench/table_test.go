package bench

import (
	"context"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestPrint(t *testing.T) {
	var b strings.Builder
	err := Print(&b, []string{"bytes", "phone"}, [][]Row{
		{{What: "first open", Unit: "bytes", Median: 143923, Most: 150000, Note: "0.54 times"}},
		{
			{What: "tap", Unit: "ms", Median: 61.27, Worst: 102, Runs: 20, Most: 100, Whole: true},
			{What: "rank", Unit: "ms", Median: 4.781, Worst: 193, Runs: 100, Most: 50},
			{What: "hour", Failed: errors.New("no browser:\n  none found")},
		},
	})
	if err != nil {
		t.Fatal(err)
	}
	const want = `what         median  worst  unit   runs  at most           note
BYTES
first open  143,923         bytes        150,000      met  0.54 times
PHONE
tap            61.3    102  ms       20      100  NOT MET
rank           4.78    193  ms      100       50      met
hour                                               FAILED  no browser: none found
`
	if got := b.String(); got != want {
		t.Errorf("got\n%swant\n%s", got, want)
	}
}

func TestFigure(t *testing.T) {
	for x, want := range map[float64]string{0: "0", 4: "4", 4.781: "4.78", 61.27: "61.3", 119.7: "120", 1978.4: "1,978", 1000000: "1,000,000", -12345: "-12,345", 9.999: "10.00"} {
		if got := figure(x); got != want {
			t.Errorf("%v is %s, want %s", x, got, want)
		}
	}
}

// TestFails: what cannot be measured stands in the table, the other rows too, and Run fails.
func TestFails(t *testing.T) {
	old := Stages
	defer func() { Stages = old }()
	Stages = []Stage{
		{"one", func(*run) []Row { return failedRow("gone", errors.New("no program")) }},
		{"two", func(*run) []Row { return []Row{{What: "there", Unit: "ms", Median: 1}} }},
	}
	var b strings.Builder
	err := Run(context.Background(), ".", nil, &b, io.Discard)
	if err == nil || err.Error() != "not measured: 1 of the rows above" {
		t.Errorf("Run says %v", err)
	}
	for _, w := range []string{"gone", "FAILED  no program", "there", "load average"} {
		if !strings.Contains(b.String(), w) {
			t.Errorf("the table lacks %q:\n%s", w, b.String())
		}
	}
	b.Reset()
	if err := Run(context.Background(), ".", []string{"two"}, &b, io.Discard); err != nil || strings.Contains(b.String(), "gone") {
		t.Errorf("the second stage alone: %v\n%s", err, b.String())
	}
}

// TestPages: the other generator gets as many pages, each of the size of a lesson's source.
func TestPages(t *testing.T) {
	lessons, dir := t.TempDir(), t.TempDir()
	for name, n := range map[string]int{"a.md": 700, "b.md": 1500, "c.txt": 9} {
		if err := os.WriteFile(filepath.Join(lessons, name), make([]byte, n), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := writePages(dir, lessons, 5); err != nil {
		t.Fatal(err)
	}
	sizes := map[int]int{}
	err := walkFiles(os.DirFS(filepath.Join(dir, "content")), func(_ string, size int) { sizes[size]++ })
	if err != nil || sizes[700] != 3 || sizes[1500] != 2 || len(sizes) != 2 {
		t.Errorf("pages by size are %v, %v", sizes, err)
	}
	if err := writePages(dir, t.TempDir(), 5); err == nil {
		t.Error("a folder without lessons is taken")
	}
}

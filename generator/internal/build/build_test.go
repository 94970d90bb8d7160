package build

import (
	"bytes"
	"compress/gzip"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/diag"
	"sutur/generator/internal/rules"
	"sutur/generator/internal/site"
)

const here = "../../.."

func realSite(t testing.TB) []bundle.File {
	t.Helper()
	root, err := Root(here)
	if err != nil {
		t.Fatal(err)
	}
	files, ds := Site(root)
	if diag.HasError(ds) {
		var b strings.Builder
		diag.Print(&b, ds)
		t.Fatalf("the project does not build:\n%s", b.String())
	}
	return files
}

func TestRoot(t *testing.T) {
	want, err := filepath.Abs(here)
	if err != nil {
		t.Fatal(err)
	}
	for _, dir := range []string{here, ".", "testdata/none/at/all"} {
		if got, err := Root(dir); err != nil || got != want {
			t.Errorf("%s: got %s, %v", dir, got, err)
		}
	}
	if _, err := Root(t.TempDir()); err == nil || !strings.Contains(err.Error(), "is expected") {
		t.Errorf("outside: %v", err)
	}
}

// TestTooManyFamilies: one family more than can be told apart is one clear line, and nothing is
// made.
func TestTooManyFamilies(t *testing.T) {
	was := rules.Families
	defer func() { rules.Families = was }()
	rules.Families = append(slices.Clone(was), "thirteenth")
	root, err := Root(here)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := os.Stat(filepath.Join(root, rules.FamiliesFile)); err != nil {
		t.Error(err)
	}
	files, ds := Site(root)
	const want = "generator/internal/rules/rule.go: 13 families of rules, but colours and lines tell at most 12 apart; merge two of them"
	if files != nil || len(ds) != 1 || ds[0].String() != want || !diag.HasError(ds) {
		t.Errorf("%d files, %v; want %s", len(files), ds, want)
	}
}

// TestTwiceTheSame: a build is a function of its sources, on however many cores.
func TestTwiceTheSame(t *testing.T) {
	a := realSite(t)
	old := runtime.GOMAXPROCS(1)
	b := realSite(t)
	runtime.GOMAXPROCS(old)
	if len(a) != len(b) {
		t.Fatalf("%d and %d files", len(a), len(b))
	}
	for i := range a {
		if a[i].Name != b[i].Name || string(a[i].Data) != string(b[i].Data) {
			t.Errorf("%s and %s differ", a[i].Name, b[i].Name)
		}
	}
}

func TestBudgets(t *testing.T) {
	files := realSite(t)
	s := site.Measure(files)
	t.Logf("first open %d bytes, everything %d bytes over the wire", s.First, s.All)
	if s.First > site.BudgetFirst {
		t.Errorf("first open takes %d bytes over the wire, at most %d are expected", s.First, site.BudgetFirst)
	}
	if s.All > site.BudgetAll {
		t.Errorf("everything takes %d bytes over the wire, at most %d are expected", s.All, site.BudgetAll)
	}
	if one := len(oneFile(t, files)); one > site.BudgetOneFile {
		t.Errorf("the one file takes %d bytes, at most %d are expected", one, site.BudgetOneFile)
	}
	bare := bareText(t)
	t.Logf("text and events %d bytes, the text alone %d", s.Text, bare)
	if got := float64(s.Text) / float64(bare); got > site.BudgetText || got < 1 {
		t.Errorf("text and events take %.2f times the text alone, at most %v are expected", got, site.BudgetText)
	}
}

// bareText is the size in gzip form, at level 6, of the verses alone, each on a line.
func bareText(t *testing.T) int {
	t.Helper()
	text, err := Text(here)
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	w := gzip.NewWriter(&b)
	for _, v := range text.Verses {
		fmt.Fprintln(w, v.Text)
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Len()
}

// TestNoOtherHost: nothing in the site loads from an absolute address.
func TestNoOtherHost(t *testing.T) {
	loads := []string{`src="http`, `src="//`, `href="http`, `href="//`, `url(http`, `url("http`, `url(//`, `import("http`, `fetch("http`}
	for _, f := range realSite(t) {
		switch filepath.Ext(f.Name) {
		case ".html", ".css", ".js", ".svg", ".webmanifest":
			for _, l := range loads {
				if strings.Contains(string(f.Data), l) {
					t.Errorf("%s holds %s", f.Name, l)
				}
			}
		}
	}
}

// TestPolicy: every page, and the one that the worker carries, says right after its encoding that
// it loads from its own origin alone, runs nothing inline, and makes markup and scripts only of what
// its own policies let through.
func TestPolicy(t *testing.T) {
	const head = `<head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src 'self'; ` +
		`img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types sutur lit-html">`
	n := 0
	for _, f := range realSite(t) {
		if filepath.Ext(f.Name) != ".html" && f.Name != "sw.js" || f.Name == site.OneFile { // it has one of its own
			continue
		}
		n++
		if strings.Count(string(f.Data), head) != 1 {
			t.Errorf("%s: the policy does not begin the head", f.Name)
		}
	}
	if n < 40 {
		t.Errorf("only %d pages", n)
	}
}

func TestBadText(t *testing.T) {
	root := t.TempDir()
	text := filepath.Join(root, filepath.FromSlash(TextDir))
	if err := os.CopyFS(text, os.DirFS(filepath.Join(here, filepath.FromSlash(TextDir)))); err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(text, "quran.txt")
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	// One letter of the last verse is gone.
	if err := os.WriteFile(name, append(data[:len(data)-3], '\n'), 0o644); err != nil {
		t.Fatal(err)
	}
	files, ds := Site(root)
	if files != nil || len(ds) != 1 || !strings.Contains(ds[0].String(), "114:6") {
		t.Errorf("%d files, %v", len(files), ds)
	}
}

// BenchmarkBuild is a whole build without the writing, and what it makes.
func BenchmarkBuild(b *testing.B) {
	root, err := Root(here)
	if err != nil {
		b.Fatal(err)
	}
	var files []bundle.File
	for b.Loop() {
		files, _ = Site(root)
	}
	s := site.Measure(files)
	b.ReportMetric(float64(s.First), "first-open-bytes")
	b.ReportMetric(float64(s.All), "all-bytes")
	b.ReportMetric(float64(s.Text), "text-bytes")
}

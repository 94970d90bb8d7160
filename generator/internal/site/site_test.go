package site

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"encoding/base64"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"html"
	"io"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/colour"
	"sutur/generator/internal/diag"
	"sutur/generator/internal/lesson"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/plan"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

var realText = sync.OnceValues(func() (*mushaf.Text, error) {
	return mushaf.Load(os.DirFS("../../../rules-content/text"))
})

// oneEvent is an engine that gives every verse the same event.
type oneEvent struct{ e recite.Event }

func (o oneEvent) Verse(dst []recite.Event, v int) []recite.Event {
	o.e.Verse = int32(v)
	return append(dst, o.e)
}

var sample = map[string]string{
	"app/main.ts":              "console.log(1)",
	"app/lesson.ts":            "console.log(2)",
	"app/boot.ts":              "console.log(3)",
	"app/sw.ts":                "declare const __PRECACHE__: unknown; console.log(__PRECACHE__)",
	"style/main.css":           "@font-face{font-family:a;src:url(../fonts/a.woff2)}",
	"style/pages.css":          "p{margin:0}",
	"style/paper.css":          "p{margin:1px}",
	"style/later.css":          "p{margin:2px}",
	"style/shared.css":         "p{margin:3px}",
	"fonts/a.woff2":            "font",
	"icons/icon.svg":           `<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0L1 1"/></svg>`,
	"icons/touch-180.png":      "png",
	"pages/app.html":           `<!doctype html><html lang="en" data-catalogue="{{.Catalogue}}" data-sha="{{.CatalogueSHA}}"><head>{{template "policy"}}<title>{{.Title}}</title><link rel="stylesheet" href="{{.Style}}"><link rel="preload" href="{{.Font}}" as="font"><script defer src="{{.Script}}"></script></head><body></body></html>`,
	"pages/parts.html":         `{{define "policy"}}<meta http-equiv="Content-Security-Policy" content="default-src 'self'">{{end}}`,
	"pages/lost.html":          `<!doctype html><html lang="en"><head>{{template "policy"}}<title>Lost</title></head><body></body></html>`,
	"pages/about.html":         `<!doctype html><html lang="en"><head>{{template "policy"}}<title>{{.Title}}</title></head><body></body></html>`,
	"style/one-file.css":       "p{margin:4px}",
	"pages/one-file.html":      `<!doctype html><html lang="en"><head><meta http-equiv="Content-Security-Policy" content="{{.Inside.Policy}}"><title>{{.Title}}</title><link rel="icon" href="{{.Inside.Icon}}">{{.Inside.Styles}}</head><body>{{.Inside.Files}}{{.Inside.Scripts}}</body></html>`,
	"pages/lesson.html":        `<!doctype html><html lang="en"><head>{{template "policy"}}<title>{{.Title}}</title></head><body>{{with .Previous}}<a rel="prev" href="{{.Href}}">{{.Name}}</a>{{end}}{{.Lesson.Body}}<img src="{{.Asset "icons/icon.svg"}}" alt=""></body></html>`,
	"pages/lessons-index.html": `<!doctype html><html lang="en"><head>{{template "policy"}}<title>{{.Title}}</title></head><body>{{range .Lessons}}<a href="{{.Href}}">{{.Name}}</a>{{end}}</body></html>`,
}

// newSource returns a source with the real text and small files around it, some of them replaced.
func newSource(t *testing.T, replaced map[string]string) Source {
	t.Helper()
	text, err := realText()
	if err != nil {
		t.Fatal(err)
	}
	dir := filepath.Join(t.TempDir(), "site-src")
	for _, m := range []map[string]string{sample, replaced} {
		for name, data := range m {
			p := filepath.Join(dir, name)
			if err := os.MkdirAll(filepath.Dir(p), 0o755); err != nil {
				t.Fatal(err)
			}
			if name == "icons/touch-180.png" {
				png, err := os.ReadFile("../../../site-src/icons/touch-180.png")
				if err != nil {
					t.Fatal(err)
				}
				data = string(png)
			}
			if err := os.WriteFile(p, []byte(data), 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
	engine := func() Engine {
		return oneEvent{recite.Event{Rule: 5, Count: 2, When: 1, Before: true, Unwritten: true, CauseWord: -1, CauseLetter: -1, Detail: 6}}
	}
	return Source{
		Dir: dir, Text: text, Engine: engine,
		Passages: passage.Build(text, func() passage.Engine { return engine() }),
		Licences: fstest.MapFS{"MIT.txt": {Data: []byte("licence")}},
		Rules:    []rules.Rule{{ID: "noon-ikhfa", Name: "Ikhfa", Family: "noon", Counts: []int{2}}},
		Families: []colour.Family{{Name: "noon", Light: "#112233", Dark: "#ddeeff", Form: "wavy"}},
		CSS:      ":root{--c-noon:#123456}",
		Steps:    []plan.Step{{Unit: 0, Why: plan.Begins, Places: 7, Look: 2}, {Unit: 1, Why: plan.Builds, Places: 2, Look: 1, Sign: true}},
		Lessons: []lesson.Lesson{
			{ID: "noon-ikhfa", Name: "Ikhfa", Rules: []string{"noon-ikhfa"}, Kind: "lesson", HTML: "<p>One</p>"},
			{ID: "qalqalah", Name: "Qalqalah", Rules: []string{"qalqalah"}, Kind: "lesson", HTML: "<p>Two</p>"},
			{ID: "etiquette", Name: "Etiquette", Kind: "page", HTML: "<p>Three</p>"},
		},
	}
}

func mustMake(t *testing.T, s Source) map[string][]byte {
	t.Helper()
	files, ds := Make(s)
	if len(ds) > 0 {
		t.Fatal(ds)
	}
	m := map[string][]byte{}
	for _, f := range files {
		m[f.Name] = f.Data
	}
	return m
}

func unzip(t *testing.T, data []byte) []byte {
	t.Helper()
	r, err := gzip.NewReader(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	raw, err := io.ReadAll(r)
	if err != nil {
		t.Fatal(err)
	}
	return raw
}

func find(t *testing.T, files map[string][]byte, prefix string) string {
	t.Helper()
	for name := range files {
		if strings.HasPrefix(name, prefix) {
			return name
		}
	}
	t.Fatalf("no file begins with %s", prefix)
	return ""
}

func TestData(t *testing.T) {
	s := newSource(t, nil)
	files := mustMake(t, s)
	var c catalogue
	if err := json.Unmarshal(unzip(t, files[find(t, files, "data/catalogue.")]), &c); err != nil {
		t.Fatal(err)
	}
	if len(c.Surahs) != 114 || len(c.Juz) != 30 || len(c.Pages) != 604 || c.TextDigest != hex.EncodeToString(s.Text.Digest[:]) {
		t.Fatalf("%d surahs, %d juz, %d pages, digest %s", len(c.Surahs), len(c.Juz), len(c.Pages), c.TextDigest)
	}
	if c.Juz[29] != [2]int{78, 1} || c.Pages[603] != [2]int{112, 1} {
		t.Errorf("juz 30 begins at %v, page 604 at %v", c.Juz[29], c.Pages[603])
	}
	for prefix, sha := range map[string]string{"data/catalogue.": "", "data/passages.": c.PassageSHA} {
		sum := sha256.Sum256(unzip(t, files[find(t, files, prefix)]))
		want := base64.StdEncoding.EncodeToString(sum[:])
		if sha == "" {
			sha = html.UnescapeString(string(regexp.MustCompile(`data-sha="([^"]*)"`).FindSubmatch(files["index.html"])[1]))
		}
		if sha != want {
			t.Errorf("%s has the digest %s, want %s", prefix, sha, want)
		}
	}
	if r := c.Rules[0]; r.Lesson != "noon-ikhfa" || r.Needs == nil || r.Counts[0] != 2 {
		t.Errorf("rule %+v", r)
	}
	if l := c.Lessons; len(l) != 2 || l[1].ID != "qalqalah" || l[1].Why != plan.Builds || l[1].Look != 1 || !l[1].Sign || l[0].Rules[0] != "noon-ikhfa" {
		t.Errorf("lessons %+v", l)
	}
	for i, e := range c.Surahs {
		if su := s.Text.Surahs[i]; e.Number != su.Number || e.Count != su.Count || e.Arabic != su.Arabic {
			t.Errorf("surah %d is called %+v", su.Number, e)
		}
		sum := sha256.Sum256(unzip(t, files[find(t, files, fmt.Sprintf("data/s%03d.", i+1))]))
		if e.SHA != base64.StdEncoding.EncodeToString(sum[:]) {
			t.Errorf("surah %d: digest %s", i+1, e.SHA)
		}
		if name := fmt.Sprintf("data/s%03d.%x.bin.gz", i+1, sum[:5]); files[name] == nil {
			t.Errorf("there is no %s", name)
		}
	}
}

func TestSameSourceSameSite(t *testing.T) {
	a, b := mustMake(t, newSource(t, nil)), mustMake(t, newSource(t, nil))
	if len(a) != len(b) {
		t.Fatalf("%d and %d files", len(a), len(b))
	}
	for name, data := range a {
		if !bytes.Equal(data, b[name]) {
			t.Errorf("%s differs", name)
		}
	}
}

// TestPrecache: the worker names the list with its digest, and the list names every other file with
// the digests of what hosts may send for it.
func TestPrecache(t *testing.T) {
	files := mustMake(t, newSource(t, nil))
	sum := func(data []byte) []any {
		sum := sha256.Sum256(data)
		return []any{float64(len(data)), base64.StdEncoding.EncodeToString(sum[:])}
	}
	known := func(files map[string][]byte) (version string, list []any) {
		m := regexp.MustCompile(`\{version:"([0-9a-f]{16})",list:(\[[^\]]*\]),lost:\x60<!doctype html>[^\x60]+\x60\}`).FindSubmatch(files["sw.js"])
		if m == nil {
			t.Fatalf("no list in %s", files["sw.js"])
		}
		if err := json.Unmarshal(m[2], &list); err != nil {
			t.Fatal(err)
		}
		return string(m[1]), list
	}
	version, list := known(files)
	name := list[0].(string)
	if want := append([]any{name}, sum(files[name])...); !reflect.DeepEqual(list, want) {
		t.Errorf("the list is named as %v, want %v", list, want)
	}
	var rows [][]any
	if err := json.Unmarshal(files[name], &rows); err != nil {
		t.Fatal(err)
	}
	if len(rows) != len(files)-4 { // without itself, the worker, the one file and the list of digests
		t.Errorf("%d rows for %d files", len(rows), len(files))
	}
	for _, row := range rows {
		n := row[0].(string)
		want := append([]any{n}, sum(files[n])...)
		if strings.HasSuffix(n, ".gz") {
			want = append(want, sum(unzip(t, files[n]))...)
		}
		if files[n] == nil || n == "sw.js" || n == OneFile || n == name || !reflect.DeepEqual(row, want) {
			t.Errorf("the list holds %v, want %v", row, want)
		}
	}
	s := newSource(t, nil)
	s.Lessons[2].HTML = "<p>Changed</p>"
	if v, _ := known(mustMake(t, s)); v == version {
		t.Error("one changed page left the version as it was")
	}
}

func TestPages(t *testing.T) {
	files := mustMake(t, newSource(t, nil))
	style := find(t, files, "assets/style.")
	for name, want := range map[string][]string{
		"index.html":              {`href="` + style, `href="` + find(t, files, "assets/a."), `data-catalogue="` + find(t, files, "data/catalogue."), `<title>Sutur<`},
		"about.html":              {`<title>About Sutur<`},
		"lessons/index.html":      {`href="../lessons/noon-ikhfa.html"`, `>Qalqalah<`},
		"lessons/noon-ikhfa.html": {"<p>One</p>", `src="../` + find(t, files, "assets/icon."), `<title>Ikhfa · Sutur<`},
		"lessons/qalqalah.html":   {"<p>Two</p>", `rel="prev" href="../lessons/noon-ikhfa.html"`},
		"lessons/etiquette.html":  {"<p>Three</p>"},
		"manifest.webmanifest":    {`"start_url":"./"`, `"src":"` + find(t, files, "assets/icon.")},
		"licences/MIT.txt":        {"licence"},
	} {
		page := string(files[name])
		for _, w := range want {
			if !strings.Contains(page, w) {
				t.Errorf("%s: no %s in %s", name, w, page)
			}
		}
	}
	if strings.Contains(string(files["lessons/etiquette.html"]), `rel="prev"`) {
		t.Error("a page without a rule stands in the row of lessons")
	}
}

func TestMistakes(t *testing.T) {
	for _, c := range []struct{ name, file, data, want string }{
		{"field", "pages/about.html", "{{template \"policy\"}}\n{{.Nothing}}", "site-src/pages/about.html:2:3: "},
		{"syntax", "pages/lesson.html", "{{if}}", "site-src/pages/lesson.html:1: "},
		{"policy", "pages/app.html", "<p>", "site-src/pages/app.html: the page has no content security policy"},
		{"policy of the lost page", "pages/lost.html", "<p>", "site-src/pages/lost.html: the page has no content security policy"},
		{"asset", "pages/lesson.html", "{{template \"policy\"}}{{.Asset \"icons/gone.svg\"}}", "site-src/pages/lesson.html:1:24: "},
		{"script", "app/main.ts", "let = ;", "site-src/app/main.ts:1:"},
		{"worker", "app/sw.ts", "let = ;", "site-src/app/sw.ts:1:"},
		{"style", "style/main.css", "@import './gone.css';", "site-src/style/main.css:1:9"},
		{"icon", "icons/icon.png", "no png", "site-src/icons: icon.png: "},
	} {
		t.Run(c.name, func(t *testing.T) {
			files, ds := Make(newSource(t, map[string]string{c.file: c.data}))
			if files != nil || !diag.HasError(ds) {
				t.Fatalf("%d files, diagnostics %v", len(files), ds)
			}
			if !strings.HasPrefix(ds[0].String(), c.want) {
				t.Errorf("got %q, want a start of %q", ds[0], c.want)
			}
		})
	}
	s := newSource(t, nil)
	s.Licences = fstest.MapFS{}
	if files, ds := Make(s); files != nil || len(ds) != 1 || !strings.HasPrefix(ds[0].String(), "LICENSES: ") {
		t.Errorf("without licences: %d files, %v", len(files), ds)
	}
}

func TestMeasure(t *testing.T) {
	long := strings.Repeat("a", 10_000)
	files := []bundle.File{
		{Name: "about.html", Data: []byte(long)},
		{Name: "assets/a.1.woff2", Data: make([]byte, 500)},
		{Name: "assets/style.1.css", Data: []byte("url(a.1.woff2)")},
		{Name: "assets/chunk.1.js", Data: make([]byte, 10)},
		{Name: "assets/later.1.png", Data: make([]byte, 4000)},
		{Name: "assets/main.1.js", Data: []byte(`import{a}from"./chunk.1.js";import("./later.1.png")`)},
		{Name: "data/s001.1.bin.gz", Data: make([]byte, 700)},
		{Name: "index.html", Data: []byte(`<a href="about.html"><link href="assets/style.1.css"><script src="assets/main.1.js">`)},
	}
	got := Measure(files)
	if got.All < 5200 || got.All > 5700 || got.First < 500 || got.First > 900 || got.Text != 700 {
		t.Errorf("got %+v", got)
	}
}

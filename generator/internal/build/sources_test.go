package build

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"sutur/generator/internal/diag"
)

// TestBadSources: every mistake in a source is a diagnostic with its place, all are told at once,
// and there is no site.
func TestBadSources(t *testing.T) {
	type mistake struct{ file, old, new, want string }
	for _, c := range []struct {
		name     string
		mistakes []mistake
	}{
		{"bytes that are no text", []mistake{
			{"rules-content/rules/noon.json", `"short": "`, "\"short\": \"\xff", "rules-content/rules/noon.json:15:15: the byte 0xff is not UTF-8"},
			{"site-src/strings/en.json", `"close": "`, "\"close\": \"\xe9", "site-src/strings/en.json:"},
			{"site-src/pages/about.html", "<h1>", "<h1>\xc3(", "site-src/pages/about.html:9:11: the byte 0xc3 is not UTF-8"},
			{"site-src/style/base.css", "body {", "body { /* \xff */", "site-src/style/base.css:"},
			{"rules-content/lessons/qalqalah.md", "## ", "## \x00", "rules-content/lessons/qalqalah.md:"},
			{"site-src/app/main.ts", "early();", "early();\u0085", "site-src/app/main.ts:"},
			{"LICENSES/MIT.txt", "MIT", "MIT\x1b", "LICENSES/MIT.txt:1:4: the control character U+001B"},
		}},
		{"a string gone", []mistake{
			{"site-src/strings/en.json", `"update.take":`, `"update.token":`, `site-src/app/edition/keeping.ts:`},
			{"site-src/strings/later.json", `"zoom.close`, `"zoom.shut`, "site-src/app/screens/lines/zoom.ts:"},
			{"site-src/pages/parts.html", `<link rel="manifest"`, `<script src="https://example.org/x.js"></script><link rel="manifest"`, "site-src/pages/parts.html:32:3: something is loaded from another host"},
			{"site-src/pages/app.html", `<body>`, `<body><script src=//example.org/x.js></script>`, "site-src/pages/app.html:"},
			{"site-src/pages/about.html", `<h1>`, `<img alt="" src="http://example.org/x.png"><h1 onclick="x()">`, "site-src/pages/about.html:9:7: something is loaded from another host"},
			{"site-src/pages/lesson.html", `<article>`, `<script>alert(1)</script><style>p{}</style><article>`, "site-src/pages/lesson.html:12:7: a script within the page"},
			{"site-src/style/base.css", "body {", "p { background: url(https://example.org/x.png) } body {", "site-src/style/base.css:"},
		}},
		{"strings of no use", []mistake{
			{"site-src/strings/en.json", `"close":`, `"close": "x", "close":`, "site-src/strings/en.json:"},
			{"site-src/strings/en.json", `"update.take": "`, `"years": 7, "update.take": "`, "site-src/strings/en.json:"},
			{"site-src/strings/en.json", `"undo": "`, `"few": { "one": "x" }, "undo": "`, "site-src/strings/en.json:"},
		}},
		{"an order that is not that of the lessons", []mistake{
			{"rules-content/lessons/ghunnah.md", `[[lesson:noon-iqlab later]]`, `[[lesson:noon-iqlab earlier]]`, "rules-content/lessons/ghunnah.md:"},
		}},
		{"a digit of a page number", []mistake{
			{"rules-content/text/numbers.json", `[1,8,13`, `[1,8,14`, "rules-content/text/numbers.json is not the file that was imported"},
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			dir := t.TempDir()
			for _, d := range []string{"rules-content", LicenceDir, "site-src/app", "site-src/fonts", "site-src/icons", "site-src/pages", "site-src/strings", "site-src/style", "site-src/vendor"} {
				if err := os.CopyFS(filepath.Join(dir, d), os.DirFS(filepath.Join(here, d))); err != nil {
					t.Fatal(err)
				}
			}
			for _, m := range c.mistakes {
				name := filepath.Join(dir, m.file)
				data, err := os.ReadFile(name)
				if err != nil {
					t.Fatal(err)
				}
				n := 1
				if strings.HasSuffix(m.old, ".") { // a whole family
					n = -1
				}
				changed := strings.Replace(string(data), m.old, m.new, n)
				if changed == string(data) {
					t.Fatalf("%s does not hold %q", m.file, m.old)
				}
				if err := os.WriteFile(name, []byte(changed), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			files, ds := Site(dir)
			if files != nil || !diag.HasError(ds) || len(ds) < len(c.mistakes) {
				t.Errorf("%d files and %d diagnostics", len(files), len(ds))
			}
			var b strings.Builder
			diag.Print(&b, ds)
			for _, m := range c.mistakes {
				if !strings.Contains("\n"+b.String(), "\n"+m.want) {
					t.Errorf("%q is not found in\n%s", m.want, b.String())
				}
			}
		})
	}
}

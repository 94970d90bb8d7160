package bundle

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"sutur/generator/internal/diag"
)

// source writes files below a new folder named site-src and returns it.
func source(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "site-src")
	for name, data := range files {
		p := filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(p), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(p, []byte(data), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return dir
}

func TestScript(t *testing.T) {
	files := map[string]string{
		"app/main.ts":  "import { word } from './other';\nconst n: number = 1;\nconsole.log(word, n);",
		"app/other.ts": "export const word = 'س';",
	}
	out, ds := Script(source(t, files), ScriptSource)
	if len(ds) > 0 {
		t.Fatal(ds)
	}
	if !strings.HasPrefix(out.Name, "assets/main.") || !strings.HasSuffix(out.Name, ".js") || len(out.Files) != 1 {
		t.Fatalf("got %q and %d files", out.Name, len(out.Files))
	}
	if !bytes.Contains(out.Files[0].Data, []byte("س")) {
		t.Errorf("letters were escaped: %s", out.Files[0].Data)
	}
	if !bytes.HasPrefix(out.Files[0].Data, []byte("//# allFunctionsCalledOnLoad\n")) {
		t.Errorf("the browser is not asked to compile all of it: %s", out.Files[0].Data)
	}
	again, _ := Script(source(t, files), ScriptSource)
	if again.Name != out.Name || !bytes.Equal(again.Files[0].Data, out.Files[0].Data) {
		t.Error("the same sources in another folder gave another result")
	}
}

func TestScriptInParts(t *testing.T) {
	out, ds := Script(source(t, map[string]string{
		"app/main.ts":   "import { word } from './shared';\nconsole.log(word);\nvoid import('./later').then((m) => m.run());",
		"app/later.ts":  "import { word } from './shared';\nexport const run = () => console.log('later', word);",
		"app/shared.ts": "export const word = 'shared';",
	}), ScriptSource)
	if len(ds) > 0 {
		t.Fatal(ds)
	}
	if !strings.HasPrefix(out.Name, "assets/main.") || len(out.Files) != 3 {
		t.Fatalf("got %q and %d files", out.Name, len(out.Files))
	}
	for _, f := range out.Files {
		if f.Name == out.Name && (bytes.Contains(f.Data, []byte("later\",")) || !bytes.Contains(f.Data, []byte(`import("./later.`))) {
			t.Errorf("the part needed later is not apart: %s", f.Data)
		}
	}
}

// TestFirstOpenInOne: modules of the first open that different parts need too come in one file, and
// what only parts need does not come with them.
func TestFirstOpenInOne(t *testing.T) {
	out, ds := Script(source(t, map[string]string{
		"app/main.ts": "import { a } from './a';\nimport { b } from './b';\nconsole.log(a, b);\nvoid import('./one');\nvoid import('./two');",
		"app/one.ts":  "import { a } from './a';\nimport { c } from './c';\nconsole.log('one', a, c);",
		"app/two.ts":  "import { b } from './b';\nimport { c } from './c';\nconsole.log('two', b, c);",
		"app/a.ts":    "export const a = Math.random() + 'module a';",
		"app/b.ts":    "export const b = Math.random() + 'module b';",
		"app/c.ts":    "export const c = Math.random() + 'module c';",
	}), ScriptSource)
	if len(ds) > 0 {
		t.Fatal(ds)
	}
	for _, f := range out.Files {
		a, b, c := bytes.Contains(f.Data, []byte("module a")), bytes.Contains(f.Data, []byte("module b")), bytes.Contains(f.Data, []byte("module c"))
		if a != b || a && c {
			t.Errorf("%s has a: %t, b: %t, c: %t", f.Name, a, b, c)
		}
	}
}

func TestStyle(t *testing.T) {
	dir := source(t, map[string]string{
		"style/main.css":   `@import "./font.css"; body { color: red }`,
		"style/font.css":   `@font-face { font-family: a; src: url(../fonts/a.woff2) }`,
		"fonts/a.woff2":    "font",
		"style/unused.css": "p { color: blue }",
	})
	out, ds := Style(dir, StyleSource, "::highlight(f-noon) { color: var(--c-noon); text-decoration: underline wavy }")
	if len(ds) > 0 {
		t.Fatal(ds)
	}
	if len(out.Files) != 2 || !strings.HasPrefix(out.Files[0].Name, "assets/a.") || out.Files[1].Name != out.Name {
		t.Fatalf("got %+v", out)
	}
	css := string(out.Files[1].Data)
	for _, want := range []string{"url(./" + filepath.Base(out.Files[0].Name), "::highlight(f-noon)", "underline wavy"} {
		if !strings.Contains(strings.ReplaceAll(css, `"`, ""), want) {
			t.Errorf("%q is not in %s", want, css)
		}
	}
}

func TestWorker(t *testing.T) {
	dir := source(t, map[string]string{"app/sw.ts": "declare const __PRECACHE__: { version: string; list: unknown };\nconsole.log(__PRECACHE__.version, __PRECACHE__.list);"})
	// The digest of "abc" is the example of FIPS 180-4.
	f, ds := Worker(dir, Precache{Version: "v1", List: NewListed(File{"list.json", []byte("abc")}, nil)})
	if len(ds) > 0 {
		t.Fatal(ds)
	}
	js := string(f.Data)
	if f.Name != "sw.js" || !strings.Contains(js, `"list.json",3,"ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0="`) || strings.Contains(js, "__PRECACHE__") {
		t.Errorf("got %s: %s", f.Name, js)
	}
}

func TestMistakes(t *testing.T) {
	for _, c := range []struct {
		name, file, data, want string
		run                    func(dir string) []diag.Diagnostic
	}{
		{"script", "app/main.ts", "let a = 1;\nlet b = ;", "site-src/app/main.ts:2:9: ",
			func(dir string) []diag.Diagnostic { _, ds := Script(dir, ScriptSource); return ds }},
		{"import", "app/main.ts", "import './gone';", "site-src/app/main.ts:1:8: ",
			func(dir string) []diag.Diagnostic { _, ds := Script(dir, ScriptSource); return ds }},
		{"missing", "app/other.ts", "", "site-src: ",
			func(dir string) []diag.Diagnostic { _, ds := Script(dir, ScriptSource); return ds }},
		{"style", "style/main.css", "p { background: url(gone.png) }", "site-src/style/main.css:1:17: ",
			func(dir string) []diag.Diagnostic { _, ds := Style(dir, StyleSource, ""); return ds }},
		{"worker", "app/sw.ts", "let a = 1; let a = 2;", "site-src/app/sw.ts:1:",
			func(dir string) []diag.Diagnostic { _, ds := Worker(dir, Precache{}); return ds }},
	} {
		t.Run(c.name, func(t *testing.T) {
			ds := c.run(source(t, map[string]string{c.file: c.data}))
			if !diag.HasError(ds) {
				t.Fatalf("no error in %v", ds)
			}
			if got := ds[0].String(); !strings.HasPrefix(got, c.want) {
				t.Errorf("got %q, want a start of %q", got, c.want)
			}
		})
	}
}

func TestMinify(t *testing.T) {
	for _, c := range []struct{ name, in, want string }{
		{"a.html", "<!doctype html><html lang=\"en\"><body>\n\n<p class=\"ayah\">  a   b </p><!-- c --></body></html>",
			`<!doctype html><html lang="en"><body><p class="ayah">a b</p></body></html>`},
		{"a.html", "<p lang=\"ar\"><span>\u0644\u0651\u064e</span> <span>\u06e1\u0640\u0670</span></p>",
			"<p lang=\"ar\"><span>\u0644\u0651\u064e</span> <span>\u06e1\u0640\u0670</span></p>"},
		{"a.svg", `<svg xmlns="http://www.w3.org/2000/svg"> <!-- c --> <path d="M 0 0 L 10 10"/> </svg>`,
			`<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0 10 10"/></svg>`},
		{"a.json", "{ \"a\": [1, 2.50] }", `{"a":[1,2.50]}`},
		{"a.webmanifest", "{ \"name\": \"a b\" }", `{"name":"a b"}`},
		{"a.txt", "a  b", "a  b"},
	} {
		got, err := Minify(File{c.name, []byte(c.in)})
		if err != nil || string(got.Data) != c.want {
			t.Errorf("%s: got %s, %v, want %s", c.name, got.Data, err, c.want)
		}
	}
}

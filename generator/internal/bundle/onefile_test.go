package bundle

import (
	"bytes"
	"strings"
	"testing"
)

// TestWholeScript: all of it is in one script, with the modules of the one file in place of those of
// the site, whoever asks for them first, and strict as modules are.
func TestWholeScript(t *testing.T) {
	dir := source(t, map[string]string{
		"app/main.ts":   "import { a } from './a.ts'; console.log(a()); import('./later.ts').then((m) => console.log(m.c));",
		"app/a.ts":      "export const a = () => 'of the site';",
		"app/a.one.ts":  "import { b } from './b.ts'; export const a = () => `of the file ${b}`; export const own = 'own';",
		"app/b.ts":      "export const b = 'beside';",
		"app/later.ts":  "import { a } from './a.ts'; import { own } from './a.one.ts'; export const c = `later ${a()} ${own} </script>`;",
		"tsconfig.json": `{"compilerOptions":{"strict":true}}`,
	})
	var first []byte
	for range 20 {
		js, ds := WholeScript(dir, "./app/main.ts")
		if len(ds) > 0 {
			t.Fatal(ds)
		}
		if first == nil {
			first = js
		}
		if !bytes.Equal(js, first) {
			t.Fatalf("another script of the same sources:\n%s\n%s", first, js)
		}
	}
	js := string(first)
	for _, want := range []string{"of the file", "beside", "later", "own"} {
		if !strings.Contains(js, want) {
			t.Errorf("no %q in %s", want, js)
		}
	}
	for _, bad := range []string{"of the site", "import(", "</script"} {
		if strings.Contains(js, bad) {
			t.Errorf("%q in %s", bad, js)
		}
	}
	if !strings.HasPrefix(js, `"use strict";`) {
		t.Errorf("it is not strict: %.40s", js)
	}
	if _, ds := WholeScript(dir, "./app/gone.ts"); len(ds) == 0 {
		t.Error("a missing entry is not told of")
	}
}

// TestWholeStyle: fonts and pictures are within the sheet.
func TestWholeStyle(t *testing.T) {
	dir := source(t, map[string]string{
		"style/main.css": "@font-face{font-family:a;src:url(../fonts/a.woff2)}b{background:url(../icons/i.svg)}",
		"fonts/a.woff2":  "font",
		"icons/i.svg":    "<svg/>",
	})
	css, ds := WholeStyle(dir, StyleSource, ":root{--x:1}")
	if len(ds) > 0 {
		t.Fatal(ds)
	}
	for _, want := range []string{`url(data:font/woff2,font)`, `data:image/svg+xml,`, ":root{--x:1}"} {
		if !strings.Contains(string(css), want) {
			t.Errorf("no %s in %s", want, css)
		}
	}
}

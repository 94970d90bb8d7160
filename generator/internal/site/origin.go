package site

import (
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"

	"sutur/generator/internal/diag"
)

// strays are what the content policy of the pages would refuse in a reader's browser: it is better
// seen at the build.
var strays = []struct {
	dir, ext  string
	find      *regexp.Regexp
	found, do string
}{
	{pagesDir, ".html", regexp.MustCompile(`(?i)<(?:script|img|iframe|frame|object|embed|source|video|audio|track|input)\b[^>]*\s(?:src|srcset|data|poster)\s*=\s*["']?\s*(?:[a-z]+:)?//[^>]*>`),
		"something is loaded from another host", "put the file into site-src and name it by its field"},
	{pagesDir, ".html", regexp.MustCompile(`(?i)<link\b[^>]*\shref\s*=\s*["']?\s*(?:[a-z]+:)?//[^>]*>`),
		"something is loaded from another host", "put the file into site-src and name it by its field"},
	{pagesDir, ".html", regexp.MustCompile(`(?i)<form\b[^>]*\saction\s*=`),
		"a form that is sent somewhere", "nothing leaves the device; remove it"},
	{pagesDir, ".html", regexp.MustCompile(`(?i)<script(?:\s[^>]*)?>\s*[^<\s]`),
		"a script within the page", "put it into site-src/app"},
	{pagesDir, ".html", regexp.MustCompile(`(?i)<style\b`),
		"a style within the page", "put it into site-src/style"},
	{pagesDir, ".html", regexp.MustCompile(`(?i)<[a-z][^<>]*\s(?:on[a-z]+|style)\s*=`),
		"a handler or a style within an element", "put it into site-src/app or site-src/style"},
	{"style", ".css", regexp.MustCompile(`(?i)(?:url\(\s*["']?|@import\s+["'])(?:[a-z]+:)?//`),
		"something is loaded from another host", "put the file into site-src"},
}

// checkOrigins reports what pages and styles would load from other hosts, and what stands within a
// page that a page may not hold.
func checkOrigins(dir string) (ds []diag.Diagnostic) {
	for _, s := range strays {
		names, err := fs.Glob(os.DirFS(filepath.Join(dir, s.dir)), "*"+s.ext)
		if err != nil {
			panic(err) // the pattern is a constant
		}
		for _, n := range names {
			src, err := os.ReadFile(filepath.Join(dir, s.dir, n))
			if err != nil {
				ds = append(ds, diag.Diagnostic{File: path.Join("site-src", s.dir, n), Found: err.Error()})
			}
			for _, at := range s.find.FindAllIndex(src, -1) {
				ds = append(ds, placed(path.Join("site-src", s.dir, n), src, at[0], s.found, s.do))
			}
		}
	}
	return ds
}

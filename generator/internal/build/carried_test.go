package build

import (
	"bytes"
	"encoding/json"
	"fmt"
	"image/png"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"sutur/generator/internal/site"
)

// TestLicences: everything that is carried and is not ours has its licence in the site, word for
// word, and the page About leads to each licence that is there.
func TestLicences(t *testing.T) {
	files := map[string][]byte{}
	for _, f := range realSite(t) {
		files[f.Name] = f.Data
	}
	about := string(files["about.html"])
	linked := map[string]bool{}
	for _, m := range regexp.MustCompile(`href="?(licences/[^" >]+)`).FindAllStringSubmatch(about, -1) {
		linked[m[1]] = true
		if files[m[1]] == nil {
			t.Errorf("About leads to %s, which is not in the site", m[1])
		}
	}
	for name := range files {
		if strings.HasPrefix(name, "licences/") && !linked[name] {
			t.Errorf("About does not lead to %s", name)
		}
	}
	// in has the licence with these words, by the name that About has for what is carried.
	in := func(what string, licence []byte) {
		t.Helper()
		for name, data := range files {
			if linked[name] && bytes.Equal(data, licence) {
				if !strings.Contains(about, what) {
					t.Errorf("About does not name %s", what)
				}
				return
			}
		}
		t.Errorf("the licence of %s is not in the site", what)
	}
	var packages []struct{ Name, License string }
	data, err := os.ReadFile(filepath.Join(here, SourceDir, "vendor", "vendor.json"))
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, &packages); err != nil || len(packages) == 0 {
		t.Fatalf("vendor.json: %d packages, %v", len(packages), err)
	}
	known := map[string]bool{}
	for _, p := range packages {
		licence, err := os.ReadFile(filepath.Join(here, SourceDir, "vendor", p.Name, "LICENSE"))
		if err != nil {
			t.Error(err)
		}
		in(p.Name, licence)
		known[p.Name] = true
	}
	ofl, err := os.ReadFile(filepath.Join(here, SourceDir, "fonts", "OFL.txt"))
	if err != nil {
		t.Fatal(err)
	}
	in("Scheherazade New", ofl)
	for _, x := range carriedFiles(t) {
		if name, ok := strings.CutPrefix(x, "vendor/"); ok {
			owner, _, _ := strings.Cut(name, "/")
			if strings.HasPrefix(owner, "@") {
				owner = strings.Join(strings.SplitN(name, "/", 3)[:2], "/")
			}
			if !known[owner] {
				t.Errorf("%s is carried, and no package of vendor.json", x)
			}
		} else if !ours[path.Dir(x)] && !ours[strings.SplitN(x, "/", 2)[0]] && x != "fonts/OFL.txt" && x != "fonts/scheherazade-new-arabic-400-normal.woff2" {
			t.Errorf("%s: whose is it? A licence of it goes to LICENSES and is named on the page About", x)
		}
	}
}

// ours are the folders of site-src with files of our own.
var ours = map[string]bool{".": true, "app": true, "icons": true, "pages": true, "screenshots": true, "strings": true, "style": true, "test": true}

// carriedFiles lists the files of site-src that may become part of the site.
func carriedFiles(t *testing.T) (list []string) {
	t.Helper()
	src := os.DirFS(filepath.Join(here, SourceDir))
	err := fs.WalkDir(src, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() {
			if name == "node_modules" {
				return fs.SkipDir
			}
			return nil
		}
		if name != "vendor/take.mjs" && name != "vendor/vendor.json" {
			list = append(list, name)
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return list
}

// Screenshots are for a shop window: this many bytes each.
const mostOfScreenshot = 40_000

// TestScreenshots: each picture of the manifest is there, as large as the manifest says, of a shape
// that browsers take (the W3C's draft leaves it to them: Chromium takes sides of 320 to 3840 pixels,
// the longer at most 2.3 times the shorter, one shape a form; from memory), and not kept offline.
func TestScreenshots(t *testing.T) {
	files := realSite(t)
	of := map[string][]byte{}
	for _, f := range files {
		of[f.Name] = f.Data
	}
	var m struct {
		Screenshots []struct{ Src, Sizes, Type, Label, Form_factor string }
	}
	if err := json.Unmarshal(of["manifest.webmanifest"], &m); err != nil {
		t.Fatal(err)
	}
	if len(m.Screenshots) != len(site.Shots) {
		t.Errorf("%d screenshots, %d are listed: make screenshots takes them", len(m.Screenshots), len(site.Shots))
	}
	sizes := map[string]string{}
	for _, s := range m.Screenshots {
		c, err := png.DecodeConfig(bytes.NewReader(of[s.Src]))
		if err != nil {
			t.Errorf("%s: %v", s.Src, err)
			continue
		}
		short, long := min(c.Width, c.Height), max(c.Width, c.Height)
		if s.Sizes != fmt.Sprintf("%dx%d", c.Width, c.Height) || s.Type != "image/png" || s.Label == "" {
			t.Errorf("%s is %dx%d; the manifest says %+v", s.Src, c.Width, c.Height, s)
		}
		if short < 320 || long > 3840 || float64(long) > 2.3*float64(short) {
			t.Errorf("%s: %dx%d is taken by no browser", s.Src, c.Width, c.Height)
		}
		if wide := c.Width > c.Height; wide != (s.Form_factor == "wide") || !wide && s.Form_factor != "narrow" {
			t.Errorf("%s: %s is %q", s.Src, s.Sizes, s.Form_factor)
		}
		if was := sizes[s.Form_factor]; was != "" && was != s.Sizes {
			t.Errorf("%s: the others are %s", s.Src, was)
		}
		sizes[s.Form_factor] = s.Sizes
		if n := len(of[s.Src]); n > mostOfScreenshot {
			t.Errorf("%s has %d bytes, at most %d are expected", s.Src, n, mostOfScreenshot)
		}
	}
	if len(sizes) != 2 {
		t.Errorf("forms: %v", sizes)
	}
	for name, data := range of {
		if strings.HasPrefix(name, "assets/files.") && strings.Contains(string(data), "screenshots/") {
			t.Error("screenshots are kept offline")
		}
	}
}

// Package site makes the folder that a static host serves: pages, data files,
// the web manifest and the service worker with its list of everything. It is
// the last stage, and the only one that writes files.
//
// Make is a function from values to values: scripts and styles are bundled
// while the data of the surahs is encoded and compressed, then pages are made
// with the hashed names of both, then the service worker with the names of all
// files. Write puts the result in place of the old folder in one step, so that
// a reader of it sees the old site or the new one and never a half.
package site

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/colour"
	"sutur/generator/internal/diag"
	"sutur/generator/internal/lesson"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// Source is everything a site is made of.
type Source struct {
	Dir      string // absolute path of site-src
	Licences fs.FS  // licence files of what the site carries; they are published beside it
	Text     *mushaf.Text
	Engine   func() Engine // makes an engine for one goroutine
	Rules    []rules.Rule  // in the engine's order
	Families []colour.Family
	CSS      string          // the families' colours
	Lessons  []lesson.Lesson // in teaching order
	Passages *passage.Index
}

// Engine finds the events of verses, as *recite.Engine does.
type Engine interface {
	Verse(dst []recite.Event, v int) []recite.Event
}

// Make returns the files of the site sorted by name, or diagnostics with at
// least one error.
func Make(s Source) ([]bundle.File, []diag.Diagnostic) {
	var a app
	var wg sync.WaitGroup
	var script, style, lessonScript bundle.Output
	var scriptDiags, lessonDiags, styleDiags []diag.Diagnostic
	wg.Go(func() { script, scriptDiags = bundle.Script(s.Dir, bundle.ScriptSource) })
	wg.Go(func() { style, styleDiags = bundle.Style(s.Dir, s.CSS) })
	if exists(s.Dir, lessonSource) {
		wg.Go(func() { lessonScript, lessonDiags = bundle.Script(s.Dir, lessonSource) })
	}
	files, catalogueName, try := dataFiles(s)
	wg.Wait()
	ds := slices.Concat(scriptDiags, lessonDiags, styleDiags)

	files = slices.Concat(files, script.Files, style.Files, lessonScript.Files)
	a.script, a.style, a.lessonScript, a.catalogue = script.Name, style.Name, lessonScript.Name, catalogueName
	for _, f := range style.Files {
		if path.Ext(f.Name) == ".woff2" {
			a.font = f.Name
		}
	}
	icons, err := a.readIcons(s.Dir)
	if err != nil {
		ds = append(ds, diag.Diagnostic{File: "site-src/" + iconsDir, Found: err.Error()})
	}
	licences, err := readLicences(s.Licences)
	if err != nil {
		ds = append(ds, diag.Diagnostic{File: "LICENSES", Found: err.Error()})
	}
	files = slices.Concat(files, icons, licences)
	if diag.HasError(ds) {
		return nil, ds
	}
	pages, pageDiags := a.pages(s, try)
	ds = append(ds, pageDiags...)
	files = append(files, pages...)
	files = append(files, a.manifest())
	files = unique(files)

	worker, workerDiags := bundle.Worker(s.Dir, precache(files))
	ds = append(ds, workerDiags...)
	if diag.HasError(ds) {
		return nil, ds
	}
	return unique(append(files, worker)), ds
}

// lessonSource is the script of the lesson pages; there need not be one.
const lessonSource = "app/lesson.ts"

// precache lists files, sorted by name, with a version that is the digest of
// all names and contents.
func precache(files []bundle.File) bundle.Precache {
	var p bundle.Precache
	h := sha256.New()
	for _, f := range files {
		p.Files = append(p.Files, f.Name)
		sum := sha256.Sum256(f.Data)
		fmt.Fprintf(h, "%s\x00%x\n", f.Name, sum)
	}
	p.Version = hex.EncodeToString(h.Sum(nil)[:8])
	return p
}

// unique sorts files by name and drops repeats, such as a font that both the
// style and a page name.
func unique(files []bundle.File) []bundle.File {
	slices.SortFunc(files, func(a, b bundle.File) int { return cmp.Compare(a.Name, b.Name) })
	return slices.CompactFunc(files, func(a, b bundle.File) bool { return a.Name == b.Name })
}

// readLicences reads the licence files into the folder licences.
func readLicences(dir fs.FS) ([]bundle.File, error) {
	if dir == nil {
		return nil, nil
	}
	names, err := fs.Glob(dir, "*.txt")
	if err != nil {
		return nil, fmt.Errorf("list licences: %w", err)
	}
	if len(names) == 0 {
		return nil, errors.New("there is no licence file; the texts of all licences go there as NAME.txt")
	}
	var files []bundle.File
	for _, n := range names {
		data, err := fs.ReadFile(dir, n)
		if err != nil {
			return nil, fmt.Errorf("read a licence: %w", err)
		}
		files = append(files, bundle.File{Name: "licences/" + n, Data: data})
	}
	return files, nil
}

func exists(dir, name string) bool {
	_, err := os.Stat(filepath.Join(dir, filepath.FromSlash(name)))
	return err == nil
}

// hashedName puts the content's hash before the extension.
func hashedName(folder, name string, data []byte) string {
	ext := path.Ext(name)
	return folder + "/" + strings.TrimSuffix(path.Base(name), ext) + "." + hash(data) + ext
}

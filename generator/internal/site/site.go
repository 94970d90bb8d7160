// Package site makes the folder that a static host serves: pages, data files, the web manifest and
// the service worker with its list of everything. It is the last stage, and the only one that
// writes files.
//
// The one file is made of the same values, and is no part of the worker's list.
//
// Make is a function from values to values: scripts and styles are bundled while the data of the
// surahs is encoded and compressed, then pages are made with the hashed names of both, then the
// service worker with the names of all files. Write puts the result in place of the old folder in
// one step, so that a reader of it sees the old site or the new one and never a half.
package site

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
	"sync"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/colour"
	"sutur/generator/internal/copies"
	"sutur/generator/internal/diag"
	"sutur/generator/internal/lesson"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/plan"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// Source is everything a site is made of.
type Source struct {
	Dir      string // absolute path of site-src
	Log      string // path of the change log; empty for none
	Licences fs.FS  // licence files of what the site carries; they are published beside it
	Text     *mushaf.Text
	Engine   func() Engine  // makes an engine for one goroutine
	Rules    []rules.Rule   // in the engine's order
	Details  []rules.Detail // by the engine's number
	Groups   []rules.Group  // in the order in which they are shown
	Families []colour.Family
	CSS      string          // the families' colours
	Lessons  []lesson.Lesson // in teaching order, then pages in theirs
	Steps    []plan.Step     // why each lesson stands where it does
	Passages *passage.Index
}

// Engine finds the events of verses, as *recite.Engine does.
type Engine interface {
	Verse(dst []recite.Event, v int) []recite.Event
}

// Make returns the files of the site sorted by name, or diagnostics with at least one error.
func Make(s Source) ([]bundle.File, []diag.Diagnostic) {
	var a app
	var wg sync.WaitGroup
	entries := []string{
		bundle.StyleSource, bundle.PagesSource, bundle.PaperSource, bundle.LaterSource, bundle.SharedSource,
		bundle.ScriptSource, lessonSource, bootSource,
	}
	made := make([]bundle.Output, len(entries))
	said := make([][]diag.Diagnostic, len(entries))
	for i, entry := range entries {
		wg.Go(func() {
			switch {
			case entry == bundle.StyleSource:
				made[i], said[i] = bundle.Style(s.Dir, entry, s.CSS)
			case path.Ext(entry) == ".css":
				made[i], said[i] = bundle.Style(s.Dir, entry, "")
			default:
				made[i], said[i] = bundle.Script(s.Dir, entry)
			}
		})
	}
	var whole wholeParts
	var wholeSaid []diag.Diagnostic
	wg.Go(func() { whole, wholeSaid = wholes(s) })
	files, catalogue, try, err := dataFiles(s)
	wg.Wait()
	ds := slices.Concat(said...)
	if !diag.HasError(ds) && diag.HasError(wholeSaid) { // the sources are the same, and so are the warnings
		ds = wholeSaid
	}
	if err != nil {
		ds = append(ds, diag.Diagnostic{File: "rules-content/text", Found: err.Error()})
	}
	of := map[string]bundle.Output{}
	for i, o := range made {
		of[entries[i]] = o
		files = append(files, o.Files...)
	}
	a.style, a.pagesStyle, a.paperStyle = of[bundle.StyleSource].Name, of[bundle.PagesSource].Name, of[bundle.PaperSource].Name
	a.laterStyle, a.sharedStyle = of[bundle.LaterSource].Name, of[bundle.SharedSource].Name
	a.script, a.lessonScript, a.bootScript = of[bundle.ScriptSource].Name, of[lessonSource].Name, of[bootSource].Name
	a.scriptDigest, a.catalogue = integrity(of[bundle.ScriptSource]), catalogue
	for _, f := range of[bundle.StyleSource].Files {
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
	shots, err := a.readScreenshots(s.Dir)
	if err != nil {
		ds = append(ds, diag.Diagnostic{File: "site-src/" + screenshotsDir, Found: err.Error()})
	}
	files = slices.Concat(files, icons, licences, shots)
	if s.Log != "" {
		news, err := newsFile(s.Log)
		if err != nil {
			ds = append(ds, diag.Diagnostic{File: path.Base(s.Log), Found: err.Error()})
		}
		files = append(files, news)
	}
	ds = slices.Concat(ds, checkStrings(s.Dir), checkOrigins(s.Dir))
	if diag.HasError(ds) {
		return nil, ds
	}
	pages, one, pageDiags := a.pages(s, try, whole, files)
	ds = append(ds, pageDiags...)
	files = append(files, pages...)
	files = append(files, a.manifest())
	files = unique(files)

	list, known := precache(files)
	known.Lost = a.lost
	worker, workerDiags := bundle.Worker(s.Dir, known)
	ds = append(ds, workerDiags...)
	if diag.HasError(ds) {
		return nil, ds
	}
	files = unique(append(files, list, worker, one))
	return unique(append(files, copies.List(files))), ds
}

// lessonSource is the script of the pages without the app, bootSource what helps where the app's
// own script is missing.
const (
	lessonSource = "app/lesson.ts"
	bootSource   = "app/boot.ts"
)

// integrity returns the digest of a script's own file as the integrity attribute takes it (W3C,
// Subresource Integrity).
func integrity(o bundle.Output) string {
	for _, f := range o.Files {
		if f.Name == o.Name {
			return "sha256-" + digest(f.Data)
		}
	}
	return ""
}

// unique sorts files by name and drops repeats, such as a font that both the style and a page name.
func unique(files []bundle.File) []bundle.File {
	slices.SortFunc(files, func(a, b bundle.File) int { return cmp.Compare(a.Name, b.Name) })
	return slices.CompactFunc(files, func(a, b bundle.File) bool { return a.Name == b.Name })
}

// readLicences reads the licence files into the folder licences.
func readLicences(dir fs.FS) ([]bundle.File, error) {
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

// hashedName puts the content's hash before the extension.
func hashedName(folder, name string, data []byte) string {
	ext := path.Ext(name)
	return folder + "/" + strings.TrimSuffix(path.Base(name), ext) + "." + hash(data) + ext
}

// Package bundle turns the browser's sources into the files a browser gets:
// TypeScript and CSS through esbuild's Go API, HTML, SVG and JSON through
// tdewolff/minify. It reads site-src and returns values; it writes nothing.
//
// There are three results. Script and Style come first, because their hashed
// names go into the pages. The service worker comes last, because it carries
// the list of everything else.
package bundle

import (
	"encoding/json"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"github.com/evanw/esbuild/pkg/api"

	"sutur/generator/internal/diag"
)

// Folders and entry points below the source folder, slash-separated.
const (
	assets       = "assets"
	ScriptSource = "app/main.ts"
	WorkerSource = "app/sw.ts"
	StyleSource  = "style/main.css"
)

// File is one file of the site.
type File struct {
	Name string // slash-separated, below the site's root
	Data []byte
}

// Output is what one entry point became.
type Output struct {
	Name  string // of the entry point's own file
	Files []File // that file, and what it refers to (fonts, pictures), by name
}

// Script bundles entry, a TypeScript file below dir (ScriptSource for the
// app), into a minified module with its content's hash in the name. What it
// imports only when it is wanted, by import("…"), goes into files of its own,
// so that the first open does not wait for it.
func Script(dir, entry string) (Output, []diag.Diagnostic) {
	o := options(dir)
	o.EntryPoints = []string{entry}
	o.EntryNames = assets + "/[name].[hash]"
	o.Format, o.Splitting, o.ChunkNames = api.FormatESModule, true, o.EntryNames
	return run(dir, o)
}

// Style bundles StyleSource of dir, with more CSS after it, into one minified
// file. Fonts and pictures it refers to become files of their own.
func Style(dir, more string) (Output, []diag.Diagnostic) {
	o := options(dir)
	o.Stdin = &api.StdinOptions{
		Contents:   fmt.Sprintf("@import %q;\n%s", "./"+filepath.Base(StyleSource), more),
		ResolveDir: filepath.Join(dir, filepath.Dir(StyleSource)),
		Sourcefile: "style.css",
		Loader:     api.LoaderCSS,
	}
	o.EntryNames = assets + "/style.[hash]"
	return run(dir, o)
}

// Precache is what the service worker keeps: Version changes whenever any file
// does, Files are paths relative to the worker.
type Precache struct {
	Version string   `json:"version"`
	Files   []string `json:"files"`
}

// Worker bundles the service worker. Its name is always sw.js; the identifier
// __PRECACHE__ in its source stands for p.
func Worker(dir string, p Precache) (File, []diag.Diagnostic) {
	list, err := json.Marshal(p)
	if err != nil {
		panic(err) // strings always marshal
	}
	o := options(dir)
	o.EntryPoints = []string{WorkerSource}
	o.EntryNames = "sw"
	o.Define = map[string]string{"__PRECACHE__": string(list)}
	out, ds := run(dir, o)
	if diag.HasError(ds) {
		return File{}, ds
	}
	return out.Files[0], ds
}

// The oldest browsers that the scripts and styles are lowered for: the first with
// ranges of letters in colour (CSS Custom Highlight API) in each engine.
var engines = []api.Engine{
	{Name: api.EngineChrome, Version: "105"},
	{Name: api.EngineFirefox, Version: "140"},
	{Name: api.EngineSafari, Version: "17.2"},
}

func options(dir string) api.BuildOptions {
	return api.BuildOptions{
		AbsWorkingDir:     dir,
		Outdir:            filepath.Join(dir, "out"), // named only: Write is false
		AssetNames:        assets + "/[name].[hash]",
		Bundle:            true,
		Format:            api.FormatIIFE,
		Target:            api.ES2022,
		Engines:           engines,
		Charset:           api.CharsetUTF8,
		LegalComments:     api.LegalCommentsNone,
		MinifyWhitespace:  true,
		MinifyIdentifiers: true,
		MinifySyntax:      true,
		LogLevel:          api.LogLevelSilent,
		Loader: map[string]api.Loader{
			".woff2": api.LoaderFile,
			".svg":   api.LoaderFile,
			".png":   api.LoaderFile,
		},
	}
}

// run builds the one entry point of o.
func run(dir string, o api.BuildOptions) (Output, []diag.Diagnostic) {
	o.Metafile = true
	r := api.Build(o)
	ds := append(messages(dir, r.Errors, diag.Error), messages(dir, r.Warnings, diag.Warning)...)
	if len(r.Errors) > 0 {
		return Output{}, ds
	}
	var out Output
	for _, f := range r.OutputFiles {
		rel, err := filepath.Rel(o.Outdir, f.Path)
		if err != nil {
			panic(err) // both are absolute
		}
		out.Files = append(out.Files, File{filepath.ToSlash(rel), f.Contents})
	}
	var meta struct {
		Outputs map[string]struct{ EntryPoint string }
	}
	if err := json.Unmarshal([]byte(r.Metafile), &meta); err != nil {
		panic(err) // esbuild writes it
	}
	base := filepath.Base(o.Outdir) + "/"
	for name, m := range meta.Outputs {
		// A part that is imported when it is wanted is an entry point too, by its own source.
		if m.EntryPoint == entryName(o) {
			out.Name = strings.TrimPrefix(name, base)
		}
	}
	slices.SortFunc(out.Files, func(a, b File) int { return strings.Compare(a.Name, b.Name) })
	return out, ds
}

// entryName is what esbuild calls the one entry point of o.
func entryName(o api.BuildOptions) string {
	if o.Stdin != nil {
		return filepath.ToSlash(filepath.Join(filepath.Dir(StyleSource), o.Stdin.Sourcefile))
	}
	return o.EntryPoints[0]
}

// messages turns what esbuild says about files below dir into diagnostics
// about files below dir's parent, which is the project's folder.
func messages(dir string, ms []api.Message, sev diag.Severity) []diag.Diagnostic {
	var ds []diag.Diagnostic
	for _, m := range ms {
		d := diag.Diagnostic{File: filepath.Base(dir), Severity: sev, Found: m.Text}
		if l := m.Location; l != nil {
			d.File = filepath.ToSlash(filepath.Join(d.File, l.File))
			d.Line, d.Col = l.Line, l.Column+1
			d.Do = l.Suggestion
		}
		for _, n := range m.Notes {
			if d.Do == "" {
				d.Do = n.Text
			}
		}
		ds = append(ds, d)
	}
	return ds
}

// Package bundle turns the browser's sources into the files a browser gets: TypeScript and CSS
// through esbuild's Go API, HTML, SVG and JSON through tdewolff/minify. It reads site-src and
// returns values; it writes nothing.
//
// There are three results of the site. Script and Style come first, because their hashed names go
// into the pages. The service worker comes last, because it carries the name and the digest of the
// list of everything else.
package bundle

import (
	"crypto/sha256"
	"encoding/base64"
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
	StyleSource  = "style/main.css"   // the app, and what all pages share
	PagesSource  = "style/pages.css"  // pages that are read, after the former
	LaterSource  = "style/later.css"  // the screens that are fetched later, likewise
	PaperSource  = "style/paper.css"  // the print screen, likewise
	SharedSource = "style/shared.css" // the shared screen, likewise
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

// compiled has the browser compile all of a script as it comes, beside the page, and not each
// function when a press first needs it (WICG draft, Explicit JavaScript Compile Hints). To other
// engines it is a comment.
const compiled = "//# allFunctionsCalledOnLoad"

// Script bundles entry, a TypeScript file below dir (ScriptSource for the app), into a minified
// module with its content's hash in the name. What it imports only when it is needed, by
// import("…"), goes into files of its own, so that the first open does not wait for it.
func Script(dir, entry string) (Output, []diag.Diagnostic) {
	o := options(dir)
	o.EntryPoints = []string{entry}
	o.EntryNames = assets + "/[name].[hash]"
	o.Format, o.Splitting, o.ChunkNames = api.FormatESModule, true, o.EntryNames
	o.Banner = map[string]string{"js": compiled}
	if entry == ScriptSource {
		o.Plugins = []api.Plugin{inOne(o)}
	}
	return run(dir, o)
}

// Style bundles entry, a style sheet below dir, with more CSS after it, into one minified file.
// Fonts and pictures it refers to become files of their own.
func Style(dir, entry, more string) (Output, []diag.Diagnostic) {
	return run(dir, styleOptions(dir, entry, more))
}

func styleOptions(dir, entry, more string) api.BuildOptions {
	o := options(dir)
	o.Stdin = &api.StdinOptions{
		Contents:   fmt.Sprintf("@import %q;\n%s", "./"+filepath.Base(entry), more),
		ResolveDir: filepath.Join(dir, filepath.Dir(entry)),
		Sourcefile: "all-of-" + styleName(entry) + ".css", // not the name of a file that it imports
		Loader:     api.LoaderCSS,
	}
	o.EntryNames = assets + "/" + styleName(entry) + ".[hash]"
	return o
}

// styleName is what a style sheet is called in the site.
func styleName(entry string) string {
	if entry == StyleSource {
		return "style"
	}
	return strings.TrimSuffix(filepath.Base(entry), ".css")
}

// Precache is what the service worker knows of the site it keeps.
type Precache struct {
	Version string `json:"version"` // changes whenever any file does
	List    Listed `json:"list"`    // the file that lists all others
	Lost    string `json:"lost"`    // a page in HTML, shown where nothing is kept and nothing can be fetched
}

// Listed is a file as the list of all files names it. It is right if its bytes have the length and
// the digest of either form.
type Listed struct {
	Name  string
	Forms []Form // as it is, and what is in it, if it is a .gz file: some hosts have browsers unpack those
}

// Form is the length in bytes and the SHA-256 of one form of a file.
type Form struct {
	Length int
	SHA    [sha256.Size]byte
}

// NewListed takes the lengths and digests of f; unpacked is what is in a .gz file, and nil for
// others.
func NewListed(f File, unpacked []byte) Listed {
	l := Listed{f.Name, []Form{{len(f.Data), sha256.Sum256(f.Data)}}}
	if unpacked != nil {
		l.Forms = append(l.Forms, Form{len(unpacked), sha256.Sum256(unpacked)})
	}
	return l
}

// MarshalJSON returns ["name", length, "SHA-256 in base64", …], with two values for each form.
func (l Listed) MarshalJSON() ([]byte, error) {
	row := []any{l.Name}
	for _, f := range l.Forms {
		row = append(row, f.Length, base64.StdEncoding.EncodeToString(f.SHA[:]))
	}
	b, err := json.Marshal(row)
	if err != nil {
		return nil, fmt.Errorf("list %s: %w", l.Name, err)
	}
	return b, nil
}

// Worker bundles the service worker. Its name is always sw.js; the identifier __PRECACHE__ in its
// source stands for p.
func Worker(dir string, p Precache) (File, []diag.Diagnostic) {
	known, err := json.Marshal(p)
	if err != nil {
		panic(err) // strings and numbers always marshal
	}
	o := options(dir)
	o.EntryPoints = []string{WorkerSource}
	o.EntryNames = "sw"
	o.Define = map[string]string{"__PRECACHE__": string(known)}
	out, ds := run(dir, o)
	if diag.HasError(ds) {
		return File{}, ds
	}
	return out.Files[0], ds
}

// The oldest browsers that the scripts and styles are lowered for: the first with ranges of letters
// in colour (CSS Custom Highlight API) in each engine.
var engines = []api.Engine{
	{Name: api.EngineChrome, Version: "105"},
	{Name: api.EngineFirefox, Version: "140"},
	{Name: api.EngineSafari, Version: "17.2"},
}

// vendored are the npm packages that site-src/vendor carries: the build takes them from there, also
// where the package itself is installed for the tests.
var vendored = map[string]string{
	"lit-html":           "./vendor/lit-html",
	"idb":                "./vendor/idb/build/index.js",
	"@noble/hashes":      "./vendor/@noble/hashes",
	"lean-qr":            "./vendor/lean-qr/index.mjs",
	"lean-qr/extras/svg": "./vendor/lean-qr/extras/svg.mjs",
}

func options(dir string) api.BuildOptions {
	return api.BuildOptions{
		AbsWorkingDir:     dir,
		Alias:             vendored,
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
		LogOverride:       map[string]api.LogLevel{"package.json": api.LogLevelSilent}, // carried as they are
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
		// A part that is imported when it is needed is an entry point too, by its own source.
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

// messages turns what esbuild says about files below dir into diagnostics about files below dir's
// parent, which is the project's folder.
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

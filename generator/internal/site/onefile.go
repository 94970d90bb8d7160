package site

import (
	"encoding/base64"
	"fmt"
	"html/template"
	"path"
	"regexp"
	"slices"
	"strings"
	"sync"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/diag"
)

// OneFile is the edition of the site that is one file, opened from a folder with no host: scripts
// and styles stand in it, named in its content policy by their digests; data files and pages as
// base64 that is not run, each with the SHA-256 of what it unpacks to.
const OneFile = "one-file/sutur.html"

// BudgetOneFile is the most that it may take, in bytes as it lies on a memory stick.
const BudgetOneFile = 1_600_000

// oneFilePage is its template.
const oneFilePage = "one-file.html"

// wholeParts are its scripts and style sheets, in the order in which they stand in it. All sheets but
// the first wait until the script asks for them by name.
type wholeParts struct {
	styles  []bundle.File
	scripts []bundle.File
}

// inside is what the template of the one file is filled with.
type inside struct {
	Policy                 string
	Icon                   template.URL
	Styles, Files, Scripts template.HTML
}

// offer is what a page of the site says of the one file.
type offer struct {
	Href string
	Size string // in words
}

// wholes bundles the parts of the one file.
func wholes(s Source) (wholeParts, []diag.Diagnostic) {
	styles := []string{bundle.StyleSource, bundle.LaterSource, bundle.PaperSource, bundle.SharedSource, bundle.InsideSource}
	scripts := []string{bootSource, bundle.ScriptSource}
	all := slices.Concat(styles, scripts)
	made := make([]bundle.File, len(all))
	said := make([][]diag.Diagnostic, len(all))
	var wg sync.WaitGroup
	for i, entry := range all {
		wg.Go(func() {
			made[i].Name = strings.TrimSuffix(path.Base(entry), path.Ext(entry))
			switch {
			case entry == bundle.StyleSource:
				made[i].Data, said[i] = bundle.WholeStyle(s.Dir, entry, s.CSS)
			case path.Ext(entry) == ".css":
				made[i].Data, said[i] = bundle.WholeStyle(s.Dir, entry, "")
			default:
				made[i].Data, said[i] = bundle.WholeScript(s.Dir, "./"+entry)
			}
		})
	}
	wg.Wait()
	return wholeParts{made[:len(styles)], made[len(styles):]}, slices.Concat(said...)
}

// oneFile makes the one file of its parts, the data files, and the pages and licences of the site.
func (a *app) oneFile(t *template.Template, p Page, w wholeParts, files []bundle.File) (bundle.File, []diag.Diagnostic) {
	fail := func(err error) (bundle.File, []diag.Diagnostic) {
		return bundle.File{}, []diag.Diagnostic{{File: OneFile, Found: err.Error()}}
	}
	styles, looks, err := elements(w.styles, "style", func(i int, name string) string {
		if i == 0 {
			return ""
		}
		return fmt.Sprintf(` data-sheet="%s" media="not all"`, name)
	})
	if err != nil {
		return fail(err)
	}
	scripts, runs, err := elements(w.scripts, "script", func(int, string) string { return "" })
	if err != nil {
		return fail(err)
	}
	held, err := heldFiles(files)
	if err != nil {
		return fail(err)
	}
	in := &inside{Styles: styles, Scripts: scripts, Files: heldElements(held)}
	in.Policy = "default-src 'none'; script-src " + runs + "; style-src " + looks +
		"; img-src data: blob:; font-src data:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types sutur lit-html"
	for _, f := range files {
		if f.Name == a.icons["icons/touch-180.png"] {
			in.Icon = template.URL("data:image/png;base64," + base64.StdEncoding.EncodeToString(f.Data))
		}
	}
	p.Inside, p.OneFile = in, nil
	return execute(t, OneFile, oneFilePage, p)
}

// elements puts scripts or styles into elements, with the attributes that attrs gives, and names them
// as a content policy does (W3C, Content Security Policy).
func elements(parts []bundle.File, element string, attrs func(i int, name string) string) (all template.HTML, sources string, err error) {
	var b strings.Builder
	var sums []string
	for i, f := range parts {
		if err := inlined(f.Data, element); err != nil {
			return "", "", fmt.Errorf("the %s %s %w", element, f.Name, err)
		}
		fmt.Fprintf(&b, "<%s%s>%s</%[1]s>", element, attrs(i, f.Name), f.Data)
		sums = append(sums, "'sha256-"+digest(f.Data)+"'")
	}
	return template.HTML(b.String()), strings.Join(sums, " "), nil
}

var odd = regexp.MustCompile(`(?i)</?(?:script|style)|<!--|\r|\x00`)

// inlined tells why data cannot stand in an element as it is.
func inlined(data []byte, element string) error {
	if found := odd.Find(data); found != nil {
		return fmt.Errorf("holds %q, which has a meaning of its own within a %s", found, element)
	}
	return nil
}

// sizeInWords is a size in megabytes of a million bytes, as pages say it.
func sizeInWords(n int) string { return fmt.Sprintf("%.1f MB", float64(n)/1e6) }

package site

import (
	"bytes"
	"encoding/base64"
	"errors"
	"fmt"
	"html"
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
	for i := range made {
		if made[i].Name == path.Base(strings.TrimSuffix(bundle.InsideSource, ".css")) {
			made[i].Name = "pages" // what the script asks for
		}
	}
	return wholeParts{made[:len(styles)], made[len(styles):]}, slices.Concat(said...)
}

// oneFile makes the one file of its parts, the data files, and the pages and licences of the site.
func (a *app) oneFile(t *template.Template, p Page, w wholeParts, files []bundle.File) (bundle.File, []diag.Diagnostic) {
	fail := func(err error) (bundle.File, []diag.Diagnostic) {
		return bundle.File{}, []diag.Diagnostic{{File: OneFile, Found: err.Error()}}
	}
	in := &inside{}
	var styles, scripts, held strings.Builder
	var styleSums, scriptSums []string
	for i, f := range w.styles {
		waits := fmt.Sprintf(` data-sheet="%s" media="not all"`, f.Name)
		if i == 0 {
			waits = ""
		}
		if err := inlined(f.Data, "style"); err != nil {
			return fail(fmt.Errorf("the style sheet %s %w", f.Name, err))
		}
		fmt.Fprintf(&styles, `<style%s>%s</style>`, waits, f.Data)
		styleSums = append(styleSums, source(f.Data))
	}
	for _, f := range w.scripts {
		if err := inlined(f.Data, "script"); err != nil {
			return fail(fmt.Errorf("the script %s %w", f.Name, err))
		}
		fmt.Fprintf(&scripts, `<script>%s</script>`, f.Data)
		scriptSums = append(scriptSums, source(f.Data))
	}
	kept, err := heldFiles(files)
	if err != nil {
		return fail(err)
	}
	for _, k := range kept {
		fmt.Fprintf(&held, `<script type="application/octet-stream" data-file="%s" data-sha="%s">%s</script>`+"\n",
			k.name, k.sha, base64.StdEncoding.EncodeToString(k.data))
	}
	in.Policy = "default-src 'none'; script-src " + strings.Join(scriptSums, " ") + "; style-src " + strings.Join(styleSums, " ") +
		"; img-src data: blob:; font-src data:; base-uri 'none'; form-action 'none'; require-trusted-types-for 'script'; trusted-types sutur lit-html"
	in.Styles, in.Scripts, in.Files = template.HTML(styles.String()), template.HTML(scripts.String()), template.HTML(held.String())
	for _, f := range files {
		if f.Name == a.icons["icons/touch-180.png"] {
			in.Icon = template.URL("data:image/png;base64," + base64.StdEncoding.EncodeToString(f.Data))
		}
	}
	p.Inside, p.OneFile = in, nil
	return execute(t, OneFile, oneFilePage, p)
}

// source names a script or style in a content policy (W3C, Content Security Policy).
func source(data []byte) string { return "'sha256-" + digest(data) + "'" }

var odd = regexp.MustCompile(`(?i)</?(?:script|style)|<!--|\r|\x00`)

// inlined tells why data cannot stand in an element as it is.
func inlined(data []byte, element string) error {
	if found := odd.Find(data); found != nil {
		return fmt.Errorf("holds %q, which has a meaning of its own within a %s", found, element)
	}
	return nil
}

// heldFile is a file within the one file: packed, with the SHA-256 of what it unpacks to, in base64.
type heldFile struct {
	name, sha string
	data      []byte
}

// heldFiles are the data files as they are; of each page that is read its main part, with links that
// lead within the one file; and the licences as such pages.
func heldFiles(files []bundle.File) ([]heldFile, error) {
	names := map[string]bool{}
	for _, f := range files {
		names[f.Name] = pageText(f) != nil
	}
	list := make([]heldFile, len(files))
	errs := make([]error, len(files))
	each(len(files), func() func(int) {
		return func(i int) {
			f := files[i]
			text := pageText(f)
			switch {
			case strings.HasPrefix(f.Name, "data/"):
				raw := unpacked(f)
				list[i] = heldFile{f.Name, digest(raw), f.Data}
			case text != nil:
				if text, errs[i] = leadWithin(f.Name, text, names); errs[i] == nil {
					list[i] = heldFile{f.Name, digest(text), compress(text)}
				}
			}
		}
	})
	return slices.DeleteFunc(list, func(h heldFile) bool { return h.name == "" }), errors.Join(errs...)
}

var mainPart = regexp.MustCompile(`(?s)<main\b.*</main>`)

// pageText is what the one file shows of a page of the site, or of a licence; nil for other files.
func pageText(f bundle.File) []byte {
	switch {
	case strings.HasPrefix(f.Name, "licences/"):
		return fmt.Appendf(nil, "<main><h1>%s</h1><pre>%s</pre></main>",
			html.EscapeString(strings.TrimSuffix(path.Base(f.Name), ".txt")), html.EscapeString(string(f.Data)))
	case path.Ext(f.Name) == ".html" && f.Name != "index.html":
		return mainPart.Find(f.Data)
	}
	return nil
}

var href = regexp.MustCompile(`\shref="([^"]*)"`)

// leadWithin has the links of a page lead to screens of the app and to the pages that are there. It
// fails where one leads elsewhere.
func leadWithin(name string, text []byte, there map[string]bool) (out []byte, err error) {
	out = href.ReplaceAllFunc(text, func(m []byte) []byte {
		to := html.UnescapeString(string(href.FindSubmatch(m)[1]))
		within := addressWithin(name, to, there)
		if within == "" {
			err = fmt.Errorf("%s links to %q, which is not in the one file", name, to)
		}
		return []byte(` href="` + html.EscapeString(within) + `"`)
	})
	return out, err
}

// addressWithin is the address in the one file of what a page of this name links to, as page in
// site-src/app/edition/files.one.ts makes it; "" for what is not there.
func addressWithin(name, to string, there map[string]bool) string {
	file, at, placed := strings.Cut(to, "#")
	if file == "" {
		file = path.Base(name)
	}
	file = path.Join(path.Dir(name), file)
	switch {
	case file == "index.html" && placed:
		return "#" + at
	case file == "index.html":
		return "#/today"
	case !there[file]:
		return ""
	case placed:
		return "#/read?page=" + component(file) + "&at=" + component(at)
	}
	return "#/read?page=" + component(file)
}

// component escapes as encodeURIComponent does (ECMA-262) what names and places of ours hold.
func component(s string) string {
	var b bytes.Buffer
	for _, c := range []byte(s) {
		if strings.IndexByte("/?=&:,#%+ ", c) >= 0 {
			fmt.Fprintf(&b, "%%%02X", c)
		} else {
			b.WriteByte(c)
		}
	}
	return b.String()
}

// sizeInWords is a size in megabytes of a million bytes, as pages say it.
func sizeInWords(n int) string { return fmt.Sprintf("%.1f MB", float64(n)/1e6) }

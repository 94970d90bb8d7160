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

	"sutur/generator/internal/bundle"
)

// heldFile is a file within the one file: packed, with the SHA-256 of what it unpacks to, in base64.
type heldFile struct {
	name, sha string
	data      []byte
}

// heldElements are elements that are not run and hold the files.
func heldElements(files []heldFile) template.HTML {
	var b strings.Builder
	for _, f := range files {
		fmt.Fprintf(&b, `<script type="application/octet-stream" data-file="%s" data-sha="%s">%s</script>`+"\n",
			f.name, f.sha, base64.StdEncoding.EncodeToString(f.data))
	}
	return template.HTML(b.String())
}

// heldFiles are the data files as they are; of each page that is read its main part, with links that
// lead within the one file; and the licences as such pages.
func heldFiles(files []bundle.File) ([]heldFile, error) {
	there := map[string]bool{}
	texts := make([][]byte, len(files))
	for i, f := range files {
		texts[i] = pageText(f)
		there[f.Name] = texts[i] != nil
	}
	list := make([]heldFile, len(files))
	errs := make([]error, len(files))
	each(len(files), func() func(int) {
		return func(i int) {
			f, text := files[i], texts[i]
			switch {
			case strings.HasPrefix(f.Name, "data/"):
				raw := unpacked(f)
				list[i] = heldFile{f.Name, digest(raw), f.Data}
			case text != nil:
				if text, errs[i] = leadWithin(f.Name, text, there); errs[i] == nil {
					list[i] = heldFile{f.Name, digest(text), Compress(text)}
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

package site

import (
	"bytes"
	"fmt"
	"html/template"
	"path"
	"regexp"
	"strconv"
	"strings"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/colour"
	"sutur/generator/internal/diag"
	"sutur/generator/internal/lesson"
	"sutur/generator/internal/rules"
)

// pagesDir holds the templates, below the source folder.
const pagesDir = "pages"

// csp lets a page load from its own origin and from nowhere else. Pictures may
// also be data or blobs made on the spot; nothing inline is run. It is put into
// every page, after the element that names the encoding.
const csp = "default-src 'self'; img-src 'self' data: blob:; object-src 'none'; base-uri 'none'; form-action 'none'"

// lostPage is the template of the page that the service worker shows where
// nothing is kept and nothing can be fetched; there need not be one.
const lostPage = "lost.html"

const charset = `<meta charset="utf-8">`

// app holds names of files, relative to the site's root, that pages refer to.
type app struct {
	script, style, lessonScript, bootScript, font string
	pagesStyle, paperStyle                        string
	scriptDigest                                  string // for the integrity attribute
	catalogue                                     dataFile
	icons                                         map[string]string // source name below site-src to name
	iconList                                      []icon
	lost                                          string // the page lost.html, which is no file: the service worker carries it
}

// Page is what a template sees. All addresses are relative to the page.
type Page struct {
	Root         string // "" on pages at the root, "../" one folder below
	Lang         string // of the page's own words
	Title        string
	Description  string // one sentence, for the head
	Script       string // the app's script
	ScriptDigest string // for its integrity attribute
	Style        string // the style sheet
	PagesStyle   string // what pages that are read have beside it; empty in the app
	PaperStyle   string // what the print screen fetches beside it
	LessonScript string // script of the lesson pages; empty if there is none
	BootScript   string // script that helps where the app's own is missing; empty if there is none
	Font         string // the reading font, for a preload link; empty if there is none
	Catalogue    string // the catalogue, for data-catalogue on the html element
	CatalogueSHA string // SHA-256 of what is in it, in base64, for data-sha
	Manifest     string
	TouchIcon    string // PNG of 180 pixels
	Families     []colour.Family
	Rules        []rules.Rule
	Lessons      []LessonPage // the lessons that teach a rule, in teaching order
	Texts        []LessonPage // the pages without a rule
	Lesson       *LessonPage  // on a lesson page, the lesson; else nil
	Previous     *LessonPage  // the lesson before and after, on the page of a lesson that teaches a rule
	Next         *LessonPage
	icons        map[string]string
}

// nextHeading begins the last part of a lesson's text; the lines to try come before it.
const nextHeading = `<h2 id="next">`

// LessonPage is a lesson with its address and its text ready to be put in.
type LessonPage struct {
	lesson.Lesson
	Href   string // relative to the page
	Body   template.HTML
	Onward template.HTML // what the text says of going on, with its heading; empty if it says nothing
	Try    []Try         // lines to find its rules in; their addresses are relative to the root
}

// Asset returns the address of a picture of site-src/icons, such as
// "icons/icon.svg". An unknown name stops the build.
func (p Page) Asset(name string) (string, error) {
	n, ok := p.icons[name]
	if !ok {
		return "", fmt.Errorf("there is no %s in site-src", name)
	}
	return p.Root + n, nil
}

// pages makes all HTML pages, and a.lost.
func (a *app) pages(s Source, try [][]Try) ([]bundle.File, []diag.Diagnostic) {
	t, err := template.ParseGlob(path.Join(s.Dir, pagesDir, "*.html"))
	if err != nil {
		return nil, []diag.Diagnostic{templateDiagnostic(err)}
	}
	var files []bundle.File
	var ds []diag.Diagnostic
	add := func(name, tmpl string, p Page) {
		var b bytes.Buffer
		err := t.ExecuteTemplate(&b, tmpl, p)
		if err != nil {
			ds = append(ds, templateDiagnostic(err))
			return
		}
		before, after, found := strings.Cut(b.String(), charset)
		if !found {
			ds = append(ds, diag.Diagnostic{File: "site-src/" + pagesDir + "/" + tmpl, Found: "no " + charset, Do: "put it first into the head"})
			return
		}
		guard := `<meta http-equiv="Content-Security-Policy" content="` + csp + `">`
		f, err := bundle.Minify(bundle.File{Name: name, Data: []byte(before + charset + guard + after)})
		if err != nil {
			ds = append(ds, templateDiagnostic(err))
			return
		}
		files = append(files, f)
	}
	root, below, err := a.page(s, try, ""), a.page(s, try, "../"), error(nil)
	if root.TouchIcon, err = root.Asset("icons/touch-180.png"); err != nil {
		return nil, []diag.Diagnostic{{File: "site-src", Found: err.Error()}}
	}
	below.TouchIcon = "../" + root.TouchIcon
	about, index := root, below
	about.Title, about.Description = "About Sutur", "What Sutur is, what it is not, cautions, sources and licences."
	index.Title, index.Description = "Lessons · Sutur", "Every recitation rule on one page of its own, with examples from the Qur'an."
	shell := root
	shell.LessonScript, shell.PagesStyle = "", "" // the app has its own
	if t.Lookup(lostPage) != nil {
		add(lostPage, lostPage, shell)
		if n := len(files); n > 0 {
			a.lost, files = string(files[n-1].Data), files[:n-1]
		}
	}
	add("index.html", "app.html", shell)
	add("about.html", "about.html", about)
	add("lessons/index.html", "lessons-index.html", index)
	for i := range below.Lessons {
		p := below
		p.teach(&below.Lessons[i])
		if i > 0 {
			p.Previous = &below.Lessons[i-1]
		}
		if i+1 < len(below.Lessons) {
			p.Next = &below.Lessons[i+1]
		}
		add("lessons/"+p.Lesson.ID+".html", "lesson.html", p)
	}
	for i := range below.Texts {
		p := below
		p.teach(&below.Texts[i])
		add("lessons/"+p.Lesson.ID+".html", "lesson.html", p)
	}
	return files, ds
}

// page returns what all pages with the same root share.
func (a app) page(s Source, try [][]Try, root string) Page {
	p := Page{
		Root: root, Lang: "en", Title: "Sutur", Description: description,
		Families: s.Families, Rules: s.Rules, icons: a.icons,
		Script: root + a.script, ScriptDigest: a.scriptDigest, Style: root + a.style,
		Catalogue: root + a.catalogue.name, CatalogueSHA: a.catalogue.sha,
		Manifest: root + manifestName,
	}
	if a.font != "" {
		p.Font = root + a.font
	}
	if a.bootScript != "" {
		p.BootScript = root + a.bootScript
	}
	if a.lessonScript != "" {
		p.LessonScript = root + a.lessonScript
	}
	if a.pagesStyle != "" {
		p.PagesStyle = root + a.pagesStyle
	}
	if a.paperStyle != "" {
		p.PaperStyle = root + a.paperStyle
	}
	for i, l := range s.Lessons {
		body, _, _ := strings.Cut(l.HTML, nextHeading)
		lp := LessonPage{l, root + "lessons/" + l.ID + ".html", template.HTML(body), template.HTML(strings.TrimPrefix(l.HTML, body)), try[i]}
		if l.Kind == lesson.KindPage {
			p.Texts = append(p.Texts, lp)
		} else {
			p.Lessons = append(p.Lessons, lp)
		}
	}
	return p
}

// teach makes p the page of a lesson.
func (p *Page) teach(l *LessonPage) {
	p.Lesson = l
	p.Title = l.Name + " · Sutur"
	p.Description = l.Name + ": a page of Sutur."
	if l.Kind != lesson.KindPage {
		p.Description = l.Name + ": what it is, how it is read, and where it is found in the Qur'an."
	}
}

var templatePlace = regexp.MustCompile(`^(?:html/)?template: ?([^:]+):(\d+)(?::(\d+))?: (?s:(.*))$`)

// templateDiagnostic finds the place in what html/template says.
func templateDiagnostic(err error) diag.Diagnostic {
	d := diag.Diagnostic{File: "site-src/" + pagesDir, Found: err.Error(), Do: "see the fields of Page in generator/internal/site"}
	if m := templatePlace.FindStringSubmatch(err.Error()); m != nil {
		d.File += "/" + m[1]
		d.Line, _ = strconv.Atoi(m[2])
		if d.Col, _ = strconv.Atoi(m[3]); m[3] != "" {
			d.Col++
		}
		d.Found = m[4]
	}
	return d
}

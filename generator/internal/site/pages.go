package site

import (
	"bytes"
	"fmt"
	"html/template"
	"path"
	"regexp"
	"slices"
	"strconv"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/colour"
	"sutur/generator/internal/diag"
	"sutur/generator/internal/lesson"
)

// pagesDir holds the templates, below the source folder.
const pagesDir = "pages"

// lostPage is the template of the page that the service worker shows where nothing is kept and
// nothing can be fetched.
const lostPage = "lost.html"

// policy is what every page must have: the content security policy, which parts.html writes.
const policy = `http-equiv="Content-Security-Policy"`

// app holds names of files, relative to the site's root, that pages refer to.
type app struct {
	script, style, lessonScript, bootScript, font string
	pagesStyle, paperStyle, laterStyle            string
	sharedStyle                                   string
	scriptDigest                                  string // for the integrity attribute
	catalogue                                     dataFile
	icons                                         map[string]string // source name below site-src to name
	iconList                                      []icon
	screenshots                                   []screenshot
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
	LaterStyle   string // what the other screens that are fetched later do
	SharedStyle  string // what the shared screen fetches
	LessonScript string // script of the pages that are read; empty in the app
	BootScript   string // script that helps where the app's own is missing
	Font         string // the reading font, for a preload link
	Catalogue    string // the catalogue, for data-catalogue on the html element
	CatalogueSHA string // SHA-256 of what is in it, in base64, for data-sha
	Manifest     string
	TouchIcon    string       // PNG of 180 pixels
	PaperLight   string       // the page's colour in the light theme, #rrggbb
	PaperDark    string       // and in the dark one
	Lessons      []LessonPage // the lessons that teach a rule, in teaching order
	Texts        []LessonPage // the pages without a rule
	Lesson       *LessonPage  // on a lesson page, the lesson; else nil
	Previous     *LessonPage  // the lesson before and after, on the page of a lesson that teaches a rule
	Next         *LessonPage
	Inside       *inside // on a page of the one file; else nil
	OneFile      *offer  // on the page that offers the one file; else nil
	icons        map[string]string
}

// LessonPage is a lesson with its address and its text ready to be put in.
type LessonPage struct {
	lesson.Lesson
	Href   string        // relative to the page
	Body   template.HTML // the text of a page, or the first minute of a lesson
	Parts  []PagePart    // what follows the first minute
	Beats  []Beat        // lengths that its rules may hold
	Onward template.HTML // what the text says of going on, below the lines to try
	Try    []Try         // lines to find its rules in; their addresses are relative to the root
}

// PagePart is lesson.Part, ready to be put in.
type PagePart struct {
	ID          string
	Title, Body template.HTML
}

// Beat is a length in counts, shown as that many dots. Rule names the rule that holds it where the
// lesson has more than one that is held; else it is empty.
type Beat struct {
	Rule string
	Dots []int // 1 and up, as many as there are counts
}

// beats lists every length of every rule that l teaches.
func beats(s Source, l lesson.Lesson) (list []Beat) {
	held := 0
	for _, r := range s.Rules {
		if !slices.Contains(l.Rules, r.ID) || len(r.Counts) == 0 {
			continue
		}
		held++
		for _, n := range r.Counts {
			b := Beat{Rule: r.Name}
			for i := range n {
				b.Dots = append(b.Dots, i+1)
			}
			list = append(list, b)
		}
	}
	if held == 1 {
		for i := range list {
			list[i].Rule = ""
		}
	}
	return list
}

// lessonPage makes l ready for a page with this root.
func lessonPage(s Source, l lesson.Lesson, root string, try []Try) LessonPage {
	p := LessonPage{
		Lesson: l, Href: root + "lessons/" + l.ID + ".html", Body: template.HTML(l.HTML),
		Beats: beats(s, l), Onward: template.HTML(l.Onward), Try: try,
	}
	for _, x := range l.Parts {
		p.Parts = append(p.Parts, PagePart{x.ID, template.HTML(x.Title), template.HTML(x.HTML)})
	}
	return p
}

// Asset returns the address of a picture of site-src/icons, such as "icons/icon.svg". An unknown
// name stops the build.
func (p Page) Asset(name string) (string, error) {
	n, ok := p.icons[name]
	if !ok {
		return "", fmt.Errorf("there is no %s in site-src", name)
	}
	return p.Root + n, nil
}

// pages makes all HTML pages, and a.lost. Of w and files, which are all but the pages, it makes the
// one file.
func (a *app) pages(s Source, try [][]Try, w wholeParts, files []bundle.File) ([]bundle.File, bundle.File, []diag.Diagnostic) {
	none := func(ds ...diag.Diagnostic) ([]bundle.File, bundle.File, []diag.Diagnostic) {
		return nil, bundle.File{}, ds
	}
	t, err := template.ParseGlob(path.Join(s.Dir, pagesDir, "*.html"))
	if err != nil {
		return none(templateDiagnostic(err))
	}
	root, below, err := a.page(s, try, ""), a.page(s, try, "../"), error(nil)
	if root.TouchIcon, err = root.Asset("icons/touch-180.png"); err != nil {
		return none(diag.Diagnostic{File: "site-src", Found: err.Error()})
	}
	below.TouchIcon = "../" + root.TouchIcon
	about, index := root, below
	about.Title, about.Description = "About Sutur", "What Sutur is, what it is not, cautions, sources and licences."
	index.Title, index.Description = "Lessons · Sutur", "Every recitation rule on one page of its own, with examples from the Qur'an."
	shell := root
	shell.LessonScript, shell.PagesStyle = "", "" // the app has its own
	lost, ds := execute(t, lostPage, lostPage, shell)
	a.lost = string(lost.Data)
	var pages []bundle.File
	add := func(name, tmpl string, p Page) {
		f, d := execute(t, name, tmpl, p)
		pages, ds = append(pages, f), append(ds, d...)
	}
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
	// The page about Sutur is another one in the one file, whose size it says on the site.
	about.Inside = &inside{}
	within, more := execute(t, "about.html", "about.html", about)
	if ds = append(ds, more...); diag.HasError(ds) {
		return none(ds...)
	}
	one, more := a.oneFile(t, shell, w, slices.Concat(files, pages, []bundle.File{within}))
	ds = append(ds, more...)
	about.Inside, about.OneFile = nil, &offer{OneFile, sizeInWords(len(one.Data))}
	add("index.html", "app.html", shell)
	add("about.html", "about.html", about)
	return pages, one, ds
}

// execute makes one page of a template.
func execute(t *template.Template, name, tmpl string, p Page) (bundle.File, []diag.Diagnostic) {
	var b bytes.Buffer
	if err := t.ExecuteTemplate(&b, tmpl, p); err != nil {
		return bundle.File{}, []diag.Diagnostic{templateDiagnostic(err)}
	}
	if !bytes.Contains(b.Bytes(), []byte(policy)) {
		return bundle.File{}, []diag.Diagnostic{{
			File: "site-src/" + pagesDir + "/" + tmpl, Found: "the page has no content security policy", Do: `begin its head with {{template "policy"}}`,
		}}
	}
	f, err := bundle.Minify(bundle.File{Name: name, Data: b.Bytes()})
	if err != nil {
		return f, []diag.Diagnostic{templateDiagnostic(err)}
	}
	return f, nil
}

// page returns what all pages with the same root share.
func (a app) page(s Source, try [][]Try, root string) Page {
	p := Page{
		Root: root, Lang: "en", Title: "Sutur", Description: description, icons: a.icons,
		PaperLight: colour.PaperLight, PaperDark: colour.PaperDark,
		Script: root + a.script, ScriptDigest: a.scriptDigest, LessonScript: root + a.lessonScript, BootScript: root + a.bootScript,
		Style: root + a.style, PagesStyle: root + a.pagesStyle, PaperStyle: root + a.paperStyle, LaterStyle: root + a.laterStyle, SharedStyle: root + a.sharedStyle, Font: root + a.font,
		Catalogue: root + a.catalogue.name, CatalogueSHA: a.catalogue.sha, Manifest: root + manifestName,
	}
	for i, l := range s.Lessons {
		lp := lessonPage(s, l, root, try[i])
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

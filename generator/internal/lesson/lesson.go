// Package lesson turns the Markdown of rules-content/lessons into the text of the lesson pages.
//
// A file is front matter and Markdown (CommonMark, read by goldmark). Six things are ours:
//
//   - a block "verse" of worked examples, one a line, and words of a verse within a sentence: both name the place, and the
//     words come from the text; the rule said to be there must be found there by the engine (place.go, held.go);
//   - a block "check" of questions with answers that open (block.go);
//   - letters, signs and terms by name (inline.go, letters.go, terms.go), and lines of the teaching poems (package poem);
//   - a link to another lesson by its id, which may say when that lesson is taught (order.go);
//   - the sections "Show it in one minute", which joins the text above all headings and one large word as the first minute
//     (parts.go), and "Look alike, read differently", whose pairs stand side by side (pair.go);
//   - a line --- (thematic break): what stands below it comes after the lines to try, under the page's heading Next.
//
// Arabic is never typed into the Markdown: any Arabic character there is an error. Every mistake is
// a diagnostic with its line and column, and all files are read before anybody stops.
package lesson

import (
	"bytes"
	"fmt"
	"io/fs"
	"path"
	"strings"
	"unicode/utf8"

	"github.com/yuin/goldmark/ast"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// Dir is the folder of the lessons, below the project's folder. Diagnostics name files in it.
const Dir = "rules-content/lessons"

// The kinds of text: one that teaches rules and one that teaches none, such as the glossary.
const (
	KindLesson = "lesson"
	KindPage   = "page"
)

// Lesson is one page's worth of text.
type Lesson struct {
	ID, Name, Arabic, Translit string
	Family                     string   // that of its first rule; empty on a page
	Rules                      []string // ids, in the order of the front matter; empty on a page
	Needs                      []string // ids of rules of other lessons that these rules need
	Counts                     []int    // counts that its rules may hold, ascending
	Kind                       string   // KindLesson or KindPage
	Order                      int      // of a page, from the front matter; that of lessons is computed from their rules
	HTML                       string   // valid HTML with headings from h2, the page gives h1; of a lesson its first minute
	Parts                      []Part   // what follows the first minute, in the order of the text; empty on a page
	Onward                     string   // the same, of what comes after the lines to try; empty on a page
	Examples                   []Example
	Points                     []Pointer // what it says of the order of the lessons; see CheckOrder
	src                        *source
}

// RuleIDs are the rules as the engine names them.
func (l *Lesson) RuleIDs() (ids []recite.RuleID) {
	for _, name := range l.Rules {
		if r, ok := recite.ParseRule(name); ok {
			ids = append(ids, r)
		}
	}
	return ids
}

// Example is one worked example: words of a verse in which the engine found the rule. Verse is an
// index in mushaf.Text.Verses; First and Last are words from 0, both included.
type Example struct {
	Verse       int
	First, Last int
	Rule        string
	Line        int // in the lesson's file
	off         int
}

// Finder finds every event of a verse under all conditions. *recite.Engine is one.
type Finder interface {
	Verse(dst []recite.Event, v int) []recite.Event
}

// Load reads every *.md file of dir, and terms.json. Lessons and pages come back by id. If the
// diagnostics hold an error, they may lack parts.
func Load(dir fs.FS, t *mushaf.Text, e Finder, rs []rules.Rule) ([]Lesson, []diag.Diagnostic) {
	c := &course{text: t, engine: e, rules: map[string]rules.Rule{}, list: rs, byID: map[string]*Lesson{}}
	for _, r := range rs {
		c.rules[r.ID] = r
	}
	c.readTerms(dir)
	names, err := fs.Glob(dir, "*.md")
	if err != nil || len(names) == 0 {
		return nil, append(c.diags, diag.Diagnostic{File: Dir, Found: "there is no lesson", Do: "put lessons there as ID.md"})
	}
	for _, n := range names {
		src, err := fs.ReadFile(dir, n)
		if err != nil {
			c.diags = append(c.diags, diag.Diagnostic{File: path.Join(Dir, n), Found: err.Error()})
			continue
		}
		c.read(n, string(src))
	}
	for _, l := range c.lessons {
		c.render(l)
	}
	c.check()
	diag.Sort(c.diags)
	out := make([]Lesson, len(c.lessons))
	for i, l := range c.lessons {
		out[i] = *l
		out[i].src = nil
	}
	return out, c.diags
}

// course is what all lessons share while they are read.
type course struct {
	text    *mushaf.Text
	engine  Finder
	rules   map[string]rules.Rule
	list    []rules.Rule
	terms   []Term
	lessons []*Lesson
	byID    map[string]*Lesson
	events  []recite.Event // buffer
	diags   []diag.Diagnostic
}

// source is one file.
type source struct {
	file string
	text string
	body int // offset of the text after the front matter
}

// at returns line and column, both from 1, the column in characters.
func (s *source) at(off int) (line, col int) {
	off = min(max(off, 0), len(s.text))
	before := s.text[:off]
	return 1 + strings.Count(before, "\n"), 1 + utf8.RuneCountInString(before[strings.LastIndexByte(before, '\n')+1:])
}

// report adds an error about the byte at off of a file.
func (c *course) report(s *source, off int, do, found string, args ...any) {
	line, col := s.at(off)
	c.diags = append(c.diags, diag.Diagnostic{File: s.file, Line: line, Col: col, Found: fmt.Sprintf(found, args...), Do: do})
}

// render makes the HTML of a lesson, after all front matter has been read.
func (c *course) render(l *Lesson) {
	body := []byte(l.src.text[l.src.body:])
	p := &pass{course: c, lesson: l, body: body}
	md := p.markdown()
	doc := p.parse(md)
	p.inspect(doc)
	onward := p.cutOnward(doc)
	html := func(n ast.Node) string {
		var b bytes.Buffer
		if err := md.Renderer().Render(&b, body, n); err != nil {
			c.report(l.src, l.src.body, "", "the text cannot be rendered: %v", err)
		}
		return b.String()
	}
	l.Onward = html(onward)
	if l.Kind == KindLesson {
		p.divide(doc, html)
	} else {
		l.HTML = html(doc)
	}
}

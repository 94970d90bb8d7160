package lesson

import (
	"fmt"
	"path"
	"regexp"
	"slices"

	"github.com/yuin/goldmark/ast"

	"sutur/generator/internal/diag"
)

// Pointer is a link that says when its lesson is taught. Line and Col are its place in the file of
// the lesson it stands in.
type Pointer struct {
	Lesson, Where string
	Line, Col     int
}

// wheres are the words after the id in [[lesson:ID WHERE]]: the lesson is the first of all, comes
// straight after the one it is named in, or some time after or before it.
var wheres = []string{"first", "next", "later", "earlier"}

var (
	// timing is how a text speaks of when something is taught.
	timing = regexp.MustCompile(`(?i)\b(comes?|taught|learnt?) (soon|later|next)\b|\bthe (first|next|last) lesson\b|\b(earlier|later|previous) lesson`)
	pinned = regexp.MustCompile(`\[\[lesson:[a-z-]+ [a-z]+\]\]`)
)

// point takes in one pointer.
func (p inlineParser) point(id, where string, off int) {
	if !slices.Contains(wheres, where) {
		p.report(off, "write first, next, later or earlier after the id, or nothing", "the lesson %s is taught %q", id, where)
		return
	}
	line, col := p.lesson.src.at(p.lesson.src.body + off)
	p.lesson.Points = append(p.lesson.Points, Pointer{id, where, line, col})
}

// timed reports a block of text that says when something is taught and does not name the lesson in
// a way that is checked.
func (p *pass) timed(n ast.Node) {
	if n.Type() != ast.TypeBlock || n.Lines() == nil || n.Lines().Len() == 0 {
		return
	}
	first := n.Lines().At(0).Start
	raw := p.body[first:n.Lines().At(n.Lines().Len()-1).Stop]
	if at := timing.FindIndex(raw); at != nil && !pinned.Match(raw) {
		p.report(first+at[0], "name the lesson as [[lesson:ID later]], also first, next or earlier, so that the order is checked", "%q without a lesson", raw[at[0]:at[1]])
	}
}

// CheckOrder compares what the lessons say of the order with the order they are taught in, which is
// that of list; pages stand in it as well, after the lessons.
func CheckOrder(list []Lesson) (ds []diag.Diagnostic) {
	at := map[string]int{}
	for i, l := range list {
		at[l.ID] = i
	}
	for i, l := range list {
		for _, p := range l.Points {
			to := at[p.Lesson]
			right := map[string]bool{"first": to == 0, "next": to == i+1, "later": to > i, "earlier": to < i}[p.Where]
			if list[to].Kind == KindPage || l.Kind == KindPage && p.Where != "first" {
				ds = append(ds, p.problem(l, "the order is that of the lessons with rules; a page can name the first of them", "%s is no lesson of the order, seen from here", p.Lesson))
			} else if !right {
				ds = append(ds, p.problem(l, "say it as it is taught, or leave the word away", "%s is not %s: it is lesson %d, this is %d", p.Lesson, p.Where, to+1, i+1))
			}
		}
	}
	return ds
}

func (p Pointer) problem(in Lesson, do, found string, args ...any) diag.Diagnostic {
	return diag.Diagnostic{File: path.Join(Dir, in.ID+".md"), Line: p.Line, Col: p.Col, Found: fmt.Sprintf(found, args...), Do: do}
}

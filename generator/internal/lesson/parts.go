package lesson

import (
	"bytes"

	"github.com/yuin/goldmark/ast"
)

// Two sections of a lesson are known by their headings: what is shown with the hand belongs to the
// first minute, and the places that look alike are set side by side.
const (
	showID  = "show-it-in-one-minute"
	alikeID = "look-alike-read-differently"
)

// Part is a section of a lesson below its first minute. Title and HTML are valid HTML; ID is the
// anchor of its heading.
type Part struct{ ID, Title, HTML string }

// section is a heading of level 2 with all that stands below it, taken out of the document.
type section struct {
	id   string
	head *ast.Heading
	body *ast.Document
}

// cutSections takes every section out of doc; what stands above the first stays.
func cutSections(doc ast.Node) (list []section) {
	for n := doc.FirstChild(); n != nil; {
		next := n.NextSibling()
		if h, ok := n.(*ast.Heading); ok && h.Level == 2 {
			id, _ := h.AttributeString("id")
			name, _ := id.([]byte)
			list = append(list, section{string(name), h, ast.NewDocument()})
			doc.RemoveChild(doc, n)
		} else if len(list) > 0 {
			body := list[len(list)-1].body
			body.AppendChild(body, n)
		}
		n = next
	}
	return list
}

// divide makes the minute, HTML, and the parts of a lesson: first what you see and hear, one large
// word and how to show it, then every other section. html renders a node.
func (p *pass) divide(doc ast.Node, html func(ast.Node) string) {
	large := p.shortest(doc)
	sections := cutSections(doc)
	var minute bytes.Buffer
	minute.WriteString(html(doc))
	if large != nil {
		large.large = true
		minute.WriteString(html(large))
		large.large = false
	}
	for _, s := range sections {
		if s.id == alikeID {
			p.pairUp(s.body)
		}
		if s.id == showID {
			minute.WriteString(html(s.head) + html(s.body))
			continue
		}
		var title bytes.Buffer
		for n := s.head.FirstChild(); n != nil; n = n.NextSibling() {
			title.WriteString(html(n))
		}
		p.lesson.Parts = append(p.lesson.Parts, Part{s.id, title.String(), html(s.body)})
	}
	p.lesson.HTML = minute.String()
}

// shortest returns the worked example of the lesson's first rule with the fewest words, the first
// of equal ones: it is shown large. A lesson without one has been reported.
func (p *pass) shortest(doc ast.Node) (best *example) {
	_ = ast.Walk(doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		e, ok := n.(*example)
		if ok && entering && len(p.lesson.Rules) > 0 && e.place.rule == p.lesson.Rules[0] && (best == nil || e.words() < best.words()) {
			best = e
		}
		return ast.WalkContinue, nil
	})
	return best
}

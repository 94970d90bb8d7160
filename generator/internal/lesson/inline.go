package lesson

import (
	"bytes"
	"html"
	"strings"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"sutur/generator/internal/poem"
)

var kindSpan = ast.NewNodeKind("SuturSpan")

// span is what double brackets stand for, ready to be written.
type span struct {
	ast.BaseInline
	html  string
	words bool // it is words of a verse
}

func (*span) Kind() ast.NodeKind           { return kindSpan }
func (s *span) Dump(src []byte, level int) { ast.DumpHelper(s, src, level, nil, nil) }

// inlineParser reads [[…]]: words of a verse (place.go), or one of
//
//	[[letters:RULE]]  the letters that decide a rule, large
//	[[letter:NAME]]   one letter of the alphabet
//	[[sign:NAME]]     a sign of the text
//	[[term:ID]]       the Arabic of a term or a rule
//	[[lesson:ID]]     a link to another lesson, by its name; [[lesson:ID later]] also says when it is taught (order.go)
//	[[poem:ID]]       a line of a teaching poem (package poem)
type inlineParser struct{ *pass }

func (inlineParser) Trigger() []byte { return []byte{'['} }

func (p inlineParser) Parse(_ ast.Node, r text.Reader, _ parser.Context) ast.Node {
	line, seg := r.PeekLine()
	if !bytes.HasPrefix(line, []byte("[[")) {
		return nil
	}
	end := bytes.Index(line, []byte("]]"))
	if end < 0 {
		p.report(seg.Start, "write ]] on the same line", "the brackets do not close")
		return nil
	}
	r.Advance(end + 2)
	s := &span{}
	content, off := string(line[2:end]), seg.Start+2
	kind, name, ok := strings.Cut(content, ":")
	switch {
	case ok && kind == "letters":
		p.letters(s, name, off)
	case ok && kind == "letter":
		r, found := letterNames[name]
		p.named(s, "letter", name, string(r), found, off)
	case ok && kind == "sign":
		p.named(s, "sign", name, signs[name], signs[name] != "", off)
	case ok && kind == "term":
		ar, found := p.term(name)
		p.named(s, "term", name, ar, found, off)
	case ok && kind == "poem":
		line, found := poem.Find(name)
		p.named(s, "poem", name, line.Text, found, off)
	case ok && kind == "lesson":
		p.link(s, name, off)
	default:
		p.place(s, content, off)
	}
	return s
}

func (p inlineParser) named(s *span, kind, name, arabic string, found bool, off int) {
	if !found {
		p.report(off, "see letters.go for letters and signs, "+TermsFile+" and the rules for terms, package poem for lines", "there is no %s %q", kind, name)
		return
	}
	s.html = `<bdi lang="ar" dir="rtl" class="` + kind + `">` + arabic + `</bdi>`
}

func (p inlineParser) letters(s *span, rule string, off int) {
	set := letterSet(rule)
	if len(set) == 0 {
		p.report(off, "name a rule that letters decide", "no set of letters decides %q", rule)
		return
	}
	var b strings.Builder
	b.WriteString(`<span lang="ar" dir="rtl" class="letters">`)
	for i, r := range set {
		if i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(`<span class="letter">` + string(r) + `</span>`)
	}
	b.WriteString(`</span>`)
	s.html = b.String()
}

func (p inlineParser) link(s *span, id string, off int) {
	id, where, timed := strings.Cut(id, " ")
	l, ok := p.byID[id]
	if timed && ok {
		p.point(id, where, off)
	}
	if !ok {
		p.report(off, "name a lesson by its id", "there is no lesson %q", id)
		return
	}
	s.html = `<a href="` + l.ID + `.html">` + html.EscapeString(l.Name) + `</a>`
}

func (p inlineParser) place(s *span, content string, off int) {
	pl, bad := parseInline(content)
	if bad != nil {
		p.report(off+bad.off, bad.do, "%s", bad.found)
		return
	}
	at, ok := p.locate(p.lesson.src, p.lesson.src.body+off, pl)
	if !ok {
		return
	}
	evs := p.prove(p.lesson.src, p.lesson.src.body+off, p.lesson.src.body+off+pl.ruleOff, pl, at)
	s.html, s.words = p.inline(pl, at, evs), true
}

func (p *pass) renderSpan(w util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		w.WriteString(n.(*span).html)
	}
	return ast.WalkSkipChildren, nil
}

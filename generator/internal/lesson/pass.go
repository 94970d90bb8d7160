package lesson

import (
	"fmt"
	"strings"
	"unicode"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"
)

// pass is the way of one lesson through goldmark. body is its Markdown; offsets of nodes are in it.
type pass struct {
	*course
	lesson *Lesson
	body   []byte
}

// markdown puts our block before goldmark's fenced code and our brackets before its links.
func (p *pass) markdown() goldmark.Markdown {
	return goldmark.New(
		goldmark.WithExtensions(extension.Typographer),
		goldmark.WithParserOptions(
			parser.WithAutoHeadingID(),
			parser.WithBlockParsers(util.Prioritized(blockParser{p}, 650)),
			parser.WithInlineParsers(util.Prioritized(inlineParser{p}, 150)),
		),
		goldmark.WithRendererOptions(renderer.WithNodeRenderers(util.Prioritized(p, 500))),
	)
}

func (p *pass) parse(md goldmark.Markdown) ast.Node {
	return md.Parser().Parse(text.NewReader(p.body))
}

// RegisterFuncs tells goldmark who writes our nodes.
func (p *pass) RegisterFuncs(r renderer.NodeRendererFuncRegisterer) {
	r.Register(kindBlock, p.renderBlock)
	r.Register(kindExample, p.renderExample)
	r.Register(kindItem, p.renderItem)
	r.Register(kindSpan, p.renderSpan)
	r.Register(kindHalf, p.renderHalf)
	r.Register(ast.KindParagraph, p.renderParagraph)
}

// report adds an error about the byte at off of the body.
func (p *pass) report(off int, do, found string, args ...any) {
	p.course.report(p.lesson.src, p.lesson.src.body+off, do, found, args...)
}

// inspect looks at what goldmark read: headings in order, no HTML, links that lead somewhere, no
// Arabic typed by hand.
func (p *pass) inspect(doc ast.Node) {
	p.typedArabic()
	level, broken := 1, false
	_ = ast.Walk(doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		p.timed(n)
		switch n := n.(type) {
		case *ast.Heading:
			if n.Level < 2 || n.Level > level+1 {
				p.report(place0(n), fmt.Sprintf("levels 2 to %d are accepted here; the page itself has level 1", level+1), "a heading of level %d", n.Level)
			}
			level = max(n.Level, 2)
		case *ast.ThematicBreak:
			if p.lesson.Kind != KindLesson || broken || n.Parent() != doc || n.NextSibling() == nil {
				p.report(place0(n), "write it once, in a lesson, above what comes after the lines to try", "a line --- that is not wanted here")
			}
			broken = true
		case *ast.HTMLBlock, *ast.RawHTML:
			p.report(place0(n), "write it as Markdown", "HTML is not read")
		case *ast.FencedCodeBlock, *ast.CodeBlock:
			p.report(place0(n), "verse, check and glossary are accepted; begin other lines without four spaces", "a block that is not known")
		case *ast.Image:
			p.report(place0(n), "say it in words", "pictures are not read")
		case *ast.Link:
			p.checkLink(n)
		case *ast.AutoLink:
			p.report(place0(n), "name the source in words", "a link to another host")
		}
		return ast.WalkContinue, nil
	})
}

// cutOnward takes what stands below the thematic break out of doc. Only a lesson has one, with
// something below it.
func (p *pass) cutOnward(doc ast.Node) ast.Node {
	onward := ast.NewDocument()
	for n := doc.FirstChild(); n != nil; n = n.NextSibling() {
		if n.Kind() != ast.KindThematicBreak {
			continue
		}
		for below := n.NextSibling(); below != nil; below = n.NextSibling() {
			onward.AppendChild(onward, below)
		}
		doc.RemoveChild(doc, n)
		break
	}
	return onward
}

// checkLink accepts the site's own pages.
func (p *pass) checkLink(n *ast.Link) {
	to, _, _ := strings.Cut(string(n.Destination), "#")
	id, isPage := strings.CutSuffix(to, ".html")
	if to == "../about.html" || to == "../index.html" || isPage && p.byID[id] != nil {
		return
	}
	p.report(place0(n), "use ID.html of a lesson, ../about.html or ../index.html", "a link to %q, which is no page of the site", n.Destination)
}

// typedArabic reports every run of Arabic in the Markdown.
func (p *pass) typedArabic() {
	in := false
	for i, r := range string(p.body) {
		ar := unicode.Is(unicode.Arabic, r) || r >= 0x600 && r <= 0x6FF || r >= 0x8A0 && r <= 0x8FF
		if ar && !in {
			p.report(i, "use [[surah:verse.word]] for words of the text, and [[term:…]], [[letter:…]] or [[sign:…]]", "Arabic typed by hand")
		}
		in = ar
	}
}

// place0 is where a node begins in the body, as near as goldmark tells.
func place0(n ast.Node) int {
	for ; n != nil; n = n.Parent() {
		switch x := n.(type) {
		case *ast.RawHTML:
			return x.Segments.At(0).Start
		case *ast.Text:
			return x.Segment.Start
		}
		if n.Type() == ast.TypeBlock && n.Lines() != nil && n.Lines().Len() > 0 {
			return n.Lines().At(0).Start
		}
		if t, ok := n.FirstChild().(*ast.Text); ok {
			return t.Segment.Start
		}
	}
	return 0
}

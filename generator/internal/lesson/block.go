package lesson

import (
	"bytes"
	"fmt"
	"strings"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"sutur/generator/internal/recite"
)

// The nodes of our blocks. A block's lines are its children, so that goldmark reads their notes as
// inline text.
var (
	kindBlock   = ast.NewNodeKind("SuturBlock")
	kindExample = ast.NewNodeKind("SuturExample")
	kindItem    = ast.NewNodeKind("SuturItem")
)

// block is a fenced block of ours: verse, check or glossary.
type block struct {
	ast.BaseBlock
	name   string
	off    int // in the body
	closed bool
}

func (*block) Kind() ast.NodeKind             { return kindBlock }
func (b *block) Dump(src []byte, level int)   { ast.DumpHelper(b, src, level, nil, nil) }
func (*example) Kind() ast.NodeKind           { return kindExample }
func (e *example) Dump(src []byte, level int) { ast.DumpHelper(e, src, level, nil, nil) }
func (*checkItem) Kind() ast.NodeKind         { return kindItem }
func (i *checkItem) Dump(s []byte, level int) { ast.DumpHelper(i, s, level, nil, nil) }

// example is one line of a verse block; its inline children are the note.
type example struct {
	ast.BaseBlock
	place place
	at    spot
	evs   []recite.Event // to mark
	large bool           // it is being written once more, as the word of the first minute
}

func (e *example) words() int { return e.at.last - e.at.first + 1 }

// checkItem is a question of a check block; its children are the paragraphs of question and answer.
type checkItem struct{ ast.BaseBlock }

// blockParser reads "```verse", "```check" and "```glossary" up to "```".
type blockParser struct{ *pass }

func (blockParser) Trigger() []byte             { return []byte{'`'} }
func (blockParser) CanInterruptParagraph() bool { return true }
func (blockParser) CanAcceptIndentedLine() bool { return false }

// Open takes the line that names one of our blocks; any other fence is goldmark's.
func (p blockParser) Open(_ ast.Node, r text.Reader, _ parser.Context) (ast.Node, parser.State) {
	line, seg := r.PeekLine()
	name, ok := strings.CutPrefix(string(bytes.TrimSpace(line)), "```")
	if !ok || name != "verse" && name != "check" && name != "glossary" {
		return nil, parser.NoChildren
	}
	return &block{name: name, off: seg.Start}, parser.NoChildren
}

// Continue takes one line into the block.
func (p blockParser) Continue(node ast.Node, r text.Reader, _ parser.Context) parser.State {
	b := node.(*block)
	line, seg := r.PeekLine()
	r.AdvanceToEOL()
	trimmed := bytes.TrimSpace(line)
	if string(trimmed) == "```" {
		b.closed = true
		return parser.Close
	}
	if len(trimmed) > 0 {
		seg = seg.TrimLeftSpace(r.Source())
		seg = seg.TrimRightSpace(r.Source())
		seg.Padding = 0
		switch b.name {
		case "verse":
			p.exampleLine(b, seg)
		case "check":
			p.checkLine(b, seg)
		default:
			p.report(seg.Start, "leave it empty", "a %s block has no lines", b.name)
		}
	}
	return parser.Continue | parser.NoChildren
}

// Close reports a block without an end, or a question without its answer.
func (p blockParser) Close(node ast.Node, _ text.Reader, _ parser.Context) {
	b := node.(*block)
	if !b.closed {
		p.report(b.off, "end it with ``` on a line of its own", "the %s block does not end", b.name)
	}
	if i, ok := b.LastChild().(*checkItem); ok && i.ChildCount() == 1 {
		p.report(b.off, "write A and the answer under the last question", "a question has no answer")
	}
	if b.ChildCount() == 0 && b.name != "glossary" {
		p.report(b.off, "write a line into it", "the %s block is empty", b.name)
	}
}

func (p blockParser) exampleLine(b *block, seg text.Segment) {
	pl, bad := parseLine(string(seg.Value(p.body)))
	if bad != nil {
		p.report(seg.Start+bad.off, bad.do, "%s", bad.found)
		return
	}
	off := p.lesson.src.body + seg.Start
	at, ok := p.locate(p.lesson.src, off, pl)
	if !ok {
		return
	}
	evs := p.prove(p.lesson.src, off, off+pl.ruleOff, pl, at)
	line, _ := p.lesson.src.at(off)
	p.lesson.Examples = append(p.lesson.Examples, Example{at.verse, at.first, at.last, pl.rule, line, off})
	e := &example{place: pl, at: at, evs: evs}
	if pl.note >= 0 {
		e.Lines().Append(seg.WithStart(seg.Start + pl.note))
	}
	b.AppendChild(b, e)
}

func (p blockParser) checkLine(b *block, seg text.Segment) {
	line := string(seg.Value(p.body))
	last, _ := b.LastChild().(*checkItem)
	waits := last != nil && last.ChildCount() == 1
	question := strings.HasPrefix(line, "Q ")
	switch {
	case question && waits:
		p.report(seg.Start, "write A and the answer before the next question", "a question has no answer")
	case !question && (!strings.HasPrefix(line, "A ") || !waits):
		p.report(seg.Start, "write Q and a question on one line, A and its answer on the next", "found %q", line)
	default:
		if question {
			last = &checkItem{}
			b.AppendChild(b, last)
		}
		para := ast.NewParagraph()
		para.Lines().Append(seg.WithStart(seg.Start + 2))
		last.AppendChild(last, para)
	}
}

// renderBlock writes what stands around the lines of a block.
func (p *pass) renderBlock(w util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	switch b := n.(*block); {
	case b.name == "verse" && entering:
		w.WriteString("<div class=\"verses\" role=\"group\" aria-label=\"Examples\" tabindex=\"0\">\n")
	case b.name == "verse":
		w.WriteString("</div>\n")
	case b.name == "check" && entering:
		w.WriteString("<ol class=\"check\">\n")
	case b.name == "check":
		w.WriteString("</ol>\n")
	case b.name == "glossary" && entering:
		w.WriteString(p.glossary())
	}
	return ast.WalkContinue, nil
}

func (p *pass) renderExample(w util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	e := n.(*example)
	if entering {
		w.WriteString(p.figure(e.place, e.at, e.evs, e.large))
		return ast.WalkContinue, nil
	}
	if all := e.Parent().ChildCount(); all > 1 && !e.large {
		fmt.Fprintf(w, ` <span class="nth">%d/%d</span>`, 1+before(e), all)
	}
	w.WriteString("</figcaption></figure>\n")
	return ast.WalkContinue, nil
}

// before counts the nodes before n under its parent.
func before(n ast.Node) (count int) {
	for n = n.PreviousSibling(); n != nil; n = n.PreviousSibling() {
		count++
	}
	return count
}

// renderItem writes a question with its answer in an element that opens without a script. It comes
// open, for paper and for a page without its script; the script closes it.
func (p *pass) renderItem(w util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		w.WriteString("<li>")
	} else {
		w.WriteString("</li>\n")
	}
	return ast.WalkContinue, nil
}

// renderParagraph puts the answer of a check into its own element; other paragraphs are as goldmark
// writes them.
func (p *pass) renderParagraph(w util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	answer := n.Parent().Kind() == kindItem && n.PreviousSibling() != nil
	switch {
	case answer && entering:
		w.WriteString("<details open=\"\"><summary>Answer</summary><p>")
	case answer:
		w.WriteString("</p></details>")
	case entering:
		w.WriteString("<p>")
	default:
		w.WriteString("</p>\n")
	}
	return ast.WalkContinue, nil
}

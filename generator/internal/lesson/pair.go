package lesson

import (
	"bytes"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/util"
)

var kindHalf = ast.NewNodeKind("SuturHalf")

// half is one side of a pair: words of a verse and what is said of them.
type half struct{ ast.BaseBlock }

func (*half) Kind() ast.NodeKind           { return kindHalf }
func (h *half) Dump(src []byte, level int) { ast.DumpHelper(h, src, level, nil, nil) }

// pairUp sets side by side what a list compares: an item that begins with words of a verse, in
// which another sentence begins with words of a verse, becomes a pair of halves. Other items stay.
func (p *pass) pairUp(doc ast.Node) {
	_ = ast.Walk(doc, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		item, ok := n.(*ast.ListItem)
		if !ok || !entering || item.ChildCount() != 1 {
			return ast.WalkContinue, nil
		}
		line := item.FirstChild()
		if at := p.second(line); at != nil {
			first, second := &half{}, &half{}
			into := first
			for n := line.FirstChild(); n != nil; {
				next := n.NextSibling()
				if n == at {
					into = second
				}
				if into.ChildCount() == 0 {
					into.AppendChild(into, ast.NewTextBlock())
				}
				into.FirstChild().AppendChild(into.FirstChild(), n)
				n = next
			}
			item.RemoveChildren(item)
			item.AppendChild(item, first)
			item.AppendChild(item, second)
			item.SetAttributeString("class", []byte("pair"))
		}
		return ast.WalkSkipChildren, nil
	})
}

// second finds the words that begin the second half of a line; nil where it has none.
func (p *pass) second(line ast.Node) ast.Node {
	if s, ok := line.FirstChild().(*span); !ok || !s.words {
		return nil
	}
	for n := line.FirstChild().NextSibling(); n != nil; n = n.NextSibling() {
		s, ok := n.(*span)
		if !ok || !s.words {
			continue
		}
		if before, ok := n.PreviousSibling().(*ast.Text); ok {
			said := bytes.TrimRight(before.Segment.Value(p.body), " ")
			if len(said) > 0 && bytes.IndexByte([]byte(".?,"), said[len(said)-1]) >= 0 {
				return n
			}
		}
	}
	return nil
}

func (p *pass) renderHalf(w util.BufWriter, _ []byte, _ ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		w.WriteString("<div>")
	} else {
		w.WriteString("</div>\n")
	}
	return ast.WalkContinue, nil
}

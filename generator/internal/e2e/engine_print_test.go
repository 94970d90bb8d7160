package e2e

import (
	"bytes"
	"compress/zlib"
	"context"
	"errors"
	"fmt"
	"io"
	"regexp"
	"testing"

	"github.com/chromedp/cdproto/emulation"

	"sutur/generator/internal/engine"
)

// media shows the page as on paper, or again as on a screen. Where a driver cannot, the page's own
// style rules for paper are made rules for the screen.
func (p *page) media(kind string) {
	p.t.Helper()
	if p.tab == nil {
		call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: kind})
		return
	}
	p.must(func(ctx context.Context, _ string) error {
		err := p.tab.Media(ctx, engine.Media{Print: kind == "print"})
		if kind == "print" && !errors.Is(err, engine.ErrCannot) {
			return err
		}
		_, err = p.tab.Eval(ctx, fmt.Sprintf(`(() => {
			const was = globalThis.mediaWas ??= new Map(), print = %t;
			const turn = rules => {
				for (const r of rules) {
					if (r instanceof CSSMediaRule) {
						if (!was.has(r)) was.set(r, r.media.mediaText);
						const own = was.get(r);
						r.media.mediaText = !print ? own : /\bprint\b/.test(own) ? own.replace(/\bprint\b/g, "all") : /\bscreen\b/.test(own) ? "not all" : own;
					}
					if (r.cssRules) turn(r.cssRules);
				}
			};
			for (const s of [...document.styleSheets, ...document.adoptedStyleSheets]) turn(s.cssRules);
			return was.size;
		})()`, kind == "print"))
		return err
	}, "")
}

// TestPrintInEngines lays practice and answers for paper: everything fits, the marks are in their
// colour, and what goes to the printer has the same pages.
func TestPrintInEngines(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.learner(s.address, rule)
		p.lay(s, fmt.Sprintf("#/print?sheet=both&from=%d:%d&to=%[1]d:%[3]d&rule=%s", surah, from, upTo, rule))
		leaves := p.leaves()
		kinds := map[string]int{}
		for _, l := range leaves {
			kinds[l.Sheet]++
		}
		if n := p.count(".leaf:not(:has(.row-line)):not(:has(.totals))"); n > 0 {
			t.Errorf("%d pages have neither lines nor totals", n)
		}
		if kinds["practice"] == 0 || kinds["answer"] == 0 {
			t.Fatalf("the pages are %v, want practice and answers", kinds)
		}
		// In its own size, as it is printed: at that of a phone's screen WebKit's port for GTK sets
		// letters on whole pixels.
		eval[any](p, `(document.querySelector(".leaves").style.setProperty("--zoom", 1), 0)`)
		for _, u := range p.unfit() {
			t.Error(u)
		}

		p.media("print")
		eval[any](p, `(document.querySelector(".leaf[data-sheet=answer] .held").scrollIntoView({ block: "center", inline: "center", behavior: "instant" }), 0)`)
		im := p.settled()
		picture(t, "print-"+b.Name(), im)
		if n, c := count(im, im.Rect, p.colour("var(--c-"+family+")")), p.colour("var(--c-"+family+")"); n < 100 {
			t.Errorf("on paper %d pixels have the colour %v of the marks", n, c)
		}
		p.media("")

		if n, ok := p.printed(); ok && n != len(leaves) {
			t.Errorf("%d pages go to the printer, %d were laid", n, len(leaves))
		}
	})
}

// printed is how many pages go to the printer; not ok where the engine's driver cannot tell, which is
// logged.
func (p *page) printed() (pages int, ok bool) {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, 5*patience)
	defer cancel()
	data, err := p.tab.Print(ctx)
	if errors.Is(err, engine.ErrCannot) {
		p.t.Log(err)
		return 0, false
	}
	if err != nil {
		p.t.Fatal(err)
	}
	return pdfPages(data), true
}

// pdfPages counts the pages of a document: whose objects stand in the open or in packed streams.
func pdfPages(data []byte) int {
	one := regexp.MustCompile(`/Type\s*/Page[^s]`)
	n := len(one.FindAll(data, -1))
	for _, m := range regexp.MustCompile(`stream\r?\n`).FindAllIndex(data, -1) {
		z, err := zlib.NewReader(bytes.NewReader(data[m[1]:]))
		if err != nil {
			continue
		}
		inside, _ := io.ReadAll(z) // ends where the stream ends
		n += len(one.FindAll(inside, -1))
	}
	return n
}

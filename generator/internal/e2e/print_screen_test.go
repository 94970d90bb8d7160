package e2e

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"sutur/generator/internal/recite"
)

// TestPrintCard prints the card with no rule, some, and all.
func TestPrintCard(t *testing.T) {
	s := serve(t, "/", built(t))
	var all []string
	for r := recite.RuleID(0); r < recite.NumRules; r++ {
		all = append(all, r.String())
	}
	for _, n := range []int{0, 1, 9, len(all)} {
		for _, turn := range []string{"portrait", "landscape"} {
			t.Run(fmt.Sprint(n, turn), func(t *testing.T) {
				p := newPage(t)
				p.learner(s.address, all[:n]...)
				p.lay(s, "#/print?sheet=card&paper=letter&turn="+turn)
				doc := p.paper()
				if len(doc.Pages) < 1 || len(doc.Pages) > 2 {
					t.Errorf("%d pages are not the sides of one sheet", len(doc.Pages))
				}
				got := eval[[]string](p, `[...document.querySelectorAll(".card-rule")].map(r => r.dataset.rule)`)
				want := slices.Clone(all[:n])
				slices.Sort(got)
				slices.Sort(want)
				if !slices.Equal(got, want) {
					t.Errorf("the card has %v, want %v", got, want)
				}
				if k := eval[int](p, `document.querySelectorAll(".card-rule .w").length`); k < n {
					t.Errorf("%d example words for %d rules", k, n)
				}
				for _, u := range p.unfit() {
					t.Error(u)
				}
				p.calm()
			})
		}
	}
}

func TestPrintRecord(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	for _, paper := range []string{"a4", "letter"} {
		for _, turn := range []string{"portrait", "landscape"} {
			p.lay(s, "#/print?sheet=record&paper="+paper+"&turn="+turn)
			if doc := p.paper(); len(doc.Pages) != 1 {
				t.Errorf("%s %s: %d pages, want one", paper, turn, len(doc.Pages))
			}
			if n := eval[int](p, `document.querySelectorAll(".week-block li").length`); n != 20 {
				t.Errorf("%s %s: %d sessions, want 20", paper, turn, n)
			}
			for _, u := range p.unfit() {
				t.Errorf("%s %s: %s", paper, turn, u)
			}
		}
	}
	p.calm()
}

// TestPrintAddress opens addresses that cannot be read as they are: the screen says what was found
// and shows a sheet all the same.
func TestPrintAddress(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	for _, x := range []struct{ hash, says string }{
		{"#/print", ""},
		{"#/print?sheet=practice&surah=112&rule=ghunnah", ""},
		{"#/print?sheet=poster", "poster"},
		{"#/print?paper=a3", "a3"},
		{"#/print?size=99", "99"},
		{"#/print?size=-1", "-1"},
		{"#/print?rule=none", "none"},
		{"#/print?from=78:41&to=78:50", "78:41"},
		{"#/print?from=78:9&to=78:2", "78:2"},
		{"#/print?from=x", "x"},
		{"#/print?surah=115", "115"},
		{"#/print?page=0", "0"},
		{"#/print?juz=31", "31"},
		{"#/print?juz=%3Cb%3E", "<b>"},
	} {
		p.lay(s, x.hash)
		said := eval[string](p, `document.querySelector("[data-t=problem]").textContent`)
		if x.says == "" && said != "" || !strings.Contains(said, x.says) {
			t.Errorf("%s: the screen says %q, want something with %q", x.hash, said, x.says)
		}
		if n := len(p.leaves()); n == 0 {
			t.Errorf("%s: no page is shown", x.hash)
		}
	}
	// Lines may begin and end within a verse.
	p.lay(s, "#/print?sheet=both&from=2:282:5&to=2:282:20&rule=noon-ikhfa")
	if n := eval[int](p, `document.querySelectorAll(".leaf[data-sheet=answer] .line .w").length`); n != 16 {
		t.Errorf("words 5 to 20 of 2:282 are %d on paper", n)
	}
	if n := eval[int](p, `document.querySelectorAll(".leaf .ring").length`); n != 0 {
		t.Errorf("%d verse ends are shown where no verse ends", n)
	}
	p.open("about:blank")
	p.open(s.address + "#/print?from=2:1&to=114:6")
	p.wait("the reason", `document.querySelector("[data-t=problem]") && /6,229/.test(document.querySelector("[data-t=problem]").textContent)`)
	if !eval[bool](p, `document.querySelector("[data-t=print-now]").disabled`) {
		t.Error("too many verses can be printed")
	}
	p.calm()
}

// TestPrintFromLines goes from the lines to their sheet, and back to other screens, which must not
// keep the paper's size or colours.
func TestPrintFromLines(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:14")
	p.wait("the lines", `document.querySelector("[data-t=passage]")`)
	eval[any](p, `document.querySelector("[data-t=menu] summary").click(); document.querySelector("[data-t=print]").click(); 0`)
	p.wait("the pages", `document.querySelector("[data-t=print-now]:not(:disabled)")`)
	l := p.leaves()
	if len(l) != 1 || l[0].Sheet != "practice" || len(l[0].Rows) == 0 {
		t.Fatalf("the lines came to %+v", l)
	}
	// What is chosen goes into the address, and the sheet follows.
	eval[any](p, `document.querySelector("[data-t=kind-answer]").click(); 0`)
	p.wait("the answers", `document.querySelector(".leaf[data-sheet=answer] .held")`)
	p.wait("the address", `location.hash.includes("sheet=answer") && location.hash.includes("from=78:12")`)
	eval[any](p, `document.querySelector("[data-t=paper-letter]").click(); document.querySelector("[data-t=turn-landscape]").click(); 0`)
	p.wait("the wide page", `document.querySelector(".leaves[data-turn=landscape] .leaf")`)
	p.wait("the pages", `document.querySelector("[data-t=print-now]:not(:disabled)")`)
	if doc := p.paper(); math.Abs(doc.Pages[0].Width-792) > 1 {
		t.Errorf("the page is %v points wide, want 792", doc.Pages[0].Width)
	}
	eval[any](p, `location.hash = "#/record"; 0`)
	p.wait("the record", `document.querySelector("main.record")`)
	if n := eval[int](p, `[...CSS.highlights.keys()].length`); n != 0 {
		t.Errorf("%d highlights are left behind", n)
	}
	if n := eval[int](p, `document.adoptedStyleSheets.filter(s => [...s.cssRules].some(r => r instanceof CSSPageRule)).length`); n != 0 {
		t.Error("the paper's size is left behind")
	}
	p.calm()
}

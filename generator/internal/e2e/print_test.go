package e2e

import (
	"context"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/performance"
	"github.com/chromedp/chromedp"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// paper prints the page as the browser's own print does and reads the result. A hundred pages take
// their time on a busy machine.
func (p *page) paper() *pdf {
	p.t.Helper()
	ctx, cancel := context.WithTimeout(p.ctx, 5*patience)
	defer cancel()
	yes := true
	r, err := chromedp.Call(ctx, cdppage.PrintToPDF, cdppage.PrintToPDFParams{PreferCSSPageSize: &yes})
	if err != nil {
		p.t.Fatalf("print: %v\n%s", err, p.describe())
	}
	doc, err := readPDF(r.Data)
	if err != nil {
		p.t.Fatal(err)
	}
	return doc
}

// learner puts a learner with rules already taught into the device's database.
func (p *page) learner(address string, taught ...string) {
	p.t.Helper()
	p.open(address)
	p.wait("the first screen", drawn)
	puts := ""
	for _, r := range taught {
		puts += fmt.Sprintf("t.objectStore('taught').put({learner:'x1',rule:%q,since:'2026-01-01',known:''});", r)
	}
	eval[any](p, fmt.Sprintf(`new Promise((ok, no) => { const r = indexedDB.open('sutur'); r.onerror = no; r.onsuccess = () => {
		const t = r.result.transaction(['learners', 'taught'], 'readwrite');
		t.objectStore('learners').put({id:'x1',name:'Nur',place:{s:78,a:1},settled:true,made:'2026-01-01',updated:'2026-01-01'});
		%s
		t.oncomplete = () => { r.result.close(); ok(0); }; t.onerror = no; }; })`, puts))
}

// lay opens the print screen and waits until the pages stand.
func (p *page) lay(s *server, hash string) {
	p.t.Helper()
	p.open("about:blank") // the same page with another hash would not load anew
	p.open(s.address + hash)
	p.wait("the pages", `document.querySelector("[data-t=print-now]:not(:disabled)")`)
}

type laidLeaf struct {
	Sheet string
	Rows  []struct {
		Words   []string
		Numbers []string
		Rings   int
	}
	Notes int
}

// leaves reads the pages on screen.
func (p *page) leaves() []laidLeaf {
	p.t.Helper()
	return eval[[]laidLeaf](p, `[...document.querySelectorAll(".print-stage .leaf")].map(l => ({
		sheet: l.dataset.sheet, notes: l.querySelectorAll(".held, .key").length,
		rows: [...l.querySelectorAll(".row-line:not(.head)")].map(r => ({
			words: [...r.querySelectorAll(".w")].map(w => [...w.childNodes].filter(n => n.nodeType === 3).map(n => n.data).join("")),
			numbers: [...r.querySelectorAll(".numbers span")].map(n => n.textContent), rings: r.querySelectorAll(".ring").length,
		})),
	}))`)
}

// unfit lists what does not fit its place on paper.
func (p *page) unfit() []string {
	p.t.Helper()
	p.media("print")
	defer p.media("")
	return eval[[]string](p, `[...document.querySelectorAll(".print-stage .leaf")].flatMap((l, i) => {
		const out = [], say = (what, el) => out.push("page " + (i + 1) + ": " + what + " " + el.textContent.slice(0, 60)), foot = l.querySelector(".leaf-foot").getBoundingClientRect(), source = l.querySelector(".leaf-foot span").getBoundingClientRect();
		const box = l.getBoundingClientRect(), inner = parseFloat(getComputedStyle(l).paddingLeft) - 1;
		for (const el of l.querySelectorAll(".line, .leaf-head, .week-block li, .numbers, .card-text"))
			// Letters may have boxes higher than their line: in a row of the record, what is seen is measured below.
			if (el.scrollWidth > el.clientWidth + 1 || (!el.matches(".line, .numbers, .card-text, .week-block li") && el.scrollHeight > el.clientHeight + 1)) say("overflows: " + el.className, el);
		for (const el of l.querySelectorAll(".card-text, .card-example")) {
			const r = el.getBoundingClientRect(), rule = el.parentElement.getBoundingClientRect();
			if (r.top < rule.top - 1 || r.bottom > rule.bottom + 1) say("is higher than its place:", el);
		}
		for (const el of l.querySelectorAll(".week-block, .week-block ol, .week-block li, .fill-in, .went, .head-line, .card-rule, .leaf-foot, .cover, .cover-head, .cover-foot, .contents, .contents li, .key-page, .key-list li, .counts-page, .tables, .tally th, .days-page, .days th")) {
			const r = el.getBoundingClientRect();
			for (const k of [...el.children].map(x => x.getBoundingClientRect()))
				if (k.left < r.left - 1 || k.right > r.right + 1 || k.top < r.top - 1 || k.bottom > r.bottom + 1) { say("does not hold what is in it: " + el.className, el); break; }
		}
		for (const el of l.querySelectorAll(".blank")) if (el.getBoundingClientRect().width < 30) say("a blank has no room to write in:", el.parentElement);
		for (const el of l.querySelectorAll("h2, h3, p, li, .fill-in, .went span, .leaf-foot span, .card-ref")) {
			const size = parseFloat(getComputedStyle(el).fontSize) * 72 / 96;
			if (size < 6 && el.textContent) say("is only " + size + " points high:", el);
		}
		for (const el of l.querySelectorAll(".quarter")) {
			const r = el.getBoundingClientRect(), last = el.querySelector("li:last-child");
			if (last && last.getBoundingClientRect().bottom > r.bottom - 4) say("runs over the fold:", last);
		}
		for (const el of l.querySelectorAll(".w")) { const r = el.getBoundingClientRect(); if (r.right > box.right - 8 * 96 / 25.4) say("a word is over the edge:", el); }
		for (const el of l.querySelectorAll(".row-line .line")) { const w = el.lastElementChild.getBoundingClientRect(); if (w.left < box.left + inner + 12 * 96 / 25.4) say("a line runs into the margin:", el); }
		for (const el of l.querySelectorAll(".row-line, .totals, .week-block, .card-rule, .cover-foot, .key-page > *, .tally, .days")) if (el.getBoundingClientRect().bottom > Math.min(foot.bottom, source.top) + 1) say("runs into the foot:", el);
		return out;
	})`)
}

func printText(t testing.TB) *mushaf.Text {
	t.Helper()
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	return text
}

const arabicFont = "ScheherazadeNew-Regular"

// sizes are ISO 216 A4 and ANSI A (Letter), in points.
var sizes = map[string][2]float64{"a4": {595.28, 841.89}, "letter": {612, 792}}

func TestPrintSheets(t *testing.T) {
	s := serve(t, "/", built(t))
	text := printText(t)
	p := newPage(t)
	p.learner(s.address, "ghunnah", "qalqalah", "noon-izhar", "madd-tabii", "hamzat-wasl", "sun-lam")
	for _, paper := range []string{"a4", "letter"} {
		for _, turn := range []string{"portrait", "landscape"} {
			for _, x := range []struct {
				ref  string
				show string
				size int
			}{{"78:1-78:16", "learnt", 32}, {"111:4-113:2", "all", 48}, {"2:282-2:282", "focus", 24}} {
				name := fmt.Sprintf("%s %s %s %d", paper, turn, x.ref, x.size)
				t.Run(name, func(t *testing.T) {
					p := p
					p.t = t
					from, to, _ := strings.Cut(x.ref, "-")
					p.lay(s, fmt.Sprintf("#/print?sheet=both&from=%s&to=%s&rule=noon-ikhfa&show=%s&size=%d&paper=%s&turn=%s", from, to, x.show, x.size, paper, turn))
					wide, high := sizes[paper][0], sizes[paper][1]
					if turn == "landscape" {
						wide, high = high, wide
					}
					checkSheets(t, text, x.ref, p.leaves(), p.paper(), wide, high, float64(x.size))
					for _, u := range p.unfit() {
						t.Error(u)
					}
				})
			}
		}
	}
	p.t = t
	p.calm()
	p.stayedAt(s.address)
}

func checkSheets(t *testing.T, text *mushaf.Text, ref string, leaves []laidLeaf, doc *pdf, wide, high, size float64) {
	t.Helper()
	if len(doc.Pages) != len(leaves) {
		t.Fatalf("%d pages printed, %d laid out", len(doc.Pages), len(leaves))
	}
	for name, ok := range doc.Fonts {
		if !ok {
			t.Errorf("the font %q is not in the document", name)
		}
	}
	if !doc.Fonts[arabicFont] {
		t.Errorf("the reading font is not used: %v", doc.Fonts)
	}
	var sheets [2][]laidLeaf
	var pages [2][]pdfPage
	for i, l := range leaves {
		k := 0
		if l.Sheet == "answer" {
			k = 1
		}
		sheets[k], pages[k] = append(sheets[k], l), append(pages[k], doc.Pages[i])
		pg := doc.Pages[i]
		if math.Abs(pg.Width-wide) > 1 || math.Abs(pg.Height-high) > 1 {
			t.Errorf("page %d is %.1f by %.1f points, want %.1f by %.1f", i+1, pg.Width, pg.Height, wide, high)
		}
		const margin = 13 * 72 / 25.4
		for _, g := range pg.Glyphs {
			if g.X < margin-2 || g.X > wide-margin+1 || g.Y < 8*72/25.4 || g.Y > high-margin+1 {
				t.Errorf("page %d: a glyph of %s stands at %.1f, %.1f, outside the margins", i+1, g.Font, g.X, g.Y)
			}
			grey := g.Ink[0] == g.Ink[1] && g.Ink[1] == g.Ink[2]
			if l.Sheet != "practice" {
				continue
			}
			if !grey {
				t.Errorf("page %d of the practice sheet has colour %v", i+1, g.Ink)
			}
			// The clip cuts what lies outside: a glyph's origin never may.
			if g.X < g.Clip[0]-1 || g.X > g.Clip[2]+1 || g.Y < g.Clip[1]-1 || g.Y > g.Clip[3]+1 {
				t.Errorf("page %d: a glyph at %.1f, %.1f is cut off by %v", i+1, g.X, g.Y, g.Clip)
			}
		}
	}
	// The answer sheet may have one page more, for the totals.
	if d := len(sheets[1]) - len(sheets[0]); d != 0 && d != 1 {
		t.Fatalf("%d pages to practise on, %d of answers", len(sheets[0]), len(sheets[1]))
	}
	coloured, notes := 0, 0
	var words []string
	for i, a := range sheets[0] {
		b := sheets[1][i]
		if fmt.Sprint(a.Rows) != fmt.Sprint(b.Rows) {
			t.Errorf("page %d: the two sheets differ:\n%v\n%v", i+1, a.Rows, b.Rows)
		}
		if a.Notes != 0 {
			t.Errorf("page %d to practise on has %d notes", i+1, a.Notes)
		}
		notes += b.Notes
		for _, r := range a.Rows {
			if len(r.Words) == 0 || len(r.Numbers) != r.Rings {
				t.Errorf("page %d: a line has %d words, %d verse numbers, %d verse ends", i+1, len(r.Words), len(r.Numbers), r.Rings)
			}
			for _, w := range r.Words {
				words = append(words, strings.TrimSuffix(w, " "))
			}
		}
		x, y := placed(pages[0][i], size), placed(pages[1][i], size)
		if len(x) == 0 {
			t.Errorf("page %d has no letters of %v points", i+1, size)
		}
		if len(x) != len(y) {
			t.Errorf("page %d has %d glyphs of the text to practise on, %d on the answer sheet", i+1, len(x), len(y))
		}
		for _, g := range x {
			if !slices.ContainsFunc(y, g.at) {
				t.Errorf("page %d: glyph %d at %.1f, %.1f does not stand there on the answer sheet", i+1, g.Code, g.X, g.Y)
				break
			}
		}
		for _, g := range pages[1][i].Glyphs {
			if g.Font == arabicFont && g.Ink[0] != g.Ink[1] {
				coloured++
			}
		}
	}
	if coloured == 0 || notes == 0 {
		t.Errorf("the answers have %d coloured letters and %d notes", coloured, notes)
	}
	want := wordsOf(t, text, ref)
	if !slices.Equal(words, want) {
		t.Errorf("the words on paper are not those of the text: %d, want %d", len(words), len(want))
	}
}

// versesOf are the verses of a reference, by their place in the text.
func versesOf(t *testing.T, text *mushaf.Text, ref string) (list []int) {
	t.Helper()
	ranges, err := mushaf.ParseRefs(text, ref)
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range ranges {
		for i := r.First; i <= r.Last; i++ {
			list = append(list, i)
		}
	}
	return list
}

// wordsOf are the words of a reference in their order.
func wordsOf(t *testing.T, text *mushaf.Text, ref string) (words []string) {
	t.Helper()
	for _, i := range versesOf(t, text, ref) {
		words = append(words, strings.Split(text.Verses[i].Text, " ")...)
	}
	return words
}

// placed lists the letters of a size with their places, each once: a browser paints a joined pair
// of letters twice when its halves have two colours.
func placed(pg pdfPage, size float64) []pdfGlyph {
	var out []pdfGlyph
	for _, g := range pg.Glyphs {
		if g.Font == arabicFont && math.Abs(g.Size-size) < .2 && !slices.ContainsFunc(out, g.at) {
			out = append(out, g)
		}
	}
	return out
}

// at tells whether two glyphs are the same at the same place, within half a point.
func (g pdfGlyph) at(h pdfGlyph) bool {
	return g.Code == h.Code && math.Abs(g.X-h.X) < .5 && math.Abs(g.Y-h.Y) < .5
}

// TestPrintTotals holds the totals of an answer sheet against the engine.
func TestPrintTotals(t *testing.T) {
	s := serve(t, "/", built(t))
	text := printText(t)
	engine := recite.New(text)
	p := newPage(t)
	for _, ref := range []string{"78:1-78:16", "1:1-2:5", "55:1-55:78", "112:1-114:6"} {
		ranges, err := mushaf.ParseRefs(text, ref)
		if err != nil {
			t.Fatal(err)
		}
		want := map[string]int{}
		var events []recite.Event
		for _, r := range ranges {
			for i := r.First; i <= r.Last; i++ {
				events = engine.Reading(events[:0], i, recite.Reading{})
				for _, e := range events {
					if !e.Unwritten {
						want[e.Rule.String()]++
					}
				}
			}
		}
		from, to, _ := strings.Cut(ref, "-")
		p.lay(s, "#/print?sheet=answer&from="+from+"&to="+to+"&rule=&show=all")
		got := eval[map[string]int](p, `Object.fromEntries([...document.querySelectorAll(".totals li")].map(l => [l.dataset.rule, Number(l.dataset.n)]))`)
		if fmt.Sprint(got) != fmt.Sprint(want) {
			t.Errorf("%s: the sheet adds up to\n%v, the engine to\n%v", ref, got, want)
		}
		// Every place is named on the sheet by the short name of its rule.
		keys := eval[map[string]int](p, `(() => { const n = {}; document.querySelectorAll(".key").forEach(k => k.textContent.split(" ").forEach(x => n[x] = (n[x] ?? 0) + 1));
			return Object.fromEntries([...document.querySelectorAll(".totals li")].map(l => [l.dataset.rule, n[l.querySelector(".key-name").textContent] ?? 0])); })()`)
		if fmt.Sprint(keys) != fmt.Sprint(want) {
			t.Errorf("%s: named on the letters are\n%v, want\n%v", ref, keys, want)
		}
	}
	p.calm()
}

// TestPrintJuz prints the whole last juz, both sheets, with every rule. It reports what that takes;
// the bounds are far above it and catch growth only.
func TestPrintJuz(t *testing.T) {
	if testing.Short() {
		t.Skip("prints a whole juz; left out with -short")
	}
	s := serve(t, "/", built(t))
	text := printText(t)
	p := newPage(t)
	p.lay(s, "#/print?sheet=both&juz=30&rule=noon-ikhfa&show=all&size=28&paper=a4&turn=portrait")
	leaves, laid := p.leaves(), eval[float64](p, `performance.now()`)
	doc := p.paper()
	printed := eval[float64](p, `performance.now()`) - laid
	metrics := map[string]float64{}
	call(p, performance.Enable, performance.EnableParams{})
	for _, m := range call(p, performance.GetMetrics, struct{}{}).Metrics {
		metrics[m.Name] = m.Value
	}
	t.Logf("juz 30, both sheets, every rule, 28 points on A4: %d pages; laid out %.1f s after opening; printed and read in %.1f s; %.0f nodes, %.0f MB of script memory",
		len(doc.Pages), laid/1000, printed/1000, metrics["Nodes"], metrics["JSHeapUsedSize"]/1e6)
	checkSheets(t, text, "78:1-114:6", leaves, doc, 595.28, 841.89, 28)
	for _, u := range p.unfit() {
		t.Error(u)
	}
	if n := metrics["Nodes"]; n == 0 || n > 200_000 {
		t.Errorf("%.0f nodes for 564 verses", n)
	}
	if n := metrics["JSHeapUsedSize"]; n == 0 || n > 200e6 {
		t.Errorf("%.0f bytes of script memory", n)
	}
	p.calm()
}

package e2e

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"sutur/generator/internal/engine"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// bookletRules are those of the booklets that tests print, in the order of the lessons.
var bookletRules = []string{"ghunnah", "madd-munfasil", "qalqalah", "noon-ikhfa"}

// A bookletPage is a page of a booklet as it stands on the screen.
type bookletPage struct {
	Sheet string
	Foot  string
	Words []string
	// Places by rule, as the letters below the answers name them.
	Keys map[string]int
	// What the last row of lines is: a surah's head, or a line.
	EndsWithHead bool
}

// bookletPages reads the pages by their numbers, however they stand on paper.
func (p *page) bookletPages() []bookletPage {
	p.t.Helper()
	return eval[[]bookletPage](p, `(() => {
		const names = Object.fromEntries([...document.querySelectorAll(".print-stage .key-list li")].map(x => [x.querySelector(".key-name").textContent, x.dataset.rule]));
		return [...document.querySelectorAll(".print-stage .leaf")].sort((a, b) => a.dataset.page - b.dataset.page).map(l => {
			const keys = {};
			for (const k of l.querySelectorAll(".key")) for (const x of k.textContent.split(" ")) keys[names[x]] = (keys[names[x]] ?? 0) + 1;
			return { sheet: l.dataset.sheet, foot: l.querySelector(".page-number").textContent, keys,
				words: [...l.querySelectorAll(".w")].map(w => [...w.childNodes].filter(n => n.nodeType === 3).map(n => n.data).join("").trimEnd()),
				endsWithHead: !!l.querySelector(".rows > .head:last-child") };
		});
	})()`)
}

// placesByRule counts the places of rules in verses as the engine finds them.
func placesByRule(t *testing.T, text *mushaf.Text, e *recite.Engine, ref string, rules []string) map[string]int {
	t.Helper()
	out := map[string]int{}
	for _, i := range versesOf(t, text, ref) {
		for _, ev := range e.Reading(nil, i, recite.Reading{}) {
			if name := ev.Rule.String(); !ev.Unwritten && slices.Contains(rules, name) {
				out[name]++
			}
		}
	}
	return out
}

// checkBooklet wants every word of a juz on the pages to practise on once and in order, and again
// in the answers, with every place of the rules.
func checkBooklet(t *testing.T, p *page, text *mushaf.Text, e *recite.Engine, ref string) []bookletPage {
	t.Helper()
	pages := p.bookletPages()
	words, keys := map[string][]string{}, map[string]int{}
	for i, x := range pages {
		if want := fmt.Sprintf("%d of %d", i+1, len(pages)); x.Foot != want {
			t.Errorf("page %d has the number %q", i+1, x.Foot)
		}
		if x.EndsWithHead {
			t.Errorf("page %d ends with the head of a surah", i+1)
		}
		words[x.Sheet] = append(words[x.Sheet], x.Words...)
		for k, n := range x.Keys {
			keys[k] += n
		}
	}
	want := wordsOf(t, text, ref)
	for _, sheet := range []string{"practice", "answer"} {
		if !slices.Equal(words[sheet], want) {
			t.Errorf("the words of %s are not those of the text: %d, want %d", sheet, len(words[sheet]), len(want))
		}
	}
	places := placesByRule(t, text, e, ref, bookletRules)
	if fmt.Sprint(keys) != fmt.Sprint(places) {
		t.Errorf("the answers name %v, the engine finds %v", keys, places)
	}
	key := eval[map[string]int](p, `Object.fromEntries([...document.querySelectorAll(".print-stage .key-list li")].map(l => [l.dataset.rule, Number(l.dataset.n)]))`)
	if fmt.Sprint(key) != fmt.Sprint(places) {
		t.Errorf("the key says %v, the engine %v", key, places)
	}
	table := eval[map[string]map[string]int](p, `Object.fromEntries([...document.querySelectorAll(".print-stage [data-range]")].map(r =>
		[r.dataset.range.replace("-", "-" + r.dataset.range.split(":")[0] + ":"), Object.fromEntries([...r.querySelectorAll("td")].map(d => [d.dataset.rule, Number(d.textContent) || 0]).filter(x => x[1]))]))`)
	sum := map[string]int{}
	for ref, row := range table {
		if want := placesByRule(t, text, e, ref, bookletRules); fmt.Sprint(row) != fmt.Sprint(want) {
			t.Errorf("%s: the table has %v, the engine %v", ref, row, want)
		}
		for k, n := range row {
			sum[k] += n
		}
	}
	if fmt.Sprint(sum) != fmt.Sprint(places) {
		t.Errorf("the tables add up to %v, want %v", sum, places)
	}
	return pages
}

// TestBooklet prints the last juz as a booklet to fold, in every engine: the work can be stopped
// and begun again, every word and every place is there, nothing is cut off, and what goes to the
// printer has two pages on each side.
func TestBooklet(t *testing.T) {
	if testing.Short() {
		t.Skip("prints a whole juz; left out with -short")
	}
	s := serve(t, "/", built(t))
	text := printText(t)
	e := recite.New(text)
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.learner(s.address, bookletRules...)
		p.open("about:blank")
		p.open(s.address + "#/print?sheet=booklet&juz=30&lay=fold&paper=a4&name=yes")
		p.wait("progress, and stop", `document.querySelector("[data-t=print-progress]")?.value > 0 && (document.querySelector("[data-t=print-stop]").click(), true)`)
		p.wait("the way to begin again", visible(hook("print-again")))
		p.wait("nothing of the pages to be left", `!document.querySelector(".print-stage .leaf, .print-measure")`)
		eval[any](p, `(document.querySelector("[data-t=print-again]").click(), 0)`)
		p.wait("the pages", `document.querySelector("[data-t=print-now]:not(:disabled)")`)
		pages := checkBooklet(t, p, text, e, "78:1-114:6")
		if len(pages)%4 != 0 {
			t.Errorf("%d pages do not fill sheets that are folded", len(pages))
		}
		if pages[0].Sheet != "cover" || pages[1].Sheet != "pencils" || pages[len(pages)-1].Sheet != "days" {
			t.Errorf("the booklet begins with %s and %s and ends with %s", pages[0].Sheet, pages[1].Sheet, pages[len(pages)-1].Sheet)
		}
		if got := eval[string](p, `document.querySelector(".cover .blank").textContent`); got != "Nur" {
			t.Errorf("the cover has the name %q", got)
		}
		first := eval[[][]int](p, `[...document.querySelectorAll(".print-stage .side")].slice(0, 2).map(s => [...s.children].map(l => Number(l.dataset.page)))`)
		if want := fmt.Sprintf("[[1 %d] [%d 2]]", len(pages), len(pages)-1); fmt.Sprint(first) != want {
			t.Errorf("the first sheet has the pages %v, want %s", first, want)
		}
		eval[any](p, `(document.querySelector(".leaves").style.setProperty("--zoom", 1), 0)`)
		for _, u := range p.unfit() {
			t.Error(u)
		}
		if n, ok := p.printed(); ok && n != len(pages)/2 {
			t.Errorf("%d sides go to the printer, %d pages stand on them", n, len(pages))
		}
	})
}

// TestBookletPaper holds what Chromium prints of a booklet, with one page on a side and with two,
// in a wide reading font: letters of the text are within the margins of their page, black to
// practise on, and those of the answers have their colours. With SUTUR_PICTURES it saves the first
// six pages.
func TestBookletPaper(t *testing.T) {
	if testing.Short() {
		t.Skip("prints whole juz; left out with -short")
	}
	s := serve(t, "/", built(t))
	text := printText(t)
	e := recite.New(text)
	p := newPage(t)
	p.wear(faces[1])
	p.learner(s.address, bookletRules...)
	for _, x := range []struct {
		name, paper, lay, ref string
		juz                   int
		wide, high            float64
	}{
		{"plain", "a4", "one", "78:1-114:6", 30, 595.28, 841.89},
		{"two", "letter", "two", "2:142-2:252", 2, 792, 612},
	} {
		p.lay(s, fmt.Sprintf("#/print?sheet=booklet&juz=%d&lay=%s&paper=%s", x.juz, x.lay, x.paper))
		pages := checkBooklet(t, p, text, e, x.ref)
		for _, u := range p.unfit() {
			t.Errorf("%s: %s", x.name, u)
		}
		doc := p.paper()
		faces[1].worn(t, doc)
		each := 1
		if x.lay != "one" {
			each = 2
		}
		if len(doc.Pages)*each != len(pages) {
			t.Fatalf("%s: %d sides printed of %d pages", x.name, len(doc.Pages), len(pages))
		}
		coloured := 0
		for i, side := range doc.Pages {
			if math.Abs(side.Width-x.wide) > 1 || math.Abs(side.Height-x.high) > 1 {
				t.Errorf("%s: side %d is %.1f by %.1f points", x.name, i+1, side.Width, side.Height)
			}
			for _, g := range side.Glyphs {
				// The first page of two is on the right.
				at, left := i*each, 0.0
				if each == 2 && g.X < side.Width/2 {
					at++
				} else if each == 2 {
					left = side.Width / 2
				}
				width, margin := side.Width/float64(each), (14-4*float64(each))*72/25.4 // 10 mm, or 6 mm
				if g.X < left+margin-2 || g.X > left+width-margin+1 || g.Y < 4*72/25.4 || g.Y > side.Height-margin+1 {
					t.Errorf("%s: page %d: a glyph of %s stands at %.1f, %.1f, outside the margins", x.name, at+1, g.Font, g.X, g.Y)
				}
				grey := g.Ink[0] == g.Ink[1] && g.Ink[1] == g.Ink[2]
				if pages[at].Sheet == "practice" && !grey {
					t.Errorf("%s: page %d has colour %v", x.name, at+1, g.Ink)
				}
				if pages[at].Sheet == "answer" && g.Font == arabicFont && !grey {
					coloured++
				}
			}
		}
		if coloured == 0 {
			t.Errorf("%s: the answers have no coloured letter", x.name)
		}
		p.bookletPictures(x.name, 6)
	}
	// Without a rule learnt there is nothing to find, and that is said before printing.
	p.lay(s, "#/print?sheet=booklet&juz=1&key=")
	if said := p.text(hook("print-status")); !strings.Contains(said, "No rule is learnt yet") {
		t.Errorf("of a booklet without rules the screen says %q", said)
	}
	for i, x := range p.bookletPages() {
		if x.Sheet == "answer" || x.Sheet == "counts" {
			t.Errorf("page %d has answers to nothing", i+1)
		}
	}
	p.calm()
	p.stayedAt(s.address)
}

// bookletPictures saves the first pages as they are printed.
func (p *page) bookletPictures(name string, pages int) {
	p.t.Helper()
	if os.Getenv("SUTUR_PICTURES") == "" {
		return
	}
	p.do(chromedp.EmulateViewport(1200, 1250))
	p.media("print")
	for i := range pages {
		eval[any](p, fmt.Sprintf(`(document.querySelectorAll(".leaves > *")[%d]?.scrollIntoView({ behavior: "instant" }), 0)`, i))
		p.save(fmt.Sprintf("booklet-%s-%d", name, i+1))
	}
	p.media("")
	p.do(chromedp.EmulateViewport(390, 844))
}

// TestPrintFewPlaces: a sheet whose rule has no place in its lines says so before it is printed and
// offers lines that have some; one press takes them, and one goes back.
func TestPrintFewPlaces(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.learner(s.address, "ghunnah", "noon-ikhfa")
	const old = "from=112:1&to=112:4&rule=noon-ikhfa"
	p.lay(s, "#/print?sheet=both&"+old)
	if said := p.text(hook("print-status")); !strings.Contains(said, "Hidden noon has no place in these lines.") {
		t.Errorf("of lines without a place the screen says %q", said)
	}
	p.wait("better lines", visible(hook("better-1")))
	p.photo("print-few")
	press := func(name string) {
		eval[any](p, fmt.Sprintf(`(document.querySelector(%q).focus(), document.querySelector(%q).click(), 0)`, hook(name), hook(name)))
	}
	press("see-better")
	if on := eval[string](p, `document.activeElement.dataset.t`); on != "better-1" {
		t.Errorf("the way to better lines leads to %q", on)
	}
	const laid = `document.querySelector("[data-t=print-now]:not(:disabled)")`
	press("better-1")
	p.wait("the other lines", `!location.hash.includes("from=112") && `+laid)
	if n := eval[int](p, `Number(document.querySelector(".totals li[data-rule=noon-ikhfa]").dataset.n)`); n < 3 {
		t.Errorf("the better lines have %d places", n)
	}
	if said := p.text(hook("print-status")); strings.Contains(said, "Hidden noon") {
		t.Errorf("of lines with places the screen says %q", said)
	}
	if on := eval[string](p, `document.activeElement.dataset.t`); on != "print-back" {
		t.Errorf("the keyboard is on %q, not on the way back", on)
	}
	press("print-back")
	p.wait("the lines of before", fmt.Sprintf(`location.hash.includes(%q) && %s`, old, laid))
	p.wait("the offer again", visible(hook("better-1")))
	if n := p.count(hook("print-back")); n != 0 {
		t.Error("there is a way back from the lines of before")
	}
	// Few are said as few, enough are not told of.
	p.lay(s, "#/print?sheet=practice&from=78:1&to=78:40&rule=noon-ikhfa")
	if said := p.text(hook("print-status")); strings.Contains(said, "Hidden noon") {
		t.Errorf("of many places the screen says %q", said)
	}
	p.lay(s, "#/print?sheet=card")
	if said := p.text(hook("print-status")); strings.Contains(said, "No rule") {
		t.Errorf("of a card with rules the screen says %q", said)
	}
	p.calm()
}

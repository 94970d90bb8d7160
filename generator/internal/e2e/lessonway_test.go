package e2e

import (
	"fmt"
	"regexp"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	cdppage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// TestLetterToLesson asks about a letter of the lines, goes to the lesson of its rule and comes
// back to the same lines, with the mark that was made; then takes the lines that the lesson
// proposes.
func TestLetterToLesson(t *testing.T) {
	s := serve(t, "/a/b/", built(t))
	p := newPage(t)
	p.begin(s.address, "Sara")
	p.choose(rule, surah, from, upTo)
	want := places(t, rule, surah, from, upTo)
	p.tap(want[0])
	p.wait("a mark", fmt.Sprintf(`(CSS.highlights.get("f-%s")?.size ?? 0) === 1`, family))
	p.click("drawer")
	p.click("ask")
	p.tap(places(t, "madd-tabii", surah, from, upTo)[0]) // a rule not taught yet
	p.wait("its lesson for later", visible(`[data-t=later-lessons] a[href^="lessons/madd-tabii.html#/lines?"]`))
	p.tap(want[1])
	link := hook("lesson-" + rule)
	p.wait("what the letter is", visible(link))
	lines := fmt.Sprintf("#/lines?rule=%s&from=%d:%d&to=%d:%d", rule, surah, from, surah, upTo)
	if got := eval[string](p, fmt.Sprintf(`document.querySelector(%q)?.getAttribute("href") ?? ""`, link)); got != "lessons/"+rule+".html"+lines {
		t.Fatalf("the letter leads to %q", got)
	}
	p.clickOn(link)
	p.wait("the lesson", `document.querySelector("main")?.dataset.lesson === "`+rule+`"`)
	p.clickOn(".back a")
	p.wait("the lines again", visible(hook(fmt.Sprintf("verse-%d-%d", surah, upTo))))
	if got := eval[string](p, `location.pathname + location.hash`); got != "/a/b/index.html"+lines && got != "/a/b/"+lines {
		t.Errorf("the way back leads to %s", got)
	}
	p.wait("the mark made before", fmt.Sprintf(`(CSS.highlights.get("f-%s")?.size ?? 0) === 1`, family))

	p.open(s.address + "lessons/" + rule + ".html")
	if p.count(".back:not([hidden])") > 0 {
		t.Error("a lesson opened by itself speaks of lines to go back to")
	}
	text := eval[[]string](p, `[...document.querySelector(".try-lines figure").querySelectorAll("[data-ref]")].map(e => e.dataset.ref)`)
	p.clickOn(".try-lines figure a")
	p.wait("the lines proposed", visible(hook("passage")))
	for _, ref := range text {
		p.wait("verse "+ref, visible(hook("verse-"+strings.ReplaceAll(ref, ":", "-"))))
	}
	p.calm()
	p.stayedAt(s.address)
}

var sheet = regexp.MustCompile(`/Type /Page\b`)

// TestLessonsOnPaper prints every page that is read, with the device's own font, a narrow and a
// wide one: one sheet or two upright, not more than three where the paper lies on its side, and
// nothing wider than the sheet.
func TestLessonsOnPaper(t *testing.T) {
	s := serve(t, "/", built(t))
	for _, f := range append([]face{{name: "the device's"}}, faces...) {
		t.Run(f.name, func(t *testing.T) { lessonsOnPaper(t, s, f) })
	}
}

func lessonsOnPaper(t *testing.T, s *server, font face) {
	files := built(t)
	p := newPage(t)
	p.wear(font)
	css := true
	seen := 0
	for _, f := range files {
		if !strings.HasPrefix(f.Name, "lessons/") {
			continue
		}
		p.open(s.address + f.Name)
		p.do(waitFonts())
		var doc []byte
		// As narrow as A4 and as short as Letter, and the other way round: what fits this fits
		// both.
		for _, x := range []struct {
			wide, high float64 // inches
			most       int
		}{{11, 8.27, 3}, {8.27, 11, 2}} {
			doc = call(p, cdppage.PrintToPDF, cdppage.PrintToPDFParams{PreferCSSPageSize: &css, PaperWidth: x.wide, PaperHeight: x.high}).Data
			if n := len(sheet.FindAll(doc, -1)); n < 1 || n > x.most {
				t.Errorf("%s takes %d sheets of %v by %v inches", f.Name, n, x.wide, x.high)
			}
		}
		if over := p.sideways(186); len(over) > 0 {
			t.Errorf("%s runs out of its sheet: %q", f.Name, over)
		}
		if seen++; font.pkg != "" && seen == 1 {
			read, err := readPDF(doc)
			if err != nil {
				t.Fatal(err)
			}
			font.worn(t, read)
		}
	}
	if seen < 40 {
		t.Errorf("only %d pages were printed", seen)
	}
}

// sideways lists what stands out to a side when the page is laid out for paper with so many
// millimetres between its margins.
func (p *page) sideways(wide float64) []string {
	p.t.Helper()
	call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"})
	p.do(chromedp.EmulateViewport(int64(wide*96/25.4), 900))
	defer func() {
		call(p, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{})
		p.do(chromedp.EmulateViewport(390, 844))
	}()
	return eval[[]string](p, `[...document.querySelectorAll("main *")].filter(el => el.getClientRects().length && !el.closest(".hidden"))
		.filter(el => { const r = el.getBoundingClientRect(); return r.right > innerWidth + 1 || r.left < -1; }).slice(0, 5).map(el => el.className + " " + el.textContent.slice(0, 40))`)
}

// TestCountAlong asks about a letter that is held: its counts can be seen in the panel, at the
// family's pace, and what is open stays open while the page is drawn again.
func TestCountAlong(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.motion("no-preference")
	p.begin(s.address, "")
	p.open(s.address + "#/lines?rule=madd-muttasil&from=78:32&to=78:36")
	p.wait("the lines", visible(hook("verse-78-32")))
	p.clickOn(hook("drawer"))
	p.click("ask")
	p.tap(places(t, "madd-muttasil", 78, 32, 36)[0])
	p.wait("what the letter is", visible(hook("letter-name")))
	p.clickOn(hook("count-along") + " summary")
	p.wait("its counts", `document.querySelectorAll("[data-t=count-along] .beat-dots i").length === 4`)
	p.tapAlong()
	p.wait("a pace", `/^One count takes \d\.\d seconds\.$/.test(document.querySelector(".beat-pace").textContent)`)
	p.clickOn(".beat-lengths button")
	p.wait("the dots to fill", `document.querySelectorAll("[data-t=count-along] .on").length === 4`)
	if !eval[bool](p, `document.querySelector("[data-t=count-along]").open`) {
		t.Error("it closed by itself")
	}
	p.calm()
}

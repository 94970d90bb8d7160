package e2e

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// spot is the lines of a link: the rule, verses, and words from 1 where the lines begin or end
// within a verse (0 for none).
type spot struct {
	rule     string
	from, to [3]int
}

var linesLink = regexp.MustCompile(`#/lines\?(?:rule=([a-z-]+)&)?from=(\d+):(\d+)(?::(\d+))?&to=(\d+):(\d+)(?::(\d+))?`)

func parseLink(t *testing.T, link string) (s spot) {
	t.Helper()
	m := linesLink.FindStringSubmatch(link)
	if m == nil {
		t.Fatalf("%q is no link to lines", link)
	}
	n := func(i int) int { v, _ := strconv.Atoi(m[i]); return v }
	return spot{m[1], [3]int{n(2), n(3), n(4)}, [3]int{n(5), n(6), n(7)}}
}

// marked counts what a child marks in the lines, with the engine alone.
func (s spot) marked(text *mushaf.Text) (places, words int) {
	rule, _ := recite.ParseRule(s.rule)
	first, last := text.Find(s.from[0], s.from[1]), text.Find(s.to[0], s.to[1])
	a, b := max(s.from[2]-1, 0), len(text.Verses[last].Words)-1
	if s.to[2] > 0 {
		b = s.to[2] - 1
	}
	r := recite.Reading{Stop: map[[2]int]bool{{last, b}: true, {first, a - 1}: true}}
	e := recite.New(text)
	for v := first; v <= last; v++ {
		for w := range text.Verses[v].Words {
			if (v > first || w >= a) && (v < last || w <= b) {
				words++
			}
		}
		for _, ev := range e.Reading(nil, v, r) {
			w := int(ev.Word)
			if ev.Rule == rule && !ev.Unwritten && (v > first || w >= a) && (v < last || w <= b) {
				places++
			}
		}
	}
	return places, words
}

func (p *page) href(name string) string {
	p.t.Helper()
	p.wait("a link "+name, visible(hook(name)))
	return eval[string](p, fmt.Sprintf(`document.querySelector(%q).getAttribute("href")`, hook(name)))
}

// TestToday: the card goes from settling in to the first rule, and the figure it gives is what the
// engine finds in the lines it opens.
func TestToday(t *testing.T) {
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "Maryam")
	p.wait("the plan", visible(hook("next-settle")))
	p.click("settled")
	p.wait("the first rule", visible(hook("next-teach")))
	link := parseLink(t, p.href("start-lines"))
	places, words := link.marked(text)
	if want := fmt.Sprintf("%d places", places); places < 4 || !strings.Contains(p.text(hook("where")), want) {
		t.Errorf("the card says %q; the engine finds %d places", p.text(hook("where")), places)
	}
	if words < 15 || words > 30 {
		t.Errorf("the lines have %d words", words)
	}
	p.click("because")
	if got := p.text(hook("because")); !strings.Contains(got, fmt.Sprintf("%d places of ", places)) || !strings.Contains(got, "not taught yet") {
		t.Errorf("why these lines: %q", got)
	}
	p.click("start-lines")
	p.wait("the lines", visible(hook("passage")))
	if n := p.count(hook("passage") + " .w"); n != words {
		t.Errorf("%d words are shown, want %d", n, words)
	}
	p.calm()
	p.stayedAt(s.address)
}

// TestLadder: what comes next as bars; an unusual beginning is said and can be undone; an order of
// one's own is kept.
func TestLadder(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "Maryam")
	p.click("nav-rules")
	p.wait("the bars", visible(hook("next")))
	bars := `[...document.querySelectorAll(".plan-bars button")].map(b => b.dataset.t + " " + parseInt(b.querySelector(".plan-figure").textContent)).join()`
	before := eval[string](p, bars)
	if !strings.HasPrefix(before, "bar-madd-tabii ") || strings.Contains(before, "noon-ikhfa") {
		t.Errorf("bars: %s; the natural long vowel first, and no rule whose needs are not met", before)
	}
	p.set("ahead", "1")
	p.wait("other figures", fmt.Sprintf(`(%s) !== %q`, bars, before))

	eval[any](p, `(document.querySelector('[data-t="rung-noon-ikhfa"]').open = true, 0)`)
	p.click("noon-ikhfa-learning")
	p.wait("what is unusual", visible(hook("notice-odd")))
	if got := p.text(hook("notice-odd")); !strings.Contains(got, "You decide") {
		t.Errorf("notice %q", got)
	}
	p.wait("being learnt", `document.querySelector('li.learning [data-t="rung-noon-ikhfa"]')`)
	p.click("notice-action")
	p.wait("undone", `!document.querySelector("li.learning")`)

	first := `[...document.querySelectorAll(".ladder summary .inked")].slice(0, 5).map(x => x.textContent).join()`
	was := eval[string](p, first)
	eval[any](p, `(document.querySelector('[data-t="rung-ghunnah"]').open = true, 0)`)
	p.click("ghunnah-later")
	p.wait("another order", fmt.Sprintf(`(%s) !== %q`, first, was))
	if !eval[bool](p, `document.querySelector('[data-t="noon-ikhfa-earlier"]') !== null`) {
		t.Error("a lesson cannot be moved")
	}
	moved := eval[string](p, first)
	p.open(s.address + "?again#/rules")
	p.wait("the kept order", fmt.Sprintf(`document.querySelector(".ladder") && (%s) === %q`, first, moved))
	eval[any](p, `(document.querySelector('[data-t="criterion"]').open = true, 0)`)
	p.set("ready-sessions", "2")
	p.waitStored("the figure", `return (await all("learners"))[0].ready?.sessions === 2`)
	p.click("reset-order")
	p.wait("the computed order", fmt.Sprintf(`(%s) === %q`, first, was))
	p.calm()
}

// TestBestLines: in a surah of long verses lines begin and end within verses, where a reader may
// start and stop.
func TestBestLines(t *testing.T) {
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "Maryam")
	p.open(s.address + "#/lines?rule=qalqalah")
	p.wait("the best lines", visible(hook("best-1")))
	p.set("where", "s2")
	within := 0
	p.wait("lines of surah 2", visible(`a[href*="from=2:"]`))
	for i := 1; p.count(hook(fmt.Sprintf("best-%d", i))) > 0; i++ {
		link := parseLink(t, p.href(fmt.Sprintf("open-%d", i)))
		places, words := link.marked(text)
		got := p.text(hook(fmt.Sprintf("best-%d", i)))
		if !strings.Contains(got, fmt.Sprintf("%d places of Qalqalah", places)) || !strings.Contains(got, fmt.Sprintf("%d words", words)) {
			t.Errorf("%+v: shown is %q; the engine finds %d places in %d words", link, got, places, words)
		}
		if link.to[2] > 0 {
			within = i
		}
	}
	if within == 0 {
		t.Fatal("no lines end within a verse: this check sees nothing")
	}
	link := parseLink(t, p.href(fmt.Sprintf("open-%d", within)))
	places, words := link.marked(text)
	p.click(fmt.Sprintf("open-%d", within))
	p.wait("the lines", visible(hook("passage")))
	if n := p.count(hook("passage") + " .w"); n != words {
		t.Errorf("%d words are shown, want %d", n, words)
	}
	if p.count(hook("passage")+" .verse:last-of-type .end") != 0 {
		t.Error("the number of a verse is shown where it does not end")
	}
	p.check() // nothing was marked
	p.wait("what was missed", visible(hook("missed")))
	if n := p.told("missed"); n != places {
		t.Errorf("%d places are missed, want %d", n, places)
	}
	p.calm()
}

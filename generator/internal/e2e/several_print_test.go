package e2e

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// byVerse is the table of places on the sheets of several pencils: what stands in its boxes, by
// sheet and row.
func (p *page) byVerse() map[string][][]string {
	p.t.Helper()
	return eval[map[string][][]string](p, `Object.fromEntries([...document.querySelectorAll(".print-stage .leaf:has(.boxes)")].map(l => [l.dataset.sheet,
		[...l.querySelectorAll(".boxes tr:has(td)")].map(r => [...r.querySelectorAll("td")].map(c => c.textContent))]))`)
}

// TestPrintSeveral prints sheets for several pencils: they hold the same letters at the same
// places, the head names every pencil, and the answers have each rule's places of each verse as the
// engine finds them.
func TestPrintSeveral(t *testing.T) {
	s := serve(t, "/", built(t))
	text := printText(t)
	engine := recite.New(text)
	p := newPage(t)
	p.learner(s.address, "ghunnah", "qalqalah", "noon-ikhfa", "madd-tabii", "madd-iwad")
	const several = "#/print?sheet=both&rule=noon-ikhfa&also=ghunnah,all-long,stops&show=focus&from=78:12&to=78:16"
	for _, x := range []struct {
		paper, turn string
		size        int
	}{{"a4", "portrait", 32}, {"letter", "landscape", 48}} {
		p.lay(s, fmt.Sprintf("%s&paper=%s&turn=%s&size=%d", several, x.paper, x.turn, x.size))
		wide, high := sizes[x.paper][0], sizes[x.paper][1]
		if x.turn == "landscape" {
			wide, high = high, wide
		}
		checkSheets(t, text, "78:12-78:16", p.leaves(), p.paper(), wide, high, float64(x.size))
		for _, u := range p.unfit() {
			t.Error(u)
		}
	}
	for _, leaf := range []string{"practice", "answer"} {
		head := p.text(fmt.Sprintf(".leaf[data-sheet=%s] .task-line", leaf))
		for _, name := range []string{"Hidden noon", "Ghunnah", "Every long vowel", "Stops"} {
			if !strings.Contains(head, name) {
				t.Errorf("the head of the %s sheet is %q, without %s", leaf, head, name)
			}
		}
	}
	if n := p.count(".leaf[data-sheet=practice] .task-line .blank"); n != 3 {
		t.Errorf("%d blanks for three pencils that mark letters", n)
	}
	got := p.byVerse()
	// The family's pencil stands for the two long vowels that were taught.
	var want [][]string
	for _, rules := range [][]string{{"noon-ikhfa"}, {"ghunnah"}, {"madd-tabii", "madd-iwad"}} {
		want = append(want, placesByVerse(text, engine, rules, 78, 12, 16))
	}
	if fmt.Sprint(got["answer"]) != fmt.Sprint(want) {
		t.Errorf("the boxes of the answers hold %v, want %v", got["answer"], want)
	}
	if empty := fmt.Sprint(got["practice"]); empty != fmt.Sprint([3][5]string{}) {
		t.Errorf("the boxes to fill hold %v", empty)
	}
	rules := eval[[]string](p, `[...document.querySelectorAll(".totals li")].map(l => l.dataset.rule)`)
	slices.Sort(rules)
	if !slices.Equal(rules, []string{"ghunnah", "madd-iwad", "madd-tabii", "noon-ikhfa"}) {
		t.Errorf("the answers show %v", rules)
	}
	p.calm()
}

// placesByVerse counts the places of rules in verses of a surah.
func placesByVerse(text *mushaf.Text, e *recite.Engine, rules []string, surah, first, last int) (out []string) {
	for a := first; a <= last; a++ {
		n := 0
		for _, ev := range e.Reading(nil, text.Find(surah, a), recite.Reading{}) {
			if !ev.Unwritten && slices.Contains(rules, ev.Rule.String()) {
				n++
			}
		}
		out = append(out, fmt.Sprint(n))
	}
	return out
}

// TestPrintPencils: a sheet of one rule has no boxes; many pencils and many verses have their room;
// pencils are put in on the form, and the address says which.
func TestPrintPencils(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.lay(s, "#/print?sheet=both&rule=noon-ikhfa&from=78:12&to=78:16")
	if n := p.count(".boxes"); n != 0 {
		t.Errorf("a sheet of one rule has %d tables", n)
	}
	for _, hash := range []string{
		"rule=noon-ikhfa&also=ghunnah,all-noon,all-long,all-heavy,stops,madd-munfasil,madd-muttasil,qalqalah,heavy-ra,light-ra,sun-lam,moon-lam&from=78:1&to=78:12&size=48",
		"rule=noon-ikhfa&also=madd-munfasil,madd-muttasil,qalqalah&show=all&from=78:1&to=78:12&turn=landscape&paper=letter",
		"rule=noon-ikhfa&also=ghunnah&surah=78",
		"rule=&also=stops,ghunnah&from=112:1&to=112:4",
	} {
		p.lay(s, "#/print?sheet=both&"+hash)
		for _, u := range p.unfit() {
			t.Errorf("%s: %s", hash, u)
		}
		if few := !strings.Contains(hash, "surah"); few != (p.count(".boxes") == 2) {
			t.Errorf("%s: %d tables", hash, p.count(".boxes"))
		}
	}
	p.lay(s, "#/print?sheet=practice&rule=ghunnah&also=qalqalah,x1&from=78:12&to=78:16")
	if said := p.text(hook("problem")); !strings.Contains(said, "x1") {
		t.Errorf("of a pencil that nobody knows the screen says %q", said)
	}
	eval[any](p, fmt.Sprintf(`(document.querySelector(%q).open = true, 0)`, hook("print-case")))
	if !eval[bool](p, `document.querySelector('[data-t="print-with-ghunnah"]').disabled`) {
		t.Error("the rule's own pencil can be taken out")
	}
	press := func(name string) { eval[any](p, fmt.Sprintf(`(document.querySelector(%q).click(), 0)`, hook(name))) }
	press("print-with-stops")
	p.wait("the pencil in the address", `location.hash.includes("rule=ghunnah&also=qalqalah,stops&")`)
	press("print-with-qalqalah")
	p.wait("the pencil out of the address", `location.hash.includes("rule=ghunnah&also=stops&")`)
	p.wait("the pages", `document.querySelector("[data-t=print-now]:not(:disabled)") && document.querySelector(".task-line").textContent.includes("Stops")`)
	p.set("print-rule", "qalqalah")
	p.wait("another rule", `location.hash.includes("rule=qalqalah&also=stops&")`)
	press("kind-answer")
	press("show-focus")
	p.wait("the answers", `document.querySelector(".leaf[data-sheet=answer] .totals li[data-rule=qalqalah]")`)
	// From the lines' own menu.
	p.open("about:blank")
	p.open(s.address + "#/lines?rule=noon-ikhfa&also=ghunnah,stops&from=78:12&to=78:14")
	p.wait("the lines", visible(hook("passage")))
	eval[any](p, `(document.querySelector("[data-t=menu] summary").click(), document.querySelector("[data-t=print]").click(), 0)`)
	p.wait("their sheet", `document.querySelector(".leaf[data-sheet=practice] .boxes") && document.querySelector(".task-line").textContent.includes("Stops")`)
	p.calm()
}

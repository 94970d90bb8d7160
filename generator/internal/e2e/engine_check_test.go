package e2e

import (
	"context"
	"fmt"
	"image"
	"image/color"
	"testing"

	"sutur/generator/internal/engine"
)

// states is what Check says of a letter.
var states = []string{"found", "missed", "extra"}

// upper is where a letter stands and no shape of a state does.
func upper(b box) image.Rectangle { return box{b.L, b.T, b.R, b.T + (b.B-b.T)*.7}.pixels() }

// The shapes of two states differ in at least two fifths of what both draw, and in as many device
// pixels as a dash of 2 by 3 CSS pixels has. The same state drawn again differs by less than
// repeated.
const (
	different, differentPixels = .4, 2 * 3 * engine.Scale * engine.Scale
	repeated                   = .15
)

// witness is a letter of 96:1 that is brought into every state: missed and found by its own rule,
// extra by another that has no place in its word. No rule of these has counts, whose digits would
// stand at the letter too.
type witness struct {
	what, rule, other string
	word, l           int
}

var witnesses = []witness{
	{"narrow letter", "hamzat-wasl", "qalqalah", 3, 0},
	{"letter within a word", "qalqalah", "moon-lam", 0, 1},
}

// TestCheckShapes brings letters into each state that Check knows, and looks at them: in their
// colour, and in grey told apart from the other states and from a letter of which nothing is said.
func TestCheckShapes(t *testing.T) {
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		for _, x := range witnesses {
			t.Run(x.what, func(t *testing.T) {
				p := p.in(t)
				p.toldApart(p.through(s, x, true))
			})
		}
	})
}

// TestForcedColours is TestCheckShapes where the system sets all colours.
func TestForcedColours(t *testing.T) {
	s := serve(t, "/", built(t))
	look := func(t *testing.T, b engine.Browser, prepare func(p *page)) {
		p := newTab(t, b)
		prepare(p)
		for _, x := range witnesses {
			t.Run(x.what, func(t *testing.T) {
				p := p.in(t)
				p.toldApart(p.through(s, x, false))
				if !eval[bool](p, `matchMedia("(forced-colors: active)").matches`) {
					t.Error("the colours are not forced: this test proves nothing")
				}
			})
		}
	}
	inEngines(t, func(t *testing.T, b engine.Browser) {
		switch b.Name() {
		case "chromium":
			look(t, b, func(p *page) {
				p.must(func(ctx context.Context, _ string) error { return p.tab.Media(ctx, engine.Media{Forced: true}) }, "")
			})
		case "firefox": // by a setting of the whole browser
			forced, err := engine.Firefox(true)
			if err != nil {
				t.Fatal(err)
			}
			defer forced.Close()
			look(t, forced, func(*page) {})
		case "webkit":
			p := newTab(t, b)
			p.open(s.address + "about.html")
			if !eval[bool](p, `matchMedia("(forced-colors: none)").matches`) {
				t.Error("WebKit has no forced colours, and says that it has")
			}
			t.Log("WebKit on this system has no way to force colours; nothing was looked at")
		}
	})
}

// through brings a letter into every state and returns its surroundings in each, and before
// anything was said of it ("plain").
func (p *page) through(s *server, x witness, colours bool) map[string]mask {
	p.t.Helper()
	text, err := theText()
	if err != nil {
		p.t.Fatal(err)
	}
	const surah, ayah = 96, 1
	v := text.Find(surah, ayah)
	a, ends := letter(text, v, x.word, x.l), ends(text, v, x.word)
	seen, letters := map[string]mask{}, map[string]mask{}
	look := func(name, state string) {
		want := map[int]color.RGBA{}
		if state != "" && colours {
			want[x.l] = p.colour("var(--" + state + ")")
		}
		what := fmt.Sprintf("check %s %s", x.what, name)
		if !colours {
			what = "forced " + what
		}
		im, boxes := p.inColour(what, onLines(a), ends, want)
		seen[name] = dark(im, p.below(onLines(a), boxes[x.l]))
		letters[name] = dark(im, upper(boxes[x.l]))
		// WebKit's port for GTK lifts a word's letters by the marks at its end, and those of
		// another colour by their own: what is drawn there moves whatever the page does
		// (site-src/PAINTING.md).
		if part, n := apart(letters["plain"], letters[name]); part > repeated*2 && p.engine != "webkit" {
			p.t.Errorf("%s: the letter is not where it was: %.0f%% of it differs, %d pixels", what, part*100, n)
		}
	}
	mark := func() {
		p.tap(a)
		p.wait("the mark", enabled("undo"))
	}
	p.lines(s, x.rule, surah, ayah, ayah)
	look("plain", "")
	p.check()
	look("missed", "missed")
	p.again()
	mark()
	p.check()
	look("found", "found")
	if colours { // once is enough to know how much the same shape differs from itself
		p.again()
		p.check()
		look("found again", "found")
	}
	p.lines(s, x.other, surah, ayah, ayah)
	mark()
	p.check()
	look("extra", "extra")
	return seen
}

// toldApart compares how the states look in grey.
func (p *page) toldApart(seen map[string]mask) {
	p.t.Helper()
	shape := map[string]mask{}
	for name, m := range seen {
		shape[name] = m.without(seen["plain"])
	}
	for i, a := range states {
		if n := shape[a].size(); n < differentPixels {
			p.t.Errorf("%s: %d pixels are drawn beside the letter, want %d or more", a, n, differentPixels)
		}
		for _, b := range states[i+1:] {
			part, n := apart(shape[a], shape[b])
			p.t.Logf("%s and %s differ in %.0f%% of their shapes, %d pixels", a, b, part*100, n)
			if part < different || n < differentPixels {
				p.t.Errorf("in grey %s and %s differ in %.0f%% of their shapes, %d pixels; want %.0f%% and %d", a, b, part*100, n, different*100, differentPixels)
			}
		}
	}
	again, ok := shape["found again"]
	if part, n := apart(shape["found"], again); ok && n > 0 && part > repeated {
		p.t.Errorf("the same shape drawn again differs in %.0f%%, %d pixels", part*100, n)
	}
}

// check moves on from finding, has everything shown, and again goes back.
func (p *page) check() {
	p.t.Helper()
	p.click("next")
	p.wait("the check", `document.querySelector("main.lines")?.dataset.phase === "check"`)
	p.showAll()
}

// controls waits until what is around the lines is there: it comes a frame after the letters.
func (p *page) controls() {
	p.t.Helper()
	p.wait("what is around the lines", `document.querySelector(".lines .thumb > *, .lines .after > *")`)
}

// showAll has the check say where the missed places are, if it keeps any back.
func (p *page) showAll() {
	p.t.Helper()
	p.controls()
	if p.count(hook("show-all")) > 0 {
		p.click("show-all")
		p.wait("everything", `!document.querySelector("[data-t=show-all]")`)
	}
}

// onwards goes to the next step; from the check to reading.
func (p *page) onwards() {
	p.t.Helper()
	p.showAll()
	p.click("next")
}

// toEnd goes on to the end of the session.
func (p *page) toEnd() {
	p.t.Helper()
	for p.controls(); p.count(hook("end")) == 0; p.controls() {
		p.onwards()
	}
}

// told is how many letters a list of the check names.
func (p *page) told(list string) int {
	p.t.Helper()
	return p.count(hook(list) + " .word-link")
}

func (p *page) again() {
	p.t.Helper()
	p.click("again")
	p.wait("finding again", `document.querySelector("main.lines")?.dataset.phase === "find"`)
}

// enabled is an expression: a control can be used.
func enabled(name string) string {
	return fmt.Sprintf(`document.querySelector(%q)?.disabled === false`, hook(name))
}

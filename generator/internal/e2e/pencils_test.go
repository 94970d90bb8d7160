package e2e

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"testing"

	"github.com/evanw/esbuild/pkg/api"

	"sutur/generator/internal/build"
	"sutur/generator/internal/colour"
)

// module bundles one script for evaluation in a page: contents may import from the app's folder.
func module(t testing.TB, contents string) string {
	t.Helper()
	abs, err := filepath.Abs(filepath.Join(root, build.SourceDir, "app"))
	if err != nil {
		t.Fatal(err)
	}
	r := api.Build(api.BuildOptions{
		Stdin:  &api.StdinOptions{Contents: contents, ResolveDir: abs},
		Bundle: true, Format: api.FormatIIFE, Write: false,
	})
	if len(r.Errors) > 0 {
		t.Fatal(r.Errors)
	}
	return string(r.OutputFiles[0].Contents) + ";0"
}

// TestColoursAsTheGenerator holds the browser's colour formulas against the table of values that
// package colour writes.
func TestColoursAsTheGenerator(t *testing.T) {
	data, err := os.ReadFile("../colour/testdata/vectors.json")
	if err != nil {
		t.Fatal(err)
	}
	var want struct {
		CloseBelow float64
		ViewNames  []string
		Colours    []struct {
			Hex       string
			Luminance float64
			Views     [][3]float64
		}
		Pairs []struct {
			A, B     string
			Contrast float64
			Which    string
			Diff     float64
			Close    bool
		}
	}
	if err := json.Unmarshal(data, &want); err != nil {
		t.Fatal(err)
	}
	if len(want.Colours) < 30 || len(want.Pairs) < 90 {
		t.Fatalf("the table has only %d colours and %d pairs", len(want.Colours), len(want.Pairs))
	}
	p := newPage(t)
	p.open("about:blank")
	eval[any](p, module(t, `import * as c from "./colour/close.ts"; globalThis.colours = c;`))
	eval[any](p, "globalThis.want = "+string(data)+";0")
	got := eval[struct {
		CloseBelow float64
		ViewNames  []string
		Colours    []struct {
			Luminance float64
			Views     [][3]float64
		}
		Pairs []struct {
			Contrast, Diff float64
			Which          string
			Close          bool
		}
	}](p, `({
		closeBelow: colours.CLOSE_BELOW, viewNames: colours.VIEWS.map(v => v.name),
		colours: want.colours.map(c => ({ luminance: colours.luminance(c.hex), views: colours.VIEWS.map((_, i) => colours.seen(c.hex, i)) })),
		pairs: want.pairs.map(x => ({ ...colours.tooClose(x.a, x.b), contrast: colours.contrast(x.a, x.b) })),
	})`)
	near := func(a, b float64) bool { return math.Abs(a-b) < 2e-7 }
	if got.CloseBelow != want.CloseBelow || len(got.ViewNames) != len(want.ViewNames) {
		t.Errorf("close below %v seen in %v, want %v in %v", got.CloseBelow, got.ViewNames, want.CloseBelow, want.ViewNames)
	}
	for i, w := range want.ViewNames {
		if got.ViewNames[i] != w {
			t.Errorf("view %d is %s, want %s", i, got.ViewNames[i], w)
		}
	}
	for i, w := range want.Colours {
		g := got.Colours[i]
		if !near(g.Luminance, w.Luminance) {
			t.Errorf("%s: luminance %v, want %v", w.Hex, g.Luminance, w.Luminance)
		}
		for v := range w.Views {
			for k := range 3 {
				if !near(g.Views[v][k], w.Views[v][k]) {
					t.Errorf("%s seen by %s: %v, want %v", w.Hex, want.ViewNames[v], g.Views[v], w.Views[v])
					break
				}
			}
		}
	}
	for i, w := range want.Pairs {
		g := got.Pairs[i]
		if !near(g.Contrast, w.Contrast) || !near(g.Diff, w.Diff) || g.Which != w.Which || g.Close != w.Close {
			t.Errorf("%s and %s: got %+v, want %+v", w.A, w.B, g, w)
		}
	}
	// What cannot be read is refused, and what is set for paper is readable on the dark page.
	refused := eval[[]bool](p, `["", "red", "#12345", "#1234567", "#12345g"].map(x => { try { colours.parse(x); return false } catch (e) { return e instanceof RangeError } })`)
	for i, ok := range refused {
		if !ok {
			t.Errorf("bad colour %d is not refused", i)
		}
	}
	for i, k := range eval[[]float64](p, `want.colours.map(c => colours.contrast(colours.forDark(c.hex, "`+colour.PaperDark+`"), "`+colour.PaperDark+`"))`) {
		if k < 4.5 {
			t.Errorf("%s made for the dark page has a contrast of %.2f only", want.Colours[i].Hex, k)
		}
	}
}

// TestPencils sets pencils on the print screen: the page and the paper follow, and what is hard to
// tell apart is said.
func TestPencils(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.learner(s.address, "noon-ikhfa")
	const hash = "#/print?sheet=answer&from=78:1&to=78:16&rule=noon-ikhfa&show=focus"
	p.lay(s, hash)
	set := func(family, hex string) {
		eval[any](p, `(() => { const i = document.querySelector("[data-t=pencil-`+family+`]"); i.value = "`+hex+`"; i.dispatchEvent(new Event("change")); })()`)
	}
	said := func() string {
		return eval[string](p, `new Promise(f => setTimeout(() => f([...document.querySelectorAll("[data-t=pencil-said] li")].map(l => l.textContent).join("\n")), 50))`)
	}
	if got := said(); got != "" {
		t.Errorf("nothing was set, and yet it is said: %s", got)
	}
	inks := func() map[[3]float64]int {
		n := map[[3]float64]int{}
		for _, pg := range p.paper().Pages {
			for _, g := range pg.Glyphs {
				if g.Font == arabicFont && (g.Ink[0] != g.Ink[1] || g.Ink[1] != g.Ink[2]) {
					for k, v := range g.Ink {
						g.Ink[k] = math.Round(v * 255)
					}
					n[g.Ink]++
				}
			}
		}
		return n
	}
	usual := inks()
	set("noon", "#4a2f00")
	if got := said(); got != "" {
		t.Errorf("one pencil unlike all others is said to be hard to see: %s", got)
	}
	own := inks()
	if want := [3]float64{0x4a, 0x2f, 0x00}; own[want] == 0 || usual[want] != 0 {
		t.Errorf("the paper has the colours %v, before it had %v; want %v after and not before", own, usual, want)
	}
	set("qalqalah", "#4a2f02")
	if got := said(); got == "" {
		t.Error("two equal pencils are not said to be alike")
	}
	set("qalqalah", "#ffffa0")
	faint := said()
	set("qalqalah", "#1d1b19")
	if dark := said(); faint == "" || dark == "" || faint == dark {
		t.Errorf("a pale pencil: %q; a black one: %q", faint, dark)
	}
	// What was set stays, also on the dark page, where it is made readable.
	p.lay(s, hash)
	root := func() string {
		return eval[string](p, `getComputedStyle(document.documentElement).getPropertyValue("--c-noon")`)
	}
	if got := root(); got != "#4a2f00" {
		t.Errorf("after opening again the pencil is %s", got)
	}
	eval[any](p, `document.documentElement.dataset.theme = "dark"; 0`)
	if got := root(); got == "#4a2f00" || got == "" {
		t.Errorf("on the dark page the pencil is %q", got)
	}
	eval[any](p, `document.querySelector("[data-t=pencils-usual]").click(); 0`)
	if got := said(); got != "" {
		t.Errorf("the usual colours are back, and yet it is said: %s", got)
	}
	if got := inks(); fmt.Sprint(got) != fmt.Sprint(usual) {
		t.Errorf("the paper has %v, at first it had %v", got, usual)
	}
	p.calm()
}

package colour

import (
	"encoding/json"
	"math"
	"os"
	"testing"
)

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: got %.7f, want %.7f within %g", what, got, want, within)
	}
}

func mustParse(t testing.TB, s string) rgb {
	t.Helper()
	c, err := parse(s)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// The table of XYZ and OKLab pairs in Björn Ottosson's article (values from memory, given there to
// three places), with his matrix from XYZ to cones.
func TestOttosson(t *testing.T) {
	xyzToLMS := [3][3]float64{
		{0.8189330101, 0.3618667424, -0.1288597137},
		{0.0329845436, 0.9293118715, 0.0361456387},
		{0.0482003018, 0.2643662691, 0.6338517070},
	}
	for _, row := range []struct {
		xyz  [3]float64
		want lab
	}{
		{[3]float64{0.950, 1.000, 1.089}, lab{1.000, 0.000, 0.000}},
		{[3]float64{1, 0, 0}, lab{0.450, 1.236, -0.019}},
		{[3]float64{0, 1, 0}, lab{0.922, -0.671, 0.263}},
		{[3]float64{0, 0, 1}, lab{0.153, -1.415, -0.449}},
	} {
		got := lmsToLab(mul(&xyzToLMS, row.xyz))
		for i := range got {
			near(t, "lab", got[i], row.want[i], 0.0006)
		}
	}
}

// Colours that CSS Color 4 writes both ways in its chapter on OKLCH (values from memory; the hex
// figures there are rounded on their own, so one step of 8 bits either way is allowed).
func TestCSSColor4(t *testing.T) {
	for _, row := range []struct {
		l, c, h float64
		hex     string
	}{
		{0.40101, 0.12332, 21.555, "#7d2329"},
		{0.59686, 0.15619, 49.7694, "#c65d06"},
		{0.65125, 0.13138, 104.097, "#9d9318"},
		{0.66016, 0.15546, 134.231, "#68a639"},
		{0.72322, 0.12403, 247.996, "#62acef"},
		{0.51975, 0.17686, 142.495, "#008000"},
		{0.45201, 0.31321, 264.052, "#0000ff"},
	} {
		got, want := polar(row.l, row.c, row.h).rgb().clip(), mustParse(t, row.hex)
		for i := range got {
			near(t, row.hex, 255*encode(got[i]), 255*encode(want[i]), 1.1)
		}
	}
}

// WCAG 2.2, "contrast ratio" and "relative luminance": black on white is 21:1. The greys on either
// side of 4.5:1 and red on white are common examples.
func TestWCAG(t *testing.T) {
	for _, row := range []struct {
		a, b string
		want float64
	}{
		{"#000000", "#ffffff", 21},
		{"#ffffff", "#ffffff", 1},
		{"#767676", "#ffffff", 4.54},
		{"#777777", "#ffffff", 4.48},
		{"#ff0000", "#ffffff", 4.00},
		{"#0000ff", "#ffffff", 8.59},
	} {
		for range 2 {
			near(t, row.a+" on "+row.b, contrast(t, row.a, row.b), row.want, 0.005)
			row.a, row.b = row.b, row.a
		}
	}
}

// What Chromium 156 paints for these colours under its own emulation of the three dichromacies
// (Emulation.setEmulatedVisionDeficiency, read from pixels). It works on whole numbers, so a dark
// channel may be off by a step and a half.
func TestViewsAsChromiumPaintsThem(t *testing.T) {
	from := []string{"#9a587f", "#2e5314", "#127d9d", "#c3656f", "#aca9fe", "#b07a20", "#ff0000", "#00ff00", "#0000ff", "#808080"}
	for i, painted := range [][]string{
		{"#9a587f", "#2e5314", "#127d9d", "#c3656f", "#aca9fe", "#b07a20", "#ff0000", "#00ff00", "#0000ff", "#808080"},
		{"#5d6780", "#564c0a", "#6b7a9f", "#78766f", "#90b4ff", "#8d7d0d", "#6d5f00", "#ffe500", "#0059ff", "#808080"},
		{"#6d717d", "#51491a", "#5a6e9d", "#8f886d", "#8daffc", "#9a8a23", "#a39000", "#efd63a", "#003dfb", "#808080"},
		{"#a25866", "#2d5046", "#008787", "#d25a69", "#97b9c8", "#c06c69", "#ff0010", "#00f7d9", "#006b96", "#808080"},
	} {
		for j, want := range painted {
			got, w := views[i].seen(mustParse(t, from[j])), mustParse(t, want)
			for k := range got {
				near(t, views[i].name+" of "+from[j], 255*encode(got[k]), 255*encode(w[k]), 1.5)
			}
		}
	}
}

// A grey is seen as itself by every eye: the rows of each matrix add up to 1.
func TestViewsKeepGrey(t *testing.T) {
	for _, v := range views {
		for _, row := range v.matrix {
			near(t, v.name, row[0]+row[1]+row[2], 1, 2e-6)
		}
	}
}

// testdata/witness.json was computed by a library that nobody here wrote; its "source" says which.
func TestWitness(t *testing.T) {
	var w struct {
		Colours []struct {
			Hex       string
			Luminance float64
			Views     []lab
		}
		Pairs []struct {
			A, B                 string
			Contrast, Difference float64
		}
	}
	data, err := os.ReadFile("testdata/witness.json")
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, &w); err != nil {
		t.Fatal(err)
	}
	if len(w.Colours) < 16 || len(w.Pairs) < 15 {
		t.Fatalf("only %d colours and %d pairs", len(w.Colours), len(w.Pairs))
	}
	for _, c := range w.Colours {
		x := mustParse(t, c.Hex)
		near(t, c.Hex+" luminance", x.luminance(), c.Luminance, 1e-6)
		for i := range views {
			got := views[i].seen(x).lab()
			for k := range got {
				near(t, c.Hex+" "+views[i].name, got[k], c.Views[i][k], 2e-6)
			}
		}
	}
	for _, p := range w.Pairs {
		a, b := mustParse(t, p.A), mustParse(t, p.B)
		near(t, p.A+p.B+" contrast", contrast(t, p.A, p.B), p.Contrast, 1e-5)
		near(t, p.A+p.B+" difference", difference(a.lab(), b.lab()), p.Difference, 2e-6)
	}
}

func TestParse(t *testing.T) {
	for _, bad := range []string{"", "#", "123456", "#12345", "#1234567", "#12345g", "#+12345", "red", "# 12345", "#1_2345", "#ffé00"} {
		if _, err := parse(bad); err == nil {
			t.Errorf("parse(%q) passed", bad)
		}
	}
	if got := mustParse(t, "#AbCdEf").hex(); got != "#abcdef" {
		t.Errorf("got %s", got)
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"#000000", "#fffdf8", "#14171C", "#12345", "fffdf8"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		c, err := parse(s)
		if err != nil {
			return
		}
		again, err := parse(c.hex())
		if err != nil || again != c || !c.inGamut() {
			t.Fatalf("%q became %s", s, c.hex())
		}
		if back := c.lab().rgb().hex(); back != c.hex() {
			t.Fatalf("%q through OKLab: %s", s, back)
		}
	})
}

package colour

import (
	"bytes"
	"encoding/json"
	"math"
	"testing"
)

// What the browser does with a family's own pencils (site-src/app/colour/close.ts), once more, to
// write the table of values that it is tested against.

// closeBelow is the difference (deltaEOK) under which two pencils are called too close. Ours: no
// standard gives a figure.
const closeBelow = 0.08

// rounding is how much the published matrices, cut to six places, may be off: a view has to bring
// colours nearer by more than that to be the one named.
const rounding = 2e-6

// tooClose says which way of seeing brings two colours nearest, how far apart they are then
// (deltaEOK), and whether that is under closeBelow.
func tooClose(t testing.TB, a, b string) (which string, diff float64, close bool) {
	t.Helper()
	x, y := mustParse(t, a), mustParse(t, b)
	for i := range views {
		v := &views[i]
		d := difference(v.seen(x).lab(), v.seen(y).lab())
		if i == 0 || d < diff-rounding {
			which, diff = v.name, d
		}
	}
	return which, diff, diff < closeBelow
}

// luminance is WCAG 2's relative luminance: 0 black, 1 white.
func (c rgb) luminance() float64 { return 0.2126*c[0] + 0.7152*c[1] + 0.0722*c[2] }

// contrast is WCAG 2's contrast ratio, 1 (none) to 21 (black on white).
func contrast(t testing.TB, a, b string) float64 {
	t.Helper()
	x, y := mustParse(t, a).luminance(), mustParse(t, b).luminance()
	return (max(x, y) + 0.05) / (min(x, y) + 0.05)
}

func TestTooClose(t *testing.T) {
	for _, row := range []struct {
		a, b, which string
		close       bool
	}{
		{"#c00000", "#c00000", "full colour", true},
		{"#000000", "#ffffff", "full colour", false},
		{"#b04040", "#6b7020", "deuteranopia", true},
		{"#127d9d", "#288463", "tritanopia", true},
	} {
		for range 2 {
			which, diff, close := tooClose(t, row.a, row.b)
			if close != row.close {
				t.Errorf("%s %s: %s %.3f %v", row.a, row.b, which, diff, close)
			}
			if which != row.which {
				t.Errorf("%s %s: nearest in %s (%.3f)", row.a, row.b, which, diff)
			}
			row.a, row.b = row.b, row.a
		}
	}
}

// testdata/vectors.json holds the browser's formulas equal to these (e2e,
// TestColoursAsTheGenerator).
func TestVectors(t *testing.T) {
	type seen struct {
		Hex       string  `json:"hex"`
		Luminance float64 `json:"luminance"`
		Views     []lab   `json:"views"` // OKLab in the order of "viewNames"
	}
	type pair struct {
		A        string  `json:"a"`
		B        string  `json:"b"`
		Contrast float64 `json:"contrast"`
		Which    string  `json:"which"`
		Diff     float64 `json:"diff"`
		Close    bool    `json:"close"`
	}
	var file struct {
		CloseBelow float64  `json:"closeBelow"`
		ViewNames  []string `json:"viewNames"`
		Colours    []seen   `json:"colours"`
		Pairs      []pair   `json:"pairs"`
	}
	file.CloseBelow = closeBelow
	round := func(x float64) float64 { return math.Round(x*1e7)/1e7 + 0 }
	for _, v := range views {
		file.ViewNames = append(file.ViewNames, v.name)
	}
	colours := []string{"#000000", "#ffffff", "#808080", "#ff0000", "#00ff00", "#0000ff", "#0a0a0b", PaperLight, PaperDark}
	for _, f := range families(t, sequence) {
		colours = append(colours, f.Light, f.Dark)
	}
	for i, h := range colours {
		c := mustParse(t, h)
		s := seen{Hex: h, Luminance: round(c.luminance())}
		for v := range views {
			l := views[v].seen(c).lab()
			s.Views = append(s.Views, lab{round(l[0]), round(l[1]), round(l[2])})
		}
		file.Colours = append(file.Colours, s)
		for _, j := range []int{i / 2, (i * 7) % len(colours), (i + 2) % len(colours)} {
			which, diff, close := tooClose(t, h, colours[j])
			file.Pairs = append(file.Pairs, pair{h, colours[j], round(contrast(t, h, colours[j])), which, round(diff), close})
		}
	}
	data, err := json.Marshal(file)
	if err != nil {
		t.Fatal(err)
	}
	for _, cut := range []string{`{"hex"`, `{"a"`} {
		data = bytes.ReplaceAll(data, []byte(cut), []byte("\n"+cut))
	}
	golden(t, "vectors.json", string(data)+"\n")
}

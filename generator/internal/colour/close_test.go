package colour

import (
	"bytes"
	"encoding/json"
	"math"
	"testing"
)

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
			which, diff, close, err := TooClose(row.a, row.b)
			if err != nil || close != row.close || close != (diff < CloseBelow) {
				t.Errorf("%s %s: %s %.3f %v %v", row.a, row.b, which, diff, close, err)
			}
			if which != row.which {
				t.Errorf("%s %s: nearest in %s (%.3f)", row.a, row.b, which, diff)
			}
			row.a, row.b = row.b, row.a
		}
	}
	for _, bad := range [][2]string{{"red", "#000000"}, {"#000000", "red"}} {
		if _, _, _, err := TooClose(bad[0], bad[1]); err == nil {
			t.Errorf("TooClose(%q, %q) passed", bad[0], bad[1])
		}
		if _, err := Contrast(bad[0], bad[1]); err == nil {
			t.Errorf("Contrast(%q, %q) passed", bad[0], bad[1])
		}
	}
}

// testdata/vectors.json is for whoever ports the formulas: a port that agrees to
// six places agrees.
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
	file.CloseBelow = CloseBelow
	round := func(x float64) float64 { return math.Round(x*1e7)/1e7 + 0 }
	for _, v := range views {
		file.ViewNames = append(file.ViewNames, v.Name)
	}
	colours := []string{"#000000", "#ffffff", "#808080", "#ff0000", "#00ff00", "#0000ff", "#0a0a0b", PaperLight, PaperDark}
	for _, f := range Families(sequence) {
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
			which, diff, close, err := TooClose(h, colours[j])
			if err != nil {
				t.Fatal(err)
			}
			k, err := Contrast(h, colours[j])
			if err != nil {
				t.Fatal(err)
			}
			file.Pairs = append(file.Pairs, pair{h, colours[j], round(k), which, round(diff), close})
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

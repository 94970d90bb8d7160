package colour

import (
	"strings"
	"testing"
)

func TestCSSGolden(t *testing.T) { golden(t, "families.css", CSS(families(t, sequence))) }

func TestCSS(t *testing.T) {
	fs := families(t, sequence)
	css := CSS(fs)
	for _, f := range fs {
		for want, times := range map[string]int{
			"--c-" + f.Name + ":" + f.Light: 2, // the light theme, and pages of paper
			"--c-" + f.Name + ":" + f.Dark:  2,
			`:is([data-ink~="f-` + f.Name + `"],.leaves) .w::highlight(f-` + f.Name + "){": 1,
			"\nmark.f-" + f.Name + "{":              1,
			"--form-" + f.Name + ":" + f.Form + ";": 1,
			".w::highlight(f-" + f.Name + "){color": 1,
		} {
			if got := strings.Count(css, want); got != times {
				t.Errorf("%q: %d times, want %d", want, got, times)
			}
		}
	}
	// What breaks a line around ink loses it under final letters.
	if lines, kept := strings.Count(css, "text-decoration-line:"), strings.Count(css, "skip-ink:none"); lines != kept || lines == 0 {
		t.Errorf("%d underlines, %d drawn through", lines, kept)
	}
	if strings.Contains(css, "text-decoration:") {
		t.Error("a shorthand that WebKit does not know")
	}
	for _, tok := range tokens {
		for colour, times := range map[string]int{tok.light: 1, tok.dark: 2, tok.print: 2} {
			if want := "--" + tok.name + ":" + colour + ";"; colour != "" && strings.Count(css, want) < times {
				t.Errorf("%q: fewer than %d times", want, times)
			}
		}
	}
	if open, shut := strings.Count(css, "{"), strings.Count(css, "}"); open != shut {
		t.Errorf("%d braces open, %d shut", open, shut)
	}
}

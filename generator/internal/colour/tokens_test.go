package colour

import "testing"

// TestTokens: words are read on the page and on cards (WCAG 2.2, 1.4.3: 4.5:1), and the edges of
// what is pressed are seen (1.4.11: 3:1), in both themes and on paper.
func TestTokens(t *testing.T) {
	for i, theme := range []string{"light", "dark", "print"} {
		of := map[string]string{}
		for _, k := range tokens {
			of[k.name] = [3]string{k.light, k.dark, k.print}[i]
			if of[k.name] == "" {
				of[k.name] = k.light
			}
		}
		for _, page := range []string{"paper", "card"} {
			for _, words := range []string{"ink", "soft", "accent", "found", "missed", "extra"} {
				if c := contrast(t, of[words], of[page]); c < 4.5 {
					t.Errorf("%s: %s on %s has a contrast of %.2f", theme, words, page, c)
				}
			}
			if c := contrast(t, of["edge"], of[page]); c < 3 {
				t.Errorf("%s: edge on %s has a contrast of %.2f", theme, page, c)
			}
		}
		if c := contrast(t, of["on-accent"], of["accent"]); c < 4.5 {
			t.Errorf("%s: on-accent has a contrast of %.2f", theme, c)
		}
	}
}

// TestDrawn: what is drawn over the text is seen on the page (WCAG 2.2, 1.4.11: 3:1), and is not
// taken for ink or for a rule's colour, in both themes and for every way of seeing. The usual
// colours are meant; a family may set its own.
func TestDrawn(t *testing.T) {
	var drawn token
	for _, k := range tokens {
		if k.name == "drawn" {
			drawn = k
		}
	}
	for _, theme := range []struct {
		name, drawn, page, ink string
		of                     func(Family) string
	}{
		{"light", drawn.light, PaperLight, InkLight, func(f Family) string { return f.Light }},
		{"dark", drawn.dark, PaperDark, InkDark, func(f Family) string { return f.Dark }},
	} {
		if c := contrast(t, theme.drawn, theme.page); c < 3 {
			t.Errorf("%s: the contrast with the page is %.2f", theme.name, c)
		}
		others := []string{theme.ink}
		for _, f := range families(t, sequence) {
			others = append(others, theme.of(f))
		}
		for _, other := range others {
			if which, diff, _ := tooClose(t, theme.drawn, other); diff < 1.4*closeBelow {
				t.Errorf("%s: %s is only %.3f from %s (%s)", theme.name, theme.drawn, diff, other, which)
			}
		}
	}
}

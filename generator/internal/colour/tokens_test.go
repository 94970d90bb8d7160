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

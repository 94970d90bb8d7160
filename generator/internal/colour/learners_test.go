package colour

import (
	"fmt"
	"math"
	"strings"
	"testing"
)

// TestLearners: the letter on a disc, and that in its colour on paper, are read (WCAG 2.2, 1.4.3:
// 4.5:1), the disc is seen on the page, on cards, and beside what is chosen (1.4.11: 3:1), and the
// colours of learners who come after each other differ in every view. The figures are ours: measure
// them again when they move.
func TestLearners(t *testing.T) {
	all := learnerColours()
	if len(all) != 8 {
		t.Fatalf("%d colours", len(all))
	}
	neighbours, pairs := math.Inf(1), math.Inf(1)
	for i, h := range all {
		for theme, pages := range [][]string{{PaperLight, "#ffffff", "#fbf6ea"}, {PaperDark, "#1c2027"}} {
			for k, page := range pages {
				least := 4.5
				if k == len(pages)-1 {
					least = 3
				}
				if c := contrast(t, h.hex[theme], page); c < least {
					t.Errorf("learner %d: %s on %s has a contrast of %.2f, want %.1f", i, h.hex[theme], page, c, least)
				}
			}
		}
		for j := range i {
			d := apart(t, Family{Light: h.hex[0], Dark: h.hex[1]}, Family{Light: all[j].hex[0], Dark: all[j].hex[1]})
			pairs = math.Min(pairs, d)
			if i-j == 1 {
				neighbours = math.Min(neighbours, d)
			}
		}
	}
	near(t, "smallest difference of neighbours", neighbours, 0.1320, 0.0005)
	near(t, "smallest difference of all pairs", pairs, 0.0250, 0.0005)
	css := CSS(families(t, sequence))
	for i, h := range all {
		for theme, hex := range h.hex {
			if want := fmt.Sprintf("--l-%d:%s;", i, hex); strings.Count(css, want) != 2 {
				t.Errorf("theme %d: %q: %d times, want 2", theme, want, strings.Count(css, want))
			}
		}
	}
}

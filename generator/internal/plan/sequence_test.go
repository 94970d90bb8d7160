package plan

import (
	"fmt"
	"strings"
	"testing"
)

// A unit is written as family, places, looks, "+" for a sign of the print, "!" for a rare one, and
// the units it needs; a step as unit, reason and the unit that the reason names.
func TestSequence(t *testing.T) {
	for _, c := range []struct{ name, units, want string }{
		{"the most places among equals, equal ones in their order", "a 5 0; b 5 0; c 6 0", "2 begins 2; 0 begins 0; 1 begins 1"},
		{"few looks before many places", "a 9 3; b 9 1; c 4 0; d 9 2", "2 begins 2; 1 begins 1; 3 begins 3; 0 begins 0"},
		{"a family in a row, by looks, then by places", "a 4 1; b 9 1; a 5 1; a 3 0", "3 begins 3; 2 row 3; 0 row 2; 1 begins 1"},
		{"the places of a whole row count", "a 5 1; b 6 1; a 5 1", "0 begins 0; 2 row 0; 1 begins 1"},
		{"a row ends where more looks are needed", "a 9 1; a 9 2; b 4 1", "0 begins 0; 2 begins 2; 1 begins 1"},
		{"a row ends where a need is not met, and begins again", "a 9 1; a 8 1 2; b 1 1", "0 begins 0; 2 begins 2; 1 builds 2"},
		{"a sign spares looks", "a 9 2; b 4 2+; c 5 1", "2 begins 2; 1 begins 1; 0 begins 0"},
		{"a sign comes first in a row", "a 9 1; a 4 2+", "1 begins 1; 0 row 1"},
		{"no unit is easier than what it needs", "a 4 2; b 9 0 0; c 5 1", "2 begins 2; 0 begins 0; 1 builds 0"},
		{"after a row comes what builds on it", "a 9 1; b 8 1; c 4 1 0", "0 begins 0; 2 builds 0; 1 begins 1"},
		{"what builds on an earlier row has no preference", "a 9 1; b 8 0; c 4 1 1; d 3 1 0", "1 begins 1; 2 builds 1; 0 begins 0; 3 builds 0"},
		{"the rare ones last, by places alone", "a 1 0!; b 4 3; c 2 3!; a 3 2! 2", "1 begins 1; 2 rare 2; 3 rare 3; 0 rare 0"},
		{"what needs a rare one waits for it", "a 1 0!; b 9 0 0; c 4 1", "2 begins 2; 0 rare 0; 1 rare 1"},
		{"a circle still ends", "a 9 1 1; b 8 1 0; c 4 1", "2 begins 2; 0 begins 0; 1 builds 0"},
	} {
		t.Run(c.name, func(t *testing.T) {
			units, seen := parseUnits(t, c.units)
			var got []string
			for _, s := range sequence(units, seen) {
				got = append(got, fmt.Sprint(s.Unit, " ", s.Why, " ", s.On))
				if x := seen[s.Unit]; s.Places != x.places || s.Look != x.look || s.Sign != x.sign {
					t.Errorf("step %+v of %+v", s, x)
				}
			}
			if got := strings.Join(got, "; "); got != c.want {
				t.Errorf("\n got %s\nwant %s", got, c.want)
			}
		})
	}
}

func parseUnits(t *testing.T, text string) (units []Unit, seen []sight) {
	t.Helper()
	for _, f := range strings.Split(text, "; ") {
		var u Unit
		var x sight
		fields := strings.Fields(f)
		u.Family = fields[0]
		x.sign, x.rare = strings.Contains(f, "+"), strings.Contains(f, "!")
		if _, err := fmt.Sscan(fields[1]+" "+strings.TrimRight(fields[2], "+!"), &x.places, &x.look); err != nil {
			t.Fatal(err)
		}
		for _, n := range fields[3:] {
			var k int
			if _, err := fmt.Sscan(n, &k); err != nil {
				t.Fatal(err)
			}
			u.Needs = append(u.Needs, k)
		}
		units, seen = append(units, u), append(seen, x)
	}
	return units, seen
}

package site

import (
	"fmt"
	"testing"

	"sutur/generator/internal/lesson"
	"sutur/generator/internal/rules"
)

// Every length of every rule that is held, named by its rule where the lesson has several.
func TestBeats(t *testing.T) {
	rs := []rules.Rule{
		{ID: "hum", Name: "Hum", Counts: []int{2}}, {ID: "echo", Name: "Echo"},
		{ID: "end", Name: "End", Counts: []int{2, 4, 6}},
	}
	for _, c := range []struct {
		rules []string
		want  string
	}{
		{[]string{"echo"}, "[]"},
		{[]string{"hum"}, "[{ [1 2]}]"},
		{[]string{"echo", "hum"}, "[{ [1 2]}]"},
		{[]string{"end"}, "[{ [1 2]} { [1 2 3 4]} { [1 2 3 4 5 6]}]"},
		{[]string{"hum", "end"}, "[{Hum [1 2]} {End [1 2]} {End [1 2 3 4]} {End [1 2 3 4 5 6]}]"},
	} {
		t.Run(fmt.Sprint(c.rules), func(t *testing.T) {
			if got := fmt.Sprint(beats(Source{Rules: rs}, lesson.Lesson{Rules: c.rules})); got != c.want {
				t.Errorf("%s, want %s", got, c.want)
			}
		})
	}
}

package build

import (
	"bytes"
	"fmt"
	"slices"
	"testing"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/golden"
	"sutur/generator/internal/lesson"
	"sutur/generator/internal/site"
)

// TestTeachingOrder: lessons come before pages and after what they need, each with the step that
// says why it stands there.
func TestTeachingOrder(t *testing.T) {
	s, ds := source(here)
	if diag.HasError(ds) {
		t.Fatal(ds)
	}
	taught := map[string]bool{}
	lessons := 0
	for i, l := range s.Lessons {
		if l.Kind == lesson.KindPage {
			if i < len(s.Steps) {
				t.Errorf("page %s stands among the lessons", l.ID)
			}
			continue
		}
		lessons++
		for _, n := range l.Needs {
			if !taught[n] {
				t.Errorf("%s comes before %s, which it needs", l.ID, n)
			}
		}
		for _, r := range l.Rules {
			taught[r] = true
		}
	}
	if lessons != len(s.Steps) {
		t.Fatalf("%d lessons, %d steps", lessons, len(s.Steps))
	}
	for i, p := range s.Steps {
		if p.Unit != i || p.On > i {
			t.Errorf("%s: step %+v", s.Lessons[i].ID, p)
		}
	}
	golden.Check(t, "testdata/order.txt", describeOrder(s))
	before := slices.Clone(s.Lessons)
	again := teachingOrder(s.Lessons, s.Text, s.Rules)
	if !slices.Equal(again, s.Steps) || !slices.EqualFunc(before, s.Lessons, func(a, b lesson.Lesson) bool { return a.ID == b.ID }) {
		t.Error("the lessons, ordered once more, stand in another order")
	}
}

// describeOrder writes a line for each lesson, as it is taught: its family, what puts it there, and
// what the last juz shows of it. The file says to a reader what a change of the order moves.
func describeOrder(s site.Source) []byte {
	var b bytes.Buffer
	b.WriteString("# lesson, family, why there, places in the last juz, looks besides the letter (+: the print shows it by a sign)\n")
	for i, p := range s.Steps {
		why, sign := string(p.Why), ""
		if p.On != i {
			why += " " + s.Lessons[p.On].ID
		}
		if p.Sign {
			sign = "+"
		}
		fmt.Fprintf(&b, "%2d %-20s %-9s %-28s %4d %d%s\n", i+1, s.Lessons[i].ID, s.Lessons[i].Family, why, p.Places, p.Look, sign)
	}
	return b.Bytes()
}

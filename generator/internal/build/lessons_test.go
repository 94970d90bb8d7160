package build

import (
	"slices"
	"testing"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/lesson"
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
		if p.Unit != i || p.Opens < i {
			t.Errorf("%s: step %+v", s.Lessons[i].ID, p)
		}
	}
	before := slices.Clone(s.Lessons)
	again := teachingOrder(s.Lessons, s.Text, s.Passages, s.Rules)
	if !slices.Equal(again, s.Steps) || !slices.EqualFunc(before, s.Lessons, func(a, b lesson.Lesson) bool { return a.ID == b.ID }) {
		t.Error("the lessons, ordered once more, stand in another order")
	}
}

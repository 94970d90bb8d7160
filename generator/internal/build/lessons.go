package build

import (
	"cmp"
	"os"
	"path/filepath"
	"slices"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/lesson"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/plan"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// Lessons reads the lessons and puts them in teaching order, which follows from
// the rules' needs and from their places in the text. Pages come last.
func Lessons(root string, t *mushaf.Text, x *passage.Index, rs []rules.Rule) ([]lesson.Lesson, []diag.Diagnostic) {
	list, ds := lesson.Load(os.DirFS(filepath.Join(root, filepath.FromSlash(lesson.Dir))), t, recite.New(t), rs)
	if diag.HasError(ds) {
		return list, ds
	}
	units := Units(rs, list)
	at := map[string]int{}
	for i, u := range plan.TeachingOrder(t, x, units) {
		at[units[u].ID] = i
	}
	slices.SortStableFunc(list, func(a, b lesson.Lesson) int {
		return cmp.Or(cmp.Compare(a.Kind, b.Kind), cmp.Compare(at[a.ID], at[b.ID]))
	})
	return list, ds
}

// Units are what the lessons teach at once, in their order.
func Units(rs []rules.Rule, list []lesson.Lesson) []plan.Unit {
	var lessons []plan.Lesson
	for _, l := range list {
		lessons = append(lessons, plan.Lesson{ID: l.ID, Rules: l.Rules})
	}
	return plan.Units(rs, lessons)
}

// Index makes the passage index of the text.
func Index(t *mushaf.Text) *passage.Index {
	return passage.Build(t, func() passage.Engine { return recite.New(t) })
}

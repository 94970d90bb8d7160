package build

import (
	"cmp"
	"slices"

	"sutur/generator/internal/lesson"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/plan"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// teachingOrder sorts lessons as they are taught, which follows from the rules' needs and families
// and from what the text shows of them; pages come last. A step says why a lesson stands where it does: its
// units are places in the sorted list.
func teachingOrder(list []lesson.Lesson, t *mushaf.Text, rs []rules.Rule) []plan.Step {
	var taught [][]recite.RuleID
	var of []*lesson.Lesson // the lesson of each unit
	for i := range list {
		if l := &list[i]; l.Kind == lesson.KindLesson {
			taught, of = append(taught, l.RuleIDs()), append(of, l)
		}
	}
	steps := plan.TeachingOrder(t, plan.Units(rs, taught))
	for i, s := range steps {
		of[s.Unit].Order = i
	}
	for i, s := range steps {
		steps[i].Unit, steps[i].On = i, of[s.On].Order
	}
	slices.SortFunc(list, func(a, b lesson.Lesson) int {
		return cmp.Or(cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.Order, b.Order))
	})
	return steps
}

// Index makes the passage index of the text.
func Index(t *mushaf.Text) *passage.Index {
	return passage.Build(t, func() passage.Engine { return recite.New(t) })
}

package plan

import (
	"os"
	"slices"
	"strings"
	"testing"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/lesson"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

func ruleList(t testing.TB) []rules.Rule {
	list, ds := rules.Load(os.DirFS("../../../" + rules.Dir))
	if diag.HasError(ds) {
		t.Fatal(ds)
	}
	return list
}

// grouped is a way to teach several rules in one lesson, whatever the lessons are at present.
var grouped = []Lesson{
	{"wasl", []string{"hamzat-wasl"}}, {"lams", []string{"sun-lam", "moon-lam"}}, {"name", []string{"heavy-lam", "light-lam"}},
	{"ras", []string{"heavy-ra", "light-ra"}}, {"idgham", []string{"idgham-mithlayn", "idgham-mutajanisayn", "idgham-mutaqaribayn"}},
	{"single", []string{"imalah", "ishmam", "tas-hil", "sad-as-seen"}}, {"lazim", []string{"madd-lazim", "madd-lazim-letter"}},
}

// real are the lessons of the project in teaching order.
func real(t testing.TB, rs []rules.Rule) []Lesson {
	list, ds := lesson.Load(os.DirFS("../../../"+lesson.Dir), text(), recite.New(text()), rs)
	if diag.HasError(ds) {
		t.Fatal(ds)
	}
	var lessons, ordered []Lesson
	for _, l := range list {
		if l.Kind == lesson.KindLesson {
			lessons = append(lessons, Lesson{l.ID, l.Rules})
		}
	}
	for _, u := range TeachingOrder(text(), index(), Units(rs, lessons)) {
		ordered = append(ordered, lessons[u])
	}
	return ordered
}

// TestTeachingOrder: the browser, which is given the lessons in teaching order, finds the same order again; no lesson comes
// before what it needs.
func TestTeachingOrder(t *testing.T) {
	rs := ruleList(t)
	lessons := real(t, rs)
	units := Units(rs, lessons)
	if len(units) != len(lessons) {
		t.Fatalf("%d lessons, %d units: a rule has no lesson", len(lessons), len(units))
	}
	for i, u := range TeachingOrder(text(), index(), units) {
		if u != i {
			t.Errorf("place %d: %s, the second time %s", i+1, units[i].ID, units[u].ID)
		}
		for _, n := range units[i].Needs {
			if n >= i {
				t.Errorf("%s comes before %s, which it needs", units[i].ID, units[n].ID)
			}
		}
	}
}

func TestCourse(t *testing.T) {
	for _, c := range []struct {
		name    string
		lessons []Lesson
	}{{"the lessons", real(t, ruleList(t))}, {"a rule a lesson", nil}, {"several rules a lesson", grouped}} {
		t.Run(c.name, func(t *testing.T) {
			units := Units(ruleList(t), c.lessons)
			course := Course(text(), index(), units, 400)
			rare := Rare(Places(index(), 0, 6235))
			// Every unit is begun, after its needs, and each of its rules was in at least three sessions before the next.
			var begun []int
			at := map[int]int{}
			for i, s := range course {
				if s.Plan.Do == Teach {
					for _, n := range units[s.Plan.Unit].Needs {
						if !slices.Contains(begun, n) {
							t.Errorf("%s is begun before %s", units[s.Plan.Unit].ID, units[n].ID)
						}
					}
					begun = append(begun, s.Plan.Unit)
					at[s.Plan.Unit] = i
				}
			}
			if len(begun) != len(units) {
				t.Fatalf("%d of %d units are begun in %d sessions", len(begun), len(units), len(course))
			}
			for k, u := range begun {
				end := len(course)
				if k+1 < len(begun) {
					end = at[begun[k+1]]
				}
				whole := 0
				for _, rule := range units[u].Rules {
					n := 0
					for _, s := range course[at[u]:end] {
						if s.Places[rule] > 0 {
							n++
						}
						if s.Plan.Rule == int(rule) {
							whole++
						}
					}
					if want := 3; n < want && !(rare[rule] && n > 0 && len(units[u].Rules) > 1) {
						t.Errorf("%s was in %d sessions before the next lesson", rule, n)
					}
				}
				if whole < 3 {
					t.Errorf("lesson %s was marked in %d sessions before the next", units[u].ID, whole)
				}
			}
			// No passage comes twice within two weeks, and none overlaps one but where its rule comes nowhere else.
			again, reviews := 0, 0
			for i, s := range course {
				reviews += b2i(s.Plan.Do == DoReview)
				for _, e := range course[:i] {
					if s.Day-e.Day > RestDays {
						continue
					}
					if s.A == e.A && s.B == e.B {
						t.Errorf("session %d repeats the passage of day %d", i+1, e.Day)
					}
					if s.A <= e.B && e.A <= s.B && s.How != Again {
						t.Errorf("session %d overlaps the passage of day %d", i+1, e.Day)
					}
				}
				again += b2i(s.How == Again)
				if s.Plan.Rule >= 0 && s.Focus == 0 {
					t.Errorf("session %d has no place of %s", i+1, recite.RuleID(s.Plan.Rule))
				}
				if s.How == AsWanted && s.Plan.Rule >= 0 && s.Focus < Enough {
					t.Errorf("session %d has only %d places", i+1, s.Focus)
				}
			}
			if reviews == 0 {
				t.Error("there was no review")
			}
			last := course[len(course)-1]
			t.Logf("%d sessions in %d weeks, %d of them reviews, %d with places that came again; the last has %d%% readable",
				len(course), last.Day/7+1, reviews, again, last.Share)
			if testing.Verbose() {
				t.Log("\n" + strings.Join(Table(text(), index(), units, course), "\n"))
			}
		})
	}
}

func b2i(b bool) int {
	if b {
		return 1
	}
	return 0
}

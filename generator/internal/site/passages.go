package site

import (
	"path"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/plan"
)

// lessonEntry is what the planner has to know of a lesson: the rules that are taught together, and
// why the lesson stands where it does (plan.Step).
type lessonEntry struct {
	ID     string   `json:"id"`
	Name   string   `json:"name"`
	Arabic string   `json:"ar"`
	Rules  []string `json:"rules"`
	Why    plan.Why `json:"why"`
	On     int      `json:"on"` // index of a lesson
	Places int      `json:"places"`
	Look   int      `json:"look"`
	Sign   bool     `json:"sign"`
}

// addPassages encodes the passage index and tells the catalogue its name, and which rules are
// taught together.
func (c *catalogue) addPassages(s Source) bundle.File {
	raw := s.Passages.Encode()
	f := bundle.File{Name: "data/passages." + hash(raw) + ".bin.gz", Data: Compress(raw)}
	c.Passages, c.PassageSHA = path.Base(f.Name), digest(raw)
	for i, step := range s.Steps {
		l := s.Lessons[i]
		c.Lessons = append(c.Lessons, lessonEntry{l.ID, l.Name, l.Arabic, l.Rules, step.Why, step.On, step.Places, step.Look, step.Sign})
	}
	return f
}

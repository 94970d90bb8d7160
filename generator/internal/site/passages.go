package site

import (
	"path"

	"sutur/generator/internal/bundle"
)

// lessonEntry is what the planner has to know of a lesson: the rules that are taught together, and
// why the lesson stands where it does (plan.Step).
type lessonEntry struct {
	ID       string   `json:"id"`
	Name     string   `json:"name"`
	Arabic   string   `json:"ar"`
	Rules    []string `json:"rules"`
	Places   int      `json:"places"`
	Opens    int      `json:"opens"` // index of a lesson
	Lessons  int      `json:"lessons"`
	Together int      `json:"together"`
}

// addPassages encodes the passage index and tells the catalogue its name, and which rules are
// taught together.
func (c *catalogue) addPassages(s Source) bundle.File {
	raw := s.Passages.Encode()
	f := bundle.File{Name: "data/passages." + hash(raw) + ".bin.gz", Data: compress(raw)}
	c.Passages, c.PassageSHA = path.Base(f.Name), digest(raw)
	for i, step := range s.Steps {
		l := s.Lessons[i]
		c.Lessons = append(c.Lessons, lessonEntry{l.ID, l.Name, l.Arabic, l.Rules, step.Places, step.Opens, step.Lessons, step.Together})
	}
	return f
}

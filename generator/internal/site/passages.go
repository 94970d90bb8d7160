package site

import (
	"bytes"
	"path"

	"sutur/generator/internal/bundle"
)

// unitEntry is what the planner has to know of a lesson: the rules that are taught together.
type unitEntry struct {
	ID     string   `json:"id"`
	Name   string   `json:"name"`
	Arabic string   `json:"ar"`
	Rules  []string `json:"rules"`
}

// addPassages encodes the passage index and tells the catalogue its name, and which rules are taught together.
func (c *catalogue) addPassages(s Source) bundle.File {
	raw := s.Passages.Encode()
	f := bundle.File{Name: "data/passages." + hash(raw) + ".bin.gz", Data: compress(new(bytes.Buffer), raw)}
	c.Passages, c.PassageSHA, c.Lessons = path.Base(f.Name), digest(raw), []unitEntry{}
	for _, l := range s.Lessons {
		if len(l.Rules) > 0 {
			c.Lessons = append(c.Lessons, unitEntry{l.ID, l.Name, l.Arabic, l.Rules})
		}
	}
	return f
}

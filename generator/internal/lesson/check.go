package lesson

import (
	"fmt"
	"slices"

	"sutur/generator/internal/diag"
)

// check looks at the whole course: every rule in one lesson, every page at a place of its own,
// examples from places of their own.
func (c *course) check() {
	taught := map[string]*Lesson{}
	for _, l := range c.lessons {
		for _, r := range l.Rules {
			if first, ok := taught[r]; ok {
				c.report(l.src, 0, "teach it in one lesson", "rule %s is taught here and in %s", r, first.ID)
				continue
			}
			taught[r] = l
		}
	}
	for _, r := range c.list {
		if taught[r.ID] == nil {
			c.diags = append(c.diags, diag.Diagnostic{File: Dir, Found: fmt.Sprintf("no lesson teaches rule %s", r.ID), Do: "name it in the rules of a lesson"})
		}
	}
	orders := map[int]*Lesson{}
	for _, l := range c.lessons {
		if l.Kind == KindLesson {
			c.checkExamples(l)
			continue
		}
		if first, ok := orders[l.Order]; ok {
			c.report(l.src, 0, "give each its own", "the order %d is also that of %s", l.Order, first.ID)
		}
		orders[l.Order] = l
	}
	c.checkPlaces()
}

// fewest is how many worked examples a lesson has at least.
const fewest = 3

func (c *course) checkExamples(l *Lesson) {
	for _, r := range l.Rules {
		if !slices.ContainsFunc(l.Examples, func(e Example) bool { return e.Rule == r }) {
			c.report(l.src, l.src.body, "add one to a verse block", "no worked example shows %s", r)
		}
	}
	if len(l.Examples) < fewest {
		c.report(l.src, l.src.body, fmt.Sprintf("give %d or more", fewest), "the lesson has %d worked examples", len(l.Examples))
	}
	for _, e := range l.Examples {
		if !slices.Contains(l.Rules, e.Rule) {
			c.report(l.src, e.off, "show it in its own lesson, or within a sentence", "the lesson does not teach %s", e.Rule)
		}
	}
}

// checkPlaces reports worked examples that share a word with one before.
func (c *course) checkPlaces() {
	type word struct{ verse, word int }
	used := map[word]string{}
	for _, l := range c.lessons {
		for _, e := range l.Examples {
			v := c.text.Verses[e.Verse]
			for w := e.First; w <= e.Last; w++ {
				if first, ok := used[word{e.Verse, w}]; ok {
					c.report(l.src, e.off, "take another place", "%d:%d word %d is an example already, at %s", v.Surah, v.Ayah, w+1, first)
					break
				}
			}
			for w := e.First; w <= e.Last; w++ {
				used[word{e.Verse, w}] = fmt.Sprintf("%s:%d", l.src.file, e.Line)
			}
		}
	}
}

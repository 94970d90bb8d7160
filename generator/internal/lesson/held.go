package lesson

import (
	"fmt"
	"slices"
	"strings"

	"sutur/generator/internal/recite"
)

// spot is a place found in the text: verse index and words from 0, both included.
type spot struct {
	verse, first, last int
	join               bool
}

// locate finds the verse and words of a place. It reports a place that is not there, at off.
func (c *course) locate(s *source, off int, p place) (spot, bool) {
	v := c.text.Find(p.surah, p.ayah)
	if v < 0 {
		do := fmt.Sprintf("there are surahs 1 to %d", len(c.text.Surahs))
		if p.surah >= 1 && p.surah <= len(c.text.Surahs) {
			do = fmt.Sprintf("surah %d has verses 1 to %d", p.surah, c.text.Surahs[p.surah-1].Count)
		}
		c.report(s, off, do, "there is no verse %d:%d", p.surah, p.ayah)
		return spot{}, false
	}
	n := len(c.text.Verses[v].Words)
	if p.last > n {
		c.report(s, off, fmt.Sprintf("it has words 1 to %d", n), "%d:%d has no word %d", p.surah, p.ayah, p.last)
		return spot{}, false
	}
	if p.first == 0 {
		return spot{v, 0, n - 1, p.join}, true
	}
	return spot{v, p.first - 1, p.last - 1, p.join}, true
}

// held returns the events of the rule that hold when the words of p are read as they stand: from
// the first on, to a stop after the last unless p says join. Sounds that are not written are left
// out where others are written.
func (c *course) held(p spot, rule string) []recite.Event {
	c.events = c.engine.Verse(c.events[:0], p.verse)
	var out []recite.Event
	written := false
	for _, e := range c.events {
		w := int(e.Word)
		if w < p.first || w > p.last || rule != "" && e.Rule.String() != rule {
			continue
		}
		if e.Holds(w == p.first, w == p.last && !p.join) {
			out = append(out, e)
			written = written || !e.Unwritten
		}
	}
	if written {
		out = slices.DeleteFunc(out, func(e recite.Event) bool { return e.Unwritten })
	}
	return out
}

// nearest names the place of the rule that is closest to p: in its verse, its surah, or anywhere.
func (c *course) nearest(p spot, rule string) string {
	surah := c.text.Verses[p.verse].Surah
	for _, all := range []bool{false, true} {
		for d := range len(c.text.Verses) {
			for _, v := range []int{p.verse + d, p.verse - d} {
				if v < 0 || v >= len(c.text.Verses) || !all && c.text.Verses[v].Surah != surah {
					continue
				}
				if words := c.words(v, rule); words != "" {
					return fmt.Sprintf("the nearest place of %s is %d:%d %s", rule, c.text.Verses[v].Surah, c.text.Verses[v].Ayah, words)
				}
			}
		}
	}
	return "the engine finds " + rule + " nowhere"
}

// words writes the fewest words of verse v, around its first place of the rule, in which the rule
// holds.
func (c *course) words(v int, rule string) string {
	n := len(c.text.Verses[v].Words)
	for _, e := range c.held(spot{verse: v, last: n - 1}, rule) {
		w := int(e.Word)
		for _, p := range []spot{{v, w, w, false}, {v, w, w + 1, false}, {v, w - 1, w, false}} {
			if p.first < 0 || p.last >= n || len(c.held(p, rule)) == 0 {
				continue
			}
			if p.first == p.last {
				return fmt.Sprintf("word %d", p.first+1)
			}
			return fmt.Sprintf("words %d-%d", p.first+1, p.last+1)
		}
	}
	return ""
}

// prove checks what a place says of its rule. It returns the events to mark.
func (c *course) prove(s *source, off, ruleOff int, p place, at spot) []recite.Event {
	if p.rule == "" {
		return nil
	}
	if _, ok := c.rules[p.rule]; !ok {
		c.report(s, ruleOff, "name rules by their id", "there is no rule %q", p.rule)
		return nil
	}
	evs := c.held(at, p.rule)
	switch {
	case p.not && len(evs) > 0:
		c.report(s, off, "name words without it", "%s has %s", p, p.rule)
		return nil
	case !p.not && len(evs) == 0:
		var there []string
		for _, e := range c.held(at, "") {
			if id := e.Rule.String(); !slices.Contains(there, id) {
				there = append(there, id)
			}
		}
		found := "no rule"
		if len(there) > 0 {
			found = strings.Join(there, ", ")
		}
		c.report(s, off, c.nearest(at, p.rule), "%s, read as it stands, has no %s (found there: %s)", p, p.rule, found)
	}
	return evs
}

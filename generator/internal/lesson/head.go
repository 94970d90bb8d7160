package lesson

import (
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"
)

var idForm = regexp.MustCompile(`^[a-z]+(-[a-z]+)*$`)

// read takes in one file's front matter; its text waits until all are known.
func (c *course) read(name, text string) {
	s := &source{file: path.Join(Dir, name), text: text}
	if !utf8.ValidString(text) {
		c.report(s, 0, "write the file in UTF-8", "the file is not UTF-8")
		return
	}
	fields, body, problems := frontMatter(text)
	for _, p := range problems {
		c.report(s, p.off, p.do, "%s", p.found)
	}
	if len(problems) > 0 {
		return
	}
	s.body = body
	l := &Lesson{src: s, Kind: KindLesson}
	at := map[string]field{}
	for _, f := range fields {
		at[f.key] = f
	}
	id, ok := at["id"]
	if want := strings.TrimSuffix(name, ".md"); !ok || id.value != want || !idForm.MatchString(id.value) {
		c.report(s, id.off, "write id: "+want+", in small letters and hyphens, as the file is named", "the id is %q", id.value)
		return
	}
	l.ID = id.value
	l.Name, l.Arabic, l.Translit, l.Family = at["name"].value, at["arabic"].value, at["translit"].value, at["family"].value
	if k, ok := at["kind"]; ok {
		l.Kind = k.value
		if l.Kind != KindLesson && l.Kind != KindPage {
			c.report(s, k.off, "lesson and page are accepted", "the kind is %q", k.value)
			return
		}
	}
	switch o, ok := at["order"]; {
	case ok && l.Kind == KindLesson:
		c.report(s, o.off, "remove the line", "the order of the lessons is computed from their rules")
	case ok:
		n, err := strconv.Atoi(o.value)
		if err != nil || n < 0 || n > 9999 {
			c.report(s, o.off, "0 to 9999 are accepted", "the order is %q", o.value)
		}
		l.Order = n
	case l.Kind == KindPage:
		c.report(s, 0, "write order: N; pages are ordered by it", "the page has no order")
	}
	c.headRules(l, at)
	if l.Name == "" {
		c.report(s, 0, "write name: NAME", "the file has no name")
	}
	c.lessons = append(c.lessons, l)
	c.byID[l.ID] = l
}

// headRules joins a lesson to its rules. The front matter says the lesson's names, family, needs
// and counts, so that a teacher who opens the file sees them; family, needs and counts, and the
// names where there is one rule, must be the rules' own. A line left out is taken from the rules.
func (c *course) headRules(l *Lesson, at map[string]field) {
	s := l.src
	if l.Kind == KindPage {
		for _, k := range []string{"rules", "needs", "counts", "family"} {
			if f, ok := at[k]; ok {
				c.report(s, f.off, "take "+k+" away, or make it a lesson", "a page teaches no rule")
			}
		}
		return
	}
	for _, f := range at["rules"].items() {
		r, ok := c.rules[f.value]
		switch {
		case !ok:
			c.report(s, f.off, "name rules by their id", "there is no rule %q", f.value)
			continue
		case slices.Contains(l.Rules, r.ID):
			c.report(s, f.off, "keep one", "rule %s is there twice", r.ID)
			continue
		}
		l.Rules = append(l.Rules, r.ID)
		for _, n := range r.Counts {
			if !slices.Contains(l.Counts, n) {
				l.Counts = append(l.Counts, n)
			}
		}
	}
	slices.Sort(l.Counts)
	if len(l.Rules) == 0 {
		c.report(s, at["rules"].off, "write rules: with ids, or kind: page", "the lesson teaches no rule")
		return
	}
	for _, id := range l.Rules {
		for _, n := range c.rules[id].Needs {
			if !slices.Contains(l.Rules, n) && !slices.Contains(l.Needs, n) {
				l.Needs = append(l.Needs, n)
			}
		}
	}
	first := c.rules[l.Rules[0]]
	l.Family = first.Family
	var counts []string
	for _, n := range l.Counts {
		counts = append(counts, strconv.Itoa(n))
	}
	want := []headLine{{"family", []string{first.Family}}, {"needs", l.Needs}, {"counts", counts}}
	if len(l.Rules) == 1 {
		l.Name, l.Arabic, l.Translit = first.Name, first.Arabic, first.Translit
		want = append(want, headLine{"name", []string{l.Name}}, headLine{"arabic", []string{l.Arabic}}, headLine{"translit", []string{l.Translit}})
	}
	for _, w := range want {
		f, ok := at[w.key]
		line := w.key + ": " + strings.Join(w.items, ", ")
		switch {
		case len(w.items) == 0 && ok:
			c.report(s, f.off, "remove the line", "the rules have no %s", w.key)
		case ok && !sameItems(f, w.items):
			c.report(s, f.off, "write "+line, "the rules say otherwise of its %s", w.key)
		}
	}
}

// headLine is one line of front matter as the rules would have it.
type headLine struct {
	key   string
	items []string
}

func sameItems(f field, want []string) bool {
	var got []string
	for _, i := range f.items() {
		got = append(got, i.value)
	}
	slices.Sort(got)
	want = slices.Clone(want)
	slices.Sort(want)
	return slices.Equal(got, want)
}

package site

import (
	"fmt"
	"html/template"
	"strconv"
	"strings"

	"sutur/generator/internal/lesson"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/plan"
	"sutur/generator/internal/recite"
)

// Try is a passage of whole verses for a reader of a lesson to find its rule in: the text itself,
// so that it is there without a script, and a link that opens it in the app.
type Try struct {
	Rule   string // id
	Name   string // of the rule, for people
	Verses []TryVerse
	Where  string // such as "An-Naba 78:12–18"
	Href   string // relative to the page
	Places int    // how many places of the rule are written in it, stopping at verse ends
}

// TryVerse is a verse as the text has it, with its number in the digits of the script.
type TryVerse struct {
	Ref, Text, Number string
	HTML              template.HTML // the text, with the words under the line of a prostration in elements of their own
}

func verseHTML(v *mushaf.Verse) template.HTML {
	var b strings.Builder
	lined := false
	for i, w := range v.Words {
		if lined && !w.Lined {
			b.WriteString("</span>")
		}
		if i > 0 {
			b.WriteByte(' ')
		}
		if !lined && w.Lined {
			b.WriteString(lesson.LinedGroup)
		}
		lined = w.Lined
		text := template.HTMLEscapeString(v.Text[w.Start:w.End])
		if class := lesson.LinedClass(v, i, len(v.Words)-1); class != "" {
			text = `<span class="` + class[1:] + `">` + text + `</span>`
		}
		b.WriteString(text)
	}
	if lined {
		b.WriteString("</span>")
	}
	return template.HTML(b.String())
}

// Lines on a lesson page are shorter than those of a session, so that the page stays a page.
const (
	tryWords    = 8
	tryMost     = 18
	tryPassages = 3
	weighed     = 40 // of so many best passages, those that are not whole verses are left out
)

// tryIn are rules that are sought elsewhere than in the last juz: surah, first and last verse. The
// one place of sad-as-seen there, 88:22, is a sad that looks and sounds like any other; in 52:37
// the small seen is written.
var tryIn = map[string][3]int{"sad-as-seen": {52, 35, 38}}

// tryFor chooses the passages of every lesson, from the last juz where it has enough, else from the
// whole text. What is taught before a lesson counts as known.
func tryFor(s Source, x *passage.Index) [][]Try {
	var known [][]recite.RuleID // before each lesson
	var taught []recite.RuleID
	for _, l := range s.Lessons {
		known = append(known, taught[:len(taught):len(taught)])
		taught = append(taught, l.RuleIDs()...)
	}
	out := make([][]Try, len(s.Lessons))
	each(len(s.Lessons), func() func(int) {
		return func(i int) {
			rs := s.Lessons[i].RuleIDs()
			for _, r := range rs {
				// At least three for a lesson, and every rule of it has one.
				out[i] = append(out[i], s.try(x, r, known[i], (tryPassages+len(rs)-1)/len(rs))...)
			}
		}
	})
	return out
}

func (s *Source) try(x *passage.Index, r recite.RuleID, known []recite.RuleID, n int) (list []Try) {
	begin, end := max(0, s.Text.Find(78, 1)), len(s.Text.Verses)-1
	if in, ok := tryIn[r.String()]; ok {
		begin, end = s.Text.Find(in[0], in[1]), s.Text.Find(in[0], in[2])
	}
	q := plan.Query{
		Focus: []recite.RuleID{r}, Known: known, Place: begin, From: begin, To: end,
		Min: tryWords, Max: tryMost, Want: 2, Best: weighed, Level: len(known),
	}
	best := whole(x, plan.Choose(x, q), n)
	if len(best) < n {
		q.From, q.To, q.Want = 0, len(s.Text.Verses)-1, 1
		best = whole(x, plan.Choose(x, q), n)
	}
	if len(best) == 0 { // all its verses are long
		best = verses(x, r, n)
	}
	for _, p := range best {
		list = append(list, s.describe(x, r, p))
	}
	return list
}

// whole returns the first n passages that begin and end with a verse: only such can be named in a
// link.
func whole(x *passage.Index, r plan.Ranking, n int) (list []plan.Passage) {
	for _, p := range r.Passages {
		if len(list) < n && x.StartsVerse(p.A) && x.End[p.B] != passage.PauseEnd {
			list = append(list, p)
		}
	}
	return list
}

// verses returns the first n verses in which the rule has a place, each alone.
func verses(x *passage.Index, r recite.RuleID, n int) (list []plan.Passage) {
	for v := 0; v+1 < len(x.Of) && len(list) < n; v++ {
		p := plan.Passage{A: int(x.Of[v]), B: int(x.Of[v+1]) - 1}
		if p.Focus = x.Count(r, p.A, p.B); p.Focus > 0 {
			list = append(list, p)
		}
	}
	return list
}

func (s *Source) describe(x *passage.Index, r recite.RuleID, p plan.Passage) Try {
	t := Try{Rule: r.String(), Places: p.Focus}
	for _, e := range s.Rules {
		if e.ID == t.Rule {
			t.Name = e.Name
		}
	}
	first, last := int(x.Verse[p.A]), int(x.Verse[p.B])
	for v := first; v <= last; v++ {
		verse := &s.Text.Verses[v]
		t.Verses = append(t.Verses, TryVerse{ref(verse), verse.Text, arabicDigits(verse.Ayah), verseHTML(verse)})
	}
	a, b := &s.Text.Verses[first], &s.Text.Verses[last]
	t.Where = s.Text.Surahs[a.Surah-1].Latin + " " + ref(a)
	if last > first {
		t.Where += fmt.Sprintf("–%d", b.Ayah)
	}
	t.Href = fmt.Sprintf("index.html#/lines?rule=%s&from=%s&to=%s", t.Rule, ref(a), ref(b))
	return t
}

func ref(v *mushaf.Verse) string { return fmt.Sprintf("%d:%d", v.Surah, v.Ayah) }

func arabicDigits(n int) string {
	digits := []rune(strconv.Itoa(n))
	for i := range digits {
		digits[i] += '٠' - '0'
	}
	return string(digits)
}

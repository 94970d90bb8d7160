package site

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"sutur/generator/internal/lesson"
	"sutur/generator/internal/passage"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// Every lesson proposes lines of the real text: whole verses as the text has them, in which the
// engine finds as many places as the page says, and every rule has some.
func TestTry(t *testing.T) {
	text, err := realText()
	if err != nil {
		t.Fatal(err)
	}
	rs, _ := rules.Load(os.DirFS("../../../rules-content/rules"))
	ls, _ := lesson.Load(os.DirFS("../../../rules-content/lessons"), text, recite.New(text), rs)
	s := Source{Text: text, Rules: rs, Lessons: ls, Engine: func() Engine { return recite.New(text) }}
	x := passage.Build(text, func() passage.Engine { return s.Engine() })
	have := map[string]int{}
	e := recite.New(text)
	for i, list := range tryFor(s, x) {
		if ls[i].Kind == lesson.KindPage {
			if len(list) > 0 {
				t.Errorf("%s is no lesson and proposes lines", ls[i].ID)
			}
			continue
		}
		if len(list) < tryPassages {
			t.Errorf("%s proposes %d passages, want %d", ls[i].ID, len(list), tryPassages)
		}
		for _, p := range list {
			have[p.Rule]++
			found := 0
			for _, v := range p.Verses {
				r := text.Find(atoi(v.Ref))
				if r < 0 || text.Verses[r].Text != v.Text || tags.ReplaceAllString(string(v.HTML), "") != v.Text {
					t.Errorf("%s: %s is not as the text has it", ls[i].ID, v.Ref)
					continue
				}
				for _, ev := range e.Reading(nil, r, recite.Reading{}) {
					if ev.Rule.String() == p.Rule && !ev.Unwritten {
						found++
					}
				}
			}
			if found != p.Places || found == 0 {
				t.Errorf("%s %s: %d places are said, the engine finds %d", ls[i].ID, p.Where, p.Places, found)
			}
			first, last := p.Verses[0].Ref, p.Verses[len(p.Verses)-1].Ref
			if want := "index.html#/lines?rule=" + p.Rule + "&from=" + first + "&to=" + last; p.Href != want {
				t.Errorf("%s: leads to %s, want %s", ls[i].ID, p.Href, want)
			}
		}
	}
	for _, r := range rs {
		if have[r.ID] == 0 {
			t.Errorf("no lines for %s", r.ID)
		}
	}
}

var tags = regexp.MustCompile(`</?span[^>]*>`)

// Every verse with the line of a prostration: the page shows the text, and the line over its words
// alone.
func TestTryVersesUnderALine(t *testing.T) {
	text, err := realText()
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	for i := range text.Verses {
		v := &text.Verses[i]
		shown := string(verseHTML(v))
		if tags.ReplaceAllString(shown, "") != v.Text {
			t.Errorf("%s is not as the text has it: %s", ref(v), shown)
		}
		if got := strings.Count(shown, `<span class="lined`); got > 0 {
			n += got
			if groups := strings.Count(shown, `role="group"`); groups != 1 || strings.Count(shown, "</span>") != got+1 {
				t.Errorf("%s: %d groups in %s", ref(v), groups, shown)
			}
		}
	}
	if n != 26 {
		t.Errorf("%d words bear a line, 26 are expected", n)
	}
}

func atoi(ref string) (int, int) {
	s, a, _ := strings.Cut(ref, ":")
	n := func(s string) (n int) {
		for _, c := range s {
			n = 10*n + int(c-'0')
		}
		return n
	}
	return n(s), n(a)
}

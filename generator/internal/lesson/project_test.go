package lesson

import (
	"encoding/xml"
	"errors"
	"io"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

const content = "../../../rules-content/"

func project(t testing.TB) (*mushaf.Text, []rules.Rule, []Lesson) {
	t.Helper()
	tx, err := quran()
	if err != nil {
		t.Fatal(err)
	}
	rs, ds := rules.Load(os.DirFS(content + "rules"))
	ls, more := Load(os.DirFS(content+"lessons"), tx, recite.New(tx), rs)
	for _, d := range append(ds, more...) {
		t.Error(d)
	}
	return tx, rs, ls
}

// The whole course: no diagnostic, well-formed HTML, and every verse and word as the text has it.
func TestProject(t *testing.T) {
	tx, rs, ls := project(t)
	verses := map[int]bool{}
	lessons, examples := 0, 0
	for _, l := range ls {
		if l.Kind == KindLesson {
			lessons++
		}
		examples += len(l.Examples)
		for _, e := range l.Examples {
			verses[e.Verse] = true
		}
		if err := wellFormed(whole(l)); err != nil {
			t.Errorf("%s: the HTML is not well-formed: %v", l.ID, err)
		}
		checkWords(t, tx, l)
	}
	t.Logf("%d rules, %d lessons, %d pages, %d worked examples from %d verses", len(rs), lessons, len(ls)-lessons, examples, len(verses))
}

// A teacher who opens a lesson's file sees its names, family, needs and counts at the top. That
// they are the rules' own is checked by Load.
func TestFrontMatterIsWhole(t *testing.T) {
	_, _, ls := project(t)
	for _, l := range ls {
		if l.Kind != KindLesson {
			continue
		}
		raw, err := os.ReadFile(content + "lessons/" + l.ID + ".md")
		if err != nil {
			t.Fatal(err)
		}
		fields, _, _ := frontMatter(string(raw))
		has := map[string]bool{}
		for _, f := range fields {
			has[f.key] = true
		}
		for key, want := range map[string]bool{"name": true, "arabic": true, "family": true, "rules": true, "needs": len(l.Needs) > 0, "counts": len(l.Counts) > 0} {
			if has[key] != want {
				t.Errorf("%s.md: front matter has %s: %v, want %v", l.ID, key, has[key], want)
			}
		}
	}
}

// Each rule that a lesson teaches says what helps a child who is stuck.
func TestStuck(t *testing.T) {
	_, rs, ls := project(t)
	for _, l := range ls {
		for _, id := range l.Rules {
			i := slices.IndexFunc(rs, func(r rules.Rule) bool { return r.ID == id })
			if i < 0 || rs[i].Stuck == "" {
				t.Errorf("%s: nothing is said to a child who is stuck on %s", l.ID, id)
			}
		}
	}
}

// whole is all that is said before the lines to try: the text of a page, or minute and parts.
func whole(l Lesson) string {
	html := l.HTML
	for _, p := range l.Parts {
		html += `<h2 id="` + p.ID + `">` + p.Title + "</h2>\n" + p.HTML
	}
	return html
}

// wellFormed reads HTML as XML: goldmark and our own nodes close every element.
func wellFormed(html string) error {
	d := xml.NewDecoder(strings.NewReader("<body>" + html + "</body>"))
	d.Entity = xml.HTMLEntity
	for {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			return nil
		} else if err != nil {
			return err
		}
	}
}

var (
	refs = regexp.MustCompile(`data-ref="([^"]*)"`)
	word = regexp.MustCompile(`<span class="w(| lined| lined on| lined signed)" data-w="([0-9]+)">([^<]*)</span>`)
)

// checkWords compares every word of the page with the text.
func checkWords(t *testing.T, tx *mushaf.Text, l Lesson) {
	t.Helper()
	html := whole(l)
	parts := refs.FindAllStringSubmatchIndex(html, -1)
	for i, m := range parts {
		end := len(html)
		if i+1 < len(parts) {
			end = parts[i+1][0]
		}
		rs, err := mushaf.ParseRefs(tx, html[m[2]:m[3]])
		if err != nil {
			t.Errorf("%s: %v", l.ID, err)
			continue
		}
		v := tx.Verses[rs[0].First]
		words := word.FindAllStringSubmatch(html[m[3]:end], -1)
		if len(words) == 0 {
			t.Errorf("%s: no words of %s", l.ID, html[m[2]:m[3]])
		}
		split := strings.Split(v.Text, " ")
		for _, w := range words {
			n := 0
			for _, c := range w[2] {
				n = 10*n + int(c-'0')
			}
			if n >= len(split) || split[n] != w[3] {
				t.Errorf("%s: word %d of %s is %q, not that of the text", l.ID, n, html[m[2]:m[3]], w[3])
				continue
			}
			if (w[1] != "") != v.Words[n].Lined || (w[1] == " lined signed") != (v.Words[n].Lined && v.Words[n].Sajdah) {
				t.Errorf("%s: word %d of %s has the classes w%s", l.ID, n, html[m[2]:m[3]], w[1])
			}
		}
	}
}

// BenchmarkLoad reads, checks and renders the whole course; the text and the engine are there
// already.
func BenchmarkLoad(b *testing.B) {
	tx, err := quran()
	if err != nil {
		b.Fatal(err)
	}
	rs, _ := rules.Load(os.DirFS(content + "rules"))
	e := recite.New(tx)
	for b.Loop() {
		Load(os.DirFS(content+"lessons"), tx, e, rs)
	}
}

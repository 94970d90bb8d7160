package e2e

import (
	"fmt"
	"path"
	"strings"
	"testing"
)

// TestLessons opens every lesson: its examples are coloured by letters, its text is the source's,
// and it leads to lines with its rule chosen.
func TestLessons(t *testing.T) {
	files := built(t)
	s := serve(t, "/", files)
	p := newPage(t)
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	sources := map[string]bool{}
	for _, v := range text.Verses {
		for _, w := range v.Words {
			sources[v.Text[w.Start:w.End]] = true
		}
	}
	seen := 0
	for _, f := range files {
		if !strings.HasPrefix(f.Name, "lessons/") || f.Name == "lessons/index.html" {
			continue
		}
		p.open(s.address + f.Name)
		figures := p.count("figure.verse[data-marks]")
		if figures > 0 {
			p.wait("coloured letters on "+f.Name, `[...CSS.highlights].some(([name, h]) => name.startsWith("f-") && h.size > 0) || document.querySelector(".again")`)
		}
		for _, w := range eval[[]string](p, `[...document.querySelectorAll("figure.verse .w")].map(e => e.textContent)`) {
			if !sources[w] {
				t.Errorf("%s shows the word %q, which is not in the text", f.Name, w)
			}
		}
		if p.count(".onward a") > 0 {
			seen++
		}
	}
	if seen == 0 {
		t.Fatal("no lesson leads to lines")
	}
	p.open(s.address + "lessons/noon-ikhfa.html")
	p.clickOn(".onward a")
	p.wait("the choice of lines", visible(hook("open")))
	if got := eval[string](p, `document.querySelector('[data-t=rule]').value`); got != "noon-ikhfa" {
		t.Errorf("the rule chosen is %q", got)
	}
	if problem := p.text(hook("problem")); problem != "" {
		t.Errorf("the lesson's own link is called a problem: %s", problem)
	}
	p.calm()
	p.stayedAt(s.address)
}

// TestLinks follows every relative address of every page: all lead to a file of the site, and to a
// place in it where one is named.
func TestLinks(t *testing.T) {
	files := built(t)
	pages := map[string]string{}
	for _, f := range allFiles(t) {
		pages[f.Name] = string(f.Data)
	}
	s := serve(t, "/", files)
	p := newPage(t)
	followed := 0
	for _, f := range files {
		if path.Ext(f.Name) != ".html" {
			continue
		}
		p.open(s.address + f.Name)
		for _, h := range eval[[]string](p, `[...document.querySelectorAll("[href], [src]")].map(e => e.getAttribute("href") ?? e.getAttribute("src"))`) {
			target, frag, _ := strings.Cut(h, "#")
			name := f.Name
			if target != "" {
				name = path.Join(path.Dir(f.Name), target)
			}
			page, ok := pages[name]
			if !ok {
				t.Errorf("%s leads to %s, which is not there", f.Name, h)
			}
			if frag != "" && !strings.HasPrefix(frag, "/") && !strings.Contains(page, fmt.Sprintf("id=%q", frag)) {
				t.Errorf("%s leads to %s: the page has no such place", f.Name, h)
			}
			followed++
		}
	}
	if followed < 50 {
		t.Errorf("only %d links were seen", followed)
	}
}

package lesson

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

func TestGlossary(t *testing.T) {
	tx, f, rs := small(t)
	rs[1].Translit, rs[1].Meaning = "al-ikhfa", "A <hidden> n."
	ls, _ := Load(fstest.MapFS{
		"hum.md": {Data: []byte(hum)}, "hide.md": {Data: []byte(hide)}, "terms.json": {Data: []byte(terms)},
		"words.md": {Data: []byte("---\nid: words\nkind: page\norder: 1\nname: Words\n---\n```glossary\n```\n")},
	}, tx, f, rs)
	html := ls[len(ls)-1].HTML
	at := 0
	for _, want := range []string{
		"<div id=\"t-bare\"><dt>Bare</dt>\n<dd>No Arabic.</dd></div>",
		`<div id="t-count"><dt>Count <bdi lang="ar" dir="rtl" class="term">`,
		`<div id="t-ghunnah"><dt><a href="hum.html">Ghunnah</a>`,
		"<div class=\"see\"><dt>Harakah</dt>\n<dd>See <a href=\"#t-count\">Count</a>.</dd></div>",
		`<div id="t-hidden-noon"><dt><a href="hide.html">Hidden noon</a>`, `<span class="translit">al-ikhfa</span></dt>`, "<dd>A &lt;hidden&gt; n.</dd>",
		"<div class=\"see\"><dt>Ikhfa</dt>\n<dd>See <a href=\"#t-hidden-noon\">Hidden noon</a>.</dd></div>",
	} {
		i := strings.Index(html[at:], want)
		if i < 0 {
			t.Fatalf("no %s after %s", want, html[at:])
		}
		at += i
	}
}

// The project's glossary: every reference leads to one entry, no two entries share a name, every
// meaning is a definition and not something to do.
func TestProjectGlossary(t *testing.T) {
	_, rs, ls := project(t)
	i := slices.IndexFunc(ls, func(l Lesson) bool { return l.ID == "glossary" })
	ids := map[string]bool{}
	for _, m := range regexp.MustCompile(`<div id="([^"]*)">`).FindAllStringSubmatch(ls[i].HTML, -1) {
		if ids[m[1]] {
			t.Errorf("%s is there twice", m[1])
		}
		ids[m[1]] = true
	}
	for _, m := range regexp.MustCompile(`href="#([^"]*)"`).FindAllStringSubmatch(ls[i].HTML, -1) {
		if !ids[m[1]] {
			t.Errorf("no entry %s", m[1])
		}
	}
	names := map[string]bool{}
	for _, m := range regexp.MustCompile(`<dt>(?:<a [^>]*>)?([^<]*)`).FindAllStringSubmatch(ls[i].HTML, -1) {
		if n := strings.ToLower(strings.TrimSpace(m[1])); names[n] {
			t.Errorf("the name %s is there twice", n)
		} else {
			names[n] = true
		}
	}
	for _, want := range []string{"ikhfa", "waqf", "ghunnah", "count", "harakah", "raised letter", "still letter", "carry", "pronoun ha"} {
		if !names[want] {
			t.Errorf("%s is not to be found", want)
		}
	}
	for _, r := range rs {
		if strings.HasPrefix(r.Meaning, "Look") {
			t.Errorf("%s is defined by %q", r.ID, r.Meaning)
		}
	}
}

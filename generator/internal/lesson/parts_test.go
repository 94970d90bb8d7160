package lesson

import (
	"strings"
	"testing"
	"testing/fstest"
)

// render reads a course of the lesson hum, with body in place of its own text and its examples
// kept, and returns that lesson.
func render(t *testing.T, body string) Lesson {
	t.Helper()
	head, rest, _ := strings.Cut(hum, "Text [[")
	_, rest, _ = strings.Cut(rest, "\n\n")
	tx, f, rs := small(t)
	ls, ds := Load(fstest.MapFS{
		"hum.md": {Data: []byte(head + body + "\n\n" + rest)}, "hide.md": {Data: []byte(hide)}, "terms.json": {Data: []byte(terms)},
	}, tx, f, rs)
	for _, d := range ds {
		t.Error(d)
	}
	return ls[1]
}

// The minute is what stands above all headings, the shortest example, and what is shown with the
// hand, wherever the text has it; the other sections follow in their order.
func TestMinute(t *testing.T) {
	l := render(t, "First.\n\n## The *letters*\n\nTwo.\n\n## Show it in one minute\n\nHum.\n\n## More\n\n### Below\n\nDeep.")
	at := 0
	for _, want := range []string{"<p>First.</p>", `<figure class="verse large" data-ref="108:3"`, "first <em>note</em></figcaption>", `<h2 id="show-it-in-one-minute">`, "<p>Hum.</p>"} {
		n := strings.Index(l.HTML[at:], want)
		if n < 0 {
			t.Fatalf("no %s after byte %d of the minute\n%s", want, at, l.HTML)
		}
		at += n + len(want)
	}
	for _, not := range []string{"Two", "Deep", "nth", `class="verses"`} {
		if strings.Contains(l.HTML, not) {
			t.Errorf("the minute has %s", not)
		}
	}
	want := []Part{{"the-letters", "The <em>letters</em>", "<p>Two.</p>\n"}, {"more", "More", "<h3 id=\"below\">Below</h3>\n<p>Deep.</p>\n"}}
	if len(l.Parts) != 3 || l.Parts[0] != want[0] || l.Parts[1] != want[1] || l.Parts[2].ID != "two" {
		t.Errorf("parts %+v", l.Parts)
	}
	if n := strings.Count(l.Parts[2].HTML, `<span class="nth">`); n != 3 {
		t.Errorf("%d of 3 examples say which they are", n)
	}
}

func TestPairs(t *testing.T) {
	for _, c := range []struct {
		line  string
		halfs []string // how each half ends; none where the line stays whole
	}{
		{"[[108:3.1 rule ghunnah]] hums. [[108:3.2 not ghunnah]] does not.", []string{"hums.", "does not."}},
		{"[[108:3.1 rule ghunnah]]: held.\n  [[108:3.2 not ghunnah]]: not held. The end.", []string{"held.", "The end."}},
		{"[[108:3.1 rule ghunnah]] hums, [[108:3.2 not ghunnah]] does not.", []string{"hums,", "does not."}},
		{"[[108:3.1 rule ghunnah]] and [[111:4.2 rule ghunnah]] hum.", nil},
		{"In [[108:3.1 rule ghunnah]] it hums. [[108:3.2 not ghunnah]] does not.", nil},
		{"[[108:3.1 rule ghunnah]] hums. No other does.", nil},
		{"[[108:3.1 rule ghunnah]] hums. [[letter:ba]] does not.", nil},
	} {
		t.Run(c.line, func(t *testing.T) {
			l := render(t, "## Look alike, read differently\n\n- "+c.line)
			html := l.Parts[0].HTML
			if l.Parts[0].ID != alikeID || !strings.Contains(html, "<li") {
				t.Fatalf("no list in %+v", l.Parts[0])
			}
			if got := strings.Count(html, "<div>"); got != len(c.halfs) || strings.Contains(html, `<li class="pair">`) != (got > 0) {
				t.Errorf("%d halves, want %d:\n%s", got, len(c.halfs), html)
			}
			for _, end := range c.halfs {
				if !strings.Contains(html, end+"</div>") && !strings.Contains(html, end+"\n</div>") && !strings.Contains(html, end+" </div>") {
					t.Errorf("no half ends with %q:\n%s", end, html)
				}
			}
		})
	}
}

package e2e

import (
	"bytes"
	"encoding/json"
	"fmt"
	"html"
	"os"
	"strings"
	"testing"

	"sutur/generator/internal/bundle"
	"sutur/generator/internal/lesson"
	"sutur/generator/internal/mushaf"
)

// refWord is one of the words by which the spelling is looked at: a word of every class, named by
// reference.
type refWord struct {
	ref, class string
	verse      *mushaf.Verse
	word       *mushaf.Word
	at         int // of the word in its verse, from 0
}

func (r refWord) text() string { return r.verse.Text[r.word.Start:r.word.End] }

// refWords reads testdata/words.tsv: surah:verse.word, a tab, the class.
func refWords(t testing.TB) (list []refWord) {
	t.Helper()
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	raw, err := os.ReadFile("testdata/words.tsv")
	if err != nil {
		t.Fatal(err)
	}
	for l := range strings.Lines(string(raw)) {
		ref, class, _ := strings.Cut(strings.TrimSpace(l), "\t")
		var s, a, w int
		if n, err := fmt.Sscanf(ref, "%d:%d.%d", &s, &a, &w); n != 3 || err != nil || class == "" {
			t.Fatalf("words.tsv: %q is no word with its class", l)
		}
		v := text.Find(s, a)
		if v < 0 || w < 1 || w > len(text.Verses[v].Words) {
			t.Fatalf("words.tsv: %s is not in the text", ref)
		}
		list = append(list, refWord{ref, class, &text.Verses[v], &text.Verses[v].Words[w-1], w - 1})
	}
	return list
}

// wordsFile is the page words.html for a built site: every word large, in the site's font and
// styles, with its reference and class. Engines draw it for the eye; tests measure it.
func wordsFile(t testing.TB, files []bundle.File) bundle.File {
	t.Helper()
	style := ""
	for _, f := range files {
		if strings.HasPrefix(f.Name, "assets/style.") {
			style = f.Name
		}
	}
	var b bytes.Buffer
	fmt.Fprintf(&b, `<!doctype html><html lang="en"><meta charset="utf-8"><title>Words</title><link rel="icon" href="data:,"><link rel="stylesheet" href="%s">
<style>body{display:grid;grid-template-columns:repeat(4,1fr);gap:4px;padding:8px;font:11px/1.3 sans-serif}
div{border:1px solid #ccc;padding:2px 8px}.text{font-size:56px;line-height:2;direction:rtl}</style>`, style)
	for _, w := range refWords(t) {
		fmt.Fprintf(&b, "\n<div>%s %s<div class=\"text\" lang=\"ar\"><span class=\"w%s\" data-ref=%q>%s</span></div></div>",
			w.ref, html.EscapeString(w.class), lesson.LinedClass(w.verse, w.at, w.at), w.ref, html.EscapeString(w.text()))
	}
	return bundle.File{Name: "words.html", Data: b.Bytes()}
}

// TestReferenceWords lays the words in Chromium: each is the text's own, in the site's font, and
// each of its letters that has a place in the line takes room there that no other letter takes, a
// small alif on a stretch like any other.
func TestReferenceWords(t *testing.T) {
	files := built(t)
	list := refWords(t)
	if len(list) != 20 {
		t.Errorf("%d words, 20 are expected", len(list))
	}
	s := serve(t, "/", append(files, wordsFile(t, files)))
	p := newPage(t)
	p.open(s.address + "words.html")
	p.do(waitFonts())
	if !eval[bool](p, `document.fonts.check('56px "Scheherazade New"')`) {
		t.Error("the font has not come")
	}
	type box struct{ Left, Right float64 }
	for _, w := range list {
		t.Run(w.ref, func(t *testing.T) {
			var at [][2]int
			for _, l := range w.word.Letters {
				at = append(at, [2]int{
					len([]rune(w.verse.Text[w.word.Start:l.Start])), len([]rune(w.verse.Text[w.word.Start:l.End])),
				})
			}
			list, _ := json.Marshal(at)
			got := eval[struct {
				Text  string
				Boxes []box
			}](p, fmt.Sprintf(`(() => {
				const n = document.querySelector('[data-ref="%s"]').firstChild, r = new Range();
				const boxes = %s.map(([a, z]) => { r.setStart(n, a); r.setEnd(n, z); const b = r.getBoundingClientRect(); return { left: b.left, right: b.right }; });
				return { text: n.data, boxes };
			})()`, w.ref, list))
			if got.Text != w.text() {
				t.Fatalf("shows %+q", got.Text)
			}
			for i, l := range w.word.Letters {
				over := l.Rune == mushaf.SmallAlif && !strings.HasPrefix(w.verse.Text[l.Start:], "\u0640")
				b := got.Boxes[i]
				if over {
					continue // it stands on the letter before
				}
				if b.Right-b.Left < 2 {
					t.Errorf("letter %d (U+%04X) takes %.1f px of the line", i+1, l.Rune, b.Right-b.Left)
				}
				if i > 0 && b.Right > got.Boxes[i-1].Right+1 {
					t.Errorf("letter %d (U+%04X) begins before letter %d", i+1, l.Rune, i)
				}
				if l.Rune == mushaf.SmallAlif && b.Right > got.Boxes[i-1].Left+1 {
					t.Errorf("letter %d, a small alif on a stretch, lies over the letter before it", i+1)
				}
			}
		})
	}
	p.calm()
}

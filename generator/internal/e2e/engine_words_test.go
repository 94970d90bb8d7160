package e2e

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"sutur/generator/internal/engine"
)

// shownWord is a word of testdata/words.tsv: verse, number of the word from 1,
// and what it is an example of.
type shownWord struct{ Ref, Text, Class string }

// wordsToShow reads testdata/words.tsv; the words themselves come from the text.
func wordsToShow(t *testing.T) []shownWord {
	t.Helper()
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	data, err := os.ReadFile(filepath.Join("testdata", "words.tsv"))
	if err != nil {
		t.Fatal(err)
	}
	var out []shownWord
	for i, line := range strings.Split(strings.TrimSpace(string(data)), "\n") {
		if strings.HasPrefix(line, "#") || strings.HasPrefix(line, "ref\t") {
			continue
		}
		f := strings.Split(line, "\t")
		if len(f) < 3 {
			t.Fatalf("words.tsv:%d: %q has not the columns ref, word, class", i+1, line)
		}
		var surah, ayah int
		n, err := strconv.Atoi(f[1])
		if _, err2 := fmt.Sscanf(f[0], "%d:%d", &surah, &ayah); err != nil || err2 != nil {
			t.Fatalf("words.tsv:%d: no such word: %s %s", i+1, f[0], f[1])
		}
		verse := text.Verses[text.Find(surah, ayah)]
		if n < 1 || n > len(verse.Words) {
			t.Fatalf("words.tsv:%d: %s has %d words, and not %d", i+1, f[0], len(verse.Words), n)
		}
		w := verse.Words[n-1]
		out = append(out, shownWord{f[0] + " " + f[1], verse.Text[w.Start:w.End], f[2]})
	}
	if len(out) < 20 {
		t.Fatalf("words.tsv has %d words, want 20", len(out))
	}
	return out
}

// TestWords lays words of every class as the lines lay them, for a person to
// look at (SUTUR_PICTURES), and sees that each has ink and no letter is drawn
// as a missing one.
func TestWords(t *testing.T) {
	words := wordsToShow(t)
	s := serve(t, "/", built(t))
	data, err := json.Marshal(words)
	if err != nil {
		t.Fatal(err)
	}
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.open(s.address + "about.html")
		eval[any](p, fmt.Sprintf(`(() => {
			const style = new CSSStyleSheet();
			style.replaceSync(".shown { columns: 2; padding: 8px; } .shown div { break-inside: avoid; } .shown small { display: block; font: 11px/1.1 sans-serif; direction: ltr; } .shown .text { line-height: 1.9; text-align: center; }");
			document.adoptedStyleSheets = [style];
			const make = (parent, name, cls, text = "") => { const e = document.createElement(name); e.className = cls; e.textContent = text; parent.append(e); return e; };
			document.body.replaceChildren();
			const all = make(document.body, "div", "shown sheet");
			for (const [i, x] of %s.entries()) {
				const one = make(all, "div", ""), text = make(one, "div", "text");
				text.lang = "ar";
				text.dir = "rtl";
				make(text, "span", "w", x.Text).dataset.n = i;
				make(one, "small", "", x.Ref + " " + x.Class);
			}
			scrollTo(0, 0);
		})()`, data))
		im := p.settled()
		picture(t, "words-"+b.Name(), im)
		for i, w := range words {
			at := p.boxes(fmt.Sprintf(`.shown .w[data-n="%d"]`, i), []int{len([]rune(w.Text))})[0]
			if n := dark(p.shot(), at.pixels()).size(); n < 60*engine.Scale {
				t.Errorf("%s: %d pixels of ink", w.Ref, n)
			}
		}
	})
}

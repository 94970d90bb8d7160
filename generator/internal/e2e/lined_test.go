package e2e

import (
	"fmt"
	"slices"
	"testing"

	"github.com/chromedp/chromedp"
)

// linedWords is what bears the line of a prostration on screen: the words' texts, how many text
// nodes they have, and the names of the groups around them.
type linedWords struct {
	Words  []string
	Nodes  []int
	Groups []string
	Over   int // pixels by which the page is wider than the window
	Drawn  bool
}

const seeLined = `(() => {
	const all = [...document.querySelectorAll("%s .lined")];
	const high = e => { // how high over the baseline the line is drawn, in letter sizes
		const size = parseFloat(getComputedStyle(e).fontSize), at = document.createElement("span");
		at.style.cssText = "display:inline-block;inline-size:0;block-size:0";
		e.prepend(at);
		const base = at.getBoundingClientRect().bottom, line = e.getBoundingClientRect().top + parseFloat(getComputedStyle(e, "::before").top);
		at.remove();
		return (base - line) / size;
	};
	return {
		drawn: all.every(e => parseFloat(getComputedStyle(e, "::before").borderTopWidth) >= 1 && high(e) > 1 && high(e) < 1.5),
		words: all.map(e => e.textContent.trim()),
		nodes: all.map(e => [...e.childNodes].filter(n => n.nodeType === 3).length),
		groups: [...new Set(all.map(e => e.closest("[role=group]")))].map(g => g?.getAttribute("aria-label") ?? ""),
		over: document.documentElement.scrollWidth - document.documentElement.clientWidth,
	};
})()`

// TestProstrationLine looks for the line over the words of every prostration, on screen and on both
// sheets: over these words and no others, each still one node of the text, named once for a screen
// reader.
func TestProstrationLine(t *testing.T) {
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address+"index.html", "Nur")
	places := 0
	for i := range text.Verses {
		v := &text.Verses[i]
		var want []string
		for _, w := range v.Words {
			if w.Lined {
				want = append(want, v.Text[w.Start:w.End])
			}
		}
		if len(want) == 0 {
			continue
		}
		places++
		ref := fmt.Sprintf("%d:%d", v.Surah, v.Ayah)
		check := func(where string, got linedWords, groups int) {
			t.Helper()
			if !slices.Equal(got.Words, want) {
				t.Errorf("%s, %s: the line is over %q, want %q", ref, where, got.Words, want)
			}
			if !got.Drawn || got.Over > 0 {
				t.Errorf("%s, %s: drawn %v; the page is %d pixels too wide", ref, where, got.Drawn, got.Over)
			}
			for k, n := range got.Nodes {
				if n != 1 {
					t.Errorf("%s, %s: word %d has %d text nodes", ref, where, k+1, n)
				}
			}
			if len(got.Groups) != groups || groups > 0 && got.Groups[0] != "under the line of a prostration" {
				t.Errorf("%s, %s: groups %q", ref, where, got.Groups)
			}
		}
		eval[any](p, fmt.Sprintf(`(location.hash = "#/lines?from=%s&to=%[1]s", 0)`, ref))
		p.wait("the lines", visible(hook(fmt.Sprintf("verse-%d-%d", v.Surah, v.Ayah))))
		p.do(waitFonts())
		for _, width := range []int64{320, 390} {
			p.do(chromedp.EmulateViewport(width, 844))
			check(fmt.Sprint("lines at ", width), eval[linedWords](p, fmt.Sprintf(seeLined, "[data-t=passage]")), 1)
		}
		if places%5 != 1 { // the sheets are slow to lay: three of them
			continue
		}
		for _, sheet := range []string{"practice", "answer"} {
			p.lay(s, fmt.Sprintf("index.html#/print?sheet=%s&from=%s&to=%[2]s&rule=heavy-ra", sheet, ref))
			got := eval[linedWords](p, fmt.Sprintf(seeLined, ".leaf"))
			got.Groups = nil
			check(sheet+" sheet", got, 0)
		}
		p.open(s.address + "index.html")
		p.wait("the first screen", drawn)
	}
	if places != 15 {
		t.Errorf("%d verses, 15 are expected", places)
	}
	p.calm()
}

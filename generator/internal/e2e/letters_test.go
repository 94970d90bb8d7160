package e2e

import (
	"fmt"
	"testing"
)

// TestLetters holds the browser's words and letters against those of package
// mushaf, for every verse: the numbers in the data files count these letters.
func TestLetters(t *testing.T) {
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	p := modulePage(t, `import { words } from "./text/letters.ts"; globalThis.splitWords = words;`)
	eval[any](p, `(async () => {
		const load = async u => JSON.parse(await new Response((await fetch(u)).body.pipeThrough(new DecompressionStream("gzip"))).text());
		const html = await (await fetch("index.html")).text();
		const catalogue = new DOMParser().parseFromString(html, "text/html").documentElement.dataset.catalogue;
		globalThis.surah = async n => {
			const c = globalThis.catalogue ??= await load(catalogue);
			const s = await load("data/" + c.surahs[n - 1].file);
			return s.v.map(v => ({ text: v.t, words: splitWords(v.t).map(w => [w.text, w.pause, w.letters.map(l => [l.rune, l.from, l.to])]) }));
		};
	})()`)
	type verse struct {
		Text  string
		Words [][3]any
	}
	verses := 0
	for _, su := range text.Surahs {
		got := eval[[]verse](p, fmt.Sprintf("surah(%d)", su.Number))
		if len(got) != su.Count {
			t.Fatalf("surah %d: %d verses, want %d", su.Number, len(got), su.Count)
		}
		for i, g := range got {
			v := text.Verses[su.First+i]
			ref := fmt.Sprintf("%d:%d", v.Surah, v.Ayah)
			if g.Text != v.Text {
				t.Fatalf("%s: the text differs", ref)
			}
			if len(g.Words) != len(v.Words) {
				t.Errorf("%s: %d words, want %d", ref, len(g.Words), len(v.Words))
				continue
			}
			for k, w := range v.Words {
				want := [3]any{v.Text[w.Start:w.End], float64(w.Pause), []any{}}
				list := []any{}
				for _, l := range w.Letters {
					// Every rune of the text is one UTF-16 unit.
					from, to := len([]rune(v.Text[w.Start:l.Start])), len([]rune(v.Text[w.Start:l.End]))
					list = append(list, []any{float64(l.Rune), float64(from), float64(to)})
				}
				want[2] = list
				if fmt.Sprint(g.Words[k]) != fmt.Sprint(want) {
					t.Errorf("%s word %d: got %v, want %v", ref, k+1, g.Words[k], want)
				}
			}
			verses++
		}
	}
	if verses != 6236 {
		t.Errorf("%d verses compared, want 6236", verses)
	}
	p.calm()
}

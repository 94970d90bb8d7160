package e2e

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// plainSurahs reads surahs as the app does, and writes each verse as lines: its text; word by word
// the text, the pause sign and whether it is under a line, and its letters; and its events.
// plainVerse writes the same here.
var plainSurahs = `import { loadCatalogue, verses } from "./text/data.ts";
const page = (` + documentOf(`"index.html"`) + ` as Promise<Document>).then(d => d.documentElement.dataset);
const catalogue = page.then(d => loadCatalogue(d.catalogue!, d.sha!));
const bit = (b: unknown) => (b ? 1 : 0);
(globalThis as any).plainSurah = async (s: number) => {
	const c = await catalogue, list = await verses(c, { s, a: 1 }, { s, a: c.surahs[s - 1]!.count });
	return list.map(v => [v.s + ":" + v.a + " " + v.text,
		...v.words.map(w => [w.text, w.pause, bit(w.lined), ...w.letters.map(l => l.rune + "." + l.from + "." + l.to)].join(" ")),
		...v.events.map(e => [e.w, e.l, e.rule, e.count, e.when, bit(e.before), bit(e.unwritten), e.detail, e.cw, e.cl].join(" ")),
	].join("\n"));
};`

func plainVerse(v *mushaf.Verse, events []recite.Event) string {
	bit := map[bool]int{true: 1}
	lines := []string{fmt.Sprintf("%d:%d %s", v.Surah, v.Ayah, v.Text)}
	for _, w := range v.Words {
		line := fmt.Sprint(v.Text[w.Start:w.End], " ", w.Pause, " ", bit[w.Lined])
		for _, l := range w.Letters {
			// Every rune of the text is one UTF-16 unit.
			line += fmt.Sprintf(" %d.%d.%d", l.Rune, len([]rune(v.Text[w.Start:l.Start])), len([]rune(v.Text[w.Start:l.End])))
		}
		lines = append(lines, line)
	}
	slices.SortStableFunc(events, func(a, b recite.Event) int {
		return cmp.Or(cmp.Compare(a.Word, b.Word), cmp.Compare(a.Letter, b.Letter))
	})
	for _, e := range events {
		lines = append(lines, strings.TrimSpace(fmt.Sprintln(e.Word, e.Letter, uint8(e.Rule), e.Count, uint8(e.When), bit[e.Before], bit[e.Unwritten], uint8(e.Detail), e.CauseWord, e.CauseLetter)))
	}
	return strings.Join(lines, "\n")
}

// TestSurahs holds what the app reads from the file of every surah against the text and the engine:
// text, words, letters and every event.
func TestSurahs(t *testing.T) {
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	p := modulePage(t, plainSurahs)
	engine, verses, events := recite.New(text), 0, 0
	for _, su := range text.Surahs {
		got := eval[[]string](p, fmt.Sprintf("plainSurah(%d)", su.Number))
		if len(got) != su.Count {
			t.Fatalf("surah %d: %d verses, want %d", su.Number, len(got), su.Count)
		}
		for i, g := range got {
			own := engine.Verse(nil, su.First+i)
			if want := plainVerse(&text.Verses[su.First+i], own); g != want {
				t.Fatalf("got\n%s\nwant\n%s", g, want)
			}
			verses++
			events += len(own)
		}
	}
	if verses != 6236 || events < 200_000 {
		t.Errorf("%d verses and %d events compared", verses, events)
	}
	p.calm()
}

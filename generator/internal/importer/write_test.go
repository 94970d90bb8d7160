package importer

import (
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"

	"sutur/generator/internal/mushaf"
)

// small is two surahs of made-up words, as code points: a tanween and a round zero of A, the line
// of a prostration, and two words that A runs together.
func small() ([]surahA, []verseB, []Correction) {
	type verses = []struct {
		ID   int
		Text string
	}
	return []surahA{
			{1, "\u0628", "Ba", verses{{1, "\u0628\u0657 \u062A\u0652"}, {2, "\u0628\u064E\u06E4 \u062A\u064E"}}},
			{2, "\u062A", "Ta", verses{{1, "\u0628\u064E\u062A\u064E"}}},
		}, []verseB{
			{1, 1, "\u0628\u064B \u06D6 \u062A\u06DF"}, {1, 2, "\u0628\u064E \u062A\u064E"}, {2, 1, "\u0628\u064E \u062A\u064E"},
		}, []Correction{{Ref: "2:1", Split: true, Reason: "runs together"}}
}

func TestConvert(t *testing.T) {
	c, err := convert(small())
	if err != nil {
		t.Fatal(err)
	}
	text := []string{"\u0628\u08F0 \u062A\u06DF", "\u0628\u064E \u062A\u064E", "\u0628\u064E \u062A\u064E"}
	sum := func(s string) string { return fmt.Sprintf("%x", sha256.Sum256([]byte(s))) }
	for name, want := range map[string]string{
		mushaf.TextFile:        "1:1\t" + text[0] + "\n1:2\t" + text[1] + "\n2:1\t" + text[2] + "\n",
		mushaf.SurahFile:       "1\t\u0628\tBa\t2\n2\t\u062A\tTa\t1\n",
		mushaf.ProstrationFile: "1:2\t1\n",
		mushaf.DigestFile: "whole\t" + sum(strings.Join(text, "\n")+"\n") + "\n" + mushaf.ProstrationFile + "\t" + sum("1:2\t1\n") +
			"\n1:1\t" + sum(text[0]) + "\n1:2\t" + sum(text[1]) + "\n2:1\t" + sum(text[2]) + "\n",
		"text-b.txt": "1:1\t\u0628\u064B \u06D6 \u062A\u06DF\n1:2\t\u0628\u064E \u062A\u064E\n2:1\t\u0628\u064E \u062A\u064E\n",
	} {
		if got := string(c.files()[name]); got != want {
			t.Errorf("%s:\n got %q\nwant %q", name, got, want)
		}
	}
	for name, n := range c.done {
		want := slices.Contains([]string{"open tanween, fatha", "round zero", "prostration line, kept as data"}, name)
		if n > 1 || n == 1 != want {
			t.Errorf("%s changed %d places", name, n)
		}
	}
}

func TestConvertRefuses(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(a []surahA, b *[]verseB, list *[]Correction)
		want   string
	}{
		{"B ends before A", func(a []surahA, b *[]verseB, _ *[]Correction) { *b = (*b)[:2] }, "2:1 of A has no partner in B"},
		{"another verse in B", func(a []surahA, b *[]verseB, _ *[]Correction) { (*b)[1].Ayah = 3 }, "1:2 of A has no partner in B"},
		{"A ends before B", func(a []surahA, b *[]verseB, _ *[]Correction) { *b = append(*b, verseB{3, 1, ""}) }, "3 verses in A, 4 in B, 0 corrections without a verse"},
		{"no such verse to correct", func(a []surahA, _ *[]verseB, list *[]Correction) {
			*list = append(*list, Correction{Ref: "9:9", Word: 1})
		}, "1 corrections without a verse"},
		{"no such word to correct", func(a []surahA, _ *[]verseB, list *[]Correction) {
			*list = append(*list, Correction{Ref: "1:1", Word: 3})
		}, "correction 1:1: 1:1: word 3 of 2 in A, 2 in B"},
		{"nothing to split", func(a []surahA, b *[]verseB, _ *[]Correction) { (*b)[2].Text = "\u0628\u062A" }, "correction 2:1: 1 words in A, 1 in B; B must have one more"},
		{"words run together", func(a []surahA, _ *[]verseB, list *[]Correction) { *list = nil }, "2:1: 1 words in A, 2 in B"},
		{"a sign that is none", func(a []surahA, _ *[]verseB, _ *[]Correction) { a[0].Verses[1].Text = "\u0628\u064E x" }, "1:2 word 2: U+0078 has no place in a word"},
	} {
		a, b, list := small()
		c.change(a, &b, &list)
		if _, err := convert(a, b, list); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%s: %v, want %q", c.name, err, c.want)
		}
	}
}

// A text that is not whole is not written.
func TestWriteRefuses(t *testing.T) {
	if files, _, err := write(small()); files != nil || err == nil || !strings.Contains(err.Error(), `rule "open tanween, fatha" changed 1 places; the reviewed text has 2901`) {
		t.Errorf("%d files, %v", len(files), err)
	}
}

// list declares n numbers from 1 as the source file does, with 0 before and after where pad is set.
func list(name string, n int, pad bool) string {
	var s []string
	for i := range n {
		s = append(s, fmt.Sprint(i+1))
	}
	if pad {
		s = append(append([]string{"0"}, s...), "0")
	}
	return "export const " + name + ": AyahId[] = [" + strings.Join(s, ",\n  ") + "]\n"
}

func TestNumbers(t *testing.T) {
	whole := list("PageList", 604, true) + list("JuzList", 30, true) + list("HizbQuarterList", 240, true) + list("SajdaList", 15, false)
	out, err := numbers(whole)
	if err != nil {
		t.Fatal(err)
	}
	var n mushaf.Numbers
	if err := json.Unmarshal(out, &n); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		list []int
		want int
	}{{n.Pages, 604}, {n.Juz, 30}, {n.Quarters, 240}, {n.Sajdahs, 15}} {
		if len(c.list) != c.want || c.list[0] != 1 || c.list[c.want-1] != c.want {
			t.Errorf("%v, want 1 to %d", c.list, c.want)
		}
	}
	for _, c := range []struct{ old, new, want string }{
		{"JuzList", "JuzzList", "numbers: no list JuzList"},
		{"const SajdaList: AyahId", "const SajdaList: Other", "numbers: no list SajdaList"},
		{list("SajdaList", 15, false), list("SajdaList", 14, false), "numbers: SajdaList has 14 entries; 15 are expected"},
		{list("PageList", 604, true), list("PageList", 604, false), "numbers: PageList has 604 entries; 606 are expected"},
	} {
		if _, err := numbers(strings.Replace(whole, c.old, c.new, 1)); err == nil || err.Error() != c.want {
			t.Errorf("%v, want %q", err, c.want)
		}
	}
}

func TestWordsB(t *testing.T) {
	for _, c := range []struct {
		text string
		want []string
	}{
		{"\u0628\u0650 \u06D6 \u062A", []string{"\u0628\u0650", "\u062A"}}, // a pause sign is no word
		{"\u0671\u0628 \u06DE \u0621", []string{"\u0671\u0628", "\u0621"}}, // neither is the sign of a quarter
		{"\u06D6", nil},
		{"", nil},
	} {
		if got := wordsB(c.text); !slices.Equal(got, c.want) {
			t.Errorf("%+q: %+q, want %+q", c.text, got, c.want)
		}
	}
	if got := letters("\u0628\u0650\u0640\u0670\u0671"); !slices.Equal(got, []int{0, 8}) { // neither stretch nor small alif
		t.Errorf("letters at %v", got)
	}
	if got := sukunA("\u0628\u0652"); got != "\u0628\u06E1" {
		t.Errorf("sukun %+q", got)
	}
}

package lesson

import (
	"os"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"sutur/generator/internal/diag"
	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
	"sutur/generator/internal/rules"
)

// quran is the text, read once for all tests of the package; nothing changes it.
var quran = sync.OnceValues(func() (*mushaf.Text, error) { return mushaf.Load(os.DirFS(content + "text")) })

// finder is an engine that knows a few events.
type finder struct{ events []recite.Event }

func (f finder) Verse(dst []recite.Event, v int) []recite.Event {
	for _, e := range f.events {
		if int(e.Verse) == v {
			dst = append(dst, e)
		}
	}
	return dst
}

// small is a course of two rules: ghunnah stands at 108:3 word 1, 111:4 word 2 and 114:1 word 4,
// noon-ikhfa joins 114:4 words 1 and 2 and holds in 108:1 at a stop alone.
func small(t *testing.T) (*mushaf.Text, finder, []rules.Rule) {
	t.Helper()
	tx, err := quran()
	if err != nil {
		t.Fatal(err)
	}
	at := func(s, a, w, l int, r recite.RuleID, when recite.When) recite.Event {
		return recite.Event{Verse: int32(tx.Find(s, a)), Word: uint16(w - 1), Letter: uint8(l - 1), Rule: r, When: when, Before: when == recite.Start}
	}
	return tx, finder{[]recite.Event{
			at(108, 3, 1, 2, recite.Ghunnah, recite.Always), at(111, 4, 2, 2, recite.Ghunnah, recite.Always),
			at(114, 1, 4, 3, recite.Ghunnah, recite.Always), at(114, 4, 1, 2, recite.NoonIkhfa, recite.Join),
			at(108, 1, 3, 1, recite.NoonIkhfa, recite.Stop), at(1, 1, 2, 1, recite.NoonIkhfa, recite.Start),
		}}, []rules.Rule{
			{ID: "ghunnah", Name: "Ghunnah", Arabic: "غُنَّةٌ", Translit: "ghunnah", Family: "ghunnah", Counts: []int{2}},
			{ID: "noon-ikhfa", Name: "Hidden noon", Arabic: "إِخْفَاءٌ", Family: "noon", Needs: []string{"ghunnah"}, Counts: []int{2}},
		}
}

const (
	hum = `---
id: hum
counts: 2
rules: ghunnah
---
Text [[111:4.2 rule ghunnah]] and [[term:count]].

## Two

` + "```verse" + `
108:3 word 1 rule ghunnah | first *note*
111:4 word 2 rule ghunnah
114:1 rule ghunnah
` + "```" + `

` + "```check" + `
Q Where?
A Here.
` + "```" + `

***

Then *more*.

And more.
`
	hide = `---
id: hide
counts: 2
rules: noon-ikhfa
---
` + "```verse" + `
114:4 words 1-2 rule noon-ikhfa
108:1 word 3 rule noon-ikhfa
1:1 words 2-3 rule noon-ikhfa
` + "```" + `
`
	terms = `[{"id":"count","name":"Count","arabic":"حَرَكَةٌ","translit":"harakah","meaning":"A length."},{"id":"bare","name":"Bare","arabic":"","translit":"","meaning":"No Arabic."}]`
)

func TestRender(t *testing.T) {
	tx, f, rs := small(t)
	ls, ds := Load(fstest.MapFS{"hum.md": {Data: []byte(hum)}, "hide.md": {Data: []byte(hide)}, "terms.json": {Data: []byte(terms)}}, tx, f, rs)
	for _, d := range ds {
		t.Error(d)
	}
	if len(ls) != 2 || ls[0].ID != "hide" || ls[0].Needs[0] != "ghunnah" || ls[1].Name != "Ghunnah" {
		t.Fatalf("lessons %+v", ls)
	}
	hums := ls[1]
	v := tx.Verses[tx.Find(108, 3)]
	for _, want := range []string{
		`<figure class="verse" data-ref="108:3" data-rule="ghunnah" data-marks="0.1:ghunnah">`,
		`<p lang="ar" dir="rtl" class="ayah"><mark class="f-ghunnah"><span class="w" data-w="0">` + v.Text[v.Words[0].Start:v.Words[0].End] + `</span></mark></p>`,
		`<figcaption><span class="ref">Al-Kawthar 108:3, word 1:</span> first <em>note</em> <span class="nth">1/3</span></figcaption></figure>`,
		`<span class="ref">An-Nas 114:1</span>`,
		`<bdi lang="ar" dir="rtl" class="term">حَرَكَةٌ</bdi>`,
		`<h2 id="two">Two</h2>`,
		`<li><p>Where?</p>`, `<details open=""><summary>Answer</summary><p>Here.</p></details></li>`,
	} {
		if !strings.Contains(whole(hums), want) {
			t.Errorf("no %s in\n%s", want, whole(hums))
		}
	}
	if hums.Onward != "<p>Then <em>more</em>.</p>\n<p>And more.</p>\n" || strings.Contains(whole(hums), "more") || ls[0].Onward != "" {
		t.Errorf("onward %q", hums.Onward)
	}
	if got := hums.Examples; len(got) != 3 || got[0].Line != 11 || got[2].Last != 3 {
		t.Errorf("examples %+v", got)
	}
}

func TestMistakes(t *testing.T) {
	for _, c := range []struct{ name, old, new, want string }{
		{"no front matter", "---\nid", "id", `hum.md:1:1: there is no front matter`},
		{"front matter without end", "rules: ghunnah\n---", "rules: ghunnah", `the front matter does not end`},
		{"unknown key", "counts: 2", "level: 1", `hum.md:3:1: the key "level" is not known; keys are id, kind`},
		{"key twice", "counts: 2", "id: hum", `hum.md:3:1: the key id is there twice`},
		{"no value", "counts: 2", "counts:", `hum.md:3:1: the key counts has no value`},
		{"no colon", "counts: 2", "counts 2", `"counts 2" is not front matter`},
		{"other id", "id: hum", "id: hmm", `hum.md:2:5: the id is "hmm"; write id: hum`},
		{"bad order", "counts: 2\nrules: ghunnah", "kind: page\norder: first", `the order is "first"; 0 to 9999`},
		{"page without order", "counts: 2\nrules: ghunnah", "kind: page\nname: Hum", `the page has no order`},
		{"same order", "counts: 2\nrules: ghunnah", "kind: page\nname: Hum\norder: 5", `the order 5 is also that of`},
		{"lesson with order", "counts: 2", "order: 1", `hum.md:3:8: the order of the lessons is computed from their rules; remove the line`},
		{"kind", "counts: 2", "order: 1\nkind: song", `the kind is "song"; lesson and page are accepted`},
		{"page with rules", "counts: 2", "order: 1\nkind: page", `hum.md:5:8: a page teaches no rule`},
		{"unknown rule", "rules: ghunnah", "rules: ghunna", `hum.md:4:8: there is no rule "ghunna"`},
		{"rule twice", "rules: ghunnah", "rules: ghunnah, ghunnah", `hum.md:4:17: rule ghunnah is there twice`},
		{"no rule", "rules: ghunnah\n", "", `the lesson teaches no rule`},
		{"rule of another lesson", "rules: ghunnah", "rules: ghunnah, noon-ikhfa", `rule noon-ikhfa is taught here and in hide`},
		{"rule without lesson", "rules: ghunnah", "rules: noon-ikhfa", `no lesson teaches rule ghunnah`},
		{"needs", "counts: 2", "counts: 2\nneeds: qalqalah", `hum.md:4:8: the rules have no needs; remove the line`},
		{"name", "counts: 2", "counts: 2\nname: Hum", `hum.md:4:7: the rules say otherwise of its name; write name: Ghunnah`},
		{"counts", "counts: 2", "family: ghunnah\ncounts: 4", `hum.md:4:9: the rules say otherwise of its counts; write counts: 2`},
		{"family", "counts: 2", "counts: 2\nfamily: noon", `hum.md:4:9: the rules say otherwise of its family; write family: ghunnah`},
		{"rule is not there", "108:3 word 1 rule", "108:3 word 2 rule", `hum.md:11:1: 108:3 word 2, read as it stands, has no ghunnah (found there: no rule); the nearest place of ghunnah is 108:3 word 1`},
		{"nearest in the surah", "108:3 word 1 rule", "111:1 word 1 rule", `the nearest place of ghunnah is 111:4 word 2`},
		{"nearest elsewhere", "108:3 word 1 rule", "109:1 rule", `the nearest place of ghunnah is 108:3 word 1`},
		{"rule across the words' end", "108:3 word 1 rule ghunnah", "114:4 word 1 rule noon-ikhfa", `114:4 word 1, read as it stands, has no noon-ikhfa (found there: no rule); the nearest place of noon-ikhfa is 114:4 words 1-2`},
		{"no stop when read on", "108:3 word 1 rule ghunnah", "108:1 word 3 join rule noon-ikhfa", `108:1 word 3, read as it stands, has no noon-ikhfa`},
		{"no such verse", "108:3 word 1", "108:4 word 1", `hum.md:11:1: there is no verse 108:4; surah 108 has verses 1 to 3`},
		{"no such surah", "108:3 word 1", "115:3 word 1", `there is no verse 115:3; there are surahs 1 to 114`},
		{"no such word", "108:3 word 1", "108:3 word 5", `108:3 has no word 5; it has words 1 to 4`},
		{"words reversed", "108:3 word 1", "108:3 words 2-1", `words 2-1; words count from 1`},
		{"not a reference", "108:3 word 1", "108.3 word 1", `hum.md:11:1: "108.3" is not a verse`},
		{"no rule in a line", "108:3 word 1 rule ghunnah", "108:3 word 1", `hum.md:11:13: the line names no rule`},
		{"not in a line", "108:3 word 1 rule", "108:3 word 1 not", `a worked example shows a rule`},
		{"unknown rule in a line", "108:3 word 1 rule ghunnah", "108:3 word 1 rule gunnah", `hum.md:11:19: there is no rule "gunnah"`},
		{"stray word", "108:3 word 1 rule", "108:3 wort 1 rule", `hum.md:11:7: found "wort"`},
		{"another lesson's rule", "114:1 rule ghunnah", "114:4 rule noon-ikhfa", `the lesson does not teach noon-ikhfa`},
		{"example twice", "114:1 rule ghunnah", "108:3 rule ghunnah", `hum.md:13:1: 108:3 word 1 is an example already, at rules-content/lessons/hum.md:11; take another place`},
		{"few examples", "114:1 rule ghunnah\n", "", `the lesson has 2 worked examples; give 3 or more`},
		{"empty block", "Q Where?\nA Here.\n", "", `the check block is empty`},
		{"no end", "A Here.\n```", "A Here.", `the check block does not end`},
		{"no answer", "A Here.\n", "", `a question has no answer`},
		{"two questions", "A Here.\n", "Q There?\nA Here.\n", `a question has no answer; write A and the answer before the next`},
		{"other line", "A Here.", "Here.", `hum.md:18:1: found "Here."`},
		{"unknown block", "```check", "```quiz", `a block that is not known`},
		{"heading 1", "## Two", "# Two", `hum.md:8:3: a heading of level 1; levels 2 to 2 are accepted here`},
		{"heading skipped", "## Two", "### Two", `a heading of level 3`},
		{"HTML", "## Two", "<b>Two</b>", `HTML is not read`},
		{"HTML block", "## Two", "<div>\n", `HTML is not read`},
		{"two breaks", "more*.\n", "more*.\n\n***\n", `a line --- that is not wanted here; write it once`},
		{"nothing below the break", "\nThen *more*.\n\nAnd more.\n", "", `a line --- that is not wanted here`},
		{"break in a list", "Then *more*.", "- - ---", `a line --- that is not wanted here`},
		{"break on a page", "counts: 2\nrules: ghunnah", "kind: page\norder: 1\nname: Hum", `a line --- that is not wanted here`},
		{"picture", "## Two", "![Two](two.png)", `pictures are not read`},
		{"link out", "## Two", "[Two](https://example.org/)", `a link to "https://example.org/", which is no page of the site`},
		{"link out by itself", "## Two", "<https://example.org/>", `a link to another host`},
		{"link to nothing", "## Two", "[Two](two.html)", `hum.md:8:2: a link to "two.html"`},
		{"typed Arabic", "Text [[", "Text مِن [[", `hum.md:6:6: Arabic typed by hand`},
		{"open brackets", "[[term:count]]", "[[term:count]", `hum.md:6:35: the brackets do not close`},
		{"unknown term", "term:count", "term:length", `there is no term "length"`},
		{"term without Arabic", "term:count", "term:bare", `there is no term "bare"`},
		{"unknown line of a poem", "term:count", "poem:tuhfah-99", `there is no poem "tuhfah-99"`},
		{"unknown letter", "term:count", "letter:em", `there is no letter "em"`},
		{"unknown sign", "term:count", "sign:comma", `there is no sign "comma"`},
		{"no set", "term:count", "letters:sajdah", `no set of letters decides "sajdah"`},
		{"unknown lesson", "term:count", "lesson:song", `there is no lesson "song"`},
		{"unknown time", "[[term:count]]", "[[lesson:hide soon]]", `hum.md:6:37: the lesson hide is taught "soon"; write first, next, later or earlier`},
		{"time of an unknown lesson", "term:count", "lesson:song later", `there is no lesson "song"`},
		{"time without a lesson", "Text [[", "It comes later. Text [[", `hum.md:6:4: "comes later" without a lesson; name the lesson as [[lesson:ID later]]`},
		{"time with a lesson that is not checked", "and [[term:count]].", "and the next lesson, [[lesson:hide]].", `hum.md:6:35: "the next lesson" without a lesson`},
		{"inline without word", "term:count", "111:4", `"111:4" names no word`},
		{"inline rule is not there", "111:4.2 rule", "111:4.1 rule", `hum.md:6:8: 111:4 word 1, read as it stands, has no ghunnah`},
		{"inline rule is there", "111:4.2 rule", "111:4.2 not", `hum.md:6:8: 111:4 word 2 has ghunnah; name words without it`},
		{"not UTF-8", "Text", "T\xFFxt", `the file is not UTF-8`},
	} {
		t.Run(c.name, func(t *testing.T) {
			if !strings.Contains(hum, c.old) {
				t.Fatalf("the course has no %q", c.old)
			}
			tx, f, rs := small(t)
			_, ds := Load(fstest.MapFS{
				"hum.md": {Data: []byte(strings.Replace(hum, c.old, c.new, 1))}, "hide.md": {Data: []byte(hide)},
				"note.md": {Data: []byte("---\nid: note\nkind: page\norder: 5\nname: Note\n---\nText.\n")}, "terms.json": {Data: []byte(terms)},
			}, tx, f, rs)
			if !diag.HasError(ds) {
				t.Fatal("no error")
			}
			for _, d := range ds {
				if strings.Contains(d.String(), c.want) {
					return
				}
			}
			t.Errorf("no diagnostic with %q in %v", c.want, ds)
		})
	}
	t.Run("no folder", func(t *testing.T) {
		tx, f, rs := small(t)
		if _, ds := Load(fstest.MapFS{}, tx, f, rs); !diag.HasError(ds) {
			t.Error("no error")
		}
	})
}

package lesson

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// A lesson has these parts in this order. The first names what carries the rule, and may be called
// otherwise.
var parts = []string{
	"Show it in one minute", "The letters", "How long it is held", "Examples to read together", "Look alike, read differently",
	"What children often do", "A two-minute check", "The child may ask",
}

var carriers = []string{"The letters", "The letter", "The signs", "The sign", "The words", "The places", "What changes", "The rule in steps"}

// examples is how many worked examples each lesson has. Three to six are expected. A rule with
// fewer places in the whole text (imalah, ishmam and tas-hil have one each) shares its lesson with
// others, so that no lesson needs an exception.
var examples = map[string]int{
	"hamzat-wasl": 6, "sun-moon-lam": 6, "silent-letter": 6, "madd-tabii": 6, "stop-form": 6, "ghunnah": 5, "qalqalah": 6,
	"pause-sign": 5, "noon-izhar": 6, "noon-ikhfa": 6, "noon-iqlab": 6, "noon-idgham-ghunnah": 6, "noon-idgham": 6,
	"noon-izhar-mutlaq": 5, "meem-izhar": 6, "meem-ikhfa": 5, "meem-idgham": 5, "heavy-letter": 6, "heavy-lam": 6, "ra": 6, "ra-sakinah": 6,
	"madd-badal": 6, "madd-iwad": 6, "madd-muttasil": 6, "madd-munfasil": 6, "madd-silah": 6, "madd-arid": 6, "madd-lin": 5,
	"madd-lazim": 6, "madd-lazim-letter": 6, "idgham": 6, "sakt": 5, "sajdah": 3, "single-words": 6,
}

func TestExamplesOfEachLesson(t *testing.T) {
	_, _, ls := project(t)
	seen := map[string]bool{}
	type place struct{ verse, word int }
	shown := map[place]string{}
	for _, l := range ls {
		if l.Kind != KindLesson {
			continue
		}
		seen[l.ID] = true
		t.Run(l.ID, func(t *testing.T) {
			if n := len(l.Examples); n != examples[l.ID] || n < 3 || n > 6 {
				t.Errorf("%d worked examples, want %d, and three to six", n, examples[l.ID])
			}
			for _, e := range l.Examples {
				for w := e.First; w <= e.Last; w++ {
					if other, ok := shown[place{e.Verse, w}]; ok {
						t.Errorf("line %d: verse %d word %d is shown in %s already", e.Line, e.Verse, w+1, other)
					}
				}
				for w := e.First; w <= e.Last; w++ {
					shown[place{e.Verse, w}] = l.ID
				}
			}
		})
	}
	for id := range examples {
		if !seen[id] {
			t.Errorf("there is no lesson %s", id)
		}
	}
}

var heading = regexp.MustCompile(`<h2[^>]*>(.*?)</h2>`)

func TestPartsOfEachLesson(t *testing.T) {
	_, _, ls := project(t)
	for _, l := range ls {
		if l.Kind != KindLesson {
			continue
		}
		t.Run(l.ID, func(t *testing.T) {
			html := whole(l)
			var got []string
			for _, h := range heading.FindAllStringSubmatch(html, -1) {
				got = append(got, h[1])
			}
			if len(got) > 1 && slices.Contains(carriers, got[1]) {
				got[1] = parts[1]
			}
			if heading.MatchString(l.Onward) || !slices.Equal(got, parts) {
				t.Errorf("parts %q, want %q", got, parts)
			}
			if !strings.Contains(html, `<ol class="check">`) || strings.Count(html, "<summary>Answer</summary>") < 2 {
				t.Error("the check has fewer than two questions")
			}
		})
	}
}

var sentence = regexp.MustCompile(`[.?:]"?(\s|$)`)

// The words of the lessons: what the child sees and hears in a few sentences, no exclamation marks,
// no long sentence.
func TestWordsOfEachLesson(t *testing.T) {
	_, _, ls := project(t)
	for _, l := range ls {
		t.Run(l.ID, func(t *testing.T) {
			raw, err := os.ReadFile(content + "lessons/" + l.ID + ".md")
			if err != nil {
				t.Fatal(err)
			}
			_, body, _ := strings.Cut(string(raw)[4:], "\n---\n")
			if strings.Contains(body, "!") {
				t.Error("an exclamation mark")
			}
			for _, s := range sentence.Split(body, -1) {
				if n := len(strings.Fields(s)); n > 40 {
					t.Errorf("%d words in one sentence: %s", n, s)
				}
			}
			if l.Kind != KindLesson {
				return
			}
			first, _, _ := strings.Cut(strings.TrimSpace(body), "\n\n")
			if n := len(regexp.MustCompile(`[.?](\s|$)`).FindAllString(first, -1)); n < 3 || n > 5 {
				t.Errorf("the first paragraph has %d sentences, want about three: %s", n, first)
			}
			for _, w := range []string{"child", "see", "hear|sound|voice|read"} {
				if !regexp.MustCompile(w).MatchString(first) {
					t.Errorf("the first paragraph does not say what the child will %s: %s", w, first)
				}
			}
		})
	}
}

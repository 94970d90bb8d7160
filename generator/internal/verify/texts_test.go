package verify

import (
	"os"
	"strings"
	"testing"
)

const textDir = "../../../rules-content/text/"

func read(t *testing.T, name string) string {
	t.Helper()
	b, err := os.ReadFile(textDir + name)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// Witness: quran-validator 1.3.0, text of the Quranic Universal Library, all 6,236 verses, 77,433
// words.
func TestTextsAgree(t *testing.T) {
	c := CompareTexts(read(t, "quran.txt"), read(t, "text-b.txt"))
	if c.Verses != 6236 || c.Words != 77433 {
		t.Fatalf("%d verses and %d words compared, expected 6236 and 77433", c.Verses, c.Words)
	}
	for _, d := range c.Differences {
		t.Error(d)
	}
	for i, f := range folds {
		if c.Folded[i] != f.places {
			t.Errorf("taken as equal, %s: %d places, want %d", f.name, c.Folded[i], f.places)
		}
		if strings.TrimSpace(f.reason) == "" {
			t.Errorf("%s has no reason", f.name)
		}
	}
}

// The letters of package mushaf are those that were compared: every number equal to the second
// text's, word by word.
func TestLettersAreNumberedAsInTheSecondText(t *testing.T) {
	second := strings.Split(strings.TrimSpace(read(t, "text-b.txt")), "\n")
	for i, v := range load(t).Verses {
		_, text, _ := strings.Cut(second[i], "\t")
		for k, w := range splitWritten(text) {
			if len(v.Words) <= k || len(v.Words[k].Letters) != len(w.letters) {
				t.Fatalf("%d:%d word %d: not the letters of the second text, %d", v.Surah, v.Ayah, k+1, len(w.letters))
			}
		}
	}
}

// A comparison that finds nothing must be able to find something: every kind of change to a verse
// is seen, and so is every sign that an easier comparison would take as equal.
func TestTextsDifferWhenChanged(t *testing.T) {
	b := "2:2\t" + "\u0630\u064e\u0670\u0644\u0650\u0643\u064e"
	for _, c := range []struct{ name, a, b string }{
		{"letter lost", "2:2\t" + "\u0630\u064e\u0670\u0644\u0650", b},
		{"vowel changed", "2:2\t" + "\u0630\u064e\u0670\u0644\u064e\u0643\u064e", b},
		{"vowel added", "2:2\t" + "\u0630\u064e\u0670\u0644\u0650\u0643\u064e\u064e", b},
		{"letter turned", "2:2\t" + "\u062f\u064e\u0670\u0644\u0650\u0643\u064e", b},
		{"words run together", "1:1\t\u0628\u0650\u0628\u0650", "1:1\t\u0628\u0650 \u0628\u0650"},
		{"verse lost", "", b},
		{"verse under another reference", "2:3\t" + b[4:], b},
		{"marks in another order", "1:1\t\u0628\u064e\u0651", "1:1\t\u0628\u0651\u064e"},
		{"stretch lost", "1:1\t\u0645\u064e\u0670", "1:1\t\u0645\u064e\u0640\u0670"},
		{"stretch added", "2:2\t\u0630\u064e\u0640\u0670", "2:2\t\u0630\u064e\u0670"},
		{"seen above for seen below", "52:37\t\u0635\u06dc\u064e", "52:37\t\u0635\u06e3\u064e"},
		{"silence lost", "75:27\t\u0645\u064e\u0646\u06e1", "75:27\t\u0645\u064e\u0646\u0652 \u06dc"},
		{"prostration lost", "7:206\t\u0646\u064e", "7:206\t\u0646\u064e \u06e9"},
		{"quarter lost", "2:26\t\u0646\u064e", "2:26\t\u06de \u0646\u064e"},
		{"line of a prostration", "7:206\t\u0646\u064e\u06e4", "7:206\t\u0646\u064e"},
		{"ya for alif maqsurah", "1:1\t\u0644\u064e\u064a", "1:1\t\u0644\u064e\u0649"},
		{"alif maqsurah for ya", "1:1\t\u0641\u0650\u0649", "1:1\t\u0641\u0650\u064a"},
		{"stacked for open", "1:1\t\u0628\u064b", "1:1\t\u0628\u08f0"},
		{"another vowel of tanween", "1:1\t\u0628\u08f0", "1:1\t\u0628\u064c"},
		{"another small meem", "1:1\t\u0628\u064e\u06e2", "1:1\t\u0628\u064b\u06ed"},
		{"hamza on another seat", "1:1\t\u0624\u064e", "1:1\t\u0623\u064e"},
		{"hamza beneath, elsewhere than in 56:23", "1:1\t\u0648\u0655\u0650", "1:1\t\u0624\u0650"},
		{"round zero for sukun", "1:1\t\u0627\u06df", "1:1\t\u0627\u0652"},
	} {
		if d := CompareTexts(c.a, c.b).Differences; len(d) == 0 {
			t.Errorf("%s: not seen", c.name)
		}
	}
}

func FuzzCompareTexts(f *testing.F) {
	f.Add("2:97\t\u0644\u0651\u0650\u0640\u062c\u0650", "2:97\t\u0644\u0651\u0650\u062c\u0650 \u06da")
	f.Add("\u0640\u0640\u0654\u06de \u06de", "\xff\t\u064e")
	f.Fuzz(func(t *testing.T, a, b string) {
		CompareTexts(a, b)
		// Whatever is written, it agrees with itself.
		if strings.Contains(a, "\n") {
			return
		}
		if d := CompareTexts(a, a).Differences; len(d) > 0 {
			t.Fatalf("%q differs from itself: %v", a, d)
		}
		for _, w := range splitWritten(a) {
			if len(w.letters) == 0 {
				t.Fatalf("%q: a word without letters", a)
			}
		}
	})
}

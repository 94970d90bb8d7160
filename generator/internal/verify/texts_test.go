package verify

import (
	"os"
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

// Witness: quran-validator 1.3.0, text of the Quranic Universal Library, all 6,236 verses.
func TestTextsAgree(t *testing.T) {
	checked, diffs := CompareTexts(read(t, "quran.txt"), read(t, "text-b.txt"))
	if checked != 6236 {
		t.Fatalf("%d verses compared, 6236 wanted", checked)
	}
	for _, d := range diffs {
		t.Errorf("%s differs\nA %+q\nB %+q", d.Ref, d.A, d.B)
	}
}

// A comparison that finds nothing must be able to find something: every kind of change to a verse is seen.
func TestTextsDifferWhenChanged(t *testing.T) {
	b := "2:2\t" + "\u0630\u064e\u0670\u0644\u0650\u0643\u064e"
	for name, a := range map[string]string{
		"letter lost":   "2:2\t" + "\u0630\u064e\u0670\u0644\u0650",
		"vowel changed": "2:2\t" + "\u0630\u064e\u0670\u0644\u064e\u0643\u064e",
		"vowel added":   "2:2\t" + "\u0630\u064e\u0670\u0644\u0650\u0643\u064e\u064e",
		"letter turned": "2:2\t" + "\u062f\u064e\u0670\u0644\u0650\u0643\u064e",
		"verse lost":    "",
	} {
		if _, d := CompareTexts(a, b); len(d) == 0 {
			t.Errorf("%s: not seen", name)
		}
	}
}

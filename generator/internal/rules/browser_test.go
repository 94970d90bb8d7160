package rules

import (
	"fmt"
	"io/fs"
	"os"
	"regexp"
	"strings"
	"testing"

	"sutur/generator/internal/mushaf"
	"sutur/generator/internal/recite"
)

// TestBrowserNamesNoRule: the browser knows of rules, details and families what the catalogue says,
// and names none itself. But for share/lessons.ts, which numbers lessons for links that are kept for
// years: what the catalogue says today cannot say what a link of an earlier year meant.
func TestBrowserNamesNoRule(t *testing.T) {
	ids := strings.Join(append(IDs(), recite.Details()[1:]...), "|")
	named := regexp.MustCompile("['\"`](" + ids + "|" + strings.Join(Families, "|") + ")['\"`]")
	// Words of the reading, of lines and of screens that happen to be ids as well.
	other := regexp.MustCompile(`'(madd|stop|single)'`)
	n := 0
	app := os.DirFS("../../../site-src/app")
	err := fs.WalkDir(app, ".", func(p string, d fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(p, ".ts") || p == "share/lessons.ts" {
			return err
		}
		n++
		src, err := fs.ReadFile(app, p)
		for i, line := range strings.Split(string(src), "\n") {
			if m := named.FindString(other.ReplaceAllString(line, "")); m != "" {
				t.Errorf("site-src/app/%s:%d names %s", p, i+1, m)
			}
		}
		return err
	})
	if err != nil || n < 50 {
		t.Fatalf("%d files, %v", n, err)
	}
}

// TestCasesOccur: every sentence for a case is said of some letter of the text.
func TestCasesOccur(t *testing.T) {
	text, err := mushaf.Load(os.DirFS("../../../rules-content/text"))
	if err != nil {
		t.Fatal(err)
	}
	list, ds := Load(os.DirFS("../../../rules-content/rules"))
	if len(ds) > 0 {
		t.Fatal(ds)
	}
	left := map[string]bool{}
	for _, r := range list {
		for k := range r.Cases {
			left[r.ID+" "+k] = true
		}
	}
	if len(left) < 20 {
		t.Fatalf("%d cases", len(left))
	}
	engine := recite.New(text)
	for v := range text.Verses {
		for _, e := range engine.Verse(nil, v) {
			said := caseOf(text, list[e.Rule].Cases, v, e)
			delete(left, e.Rule.String()+" "+said)
		}
	}
	for k := range left {
		t.Errorf("nothing is ever said by the case %s", k)
	}
}

// caseOf returns the key of the sentence that the browser chooses for an event: the first of those
// that fit.
func caseOf(text *mushaf.Text, cases map[string]string, v int, e recite.Event) string {
	words := text.Verses[v].Words
	keys := []string{e.Detail.String()}
	if e.Unwritten {
		keys = append(keys, "unwritten")
	}
	if !voweled(words[e.Word]) {
		keys = append(keys, "opening")
	}
	keys = append(keys, e.When.String())
	if e.CauseLetter >= 0 {
		w := int(e.Word) + int(e.CauseWord)
		if w >= len(words) && v+1 < len(text.Verses) {
			words, w = text.Verses[v+1].Words, 0
		}
		if w >= 0 && w < len(words) {
			keys = append(keys, fmt.Sprintf("%04x", words[w].Letters[e.CauseLetter].Rune))
		}
	}
	for _, k := range keys {
		if cases[k] != "" {
			return k
		}
	}
	return ""
}

func voweled(w mushaf.Word) bool {
	for _, l := range w.Letters {
		if l.Rune == mushaf.SmallAlif || l.Has(mushaf.Fatha|mushaf.Damma|mushaf.Kasra|mushaf.Tanween|mushaf.Shadda|mushaf.Sukun) {
			return true
		}
	}
	return false
}

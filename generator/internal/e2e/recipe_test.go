package e2e

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// madeUp is a rule that does not exist, added by the recipe "Add a rule" of DEVELOPERS.md, step by
// step: it acts on every kaf. A file that is not there yet has no old text.
var madeUp = []change{
	// 1. The engine: an id at the end of the list, a family of its own, and its place in the order.
	{"generator/internal/recite/rule.go", "\tLightRaSakinah\n\tNumRules", "\tLightRaSakinah\n\tLetterKaf\n\tNumRules"},
	{"generator/internal/recite/rule.go", `"light-ra-sakinah",`, `"light-ra-sakinah", "letter-kaf",`},
	{"generator/internal/recite/kaf.go", "", `package recite

func kafRule(c *context) {
	for i := range c.cur.s {
		if c.cur.s[i].cons == kaf {
			c.add(i, LetterKaf, 2, Always)
		}
	}
}
`},
	{"generator/internal/recite/engine.go", "stopFormRule, singleRule,\n}", "stopFormRule, singleRule, kafRule,\n}"},
	// 2. What is said of it.
	{"rules-content/rules/single.json", "[\n  {", `[
  {
    "id": "letter-kaf", "name": "Letter kaf", "arabic": "كَافٌ", "translit": "kaf", "family": "single",
    "needs": [], "counts": [2],
    "meaning": "The letter kaf, wherever it stands.",
    "short": "Look for every kaf.",
    "why": "This letter is {letter}, held for {count} counts.",
    "cases": { "always": "A kaf it is, for {count} counts." }
  },
  {`},
	// 3. A lesson.
	{"rules-content/lessons/letter-kaf.md", "", `---
id: letter-kaf
rules: letter-kaf
name: Letter kaf
arabic: كَافٌ
translit: kaf
family: single
---
A rule that does not exist.

` + "```verse\n94:2 word 3 rule letter-kaf | The kaf.\n94:4 word 3 rule letter-kaf | The kaf.\n93:5 word 3 rule letter-kaf | The kaf.\n```\n"},
}

// TestAddRule follows the recipe in a copy of the project: the rule is annotated, taught, shown,
// explained, checked and printed, and nothing but the files named above was touched.
func TestAddRule(t *testing.T) {
	dir := changedProject(t, madeUp, "generator")
	for _, name := range []string{"go.mod", "go.sum"} {
		data, err := os.ReadFile(filepath.Join(root, name))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), data, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	run := func(args ...string) string {
		t.Helper()
		cmd := exec.Command("go", append([]string{"run", "./generator"}, args...)...)
		cmd.Dir = dir
		out, err := cmd.CombinedOutput()
		if err != nil {
			t.Fatalf("%v: %v\n%s", args, err, out)
		}
		return string(out)
	}
	if got, want := run("annotate", "112:4"), "letter-kaf\t2\talways\n"; strings.Count(got, want) != 2 {
		t.Errorf("annotate says\n%swant twice %q", got, want)
	}
	run("build", "--out", filepath.Join(dir, "out"))

	s := serve(t, "/", readSite(t, filepath.Join(dir, "out")))
	p := newPage(t)
	p.begin(s.address, "")
	p.choose("letter-kaf", 112, 4, 4)
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	p.tap(letter(text, text.Find(112, 4), 3, 0))
	p.tap(letter(text, text.Find(112, 4), 1, 1))
	p.wait("the marks in the family's colour", `CSS.highlights.get("f-single")?.size === 2`)
	p.click("next")
	p.wait("the check", visible(hook("found")))
	if got := eval[string](p, `document.querySelector("[data-t=found]").textContent`); !strings.Contains(got, "A kaf it is, for 2 counts.") {
		t.Errorf("the check says %q", got)
	}
	p.lay(s, "#/print?sheet=answer&from=112:1&to=112:4&rule=letter-kaf&show=focus")
	if got := eval[string](p, `document.querySelector(".print-stage .totals").innerText`); !strings.Contains(got, "Letter kaf") || !strings.Contains(got, "2") {
		t.Errorf("the answers say %q", got)
	}
	if n := p.count(".leaf[data-sheet=answer] .held"); n != 2 {
		t.Errorf("%d lengths on paper, want 2", n)
	}
	p.lay(s, "#/print?sheet=card")
	p.calm()
	p.open(s.address + "lessons/letter-kaf.html")
	p.wait("the lesson's examples in colour", `CSS.highlights.get("f-single")?.size >= 3`)
	p.calm()
}

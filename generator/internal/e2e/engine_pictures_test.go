package e2e

import (
	"fmt"
	"os"
	"testing"

	"sutur/generator/internal/engine"
)

// TestPictures goes through marking, checking and reading in every engine. With
// SUTUR_PICTURES=folder it saves what is seen, for a person to look at.
func TestPictures(t *testing.T) {
	if os.Getenv("SUTUR_PICTURES") == "" {
		t.Skip("for a person to look at: SUTUR_PICTURES names no folder to save into")
	}
	s := serve(t, "/", built(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		p.begin(s.address, "Nur")
		want := places(t, rule, surah, from, upTo)
		p.choose(rule, surah, from, upTo)
		for i, a := range want[1:] {
			p.tap(a)
			p.wait("a mark", fmt.Sprintf(`(CSS.highlights?.get("f-%s")?.size ?? %d) === %[2]d`, family, i+1))
		}
		text, err := theText()
		if err != nil {
			t.Fatal(err)
		}
		p.tap(letter(text, text.Find(surah, from), 0, 0))
		for _, theme := range []string{"light", "dark"} {
			eval[any](p, fmt.Sprintf(`(document.documentElement.dataset.theme = %q, scrollTo(0, 0))`, theme))
			picture(t, "marking-"+b.Name()+"-"+theme, p.settled())
		}
		p.check()
		p.wait("what was missed", visible(hook("missed")))
		for _, theme := range []string{"dark", "light"} {
			eval[any](p, fmt.Sprintf(`(document.documentElement.dataset.theme = %q, scrollTo(0, 0))`, theme))
			picture(t, "check-"+b.Name()+"-"+theme, p.settled())
		}
		p.click("next")
		p.wait("reading", `document.querySelector("main.lines")?.dataset.phase === "read"`)
		picture(t, "read-"+b.Name()+"-light", p.settled())
		p.open(s.address + "lessons/noon-ikhfa.html")
		picture(t, "lesson-"+b.Name()+"-light", p.settled())
	})
}

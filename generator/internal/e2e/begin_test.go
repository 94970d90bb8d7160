package e2e

import (
	"fmt"
	"strings"
	"testing"
)

// beginning is what is kept of a learner's place and of what was chosen for it.
const beginning = `(async () => {
	const db = await new Promise((ok, no) => { const r = indexedDB.open("sutur"); r.onsuccess = () => ok(r.result); r.onerror = no; });
	const [l] = await new Promise((ok, no) => { const r = db.transaction("learners").objectStore("learners").getAll(); r.onsuccess = () => ok(r.result); r.onerror = no; });
	db.close();
	return [l.place.s + ":" + l.place.a, l.direction ?? "-", l.load ?? "-"].join(" ");
})()`

// TestFirstChoice: where a learner begins is asked for with the name, An-Naba on if nothing is
// pressed; the lines of the first day are there.
func TestFirstChoice(t *testing.T) {
	s := serve(t, "/", built(t))
	for _, c := range []struct {
		name  string
		press func(p *page)
		kept  string
		from  [3]int // where the first lines begin
	}{
		{"nothing", func(*page) {}, "78:1 - -", [3]int{78, 1, 0}},
		{"backwards", func(p *page) { p.click("from-backwards") }, "114:1 backwards -", [3]int{114, 1, 0}},
		{"backwards and back", func(p *page) { p.click("from-backwards"); p.click("from-forwards") }, "78:1 - -", [3]int{78, 1, 0}},
		{"a place", func(p *page) {
			p.click("from-chosen")
			p.set("place-surah", "87")
			p.set("place-verse", "6")
		}, "87:6 - -", [3]int{87, 6, 0}},
		{"a verse past the last", func(p *page) {
			p.click("from-chosen")
			p.set("place-surah", "93")
			eval[any](p, `(() => {
				const e = document.querySelector("[data-t=place-verse]");
				e.value = "40";
				e.dispatchEvent(new Event("change", { bubbles: true }));
				return 0;
			})()`)
		}, "93:11 - -", [3]int{}},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := newPage(t)
			p.open(s.address)
			p.wait("the choice", visible(hook("from-backwards")))
			c.press(p)
			p.click("begin")
			p.wait("the card of today", visible(hook("next-settle")))
			if got := eval[string](p, beginning); got != c.kept {
				t.Errorf("kept is %q, want %q", got, c.kept)
			}
			link := parseLink(t, p.href("start"))
			if c.from != [3]int{} && link.from != c.from {
				t.Errorf("the first lines begin at %v, want %v", link.from, c.from)
			}
			p.calm()
			p.close()
		})
	}
}

// TestLoadChoice: places in a session and direction are chosen with the learner, kept, and used.
func TestLoadChoice(t *testing.T) {
	s := serve(t, "/", built(t))
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	p := newPage(t)
	p.begin(s.address, "Maryam")
	p.open(s.address + "#/learner")
	chosen := func(name string) string {
		return fmt.Sprintf(`document.querySelector('[data-t=%s][aria-pressed=true]')`, name)
	}
	p.wait("few by default", chosen("load-few"))
	p.wait("forwards by default", chosen("direction-forwards"))
	if got := p.text(hook("load-what")); !strings.Contains(got, "4 to 7") || !strings.Contains(got, "8 to 12") {
		t.Errorf("few is %q", got)
	}
	places := func() int {
		p.open(s.address + "#/lines?rule=madd-tabii")
		p.wait("the best lines", visible(hook("open-1")))
		n, _ := parseLink(t, p.href("open-1")).marked(text)
		return n
	}
	if n := places(); n < 4 || n > 7 {
		t.Errorf("few are %d places", n)
	}
	p.open(s.address + "#/learner")
	p.click("load-many")
	p.wait("many", chosen("load-many"))
	p.click("direction-backwards")
	p.wait("backwards", chosen("direction-backwards"))
	if got := eval[string](p, beginning); got != "78:1 backwards many" {
		t.Errorf("kept is %q", got)
	}
	if n := places(); n < 8 || n > 14 {
		t.Errorf("many are %d places", n)
	}
	p.calm()
}

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// children are those of a teacher; one name is written from right to left.
var children = []string{"Maryam", "Yusuf", "Abdurrahman", "فاطمة", "Sara", "Ali"}

// counted counts presses on the way. Typing a name is none.
type counted struct {
	*page
	presses int
}

func (p *counted) click(name string) {
	p.t.Helper()
	p.page.click(name)
	p.presses++
}

// since gives the presses made by some steps.
func (p *counted) since(steps func()) int {
	was := p.presses
	steps()
	return p.presses - was
}

// ids gives the id of each learner on the device by name.
func (p *page) ids() map[string]string {
	p.t.Helper()
	return inDatabase[map[string]string](p, `return Object.fromEntries((await all("learners")).map(l => [l.name, l.id]))`)
}

// nameNew types the name of a learner who is being added, once the keyboard is on its field.
func (p *page) nameNew(name string) {
	p.t.Helper()
	p.wait("the keyboard on the field", `document.activeElement?.dataset.t === "add-name"`)
	p.keys(name)
}

// addLearner adds a learner on the screen that is shown.
func (p *page) addLearner(name string) {
	p.t.Helper()
	p.click("add-learner")
	p.nameNew(name)
	p.click("add-confirm")
	p.wait("the way to add one more", visible(hook("add-learner")))
}

// computed waits until what is next is known of every learner.
func (p *page) computed(n int) {
	p.t.Helper()
	p.wait("what is next for everyone", fmt.Sprintf(`document.querySelectorAll("[data-t^=start-]:not(:disabled)").length === %d`, n))
}

// TestTeacher is a teacher with six children, on a desk and on a phone, with every press counted:
// adding six, one press to begin with each of them, and the same lines for all.
func TestTeacher(t *testing.T) {
	s := serve(t, "/", built(t))
	for _, wide := range []int{1280, 390} {
		t.Run(fmt.Sprint(wide), func(t *testing.T) {
			p := &counted{page: newPage(t)}
			p.do(chromedp.EmulateViewport(int64(wide), 844))
			n := p.since(func() { p.addSix(s) })
			t.Logf("adding six: %d presses", n)
			if n > 13 {
				t.Errorf("adding six takes %d presses", n)
			}
			p.startEach(s, wide)
			p.sameLines(s)
			p.stayedAt(s.address)
			p.calm()
		})
	}
}

// addSix names the first child on the first screen, and the others on the learner screen.
func (p *counted) addSix(s *server) {
	p.t.Helper()
	p.begin(s.address, children[0])
	p.presses++
	p.click("nav-learner")
	for i, name := range children[1:] {
		p.click("add-learner")
		p.nameNew(name)
		p.click("add-confirm")
		p.wait("the child in the list", fmt.Sprintf(`document.querySelectorAll("[data-t^=learner-]").length === %d`, i+2))
	}
	if got := len(p.ids()); got != len(children) {
		p.t.Errorf("%d children are kept", got)
	}
	if n := inDatabase[int](p.page, `return new Set((await all("learners")).map(l => l.colour ?? 0)).size`); n != len(children) {
		p.t.Errorf("six children have %d colours", n)
	}
}

// startEach begins with each child by one press, and comes back to everyone after the session.
func (p *counted) startEach(s *server, wide int) {
	p.t.Helper()
	inDatabase[any](p.page, `
		const tx = db.transaction("learners", "readwrite"), all = tx.objectStore("learners");
		for (const l of await ask(all.getAll())) all.put({ ...l, settled: true });
		await new Promise(ok => tx.oncomplete = ok);
		return 0`)
	p.open(s.address + "about.html")
	p.open(s.address + "#/learner")
	p.click("everyone")
	p.computed(len(children))
	if table := p.count("table") == 1; table != (wide >= 900) {
		p.t.Errorf("at %d pixels there is a table: %v", wide, table)
	}
	for name, id := range p.ids() {
		n := p.since(func() {
			p.click("start-" + id)
			p.wait("the lines of "+name, visible(hook("next"))+fmt.Sprintf(` && document.querySelector("[data-t=whose]").innerText === %q`, name))
		})
		p.t.Logf("beginning with %s: %d press", name, n)
		if n != 1 {
			p.t.Errorf("beginning with %s takes %d presses", name, n)
		}
		p.toEnd()
		p.click("outcome-some")
		p.wait("everyone again", visible(hook("tick-"+id)))
		p.wait("what was read last", fmt.Sprintf(`document.querySelector("[data-t=tick-%s]").closest("[data-t=row]").innerText.includes("With some help")`, id))
		p.computed(len(children))
	}
	if got := inDatabase[int](p.page, `return new Set((await all("sessions")).map(x => x.learner)).size`); got != len(children) {
		p.t.Errorf("%d children have a session", got)
	}
}

// sameLines reads the same lines with all of them: five say how they read, one did not; all of it is
// taken back by one press, and kept again.
func (p *counted) sameLines(s *server) {
	p.t.Helper()
	ids := p.ids()
	before := inDatabase[string](p.page, `return JSON.stringify((await all("learners")).map(l => [l.id, l.place]))`)
	n := p.since(func() { p.click("tick-all"); p.click("same-lines") })
	p.t.Logf("the same lines for six: %d presses", n)
	p.wait("the lines", visible(hook("next")))
	whose := p.text(hook("whose"))
	for name := range ids {
		if !strings.Contains(whose, name) {
			p.t.Errorf("the head of the lines says %q, without %s", whose, name)
		}
	}
	p.toEnd()
	answer := func() {
		for i, name := range children {
			p.click([]string{"alone", "some", "much", "away", "alone", "some"}[i] + "-" + ids[name])
		}
		p.click("keep-each")
		p.wait("everyone again", visible(hook("tick-all")))
	}
	n = p.since(answer)
	p.t.Logf("how six read: %d presses", n)
	if n != len(children)+1 {
		p.t.Errorf("saying how six read takes %d presses", n)
	}
	p.together(ids, 5)
	p.click("notice-action")
	p.wait("the question once more", visible(hook("each")))
	p.together(ids, 0)
	if after := inDatabase[string](p.page, `return JSON.stringify((await all("learners")).map(l => [l.id, l.place]))`); after != before {
		p.t.Errorf("places after Undo are %s, want %s", after, before)
	}
	answer()
	p.together(ids, 5)
}

// together looks at the sessions of lines that were read together.
func (p *counted) together(ids map[string]string, want int) {
	p.t.Helper()
	type kept struct {
		Learner, Outcome string
		Found, Missed    int
		Marks            int
	}
	list := inDatabase[[]kept](p.page, `return (await all("sessions")).filter(x => x.together).map(x => ({ ...x, marks: x.marks.length }))`)
	if len(list) != want {
		p.t.Errorf("%d sessions read together, want %d: %v", len(list), want, list)
	}
	for _, x := range list {
		if x.Learner == ids[children[3]] || x.Found+x.Missed+x.Marks > 0 {
			p.t.Errorf("kept: %+v", x)
		}
	}
	drafts := 0
	if want == 0 {
		drafts = 1
	}
	if n := inDatabase[int](p.page, `return (await all("drafts")).filter(d => d.together).length`); n != drafts {
		p.t.Errorf("%d drafts of several, want %d", n, drafts)
	}
}

// TestChosenTogether: lines of one's own for several; the names are said where they are chosen and on
// the lines, and the others can be left out again.
func TestChosenTogether(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "Maryam")
	p.click("nav-learner")
	p.addLearner("Yusuf")
	p.click("everyone")
	p.computed(2)
	if p.count(hook("same-lines")+":disabled") != 1 {
		t.Error("nobody is ticked, and lines can be opened")
	}
	both := func() {
		p.click("tick-all")
		p.click("same-choose")
		p.wait("for whom", visible(hook("together-for")))
	}
	both()
	p.click("alone")
	p.wait("one alone", `!document.querySelector("[data-t=together-for]")`)
	eval[any](p, `(location.hash = "#/learners", 0)`)
	p.computed(2)
	both()
	p.set("surah", "112")
	p.set("from", "1")
	p.set("to", "4")
	p.click("open")
	p.wait("the lines", visible(hook("next")))
	if got := p.text(hook("whose")); !strings.Contains(got, "Maryam") || !strings.Contains(got, "Yusuf") {
		t.Errorf("the lines are %q's", got)
	}
	p.reload()
	p.wait("the lines again", visible(hook("next")))
	if got := p.text(hook("whose")); !strings.Contains(got, "Maryam") || !strings.Contains(got, "Yusuf") {
		t.Errorf("after a reload the lines are %q's", got)
	}
	first := "Maryam"
	if !strings.HasPrefix(p.text(hook("whose")), first) {
		first = "Yusuf"
	}
	p.clickOn(hook("switch") + " summary")
	p.click("alone")
	p.reads(first)
	p.calm()
}

package e2e

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// vectors are the links of version 1 of the unit tests.
func vectors(t *testing.T) (links []string) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(root, "site-src/test/data/links-1.json"))
	if err != nil {
		t.Fatal(err)
	}
	var list []struct{ Link string }
	if err := json.Unmarshal(data, &list); err != nil {
		t.Fatal(err)
	}
	for _, x := range list {
		links = append(links, x.Link)
	}
	return links
}

// everything on the device, but for what is new at each start.
const everything = `return JSON.stringify(await Promise.all(["learners", "sessions", "months", "taught", "drafts", "settings", "gone"].map(all)));`

// TestStrangeLinks opens links of every kind, whole and broken: each is shown or refused in words,
// and nothing is changed without a press.
func TestStrangeLinks(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "One")
	p.wait("a calm device", `document.querySelector('[data-t^="next-"]')`)
	before := inDatabase[string](p, everything)
	given, refused := 0, 0
	for i, link := range vectors(t) {
		for j, hash := range []string{link, link + ".", link[:len(link)-3], link[:len(link)/2], strings.Replace(link, "=", "%3D", 3), strings.Replace(link, "v=1", "v=2", 1), strings.ToUpper(link), link + "%E0%A4%A", "#" + strings.Repeat("%25", 40) + link[1:]} {
			eval[any](p, `(location.hash = "#/rules", 0)`)
			p.wait("another screen", `document.querySelector("main.rules")`)
			eval[any](p, fmt.Sprintf(`(location.hash = %q, 0)`, hash))
			p.wait(fmt.Sprintf("an answer to %d.%d %s", i, j, hash), `document.querySelector("[data-t=given], [data-t=told-result], [data-t=unread], [data-t=problem]")?.innerText`)
			if p.count("[data-t=given], [data-t=told-result]") > 0 {
				given++
			} else {
				refused++
			}
		}
	}
	if given < 24 || refused < 48 {
		t.Errorf("%d understood, %d refused", given, refused)
	}
	if after := inDatabase[string](p, everything); after != before {
		t.Errorf("the device had\n%s\nand has\n%s", before, after)
	}
	p.calm()
}

// TestWorkForOneOfSeveral: with several learners the one is asked for; what the teacher has set
// otherwise is offered and only added; the work is put away and comes back.
func TestWorkForOneOfSeveral(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.learner(s.address, "ghunnah")
	inDatabase[any](p, `const tx = db.transaction("learners", "readwrite"), [l] = await ask(tx.objectStore("learners").getAll());
		tx.objectStore("learners").put({ ...l, id: "x2", name: "Sami" });
		await new Promise(ok => { tx.oncomplete = ok; }); return 0;`)
	links := vectors(t)
	p.openLink(s.address + links[1]) // with lessons and lengths
	p.wait("the question", visible(hook("for-x2")))
	if !eval[bool](p, `document.querySelector("[data-t=work-start]").disabled`) {
		t.Error("it starts for nobody")
	}
	p.click("for-x1")
	p.wait("the offer", visible(hook("take-taught")))
	p.click("take-taught")
	if !eval[bool](p, `document.querySelector("[data-t=take-taught]").checked`) {
		p.click("take-taught")
	}
	p.click("work-start")
	p.wait("the lines", visible(hook("next")))
	taught := inDatabase[[]string](p, `return (await all("taught")).map(x => x.rule + " " + x.since).sort()`)
	if len(taught) < 15 || !strings.Contains(strings.Join(taught, ","), "ghunnah 20") {
		t.Errorf("taught are %q", taught)
	}
	p.open(s.address + "#/today")
	p.wait("the card of today", `document.querySelector('[data-t^="next-"]')`) // which moves what lies below
	p.click("work-away")
	p.wait("that it is away", `!document.querySelector("[data-t=work]")`)
	p.click("notice-action")
	p.wait("the work again", visible(hook("work-away")))
	p.openLink(s.address + links[0])
	p.click("for-x1")
	p.wait("that there is other work", `document.querySelector("[data-t=starting]").innerText.includes("takes the place")`)
	p.calm()
}

// TestPasteLink opens a link from the text of a message, and says where there is none.
func TestPasteLink(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "One")
	eval[any](p, `(location.hash = "#/work", 0)`)
	p.wait("the field", visible(hook("paste-field")))
	p.set("paste-field", "hello")
	p.click("paste-open")
	p.wait("words", `document.querySelector("[data-t=problem]").innerText`)
	result := vectors(t)[7]
	p.set("paste-field", fmt.Sprintf("An-Naba: 7 of 9.\nhttps://elsewhere.example/x/%s\nThank you", result))
	p.click("paste-open")
	p.wait("the result", visible(hook("result-take")))
	p.calm()
}

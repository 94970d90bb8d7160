package e2e

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// severalBackup is a record: one rule; several, looked at again; on paper with numbers and without;
// no new rule, with other pencils.
const severalBackup = `{"format":"sutur-backup","v":5,"saved":"2026-03-09T10:00:00.000Z","taught":[{"learner":"a","rule":"qalqalah","since":"2026-03-01","known":""}],
"learners":[{"id":"a","name":"A","place":{"s":78,"a":1},"settled":true,"made":"2026-03-01T10:00:00.000Z","updated":"2026-03-01T10:00:00.000Z"}],
"sessions":[%s]}`

func severalSession(id int, rule, more string) string {
	return fmt.Sprintf(`{"id":"s%d","learner":"a","day":"2026-03-0%d","at":"2026-03-0%[2]dT10:00:00.000Z","rule":%[3]q,"from":{"s":78,"a":12},"to":{"s":78,"a":16},
		"marks":[],"stops":[],"extra":0,"helped":false,"outcome":"alone",%[4]s}`, id, id, rule, more)
}

// TestRecordSeveral: a row names every rule that was marked, with its places, and leads to the lines
// with the same pencils; each counts in its own total.
func TestRecordSeveral(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.open(s.address + "#/record")
	p.wait("the record", visible(hook("backup")))
	file := t.TempDir() + "/several.json"
	putFile(t, file, fmt.Sprintf(severalBackup, strings.Join([]string{
		severalSession(1, "ghunnah", `"found":3,"missed":1`),
		severalSession(2, "ghunnah", `"found":3,"missed":1,"also":[{"rule":"qalqalah","found":4,"missed":0}],"pencils":["qalqalah","stops"],"looked":5`),
		severalSession(3, "ghunnah", `"found":0,"missed":0,"also":[{"rule":"madd-tabii","found":0,"missed":0}],"pencils":["all-long"],"paper":true`),
		severalSession(4, "qalqalah", `"found":2,"missed":1,"paper":true`),
		severalSession(5, "", `"found":0,"missed":0,"also":[{"rule":"qalqalah","found":1,"missed":1}],"pencils":["qalqalah","gone"]`),
		severalSession(6, "ghunnah", `"found":4,"missed":0,"looked":2`),
		severalSession(7, "", `"found":0,"missed":0,"pencils":["stops"]`),
	}, ",")))
	p.restore(file)
	p.wait("all sessions", fmt.Sprintf(`document.querySelectorAll(%q).length === 7`, hook("session")))
	type row struct{ What, How, Link string }
	got := eval[[]row](p, fmt.Sprintf(`[...document.querySelectorAll(%q)].map(l => { const [what, how] = l.querySelectorAll("p");
		return { what: what.innerText, how: how.innerText, link: l.querySelector("a").getAttribute("href") }; })`, hook("session")))
	const lines, all = "#/lines?", "from=78:12&to=78:16"
	const how = "An-Naba 12–16 · Read alone"
	want := []row{
		{"Reading", how, lines + "also=stops&" + all},
		{"Ghunnah", how + " · first 2, then 4 of 4 after looking again", lines + "rule=ghunnah&" + all},
		{"Qalqalah", how + " · found 1 of 2", lines + "also=qalqalah&" + all},
		{"Qalqalah", how + " · on paper · found 2 of 3", lines + "rule=qalqalah&" + all},
		{"Ghunnah · Natural long vowel", how + " · on paper", lines + "rule=ghunnah&also=all-long&" + all},
		{"Ghunnah 3 of 4 · Qalqalah 4 of 4", how + " · first 5, then 7 of 8 after looking again", lines + "rule=ghunnah&also=qalqalah,stops&" + all},
		{"Ghunnah", how + " · found 3 of 4", lines + "rule=ghunnah&" + all},
	}
	if !slices.Equal(got, want) {
		for i := range min(len(got), len(want)) {
			if got[i] != want[i] {
				t.Errorf("row %d is\n%+v, want\n%+v", i+1, got[i], want[i])
			}
		}
	}
	for _, x := range []struct{ rule, says string }{
		{"ghunnah", "found 10 of 12"}, {"ghunnah", "4 sessions"}, {"qalqalah", "found 7 of 9"}, {"qalqalah", "3 sessions"}, {"madd-tabii", "1 session on one day"},
	} {
		if text := p.text(hook("total-" + x.rule)); !strings.Contains(text, x.says) {
			t.Errorf("the total of %s is %q, without %q", x.rule, text, x.says)
		}
	}
	if text := p.text(hook("total-madd-tabii")); strings.Contains(text, "0 of") {
		t.Errorf("where nobody said how many, the total is %q", text)
	}
	// The rule's own history counts the same sessions.
	p.open(s.address + "about.html")
	p.open(s.address + "#/rules")
	p.wait("the history", `document.querySelectorAll('[data-t="rung-qalqalah"] .plan-history li').length === 3`)
	history := eval[[]string](p, `[...document.querySelectorAll('[data-t="rung-qalqalah"] .plan-history li')].map(l => [l.querySelector("a").getAttribute("href"), ...l.textContent.match(/found \d of \d/)].join(" "))`)
	if want := []string{lines + "also=qalqalah&" + all + " found 1 of 2", lines + "rule=qalqalah&" + all + " found 2 of 3", lines + "rule=ghunnah&also=qalqalah,stops&" + all + " found 4 of 4"}; !slices.Equal(history, want) {
		t.Errorf("the history of qalqalah is %q, want %q", history, want)
	}
	p.entries("of the backup", 7)
	p.calm()
}

// TestReviewSeveral: a review proposes lines with a pencil for each rule that is due there, and says
// which in words; when counts are written is the family's choice.
func TestReviewSeveral(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.learner(s.address, "ghunnah", "qalqalah", "noon-ikhfa", "madd-tabii", "heavy-letter", "hamzat-wasl", "sun-lam", "madd-muttasil")
	inDatabase[int](p, `const tx = db.transaction("taught", "readwrite"), to = tx.objectStore("taught");
		for (const x of await ask(to.getAll())) to.put({ ...x, known: "2026-01-02" });
		await new Promise(ok => { tx.oncomplete = ok; }); return 0;`)
	p.open(s.address + "about.html")
	p.open(s.address + "#/today")
	link := p.href("start")
	if p.count(hook("next-review")) != 1 {
		t.Fatalf("today is %q", p.text("main"))
	}
	_, list, several := strings.Cut(link, "&also=")
	also := strings.Split(strings.Split(list, "&")[0], ",")
	if !several || len(also) != 5 {
		t.Fatalf("the review leads to %s; eight rules are due", link)
	}
	head := p.text(hook("next-review") + " h2")
	if n := strings.Count(head, ","); !strings.HasPrefix(head, "Review: ") || !strings.Contains(head, " and ") || n < 4 {
		t.Errorf("the card says %q of %s", head, link)
	}
	p.click("start")
	p.wait("a pencil for each", fmt.Sprintf(`document.querySelectorAll('[data-t^="hand-"]').length === %d`, len(also)+1))

	counts := `document.querySelector('[data-t^="count-"]')`
	for _, x := range []struct{ way, shown string }{{"never", "!" + counts}, {"every", counts + "?.disabled"}, {"once", counts + " && !" + counts + ".disabled"}} {
		p.open(s.address + "about.html")
		p.open(s.address + "#/learner")
		p.click("counting-" + x.way)
		p.wait("the choice shown", fmt.Sprintf(`document.querySelector('[data-t="counting-%s"][aria-pressed=true]')`, x.way))
		p.waitStored("the choice", fmt.Sprintf(`return (await all("learners"))[0].own?.counting === %q`, x.way))
		p.open(s.address + "about.html")
		p.open(s.address + "#/lines?rule=ghunnah&from=78:12&to=78:16")
		p.wait("the lines", visible(hook("passage")))
		p.controls()
		p.wait("counts: "+x.way, x.shown)
	}
	p.calm()
}

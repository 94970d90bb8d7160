package e2e

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// putSessions replaces the sessions on the device by so many of the one learner, who has been
// taught their rules, so many hours apart; what is made of them is made anew when the site is opened.
const putSessions = `(async () => {
	const ask = r => new Promise((ok, no) => { r.onsuccess = () => ok(r.result); r.onerror = () => no(r.error); });
	const db = await ask(indexedDB.open("sutur")), [l] = await ask(db.transaction("learners").objectStore("learners").getAll());
	const tx = db.transaction(["sessions", "taught", "months"].filter(t => db.objectStoreNames.contains(t)), "readwrite"), to = tx.objectStore("sessions"), rules = ["noon-ikhfa", "qalqalah", "ghunnah", "madd-badal"];
	to.clear();
	if (db.objectStoreNames.contains("months")) tx.objectStore("months").clear();
	for (const rule of rules) tx.objectStore("taught").put({ learner: l.id, rule, since: "2020-01-01", known: "" });
	for (let i = 0; i < %d; i++) {
		const at = new Date(Date.now() - i * %d * 36e5).toISOString();
		to.put({ id: "s" + i, learner: l.id, day: at.slice(0, 10), at, rule: rules[i %% 4], from: { s: 78, a: 1 + i %% 30 }, to: { s: 78, a: 5 + i %% 30 },
			marks: Array.from({ length: 12 }, (_, k) => ({ v: k %% 5, w: k %% 3, l: k %% 2, count: 0 })), stops: [], found: 9, missed: i %% 3, extra: 1, helped: false, outcome: "some" });
	}
	await new Promise((ok, no) => { tx.oncomplete = ok; tx.onabort = no; });
	db.close();
	return 0;
})()`

// putSessions does so on a page without the app, which does not look on.
func (p *page) putSessions(s *server, n int) { p.putSessionsApart(s, n, 1) }

func (p *page) putSessionsApart(s *server, n, hours int) {
	p.t.Helper()
	p.open(s.address + "about.html")
	eval[any](p, fmt.Sprintf(putSessions, n, hours))
}

// TestManySessions opens a record of many sessions: every screen works, and the list comes in
// pages.
func TestManySessions(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.unkept()
	p.begin(s.address, "")
	p.putSessions(s, 10_000)
	p.open(s.address + "#/record")
	p.wait("the record", visible(hook("more")))
	if n := p.count(hook("session")); n != 50 {
		t.Errorf("%d sessions at once", n)
	}
	p.click("more")
	p.wait("fifty more", fmt.Sprintf(`document.querySelectorAll('%s').length === 100`, hook("session")))
	p.click("open-session")
	p.wait("one of them", visible(hook("marked")))
	p.click("correct")
	p.click("went-much")
	p.click("save-session")
	p.wait("the correction", `document.querySelector("[data-t=facts]")?.innerText.includes("With a lot of help")`)
	p.click("notice-action")
	p.wait("what was there before", `document.querySelector("[data-t=facts]").innerText.includes("With some help")`)
	p.click("remove-session")
	p.wait("the list", visible(hook("more")))
	p.click("notice-action")
	p.wait("that it is back", visible(hook("notice-back")))
	eval[any](p, `(URL.createObjectURL = b => { globalThis.file = b.text(); return ""; }, HTMLAnchorElement.prototype.click = () => undefined, 0)`)
	p.click("save-table")
	p.wait("the table", `globalThis.file`)
	if n := strings.Count(eval[string](p, `globalThis.file`), "\r\n"); n != 10_001 {
		t.Errorf("the table has %d rows", n)
	}
	p.click("nav-rules")
	p.wait("the rules", visible(hook("next")))
	p.click("nav-today")
	p.wait("today", `document.querySelector('[data-t^="next-"]')`)
	p.calm()
}

// BenchmarkOpenRecord opens Today, lines and the record with few sessions and with many, by turns:
// to the plan, the lines and the list. It reports medians and how many times the few the many take.
func BenchmarkOpenRecord(b *testing.B) {
	s := serve(b, "/", built(b))
	screens := []struct{ name, hash, shown string }{
		{"today", "", `[data-t^="next-"]`}, {"lines", "#/lines?rule=noon-ikhfa&from=78:1&to=78:5", hook("verse-78-5")}, {"record", "#/record", hook("session")},
	}
	open := func(p *page, hash, shown string) float64 {
		p.open(s.address + "about.html")
		p.open(s.address + hash)
		return eval[float64](p, fmt.Sprintf(`new Promise(ok => { const look = () => document.querySelector('%s') ? ok(performance.now()) : requestAnimationFrame(look); look(); })`, shown))
	}
	var pages [2]*page
	for i, n := range []int{5, 10_000} {
		p := newPage(b)
		p.unkept()
		p.begin(s.address, "")
		p.putSessions(s, n)
		open(p, "#/record", hook("session")) // what is made of them is made once
		pages[i] = p
	}
	b.ResetTimer()
	for _, x := range screens {
		var took [2][]float64
		for range b.N {
			for i, p := range pages {
				took[i] = append(took[i], open(p, x.hash, x.shown))
			}
		}
		few, many := median(took[0]), median(took[1])
		b.ReportMetric(few, x.name+"-5-ms")
		b.ReportMetric(many, x.name+"-10000-ms")
		b.ReportMetric(many/few, x.name+"-ratio")
	}
}

func median(list []float64) float64 {
	slices.Sort(list)
	return list[len(list)/2]
}

package e2e

import (
	"fmt"
	"testing"
)

// putSessions replaces the sessions on the device by so many of the one learner.
const putSessions = `(async () => {
	const ask = r => new Promise((ok, no) => { r.onsuccess = () => ok(r.result); r.onerror = () => no(r.error); });
	const db = await ask(indexedDB.open("sutur")), [l] = await ask(db.transaction("learners").objectStore("learners").getAll());
	const tx = db.transaction("sessions", "readwrite"), to = tx.objectStore("sessions"), rules = ["noon-ikhfa", "qalqalah", "ghunnah", "madd-badal"];
	to.clear();
	for (let i = 0; i < %d; i++) {
		const at = new Date(Date.now() - i * 36e5).toISOString();
		to.put({ id: "s" + i, learner: l.id, day: at.slice(0, 10), at, rule: rules[i %% 4], from: { s: 78, a: 1 + i %% 30 }, to: { s: 78, a: 5 + i %% 30 },
			marks: Array.from({ length: 12 }, (_, k) => ({ v: k %% 5, w: k %% 3, l: k %% 2, count: 0 })), stops: [], found: 9, missed: i %% 3, extra: 1, helped: false, outcome: "some" });
	}
	await new Promise((ok, no) => { tx.oncomplete = ok; tx.onabort = no; });
	db.close();
	return 0;
})()`

// TestManySessions opens a record of many sessions: every screen works, and the
// list comes in pages.
func TestManySessions(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.unkept()
	p.begin(s.address, "")
	p.open(s.address + "about.html")
	eval[any](p, fmt.Sprintf(putSessions, 10_000))
	p.open(s.address + "#/record")
	p.wait("the record", visible(hook("more")))
	if n := p.count(hook("session")); n != 50 {
		t.Errorf("%d sessions at once", n)
	}
	p.click("more")
	p.wait("fifty more", fmt.Sprintf(`document.querySelectorAll('%s').length === 100`, hook("session")))
	p.click("nav-rules")
	p.wait("the rules", visible(hook("next")))
	p.click("nav-today")
	p.wait("today", `document.querySelector('[data-t^="next-"]')`)
	p.calm()
}

// BenchmarkOpenRecord opens Today and the record, to the plan and to the list.
func BenchmarkOpenRecord(b *testing.B) {
	s := serve(b, "/", built(b))
	for _, n := range []int{5, 10_000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			p := newPage(b)
			p.unkept()
			p.begin(s.address, "")
			p.open(s.address + "about.html")
			eval[any](p, fmt.Sprintf(putSessions, n))
			for _, x := range []struct{ screen, hash, shown string }{
				{"today", "", `[data-t^="next-"]`}, {"record", "#/record", hook("session")},
			} {
				var sum float64
				for range b.N {
					p.open(s.address + "about.html")
					p.open(s.address + x.hash)
					sum += eval[float64](p, fmt.Sprintf(`new Promise(ok => { const look = () => document.querySelector('%s') ? ok(performance.now()) : requestAnimationFrame(look); look(); })`, x.shown))
				}
				b.ReportMetric(sum/float64(b.N), x.screen+"-ms")
			}
		})
	}
}

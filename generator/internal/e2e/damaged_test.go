package e2e

import (
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
)

// fieldsTried are the fields of each table that are damaged, by path.
var fieldsTried = map[string]string{
	"learners": "id name place place.s place.a place.w settled made updated order order.0 ready ready.sessions",
	"sessions": "id learner day at rule from from.s from.a to to.s to.a marks marks.0 marks.0.v marks.0.w marks.0.l marks.0.count " +
		"stops stops.0 stops.0.0 stops.0.2 found missed extra helped outcome",
	"taught":   "learner rule since known",
	"drafts":   "id learner at lines lines.rule lines.from lines.from.a lines.to lines.to.s phase marks marks.0 marks.0.w marks.0.l stops stops.0 helped started updated",
	"settings": "learner size spacing theme madd arid pencils pencils.noon",
}

// valuesTried are what fields are set to, as JavaScript; "" takes a field away.
var valuesTried = []string{
	"", "null", "0", "-1", "1e21", "NaN", "99", `"text"`, `""`, "[]", "{}", `"<img src=x onerror=alert(1)>"`, "{ a: { b: [1, { c: null }] } }",
}

// harmedRecord is one damaged record: fields of a table and what they are set to.
type harmedRecord struct {
	Table         string
	Paths, Values []string
}

// harmedRecords returns n of them, the same every time: every field with every value, then pairs of
// fields.
func harmedRecords(n int, rng *rand.Rand) (all []harmedRecord) {
	tables := []string{"learners", "sessions", "taught", "drafts", "settings"}
	for _, t := range tables {
		for _, f := range strings.Fields(fieldsTried[t]) {
			for _, v := range valuesTried {
				all = append(all, harmedRecord{t, []string{f}, []string{v}})
			}
		}
	}
	rng.Shuffle(len(all), func(i, j int) { all[i], all[j] = all[j], all[i] })
	any := func(list []string) string { return list[rng.IntN(len(list))] }
	for len(all) < n {
		t := any(tables)
		f := strings.Fields(fieldsTried[t])
		all = append(all, harmedRecord{t, []string{any(f), any(f)}, []string{any(valuesTried), any(valuesTried)}})
	}
	return all[:n]
}

// script writes the records in JavaScript; a page may not evaluate text.
func script(list []harmedRecord) string {
	var b strings.Builder
	for _, x := range list {
		paths, _ := json.Marshal(x.Paths)
		fmt.Fprintf(&b, "{ table: %q, paths: %s, values: [", x.Table, paths)
		for _, v := range x.Values {
			if v == "" {
				v = "gone"
			}
			b.WriteString(v + ", ")
		}
		b.WriteString("] }, ")
	}
	return "[" + b.String() + "]"
}

// putHarmed writes a whole learner with two sessions, and %s, the damaged records, each beside a
// whole one of its kind. It returns what was written, and what the database itself refused to take.
const putHarmed = `(async () => {
	const ask = r => new Promise((ok, no) => { r.onsuccess = () => ok(r.result); r.onerror = () => no(r.error); });
	const gone = {}, day = "2026-03-01", at = day + "T10:00:00.000Z", marks = () => [{ v: 0, w: 0, l: 0, count: 0 }], stops = () => [[0, 1, true]];
	const hash = a => "#/lines?rule=noon-ikhfa&from=78:" + a + "&to=78:" + a;
	const whole = {
		learners: i => ({ id: "l" + i, name: "Learner " + i, place: { s: 78, a: 1, w: 0 }, settled: true, made: at, updated: at, order: ["noon"], ready: { sessions: 3, days: 2, percent: 80 } }),
		sessions: i => ({ id: "s" + i, learner: "l0", day, at, rule: "noon-ikhfa", from: { s: 78, a: 1 }, to: { s: 78, a: 5 }, marks: marks(), stops: stops(), found: 1, missed: 0, extra: 0, helped: false, outcome: "alone" }),
		taught: i => ({ learner: "l0", rule: "rule-" + i, since: day, known: "" }),
		drafts: i => ({ id: "d" + i, learner: "l0", at: hash(i), lines: { rule: "noon-ikhfa", from: { s: 78, a: i }, to: { s: 78, a: i } }, phase: "find", marks: marks(), stops: stops(), helped: false, started: at, updated: at }),
		settings: () => ({ learner: "l0", size: 1, spacing: 1, theme: "light", madd: 4, arid: 4, pencils: { noon: "#aa3300" } }),
	};
	const db = await ask(indexedDB.open("sutur"));
	const put = async (table, x) => {
		try { await ask(db.transaction(table, "readwrite").objectStore(table).put(x, ...(table === "settings" ? ["device"] : []))); return true; } catch { return false; }
	};
	for (const t of db.objectStoreNames) await ask(db.transaction(t, "readwrite").objectStore(t).clear());
	for (const t of ["learners", "sessions", "drafts", "settings"]) await put(t, whole[t](t === "drafts" ? 40 : 0));
	await put("sessions", whole.sessions(1));
	const written = [];
	let refused = 0, i = 1, hand = "l0";
	for (const { table, paths, values } of %s) {
		const x = whole[table](++i);
		paths.forEach((path, k) => {
			const steps = path.split("."), last = steps.pop();
			const at = steps.reduce((y, s) => y?.[s], x);
			if (typeof at !== "object" || at === null) return;
			if (values[k] === gone) delete at[last]; else at[last] = values[k];
		});
		if (await put(table, x)) written.push(table + JSON.stringify(x)); else refused++;
		if (table === "learners" && typeof x.id === "string" && /^l\d+$/.test(x.id)) hand = x.id;
	}
	// The damaged learner is the one in hand, and the sessions are its own.
	if (hand !== "l0" && !written.some(w => w.startsWith("settings"))) {
		await put("settings", { ...whole.settings(), learner: hand });
		for (const t of ["sessions", "drafts"]) for (const x of await ask(db.transaction(t).objectStore(t).getAll())) if (x.learner === "l0" && ["s0", "s1", "d40"].includes(x.id)) {
			if (t === "drafts") await ask(db.transaction(t, "readwrite").objectStore(t).delete(["l0", x.at]));
			await put(t, { ...x, learner: hand });
		}
	} else hand = "l0";
	db.close();
	return JSON.stringify({ written, refused, hand });
})()`

// TestDamagedRecordFaults puts damaged records on the device and looks at every screen: none may
// break, what is whole is shown, and nothing is lost. FAULTS=all tries a thousand.
func TestDamagedRecordFaults(t *testing.T) {
	s := serve(t, "/", built(t))
	const batch = 25
	list := harmedRecords(1000, rand.New(rand.NewPCG(11, 4)))
	if !allFaults() {
		list = list[:2*batch]
	}
	p := newPage(t)
	p.unkept()
	p.begin(s.address, "")
	written, refused, aside, broken := 0, 0, 0, 0
	for len(list) > 0 {
		var now, left []harmedRecord
		set := 0 // one record of settings can be there at a time
		for _, x := range list {
			if len(now) == batch || x.Table == "settings" && set > 0 {
				left = append(left, x)
				continue
			}
			if x.Table == "settings" {
				set++
			}
			now = append(now, x)
		}
		list = left
		data := script(now)
		p.open(s.address + "about.html")
		var put struct {
			Written []string
			Refused int
			Hand    string
		}
		if err := json.Unmarshal([]byte(eval[string](p, fmt.Sprintf(putHarmed, data))), &put); err != nil {
			t.Fatal(err)
		}
		written += len(put.Written)
		refused += put.Refused
		n, wrong := p.throughScreens(s, put.Written)
		aside += n
		if len(wrong) > 0 {
			broken++
			t.Errorf("with %s\n%s", data, strings.Join(wrong, "\n"))
		}
	}
	t.Logf("%d damaged records (and %d that the database itself refuses): %d set aside, %d batches with a broken screen", written, refused, aside, broken)
}

// unkept removes what keeps the site for use without a signal, which has notices of its own.
func (p *page) unkept() {
	p.t.Helper()
	p.before(`Object.defineProperty(Navigator.prototype, "serviceWorker", { value: undefined })`)
}

// throughScreens opens every screen and says how many records were set aside, and what is wrong.
func (p *page) throughScreens(s *server, written []string) (aside int, wrong []string) {
	p.mu.Lock()
	p.trouble = nil
	p.mu.Unlock()
	p.open(s.address)
	for _, x := range []struct{ screen, hash, shows string }{
		{"today", "#/today", `document.querySelector('[data-t^="next-"]')`},
		{"rules", "#/rules", visible(hook("next"))},
		{"record", "#/record", visible(hook("backup"))},
		{"learner", "#/learner", visible(hook("nickname"))},
		{"print", "#/print?sheet=practice&from=78:1&to=78:5&rule=noon-ikhfa", `document.querySelector("#app").dataset.screen === "print" && document.querySelector("main.print")`},
		{"lines", "#/lines?rule=noon-ikhfa&from=78:40&to=78:40", visible(hook("verse-78-40"))},
	} {
		eval[any](p, fmt.Sprintf(`(location.hash = %q, 0)`, x.hash))
		if !p.try(x.shows, patience) {
			wrong = append(wrong, fmt.Sprintf("%s shows nothing: %.200s", x.screen, p.text("#app")))
			continue
		}
		if x.screen == "record" && p.count(hook("session")) < 2 {
			wrong = append(wrong, fmt.Sprintf("the record shows %d sessions: %.300s", p.count(hook("session")), p.text("main")))
		}
	}
	p.mu.Lock()
	wrong = append(wrong, p.trouble...)
	p.mu.Unlock()
	data, _ := json.Marshal(written)
	var left struct {
		Aside int
		Lost  []string
		Said  bool
	}
	json.Unmarshal([]byte(inDatabase[string](p, `
		const there = new Set(), damaged = await all("damaged");
		for (const t of ["learners", "sessions", "taught", "drafts", "settings"]) for (const x of await all(t)) there.add(t + JSON.stringify(x));
		for (const d of damaged) there.add(d.table + JSON.stringify(d.record));
		return JSON.stringify({ aside: damaged.length, lost: `+string(data)+`.filter(x => !there.has(x)), said: !!document.querySelector('[data-t=notice-damaged]') });`)), &left)
	if left.Aside > 0 && !left.Said {
		wrong = append(wrong, "nothing is said of what was set aside")
	}
	for _, x := range left.Lost {
		wrong = append(wrong, "lost: "+x)
	}
	return left.Aside, wrong
}

// TestDamagedIsToldOnce: the notice stays until it is closed, its button saves a backup with the
// damaged records, and the next visit is quiet.
func TestDamagedIsToldOnce(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.unkept()
	p.begin(s.address, "Test child")
	p.open(s.address + "about.html")
	eval[string](p, fmt.Sprintf(putHarmed, script([]harmedRecord{
		{"sessions", []string{"from.a"}, []string{"9999"}}, {"taught", []string{"since"}, []string{"NaN"}},
	})))
	for range 2 { // until it was heard
		p.open(s.address + "about.html")
		p.open(s.address)
		p.wait("words", visible(hook("notice-damaged")))
	}
	if text := p.text(hook("notice-damaged")); !strings.Contains(text, "2 things") {
		t.Errorf("it says %q", text)
	}
	// The file is caught on its way.
	eval[any](p, `(URL.createObjectURL = b => { globalThis.file = b.text(); return ""; }, HTMLAnchorElement.prototype.click = () => undefined, 0)`)
	p.click("notice-action")
	p.wait("that it is saved", `globalThis.file && document.querySelector('[data-t=notice-said]')`)
	file := eval[string](p, `globalThis.file`)
	if !strings.Contains(file, `"damaged"`) || !strings.Contains(file, "9999") {
		t.Errorf("the backup lacks the damaged records: %.500s", file)
	}
	p.open(s.address + "about.html")
	p.open(s.address + "#/record")
	p.wait("the line in the record", visible(hook("aside")))
	if p.count(hook("notice-damaged")) > 0 {
		t.Error("it is told twice")
	}
	if n := p.count(hook("session")); n != 2 {
		t.Errorf("%d sessions are shown", n)
	}
	p.calm()
}

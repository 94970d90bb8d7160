package e2e

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"sutur/generator/internal/engine"
)

// failAt makes every write of the page fail at its request number at, from 1, if it has so many: the
// request is refused as on a full device, or the browser ends the transaction after it. 0 lets all
// through. failed says whether one did.
const failAt = `(() => {
	globalThis.fail = { at: 0, how: %q, n: 0, failed: false };
	for (const name of ["put", "add", "delete", "clear"]) {
		const real = IDBObjectStore.prototype[name];
		IDBObjectStore.prototype[name] = function (...x) {
			if (++fail.n !== fail.at) return real.apply(this, x);
			fail.failed = true;
			if (fail.how === "refused") throw new DOMException("full", "QuotaExceededError");
			const request = real.apply(this, x);
			request.addEventListener("success", () => this.transaction.abort());
			return request;
		};
	}
	return 0;
})()`

// halfWay has each write of the record fail at each of its requests, and returns what is not as it
// was before, and how many failures there were.
var halfWay = `(async sample => {
	const ask = r => new Promise((ok, no) => { r.onsuccess = () => ok(r.result); r.onerror = () => no(r.error); });
	const dump = async () => {
		const db = await ask(indexedDB.open("sutur")), out = {};
		for (const n of db.objectStoreNames) {
			const st = db.transaction(n).objectStore(n);
			out[n] = [await ask(st.getAllKeys()), await ask(st.getAll())];
		}
		db.close();
		return JSON.stringify(out);
	};
	const ref = a => ({ s: 78, a }), at = "2026-02-01T10:00:00.000Z", lines = { rule: "noon-ikhfa", from: ref(1), to: ref(1) };
	const learner = id => ({ id, name: id, place: ref(1), settled: true, made: at, updated: at });
	const draft = a => ({ id: "d" + a, learner: "l", at: "#/lines?rule=noon-ikhfa&from=78:" + a + "&to=78:" + a, lines: { ...lines, from: ref(a), to: ref(a) }, phase: "find", marks: [], stops: [], helped: false, started: at, updated: at });
	const taught = rule => ({ learner: "l", rule, since: "2026-02-01", known: "" });
	await store.saveDraft(draft(1));
	await store.saveDraft({ ...draft(2), learner: "" });
	await store.addLearner(learner("l"));
	await (` + saveOne + `)(sample("s1", 1), draft(1).at, ref(5), [taught("a")]);
	await (` + saveOne + `)(sample("s2", 2), "", ref(6), []);
	await store.all();
	const other = { learners: [learner("l2")], sessions: [{ ...sample("s9", 9), learner: "l2" }, { ...sample("s1", 3), updated: "2027-01-01T10:00:00.000Z" }], taught: [taught("z")], gone: [{ id: "s2", learner: "l", at: "2027-01-01T10:00:00.000Z" }], damaged: [{ table: "drafts", record: 1 }] };
	// Two of one draft, as where several read together; one rule was said not to be taught before.
	const finished = () => [
		{ session: sample("s3", 3), place: { was: ref(6), now: ref(7) }, added: [taught("c"), taught("a")] },
		{ session: { ...sample("s3-l3", 3), learner: "l3" }, place: { was: ref(1), now: ref(7) }, added: [{ ...taught("c"), learner: "l3" }] },
	];
	const ops = {
		addLearner: () => store.addLearner(learner("l3")),
		changeLearner: () => store.changeLearner("l", { name: "B" }),
		changeOwn: () => store.changeOwn("l", { size: 2 }),
		addTaught: () => store.addTaught("l", [taught("e"), taught("f")]),
		changeSettings: () => store.changeSettings({ theme: "dark" }),
		tellDamaged: () => store.tellDamaged(3),
		replaceTaught: () => store.replaceTaught("l", ["a", "b"], [taught("b")]),
		saveDraft: () => store.saveDraft(draft(3)),
		updateDraft: () => store.updateDraft(draft(4)),
		saveSessions: () => store.saveSessions(draft(3), finished()),
		unsaveSessions: () => store.unsaveSessions({ ...draft(3), id: "s3" }, finished()),
		dropDraft: () => store.dropDraft(draft(3)),
		addSession: () => store.addSession(sample("s4", 4)),
		changeSession: () => store.changeSession("s4", { note: "n", day: "2026-11-01", at: "2026-11-01T10:00:00.000Z" }),
		removeSession: () => store.removeSession("s4"),
		bringBack: () => store.bringBack("s4"),
		"removeSession again": () => store.removeSession("s4"),
		forget: () => store.forget(["s4"]),
		take: () => snapshot.take(other),
		removeLearner: () => store.removeLearner("l"),
	};
	const wrong = [];
	let failures = 0;
	const unknown = [...Object.keys(store), "take"].filter(name => !(name in ops) && !["all", "complete", "draft", "drafts", "removed", "onConnection"].includes(name));
	for (const name of unknown) wrong.push(name + " is not tried");
	if (fail.how === "ended") delete ops.updateDraft; // it is handed over whole with its one request
	for (const [name, op] of Object.entries(ops)) {
		for (let k = 1; ; k++) {
			const before = await dump();
			Object.assign(fail, { at: k, n: 0, failed: false });
			const kept = await op().then(() => true, () => false);
			fail.at = 0;
			if (!fail.failed) {
				if (!kept) wrong.push(name + " fails by itself");
				if (k === 1 || before === await dump()) wrong.push(name + " writes nothing: this proves nothing");
				break;
			}
			failures++;
			if (kept) wrong.push(name + " says that it is kept, with request " + k + " failed");
			if (before !== await dump()) wrong.push(name + " has changed something, with request " + k + " failed");
		}
	}
	return JSON.stringify({ wrong, failures });
})`

// TestWriteFailsHalfWay: every write of the record fails at each of its requests, once because the
// device is full and once because the browser ends it. It says so, and all of the record is as it
// was before.
func TestWriteFailsHalfWay(t *testing.T) {
	s := serve(t, "/", withStore(t))
	inEngines(t, func(t *testing.T, b engine.Browser) {
		for _, how := range []string{"refused", "ended"} {
			t.Run(how, func(t *testing.T) {
				p := newTab(t, b)
				p.openStore(s)
				eval[any](p, fmt.Sprintf(failAt, how))
				var got struct {
					Wrong    []string
					Failures int
				}
				if err := json.Unmarshal([]byte(eval[string](p, halfWay+`(`+sampleSession+`)`)), &got); err != nil {
					t.Fatal(err)
				}
				if len(got.Wrong) > 0 {
					t.Error(strings.Join(got.Wrong, "\n"))
				}
				t.Logf("%d failures", got.Failures)
				if got.Failures < 40 {
					t.Error("that is too few to prove much")
				}
			})
		}
	})
}

// TestNotKept: where a session cannot be kept, half way through, the page says so, the session stays on
// the screen and the record is as it was; once it can be, it is kept, once.
func TestNotKept(t *testing.T) {
	s := serve(t, "/", built(t))
	const state = `return JSON.stringify([await all("learners"), await all("sessions"), await all("taught"), await all("months"), (await all("drafts")).length])`
	inEngines(t, func(t *testing.T, b engine.Browser) {
		for _, how := range []string{"refused", "ended"} {
			t.Run(how, func(t *testing.T) {
				p := newTab(t, b)
				p.begin(s.address, "Nur")
				p.toDone(s, "#/lines?rule=qalqalah&from=111:1&to=111:5")
				before := inDatabase[string](p, state)
				eval[any](p, fmt.Sprintf(failAt, how))
				eval[any](p, `(fail.at = 3, 0)`)
				p.click("outcome-some")
				p.wait("words about it", visible(hook("notice-not-kept")))
				if text := p.text(hook("notice-not-kept")); !strings.Contains(text, "did not keep this") || !strings.Contains(text, "Free some space") {
					t.Errorf("it says %q", text)
				}
				if !eval[bool](p, visible(hook("outcome-some"))) {
					t.Errorf("the question how it went is gone: %s", p.text("main"))
				}
				if after := inDatabase[string](p, state); after != before {
					t.Errorf("the record is\n%s\nand was\n%s", after, before)
				}
				picture(t, "not-kept-"+b.Name()+"-"+how, p.settled())
				eval[any](p, `(fail.at = 0, 0)`)
				p.click("notice-close")
				p.click("outcome-some")
				if n := p.sessionsKept(); n != 1 {
					t.Errorf("%d sessions are kept", n)
				}
				if n := inDatabase[int](p, `return (await all("drafts")).length`); n != 0 {
					t.Errorf("%d drafts are left", n)
				}
			})
		}
	})
}

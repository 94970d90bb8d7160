package e2e

import (
	"encoding/json"
	"fmt"
	"maps"
	"math/rand/v2"
	"net/http"
	"os"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"sutur/generator/internal/engine"
)

// written is what a write makes of a session: a state, which has a number, or gone.
type written struct {
	op   string // keep, correct, remove or bring
	n    int    // the number of the state
	turn int    // counts the writes of a run
}

func (w written) gone() bool { return w.op == "remove" }

// promises are what a page has said of its writes to the record: of each session what was said to be
// kept last, and what has begun since. A page begins a write of a session only after it was told that
// the one before is kept.
type promises struct {
	mu    sync.Mutex
	kept  map[string]written
	begun map[string]written
	ops   map[string]int // said to be kept, by kind
}

func (w *promises) habit(h http.Handler) http.Handler {
	return http.HandlerFunc(func(rw http.ResponseWriter, q *http.Request) {
		switch q.URL.Path {
		case "/sw.js": // what is kept for use without a signal is no part of this
			http.NotFound(rw, q)
		case "/begun", "/kept":
			n, _ := strconv.Atoi(q.FormValue("n"))
			turn, _ := strconv.Atoi(q.FormValue("turn"))
			w.note(q.URL.Path, q.FormValue("id"), written{q.FormValue("op"), n, turn})
		default:
			h.ServeHTTP(rw, q)
		}
	})
}

func (w *promises) note(what, id string, x written) {
	w.mu.Lock()
	defer w.mu.Unlock()
	before, open := w.begun[id]
	if what == "/begun" {
		if open {
			w.kept[id] = before // the page would not go on otherwise
		}
		w.begun[id] = x
		return
	}
	w.ops[x.op]++
	if open && before.turn == x.turn {
		delete(w.begun, id)
	}
	if w.kept[id].turn < x.turn {
		w.kept[id] = x
	}
}

// count is how many writes were said to be kept.
func (w *promises) count() (n int) {
	w.mu.Lock()
	defer w.mu.Unlock()
	for _, x := range w.ops {
		n += x
	}
	return n
}

// found is what a start finds on the device.
type found struct {
	Wrong    []string
	Sessions []struct {
		ID            string
		Day           string
		Found, Missed int
		Marks         []any
	}
	Gone []struct {
		ID      string
		Session *struct{ Found int }
	}
}

// sampleDay is the day of a state by its number, as in sampleSession.
func sampleDay(n int) string { return fmt.Sprintf("2026-%02d-%02d", 1+n%12, 1+n%28) }

// settle compares what is on the device with what was said, and says what is wrong; what had begun is
// there wholly or not at all. From now on that is what was said.
func (w *promises) settle(f found) (wrong []string, half int) {
	w.mu.Lock()
	defer w.mu.Unlock()
	there := map[string]written{}
	for _, s := range f.Sessions {
		there[s.ID] = written{op: "keep", n: -1}
		for _, x := range []map[string]written{w.begun, w.kept} {
			if y, ok := x[s.ID]; ok && !y.gone() && s.Found == y.n%40 && s.Missed == y.n%7 && s.Day == sampleDay(y.n) {
				there[s.ID] = y
			}
		}
	}
	for _, g := range f.Gone {
		if g.Session == nil {
			wrong = append(wrong, g.ID+" was removed without the session inside")
		}
		there[g.ID] = written{op: "remove", n: w.kept[g.ID].n}
	}
	ids := map[string]bool{}
	for _, m := range []map[string]written{there, w.kept, w.begun} {
		for id := range m {
			ids[id] = true
		}
	}
	for id := range ids {
		is, here := there[id]
		kept, was := w.kept[id]
		begun, open := w.begun[id]
		same := func(x written, ok bool) bool {
			return ok == here && (!ok || x.gone() == is.gone() && (x.gone() || x.n == is.n))
		}
		if open && same(begun, true) {
			half++
		} else if !same(kept, was) {
			wrong = append(wrong, fmt.Sprintf("%s is %+v (there: %v), said to be kept was %+v, begun %+v", id, is, here, kept, begun))
		}
	}
	w.kept, w.begun = there, map[string]written{}
	return wrong, half
}

// known is what the next run of the page is told of the sessions there are.
func (w *promises) known() string {
	w.mu.Lock()
	defer w.mu.Unlock()
	type item struct {
		ID   string `json:"id"`
		N    int    `json:"n"`
		Gone bool   `json:"gone"`
	}
	list := []item{}
	for _, id := range slices.Sorted(maps.Keys(w.kept)) {
		w.kept[id] = written{w.kept[id].op, w.kept[id].n, 0} // turns begin anew
		list = append(list, item{id, w.kept[id].n, w.kept[id].gone()})
	}
	data, _ := json.Marshal(list)
	return string(data)
}

// TestKillRecordFaults kills the browser while sessions are kept, corrected, removed and brought
// back, at random moments: what was said to be kept is there in the next start, what had begun is
// there wholly or not at all, and the months and their totals are those of the sessions. FAULTS=all
// kills 50 times in Chromium and 20 times in Firefox.
func TestKillRecordFaults(t *testing.T) {
	kills := map[string]int{"chromium": 2, "firefox": 1}
	if allFaults() {
		kills = map[string]int{"chromium": 50, "firefox": 20}
	}
	files := withStore(t)
	for i, name := range []string{"chromium", "firefox"} {
		t.Run(name, func(t *testing.T) {
			rng := rand.New(rand.NewPCG(16, uint64(i)))
			heard := promises{kept: map[string]written{}, begun: map[string]written{}, ops: map[string]int{}}
			s := serve(t, "/", files, heard.habit)
			profile, err := os.MkdirTemp("", name)
			if err != nil {
				t.Fatal(err)
			}
			t.Cleanup(func() { os.RemoveAll(profile) })
			half := 0
			for n := range kills[name] + 1 {
				b, err := engine.Last(name, profile)
				if err != nil {
					t.Fatal(err)
				}
				p := lastingPage(t, b)
				p.openStore(s)
				if n == 0 {
					eval[any](p, `(async () => {
						await `+putLearner+`;
						await (`+saveOne+`)((`+sampleSession+`)("s0", 0), "", { s: 78, a: 1 }, []);
						await store.all(); // makes the months, which follow from now on
						return 0;
					})()`)
					heard.kept["s0"] = written{"keep", 0, 0}
				} else {
					var f found
					if err := json.Unmarshal([]byte(eval[string](p, agreement+`.then(x => JSON.stringify(x))`)), &f); err != nil {
						t.Fatal(err)
					}
					wrong, more := heard.settle(f)
					half += more
					for _, x := range append(wrong, f.Wrong...) {
						t.Errorf("kill %d: %s", n, x)
					}
					read := eval[int](p, `store.all().then(k => k.damaged ? -1 : k.sessions.length)`)
					if read != len(f.Sessions) {
						t.Errorf("kill %d: the app reads %d sessions of %d", n, read, len(f.Sessions))
					}
				}
				if n == kills[name] {
					b.Close()
					break
				}
				before := heard.count()
				args := []string{sampleSession, heard.known(), strconv.Itoa(rng.IntN(1e6))}
				eval[any](p, `(`+writeAway+`)(`+strings.Join(args, `, `)+`)`)
				for deadline := time.Now().Add(patience); heard.count() < before+3 && time.Now().Before(deadline); {
					time.Sleep(time.Millisecond)
				}
				time.Sleep(time.Duration(rng.IntN(500_000)) * time.Microsecond) // the moment of the kill is the thing tried
				b.Kill()
				time.Sleep(20 * time.Millisecond) // what was said before is heard
			}
			total := heard.count()
			t.Logf("%d kills, %d writes said to be kept (%v), %d that had only begun and are there wholly", kills[name], total, heard.ops, half)
			if total < 3*kills[name] {
				t.Errorf("only %d writes in %d runs: this test proves little", total, kills[name])
			}
		})
	}
}

// writeAway has three hands write to the record, each to sessions of its own, one write after the
// other: keep a new one, correct one, remove one, bring one back.
const writeAway = `(sample, known, seed) => {
	let turn = 0;
	const random = n => (seed = (Math.imul(seed, 1103515245) + 12345) & 0x7fffffff) % n;
	const tell = (what, x) => fetch(what + "?" + new URLSearchParams(x));
	const hand = async own => {
		for (let made = 0; ; ) {
			const there = own.filter(x => !x.gone), gone = own.filter(x => x.gone), kind = random(10);
			const op = !there.length || kind < 4 ? "keep" : kind < 7 ? "correct" : kind < 9 || !gone.length ? "remove" : "bring";
			const list = op === "bring" ? gone : there;
			const x = op === "keep" ? { id: "s" + Date.now() + "-" + random(1e6) + "-" + made++, n: 0 } : list[random(list.length)];
			const n = op === "keep" || op === "correct" ? 1 + random(1e5) : x.n;
			const report = { id: x.id, op, n, turn: ++turn };
			await tell("begun", report);
			const { id: _, ...patch } = sample(x.id, n);
			if (op === "keep") await (` + saveOne + `)(sample(x.id, n), "", { s: 78, a: 1 + n % 40 }, []);
			if (op === "correct") await store.changeSession(x.id, patch);
			if (op === "remove") await store.removeSession(x.id);
			if (op === "bring") await store.bringBack(x.id);
			tell("kept", report);
			if (op === "keep") own.push(x);
			Object.assign(x, { n, gone: op === "remove" });
		}
	};
	for (const i of [0, 1, 2]) hand(known.filter((_, k) => k % 3 === i));
	return 0;
}`

package e2e

import (
	"context"
	"fmt"
	"math/rand/v2"
	"net/http"
	"os"
	"slices"
	"strconv"
	"sync"
	"testing"
	"time"

	"sutur/generator/internal/engine"
)

// promised is how old a mark may be and still be lost when the browser is killed. DEVELOPERS.md
// says what was measured. The sample, which runs beside all other tests and may have little of the
// machine, is given more.
const promised, sampled = 100 * time.Millisecond, time.Second

// reports hears from a page that marks: how many marks there are, and when the last was made.
type reports struct {
	mu    sync.Mutex
	times []time.Time // of each mark of this run
}

func (r *reports) habit(h http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, q *http.Request) {
		switch q.URL.Path {
		case "/sw.js": // what is kept for use without a signal is no part of this
			http.NotFound(w, q)
		case "/mark":
			ms, _ := strconv.ParseFloat(q.FormValue("t"), 64)
			r.mu.Lock()
			r.times = append(r.times, time.UnixMicro(int64(ms*1000)))
			r.mu.Unlock()
		default:
			h.ServeHTTP(w, q)
		}
	})
}

// TestKillFaults kills the browser while marks are made, and looks for them in the next start: none
// that is older than promised may be missing. FAULTS=all kills a hundred times in each engine.
func TestKillFaults(t *testing.T) {
	kills, most := 2, sampled
	if allFaults() {
		kills, most = 100, promised
	}
	for i, name := range []string{"chromium", "firefox"} {
		t.Run(name, func(t *testing.T) {
			rng := rand.New(rand.NewPCG(11, uint64(i)))
			var heard reports
			s := serve(t, "/", built(t), heard.habit)
			profile, err := os.MkdirTemp("", name)
			if err != nil {
				t.Fatal(err)
			}
			t.Cleanup(func() { os.RemoveAll(profile) })
			var killed time.Time
			var lost []time.Duration // their ages
			marks := 0
			for n := range kills + 1 {
				b, err := engine.Last(name, profile)
				if err != nil {
					t.Fatal(err)
				}
				p := lastingPage(t, b)
				p.open(s.address + "about.html")
				if n > 0 {
					kept := eval[int](p, takeDraft)
					heard.mu.Lock()
					marks += len(heard.times)
					for _, at := range heard.times[min(kept, len(heard.times)):] {
						lost = append(lost, killed.Sub(at))
						t.Logf("kill %d: a mark %v old was lost", n, killed.Sub(at))
					}
					heard.times = nil
					heard.mu.Unlock()
				} else {
					p.begin(s.address, "A")
				}
				if n == kills {
					b.Close()
					break
				}
				p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:1&to=78:40")
				p.wait("the lines", visible(hook("verse-78-40"))+` && document.querySelector("main.lines").dataset.phase === "find"`)
				eval[any](p, fmt.Sprintf(markAway, rng.IntN(1000)))
				for deadline := time.Now().Add(patience); ; time.Sleep(time.Millisecond) {
					heard.mu.Lock()
					enough := len(heard.times) > 2
					heard.mu.Unlock()
					if enough || time.Now().After(deadline) {
						break
					}
				}
				time.Sleep(time.Duration(rng.IntN(400)) * time.Millisecond) // the moment of the kill is the thing tried
				killed = time.Now()
				b.Kill()
				time.Sleep(20 * time.Millisecond) // what was said before is heard
			}
			slices.Sort(lost)
			slices.Reverse(lost)
			t.Logf("%d kills, %d marks; lost, by age: %v", kills, marks, lost)
			if marks < 3*kills {
				t.Errorf("only %d marks in %d runs: this test proves little", marks, kills)
			}
			if len(lost) > 0 && lost[0] > most {
				t.Errorf("a mark %v old was lost; older than %v none may be", lost[0], most)
			}
		})
	}
}

// takeDraft counts the marks of the one draft, and removes it.
const takeDraft = `new Promise((ok, no) => {
	const r = indexedDB.open("sutur");
	r.onerror = no;
	r.onsuccess = () => {
		const tx = r.result.transaction("drafts", "readwrite"), all = tx.objectStore("drafts").getAll();
		tx.objectStore("drafts").clear();
		tx.oncomplete = () => { r.result.close(); ok(all.result[0]?.marks.length ?? 0); };
	};
})`

// markAway marks letter after letter at uneven times, and reports each.
const markAway = `(() => {
	const el = document.querySelector("[data-t=passage]"), key = k => el.dispatchEvent(new KeyboardEvent("keydown", { key: k, bubbles: true }));
	let n = 0, seed = %d;
	el.focus();
	const step = () => {
		key(" ");
		fetch("mark?n=" + ++n + "&t=" + (performance.timeOrigin + performance.now()));
		key("ArrowLeft");
		seed = (seed * 1103515245 + 12345) %% 2147483648;
		setTimeout(step, 20 + seed %% 230);
	};
	setTimeout(step, 50);
	return 0;
})()`

// lastingPage is a tab in the profile itself.
func lastingPage(t testing.TB, b *engine.Lasting) *page {
	t.Helper()
	ctx, cancel := context.WithTimeout(context.Background(), patience)
	defer cancel()
	s, err := b.New(ctx)
	if err != nil {
		t.Fatal(err)
	}
	return &page{t: t, ctx: context.Background(), close: s.Close, tab: s, engine: b.Name()}
}

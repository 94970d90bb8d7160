package e2e

import (
	"testing"
	"time"
)

// neverIdle makes a page whose idle callbacks run only because their time is up, from the worker's
// first question on, until release is called.
const neverIdle = `{
	const idle = requestIdleCallback;
	let busy;
	globalThis.requestIdleCallback = (f, o) => busy && o?.timeout ? setTimeout(f, o.timeout) : idle(f, o);
	globalThis.asked = new Promise(first => navigator.serviceWorker.addEventListener("message", e => {
		if (e.data.kind === "quiet?") first(busy ??= true);
	}));
	globalThis.release = () => { busy = false; };
}`

// TestKeepingMakesWay: while the page has something to do, the worker takes four files at a time, and
// the next when the page has not been idle for 400 ms; so it comes to its end all the same.
func TestKeepingMakesWay(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.before(neverIdle)
	p.open(s.address)
	p.wait("the first screen", drawn)
	eval[bool](p, `asked`)
	start, before := time.Now(), s.served.Load()
	eval[any](p, `new Promise(r => setTimeout(() => r(0), 2500))`)
	n := s.served.Load() - before
	ms := float64(time.Since(start).Milliseconds())
	most := 4 * (int64(ms/400) + 2)
	if n > most {
		t.Errorf("%d files in %.0f ms on a busy page, at most %d are expected", n, ms, most)
	}
	if n == 0 {
		t.Errorf("no file in %.0f ms: a page that is always busy would never be kept", ms)
	}
	eval[any](p, `release()`)
	p.wait("everything to be stored", kept)
}

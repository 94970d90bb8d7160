package e2e

import (
	"fmt"
	"net/http"
	"testing"
)

// withoutWorker is a host on which nothing can be kept for use without a signal.
func withoutWorker(h http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.URL.Path == "/sw.js" {
			http.NotFound(w, r)
			return
		}
		h.ServeHTTP(w, r)
	})
}

// TestKeepWithoutSignal loses the signal on a first visit, when the lines are there and nothing
// else is: the session is kept.
func TestKeepWithoutSignal(t *testing.T) {
	s := serve(t, "/", built(t), withoutWorker)
	p := newPage(t)
	p.begin(s.address, "")
	p.open("about:blank")
	p.open(s.address + "#/lines?rule=qalqalah&from=111:1&to=111:5") // Today's own parts have not come with it
	p.wait("the lines", visible(hook("next")))
	s.stop()
	p.tap(letterAt{0, 0, 0, 0, 1})
	p.wait("a mark", enabled("undo"))
	p.toEnd()
	p.click("outcome-some")
	p.wait("that it is kept", visible(hook("notice-said")))
	if n := p.sessionsKept(); n != 1 {
		t.Errorf("%d sessions are kept", n)
	}
	// The plan needs what has not come: it is said, and tried again once there is a signal.
	p.wait("words", visible(hook("no-plan")))
	s.start()
	p.click("plan-again")
	p.wait("the plan", `document.querySelector('[data-t^="next-"]')`)
}

// TestUpdateBesideASession takes a newer version in one tab while another is in the middle of a
// session: it goes on with what it has, and keeps the session.
func TestUpdateBesideASession(t *testing.T) {
	s := serve(t, "/", edition(t, everyKind(1)))
	p := newPage(t)
	p.begin(s.address, "")
	p.wait("everything to be kept", kept)
	p.open(s.address + "#/lines?rule=qalqalah&from=111:1&to=111:5")
	p.wait("the lines", visible(hook("next")))
	p.tap(letterAt{0, 0, 0, 0, 1})
	p.wait("a mark", enabled("undo"))
	q := p.beside()
	q.open(s.address)
	q.wait("today", `document.querySelector('[data-t^="next-"]')`)
	s.host.Set(edition(t, everyKind(2)))
	eval[any](q, `navigator.serviceWorker.getRegistration().then(r => r.update()).then(() => 0)`)
	q.wait("the notice of a newer version", visible(hook("notice-update")+" "+hook("notice-action")))
	q.click("notice-action")
	q.wait("the newer version", `document.documentElement.dataset.edition === "2"`)
	if v := eval[string](p, `document.documentElement.dataset.edition`); v != "1" {
		t.Fatalf("the other tab has version %s in the middle of a session", v)
	}
	p.wait("its mark", `CSS.highlights.get("f-qalqalah")?.size === 1`)
	p.toEnd()
	p.click("outcome-some")
	if n := p.sessionsKept(); n != 1 {
		t.Errorf("%d sessions are kept", n)
	}
	// What the older page has not loaded yet may be gone: then it is said, and the way on leads to
	// the newer version.
	p.click("nav-rules")
	p.wait("the rules, or words", visible(hook("next"))+` || `+visible(hook("part-again")))
	if p.count(hook("part-again")) > 0 {
		p.click("part-again")
		p.wait("the rules of the newer version", fmt.Sprintf(`document.documentElement.dataset.edition === "2" && %s`, visible(hook("next"))))
	}
	q.calm()
}

package e2e

import (
	"fmt"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// The lines of the sessions below.
const (
	rule       = "noon-ikhfa"
	family     = "noon"
	surah      = 78
	from, upTo = 12, 20
)

// session does a whole session: chooses, marks all places but one and one wrong letter, checks,
// looks again, reads, says how it went, and finds it in the record. It returns how many places
// there were.
func session(p *page) int {
	t := p.t
	t.Helper()
	want := places(t, rule, surah, from, upTo)
	p.choose(rule, surah, from, upTo)
	for i, a := range want[1:] {
		p.tap(a)
		p.wait(fmt.Sprintf("mark %d at verse %d word %d letter %d", i+1, from+a.v, a.w+1, a.l+1),
			fmt.Sprintf(`(CSS.highlights.get("f-%s")?.size ?? 0) === %d`, family, i+1))
	}
	p.click("count-2")
	p.wait("the count of all", fmt.Sprintf(`[...document.querySelectorAll("[data-t=passage] .count")].map(e => e.innerText).join("") === "2".repeat(%d)`, len(want)-1))
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	// The first letter of the first word bears no noon.
	wrong := letter(text, text.Find(surah, from), 0, 0)
	p.tap(wrong)
	p.wait("the wrong mark", fmt.Sprintf(`CSS.highlights.get("f-%s").size === %d`, family, len(want)))

	p.click("next") // check
	p.wait("the first look", visible(hook("again")))
	if hides := fmt.Sprintf("Verse %d hides one more.", from+want[0].v); !strings.Contains(p.text(hook("task")), hides) {
		t.Errorf("the check says %q, without %q", p.text(hook("task")), hides)
	}
	if n := p.told("missed"); n != 0 || p.count(hook("next")) > 0 {
		t.Errorf("%d missed places are shown before looking again", n)
	}
	if n := p.told("found"); n != len(want)-1 {
		t.Errorf("%d places are said to be found, want %d", n, len(want)-1)
	}
	if n := p.told("extra"); n != 1 {
		t.Errorf("%d marks are said to be too many, want 1: %s", n, p.text(hook("extra")))
	}
	p.click("again")
	p.wait("finding again", visible(hook("undo")))
	p.tap(wrong)
	p.tap(want[0])
	p.wait("all marks", fmt.Sprintf(`CSS.highlights.get("f-%s").size === %d`, family, len(want)))
	p.click("next") // check
	p.wait("all found", fmt.Sprintf(`document.querySelectorAll('[data-t=found] .word-link').length === %d`, len(want)))
	if p.count(hook("missed"))+p.count(hook("extra")) != 0 {
		t.Errorf("after all marks: missed %q, too many %q", p.text(hook("missed")), p.text(hook("extra")))
	}
	p.click("next") // read
	p.wait("reading", `document.querySelector("main.lines")?.dataset.phase === "read"`)
	p.click("next") // done
	p.click("outcome-some")
	p.wait("today again", `document.querySelector('[data-t^="next-"]')`)
	p.click("nav-record")
	p.wait("the record", visible(hook("session")))
	return len(want)
}

func checkRecord(p *page, sessions, n int) {
	p.t.Helper()
	if got := p.count(hook("session")); got != sessions {
		p.t.Errorf("%d sessions in the record, want %d", got, sessions)
	}
	row := p.text(hook("session"))
	for _, w := range []string{"With some help", fmt.Sprintf("first %d, then %d of %d after looking again", n-1, n, n), "12", "20"} {
		if !strings.Contains(row, w) {
			p.t.Errorf("the record says %q, without %q", row, w)
		}
	}
}

func TestSession(t *testing.T) {
	s := serve(t, "/a/b/", built(t))
	p := newPage(t)
	p.begin(s.address, "Test child")
	n := session(p)
	checkRecord(p, 1, n)
	p.do(chromedp.Reload())
	p.wait("the record after a reload", visible(hook("session")))
	checkRecord(p, 1, n)
	p.calm()
	p.stayedAt(s.address)
	for _, r := range p.requests {
		if strings.Contains(strings.ToLower(r), "child") {
			t.Errorf("a name is in an address: %s", r)
		}
	}
}

// TestSessionByKeyboard marks and moves on without a pointer.
func TestSessionByKeyboard(t *testing.T) {
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.begin(s.address, "")
	p.choose(rule, surah, from, upTo)
	eval[any](p, `(document.querySelector('[data-t=passage]').focus(), 0)`)
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	key := func(k string, opts ...chromedp.KeyOption) { p.do(chromedp.KeyEvent(k, opts...)) }
	at := letterAt{}
	want := places(t, rule, surah, from, upTo)
	for i, a := range want {
		for at.v < a.v || at.w < a.w {
			key(kb.ArrowLeft, chromedp.KeyModifiers(2)) // Ctrl: the next word
			if at.w++; at.w == len(text.Verses[text.Find(surah, from+at.v)].Words) {
				at.v, at.w = at.v+1, 0
			}
		}
		for l := 0; l < a.l; l++ {
			key(kb.ArrowLeft)
		}
		key(" ")
		p.wait("a mark", fmt.Sprintf(`(CSS.highlights.get("f-%s")?.size ?? 0) === %d`, family, i+1))
	}
	// A count that cannot be is refused in words, and nothing changes.
	key("3")
	p.wait("the word", `/^3 does not occur with this pencil. It can be 2\./.test(document.querySelector("[data-t=notice-said]")?.innerText)`)
	if n := p.count("[data-t=passage] .count"); n != 0 {
		t.Errorf("%d counts are written", n)
	}
	key("2")
	p.wait("the count of all", fmt.Sprintf(`document.querySelectorAll("[data-t=passage] .count").length === %d`, len(want)))
	key("n") // check
	p.wait("all found", fmt.Sprintf(`document.querySelectorAll('[data-t=found] .word-link').length === %d`, len(want)))
	if p.count(hook("missed"))+p.count(hook("extra")) != 0 {
		t.Errorf("missed %q, too many %q", p.text(hook("missed")), p.text(hook("extra")))
	}
	p.calm()
}

// cut takes the network away: from the browser, and the host itself.
func cut(p *page, s *server) {
	p.t.Helper()
	s.stop()
	if p.tab != nil {
		p.offline()
		return
	}
	call(p, network.EmulateNetworkConditionsByRule, network.EmulateNetworkConditionsByRuleParams{
		MatchedNetworkConditions: []*network.Conditions{{Offline: true, DownloadThroughput: -1, UploadThroughput: -1}},
	})
	call(p, network.OverrideNetworkState, network.OverrideNetworkStateParams{Offline: true, DownloadThroughput: -1, UploadThroughput: -1})
}

// TestOffline opens the site once, cuts the network, and does everything.
func TestOffline(t *testing.T) {
	files := built(t)
	s := serve(t, "/a/b/", files)
	p := newPage(t)
	p.open(s.address)
	p.wait("the first screen", drawn)
	p.wait("everything to be stored", kept)
	cut(p, s)
	served := s.served.Load()
	if online := eval[bool](p, `navigator.onLine`); online {
		t.Error("the browser believes it is online")
	}
	if err := eval[string](p, `fetch("gone.txt", { cache: "no-store" }).then(() => "", e => String(e))`); err == "" {
		t.Fatal("the network is not cut: this test would prove nothing")
	}
	p.begin(s.address, "")
	n := session(p)
	checkRecord(p, 1, n)
	for _, f := range files {
		if strings.HasSuffix(f.Name, ".html") && f.Name != "index.html" {
			p.open(s.address + f.Name)
			if h := p.text("h1"); h == "" {
				t.Errorf("%s shows nothing offline", f.Name)
			}
		}
	}
	// Every surah, from first to last.
	for _, q := range []string{"2:255", "18:1-5", "55:1-20", "114:1-6"} {
		from, to, _ := strings.Cut(q, "-")
		su, first, _ := strings.Cut(from, ":")
		if to == "" {
			to = first
		}
		p.open(fmt.Sprintf("%s#/lines?from=%s&to=%s:%s", s.address, from, su, to))
		p.wait("verse "+from, visible(hook("verse-"+su+"-"+first)))
	}
	if now := s.served.Load(); now != served {
		t.Errorf("the host answered %d requests while it was cut off", now-served)
	}
	p.stayedAt(s.address)
}

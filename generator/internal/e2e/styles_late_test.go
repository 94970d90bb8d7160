package e2e

import (
	"fmt"
	"net/http"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"time"

	"sutur/generator/internal/engine"
)

// lateStyles is a host whose style sheets come a while after everything else that a page asks for.
type lateStyles struct {
	late  atomic.Bool
	asked atomic.Int64 // how many style sheets were late
}

func (l *lateStyles) habit(h http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if l.late.Load() && strings.HasSuffix(r.URL.Path, ".css") {
			l.asked.Add(1)
			time.Sleep(2 * time.Second)
		}
		h.ServeHTTP(w, r)
	})
}

// drawnMarks is the place and size of everything that is drawn over and under marked letters, and
// how many letters are coloured.
func (p *page) drawnMarks() []string {
	p.t.Helper()
	return eval[[]string](p, fmt.Sprintf(`[String(CSS.highlights.get("f-%s")?.size),
		...[...document.querySelectorAll(".base > *")].map(e => e.getAttribute("class") + " " + e.style.cssText)]`, family))
}

// TestLateStyles opens pages whose style sheets come after their scripts, as on a slow network:
// WebKit runs the scripts before. What is measured and coloured is what it is otherwise.
func TestLateStyles(t *testing.T) {
	host := &lateStyles{}
	s := serve(t, "/", built(t), withoutWorker, host.habit)
	want := places(t, rule, surah, from, upTo)
	for _, x := range []struct {
		what, coloured string
		open           func(p *page)
	}{
		{"a lesson", `[...document.querySelectorAll(".part")].some(d => !d.open)`, func(p *page) {
			p.open(s.address + "lessons/" + rule + ".html")
		}},
		// A mark of before is drawn with the first look of the lines.
		{"marked lines", fmt.Sprintf(`CSS.highlights.get("f-%s")?.size > 0`, family), func(p *page) {
			p.open("about:blank")
			p.open(fmt.Sprintf("%s#/lines?rule=%s&from=%d:%d&to=%[3]d:%[5]d", s.address, rule, surah, from, upTo))
		}},
	} {
		t.Run(x.what, func(t *testing.T) {
			inEngines(t, func(t *testing.T, b engine.Browser) {
				host.late.Store(false)
				p := newTab(t, b)
				p.lines(s, rule, surah, from, upTo)
				p.tap(want[0])
				p.wait("the mark", fmt.Sprintf(`CSS.highlights.get("f-%s")?.size === 1`, family))
				look := func() []string {
					t.Helper()
					x.open(p)
					p.wait("coloured letters", x.coloured)
					p.settled()
					return p.drawnMarks()
				}
				usual := look()
				if len(usual) < 2 || usual[0] == "undefined" {
					t.Fatalf("no letter is coloured: %q", usual)
				}
				host.late.Store(true)
				before := host.asked.Load()
				if got := look(); !slices.Equal(got, usual) {
					t.Errorf("with late styles\n%q\nis drawn, otherwise\n%q", got, usual)
				}
				if host.asked.Load() == before {
					t.Error("no style sheet was late: this test would prove nothing")
				}
			})
		})
	}
}

package e2e

import (
	"fmt"
	"strings"
	"testing"
)

// plain makes every page one of plain HTTP from another machine: without the browser's own digests,
// and without a worker.
func (p *page) plain() {
	p.t.Helper()
	p.unkept()
	p.before(`Object.defineProperty(Crypto.prototype, "subtle", { value: undefined })`)
}

// TestPlainHTTP: where the browser lends its digests to nobody, the text is checked all the same,
// by a part of the script that only such pages ask for.
func TestPlainHTTP(t *testing.T) {
	const lines = "#/lines?rule=noon-ikhfa&from=78:12&to=78:16"
	asked := func(p *page) (n int) {
		p.mu.Lock()
		defer p.mu.Unlock()
		for _, r := range p.requests {
			if strings.Contains(r, "assets/sha256.") {
				n++
			}
		}
		return n
	}
	t.Run("right", func(t *testing.T) {
		s := serve(t, "/", built(t))
		p := newPage(t)
		p.plain()
		p.open(s.address + lines)
		p.wait("the lines", visible(hook("verse-78-12")))
		if n := asked(p); n != 1 {
			t.Errorf("the part was asked for %d times", n)
		}
		p.calm()
	})
	t.Run("one letter swapped", func(t *testing.T) {
		s := serve(t, "/", replace(t, built(t), fmt.Sprintf("data/s%03d.", surah), func(raw []byte) []byte { return swapped(t, raw, false) }))
		p := newPage(t)
		p.plain()
		p.open(s.address + lines)
		p.wait("a word about it", `document.querySelector("[role=alert]")?.innerText.includes("not the verified text")`)
	})
	t.Run("the part does not come", func(t *testing.T) {
		s := serve(t, "/", without(t, built(t), "assets/sha256."))
		p := newPage(t)
		p.plain()
		p.open(s.address + lines)
		p.wait("a word about it", `document.querySelector("[role=alert]")?.innerText.includes("no signal")`)
	})
	t.Run("elsewhere", func(t *testing.T) {
		s := serve(t, "/", built(t))
		p := newPage(t)
		p.unkept()
		p.open(s.address + lines)
		p.wait("the lines", visible(hook("verse-78-12")))
		if n := asked(p); n != 0 {
			t.Errorf("the part was asked for %d times", n)
		}
	})
}

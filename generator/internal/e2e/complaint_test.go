package e2e

import (
	"strings"
	"testing"
	"time"
)

// TestBrokenAnswerIsHeard: in Firefox, an answer of the worker that breaks off while its page stays
// is a complaint; one that has not come to its end when its page is left is none.
func TestBrokenAnswerIsHeard(t *testing.T) {
	s := serve(t, "/", edition(t, []change{{"site-src/app/sw.ts", "async function answer(r: Request): Promise<Response> {\n", `async function answer(r: Request): Promise<Response> {
  const half = (ms: number) => new Response(new ReadableStream({ start: (c) => {
    c.enqueue(new Uint8Array(1));
    setTimeout(() => c.error(new Error('half')), ms);
  }}));
  if (r.url.includes('/touch-180.')) return half(60000);
  if (r.url.includes('/pages.')) return half(50);
`}}))
	p := newTab(t, inOne(t, "firefox"))
	p.open(s.address)
	p.wait("everything to be stored", kept)
	for range 5 {
		p.open(s.address)
		time.Sleep(300 * time.Millisecond) // the icon is asked for after the page is there
	}
	p.calm()
	p.open(s.address + "about.html")
	for deadline := time.Now().Add(patience); ; time.Sleep(50 * time.Millisecond) {
		list, err := p.tab.Trouble()
		if err != nil {
			t.Fatal(err)
		}
		if len(list) > 0 {
			if !strings.Contains(list[0], "A ServiceWorker intercepted the request") {
				t.Errorf("heard %q", list)
			}
			return
		}
		if time.Now().After(deadline) {
			t.Fatal("nothing was heard of an answer that broke off")
		}
	}
}

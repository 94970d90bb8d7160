package e2e

import (
	"fmt"
	"slices"
	"testing"

	"github.com/chromedp/cdproto/emulation"
)

// slowPhone slows the page's processor to a quarter, the usual stand-in for a phone of some years
// ago.
func slowPhone(p *page) {
	p.t.Helper()
	call(p, emulation.SetCPUThrottlingRate, emulation.SetCPUThrottlingRateParams{Rate: 4})
}

// rest waits until the page has saved the site for reading offline, and then a little: a phone does
// that once.
func rest(p *page) {
	p.t.Helper()
	eval[any](p, `navigator.serviceWorker.ready.then(() => new Promise(r => setTimeout(() => r(0), 3000)))`)
}

// painted resolves once the frame after now has been painted.
const painted = `new Promise(r => requestAnimationFrame(() => { const c = new MessageChannel(); c.port1.onmessage = () => r(); c.port2.postMessage(0); }))`

func report(b *testing.B, ms []float64) { reportAs(b, "", ms) }

// reportAs reports median and worst of one of several measures of a benchmark, which begin with its
// name and a dash.
func reportAs(b *testing.B, name string, ms []float64) {
	slices.Sort(ms)
	b.ReportMetric(0, "ns/op") // the clock of the page counts, not that of the protocol
	b.ReportMetric(ms[len(ms)/2], name+"ms-median")
	b.ReportMetric(ms[len(ms)-1], name+"ms-worst")
}

// lettersAfter is an expression: the milliseconds from an action of the page to the painted letters
// that come of it, which a selector finds.
func lettersAfter(action, letters string) string {
	return fmt.Sprintf(`(async () => {
		const seen = () => document.querySelector(%q), start = performance.now();
		const there = new Promise(r => { const o = new MutationObserver(() => { if (seen()) { o.disconnect(); r(); } }); o.observe(document.body, { childList: true, subtree: true }); });
		%s;
		await there;
		await %s;
		return performance.now() - start;
	})()`, letters, action, painted)
}

// startPressed is what a tap on the card of Today takes.
var startPressed = lettersAfter(fmt.Sprintf(`document.querySelector(%q).click()`, hook("start")), "[data-t=passage] .w")

// BenchmarkLines is the time from asking for lines to their letters on screen, at a quarter of this
// machine's speed; the surah was fetched before, as the card of today does it.
func BenchmarkLines(b *testing.B) {
	s := serve(b, "/", built(b))
	p := newPage(b)
	p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:20")
	p.wait("the lines", visible(hook("verse-78-20")))
	rest(p)
	slowPhone(p)
	var ms []float64
	for b.Loop() {
		from := 1 + len(ms)*7%30
		open := fmt.Sprintf(`location.hash = "#/lines?rule=noon-ikhfa&from=78:%d&to=78:%d"`, from, from+8)
		ms = append(ms, eval[float64](p, lettersAfter(open, hook(fmt.Sprintf("verse-78-%d", from)))))
	}
	report(b, ms)
}

// BenchmarkFirstStart is the first press of the card of Today after the site was opened, a second
// after the card came: to the painted letters, at a quarter of this machine's speed. The site is kept
// on the device, as at every opening but the first.
func BenchmarkFirstStart(b *testing.B) {
	s := serve(b, "/", built(b))
	p := newPage(b)
	p.begin(s.address, "")
	rest(p)
	slowPhone(p)
	var ms []float64
	for b.Loop() {
		p.open(s.address + "about.html")
		p.open(s.address)
		p.wait("the card of today", visible(hook("start")))
		eval[any](p, `new Promise(r => setTimeout(r, 1000))`)
		ms = append(ms, eval[float64](p, startPressed))
	}
	report(b, ms)
}

// BenchmarkMark is the time from a finger's touch to the coloured letter on screen, at a quarter of
// this machine's speed. The letters are as large as they can be made, so that the touch marks at
// once.
func BenchmarkMark(b *testing.B) {
	s := serve(b, "/", built(b))
	p := newPage(b)
	p.open(s.address + "#/lines?rule=noon-ikhfa&from=78:12&to=78:20")
	p.wait("the lines", visible(hook("verse-78-20")))
	rest(p)
	slowPhone(p)
	eval[any](p, `(document.documentElement.style.setProperty("--letter", "6rem"), 0)`)
	var ms []float64
	for b.Loop() {
		ms = append(ms, eval[float64](p, fmt.Sprintf(`(async () => {
			const w = document.querySelector('[data-t=passage] .w[data-v="0"][data-w="1"]'), b = w.getBoundingClientRect();
			const at = { bubbles: true, cancelable: true, pointerId: 1, isPrimary: true, button: 0, pointerType: "touch", clientX: b.left + b.width / 2, clientY: b.top + b.height / 2 };
			const size = () => CSS.highlights.get("f-noon")?.size ?? 0, before = size(), start = performance.now();
			w.dispatchEvent(new PointerEvent("pointerdown", at));
			w.dispatchEvent(new PointerEvent("pointerup", at));
			await %s;
			if (size() === before) throw new Error("nothing was marked");
			return performance.now() - start;
		})()`, painted)))
	}
	report(b, ms)
}

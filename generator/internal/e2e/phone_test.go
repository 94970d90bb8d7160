package e2e

import (
	"fmt"
	"path"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/heapprofiler"
	"github.com/chromedp/cdproto/performance"
)

// watch makes every document that the page loads from now on note, in the promise shown, when the
// condition became true and the frame with it was painted: milliseconds from the beginning of the
// navigation.
func watch(p *page, condition string) {
	p.t.Helper()
	p.before(fmt.Sprintf(`
		globalThis.shown = new Promise(ok => {
			const look = () => {
				if (!(%s)) return requestAnimationFrame(look);
				const c = new MessageChannel();
				c.port1.onmessage = () => ok(performance.now());
				c.port2.postMessage(0);
			};
			requestAnimationFrame(look);
		});`, condition))
}

// BenchmarkFirstLetters opens a link to lines for the first time, with nothing kept and nothing
// compiled, at a quarter of this machine's speed, from a host on this machine: to the painted
// letters, and for the address without a link to the first screen. Each opening has a profile of
// its own.
func BenchmarkFirstLetters(b *testing.B) {
	s := serve(b, "/", built(b), gzipped)
	open := func(at, shown string) float64 {
		p := newPage(b)
		defer p.close()
		watch(p, shown)
		slowPhone(p)
		p.open(s.address + at)
		return eval[float64](p, `shown`)
	}
	const inFont = `document.fonts.check("16px 'Scheherazade New'", "\u0628")`
	var lines, today []float64
	for b.Loop() {
		lines = append(lines, open("#/lines?rule=noon-ikhfa&from=78:12&to=78:20", `document.querySelector('`+hook("verse-78-20")+`') && `+inFont))
		today = append(today, open("", `document.querySelector('`+hook("name")+`')`))
	}
	reportAs(b, "lines-", lines)
	reportAs(b, "today-", today)
}

// BenchmarkStart is the time from pressing the card of Today to the painted letters of its lines,
// at a quarter of this machine's speed, when the page has come to rest; back to Today in between.
func BenchmarkStart(b *testing.B) {
	s := serve(b, "/", built(b))
	p := newPage(b)
	p.begin(s.address, "")
	rest(p)
	slowPhone(p)
	var ms []float64
	for b.Loop() {
		p.wait("the card of today", visible(hook("start")))
		ms = append(ms, eval[float64](p, startPressed))
		eval[any](p, `(location.hash = "", 0)`)
	}
	report(b, ms)
}

// BenchmarkRankOpening is the first ranking on a page that has just put up its first screen and
// still saves the site for reading offline, at a quarter of this machine's speed: from the planner
// and its index, both at hand, to the best lines. Each has a profile of its own.
func BenchmarkRankOpening(b *testing.B) {
	s := serve(b, "/", built(b))
	source := bundled(b, planScript)
	var ms []float64
	saved := 0
	for b.Loop() {
		p := newPage(b)
		slowPhone(p)
		p.open(s.address)
		p.wait("the first screen", drawn)
		eval[any](p, source)
		ms = append(ms, eval[float64](p, `plan.start().then(() => plan.time(0))`))
		if eval[bool](p, "Boolean("+kept+")") {
			saved++
		}
		p.close()
	}
	b.ReportMetric(float64(saved), "already-saved")
	report(b, ms)
}

// BenchmarkLesson opens lessons that are kept on the device, at a quarter of this machine's speed:
// to the painted page with its letters coloured.
func BenchmarkLesson(b *testing.B) {
	files := built(b)
	s := serve(b, "/", files)
	p := newPage(b)
	p.open(s.address)
	p.wait("everything to be stored", kept)
	rest(p)
	watch(p, `document.readyState !== "loading" && document.querySelector("[data-marks]") && CSS.highlights.size > 0`)
	slowPhone(p)
	var lessons []string
	for _, f := range files {
		if strings.HasPrefix(f.Name, "lessons/") && strings.Contains(string(f.Data), "data-marks=") {
			lessons = append(lessons, path.Base(f.Name))
		}
	}
	var ms []float64
	for b.Loop() {
		p.open(s.address + "lessons/" + lessons[len(ms)%len(lessons)])
		ms = append(ms, eval[float64](p, `shown`))
	}
	report(b, ms)
}

// BenchmarkHour is what the page holds in memory, after garbage was collected, at the start, after
// the first lines, and after an hour's use, each time on Today. An hour is four sessions of fifteen
// minutes, and a session three sets of lines of five minutes: chosen, marked, checked, looked at
// again, read, answered for and found in the record, then the other screens. The presses come one
// after the other, without the minutes between them, and all in one document, which is never loaded
// anew. The processor is not slowed: memory does not depend on it.
func BenchmarkHour(b *testing.B) {
	const sets = 4 * 3
	s := serve(b, "/", built(b))
	p := newPage(b)
	p.begin(s.address, "")
	rest(p)
	// Large letters, so that no press opens a word enlarged.
	eval[any](p, `(document.documentElement.style.setProperty("--letter", "4rem"), globalThis.presses = globalThis.screens = 0,
		addEventListener("pointerdown", () => presses++, true), addEventListener("hashchange", () => screens++), globalThis.before = document, 0)`)
	call(p, performance.Enable, performance.EnableParams{})
	start := p.holds()
	var first map[string]float64
	for n := range sets {
		session(p)
		p.click("open-session")
		p.wait("one of them", visible(hook("marked")))
		for _, at := range []string{"rules", "learner", "lines", "today"} {
			p.click("nav-" + at)
			p.wait("the screen "+at, fmt.Sprintf(`location.hash === "#/%s" && document.querySelector("main h1")`, at))
		}
		p.wait("the card of today", `document.querySelector('[data-t^="next-"]')`)
		if n == 0 {
			first = p.holds()
		}
	}
	hour := p.holds()
	if !eval[bool](p, `globalThis.before === document`) {
		b.Fatal("the document was loaded anew: what it held before is not known")
	}
	p.calm()
	for b.Loop() { // one hour is enough
	}
	b.ReportMetric(0, "ns/op")
	for name := range start {
		b.ReportMetric(start[name], "start-"+name)
		b.ReportMetric(first[name], "first-"+name)
		b.ReportMetric(hour[name], "hour-"+name)
	}
	b.ReportMetric(eval[float64](p, `presses`), "presses")
	b.ReportMetric(eval[float64](p, `screens`), "screens")
	b.ReportMetric(sets, "sets-of-lines")
}

// holds returns what the page holds once garbage is collected.
func (p *page) holds() map[string]float64 {
	p.t.Helper()
	for range 2 { // what the first frees may hold more
		eval[any](p, painted)
		call(p, heapprofiler.CollectGarbage, cdp.Empty{})
	}
	names := map[string]string{"JSHeapUsedSize": "heap-bytes", "Nodes": "nodes", "JSEventListeners": "listeners"}
	held := map[string]float64{}
	for _, m := range call(p, performance.GetMetrics, cdp.Empty{}).Metrics {
		if name := names[m.Name]; name != "" {
			held[name] = m.Value
		}
	}
	if len(held) != len(names) {
		p.t.Fatalf("the browser tells only %v", held)
	}
	return held
}

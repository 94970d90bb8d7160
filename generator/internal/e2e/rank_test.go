package e2e

import (
	"fmt"
	"testing"
)

// planScript has the browser's planner and the passage index of the built site in it, but no
// screen.
var planScript = `
import { dataFile, loadCatalogue } from "./text/data.ts";
import { verified } from "./text/fetch.ts";
import { course } from "./plan/course.ts";
import { Phrases } from "./plan/phrases.ts";
import { rank } from "./plan/rank.ts";

let c, x;
globalThis.plan = {
  async start() {
    const { catalogue, sha } = (await ` + documentOf(`"index.html"`) + `).documentElement.dataset;
    c = await loadCatalogue(catalogue, sha);
    x = course(new Phrases(await verified(dataFile(c.passages), c.passagesSha)), c).x;
  },
  /** Milliseconds for one ranking of the whole text; k chooses the rule and the place. */
  time(k) {
    const focus = [k * 5 % 42], known = c.rules.map((_, i) => i).filter((i) => i % 3 !== k % 3), due = [1, 5, 9, 22, 23, 30].map((r) => (r + k) % 42);
    const start = performance.now(), r = rank(x, { focus, known, due, place: k * 389 % 6236, used: [[k, k + 5]], level: 3 });
    if (r.seen < 20000) throw new Error("only " + r.seen + " passages were weighed");
    return performance.now() - start;
  },
};
`

// BenchmarkRank is the time to rank the passages of the whole text in the browser, at a quarter of
// this machine's speed, when the page has come to rest. The very first on a page, in code that the
// browser has not compiled yet, is given apart, of five pages.
func BenchmarkRank(b *testing.B) {
	var ms, first []float64
	for range 5 {
		p := modulePage(b, planScript)
		eval[any](p, `plan.start()`)
		slowPhone(p)
		eval[any](p, `new Promise(r => setTimeout(r, 2000))`)
		first = append(first, eval[float64](p, "plan.time(0)"))
		for k := range 20 {
			ms = append(ms, eval[float64](p, fmt.Sprintf("plan.time(%d)", k+1)))
		}
		p.close()
	}
	for b.Loop() { // the clock of the page counts
	}
	reportAs(b, "first-", first)
	report(b, ms)
}

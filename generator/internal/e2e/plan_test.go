package e2e

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"testing"
)

// planPage opens a page that has the browser's planner and the passage index of
// the built site in it, but no screen.
func planPage(t testing.TB) *page {
	t.Helper()
	p := modulePage(t, planScript)
	eval[any](p, `plan.start()`)
	return p
}

// planScript runs the vectors that package plan wrote: it gives every function
// its input under our names and compares the result under theirs.
const planScript = `
import { loadCatalogue } from "./text/data.ts";
import { course } from "./plan/child.ts";
import { loadPhrases } from "./plan/load.ts";
import { choose, rank } from "./plan/rank.ts";
import { sequence, unitPlaces, units } from "./plan/units.ts";
import { next } from "./plan/next.ts";
import { knownDay, rare, ready } from "./plan/ready.ts";
import { review } from "./plan/review.ts";
import { plan as today } from "./plan/day.ts";

let c, x;
// Go writes lists of rules, which are bytes, in base64.
const list = (a) => typeof a === "string" ? Array.from(atob(a), (b) => b.charCodeAt(0)) : a ?? [];
const query = (q) => ({
  focus: list(q.Focus), known: list(q.Known), due: list(q.Due), place: q.Place, used: list(q.Used), level: q.Level,
  from: q.From, ...(q.To ? { to: q.To } : {}), ...(q.Min ? { min: q.Min } : {}), ...(q.Max ? { max: q.Max } : {}), ...(q.Best ? { best: q.Best } : {}),
});
const passage = (p) => ({
  a: p.A, b: p.B, words: p.Words, letters: p.Letters, focus: p.Focus, known: p.Known, later: p.Later,
  byRule: list(p.ByRule).map((r) => [r.Rule, r.Places]), due: list(p.Due), share: p.Share, distance: p.Distance, score: p.Score,
});
const criterion = (k) => ({ sessions: k.Sessions, days: k.Days, percent: k.Percent, last: k.Last });
const readiness = (r) => ({
  sessions: r.Sessions, days: r.Days, percent: r.Percent, muchHelp: r.MuchHelp, rule: r.Rule, practised: r.Practised, wanted: r.Wanted, ready: r.Ready,
});
const log = (l) => list(l).map((s) => ({ day: s.Day, rule: s.Rule, found: s.Found, missed: s.Missed, help: s.Help, places: s.Places }));
const begun = (t) => ({ unit: t.Unit, since: t.Since, known: t.Known });
const step = (s) => ({ unit: s.Unit, places: s.Places, opens: s.Opens, lessons: s.Lessons, together: s.Together });

globalThis.plan = {
  async start() {
    const html = await (await fetch("index.html")).text();
    const { catalogue, sha } = new DOMParser().parseFromString(html, "text/html").documentElement.dataset;
    document.documentElement.dataset.catalogue = catalogue;
    c = await loadCatalogue(catalogue, sha);
    x = course(await loadPhrases(c), c).x;
  },
  /** The mistakes, and how many comparisons were made. */
  check(v) {
    const wrong = [];
    let n = 0;
    const same = (what, got, want) => {
      n++;
      const [g, w] = [JSON.stringify(got), JSON.stringify(want)];
      if (g !== w) wrong.push(what + ": got " + g + ", want " + w);
    };
    v.Rank.forEach((k, i) => same("ranking " + i, choose(x, query(k.Query)),
      { seen: k.Want.Seen, least: k.Want.Least, how: k.Want.How, passages: list(k.Want.Passages).map(passage) }));
    const us = units({ rules: c.rules, lessons: v.Lessons.map((l) => ({ id: l.ID, name: "", ar: "", rules: l.Rules })) });
    same("units", us.map((u) => [u.id, u.rules, u.needs]), v.Units.map((u) => [u.ID, list(u.Rules), list(u.Needs)]));
    const few = rare(x.places(0, 6235));
    v.Sequence.forEach((k, i) => {
      same("sequence " + i, sequence(us, k.Places, k.Taught), list(k.Want).map(step));
      same("next " + i, next(us, k.Places, k.Taught), list(k.Next).map((o) => ({ unit: o.Unit, places: o.Places })));
    });
    v.Today.forEach((k, i) => {
      const l = k.Learner, w = k.Want, cr = criterion(k.Criterion), mine = list(l.Taught).map(begun), all = log(l.Log);
      same("today " + i, today(us, few, { day: l.Day, settled: l.Settled, taught: mine, log: all, order: list(l.Order) }, cr), {
        do: w.Do, unit: w.Unit, rule: w.Rule, left: w.Left, ...(w.Do === 2 ? { readiness: readiness(w.Readiness) } : {}),
        due: list(w.Due), known: list(w.Known), level: w.Level,
      });
      same("known " + i, mine.map((t) => knownDay(us[t.unit], few, t.since, all, cr)), list(k.Known));
      same("ready " + i, mine.map((t) => ready(us[t.unit], few, t.since, all, cr)), list(k.Ready).map(readiness));
      same("review " + i, mine.flatMap((t) => us[t.unit].rules.map((r) => review(r, t.since, all))), list(k.Reviews).map((s) => ({ rule: s.Rule, well: s.Well, due: s.Due })));
    });
    return { n, wrong };
  },
  /** Milliseconds for one ranking of the whole text; k chooses the rule and the place. */
  time(k) {
    const focus = [k * 5 % 42], known = c.rules.map((_, i) => i).filter((i) => i % 3 !== k % 3), due = [1, 5, 9, 22, 23, 30].map((r) => (r + k) % 42);
    const start = performance.now(), r = rank(x, { focus, known, due, place: k * 389 % 6236, used: [[k, k + 5]], level: 3 });
    if (r.seen < 20000) throw new Error("only " + r.seen + " passages were weighed");
    return performance.now() - start;
  },
  places: () => unitPlaces(units(c), x.places(0, 6235)).length,
};
`

// TestPlanVectors holds the browser's planner to the results of package plan,
// which are checked there against brute force.
func TestPlanVectors(t *testing.T) {
	raw, err := os.ReadFile(filepath.Join(root, "generator/internal/plan/testdata/vectors.json"))
	if err != nil {
		t.Fatal(err)
	}
	p := planPage(t)
	r := eval[struct {
		N     int
		Wrong []string
	}](p, fmt.Sprintf("plan.check(%s)", raw))
	for _, w := range r.Wrong[:min(len(r.Wrong), 10)] {
		t.Error(w)
	}
	if r.N < 150 {
		t.Errorf("only %d comparisons were made", r.N)
	}
	t.Logf("%d comparisons, %d differ", r.N, len(r.Wrong))
	p.calm()
}

// BenchmarkRank is the time to rank the passages of the whole text in the
// browser, at a quarter of this machine's speed, when the page has come to
// rest. The very first on a page, in code that the browser has not compiled
// yet, is given apart, as the median of five pages.
func BenchmarkRank(b *testing.B) {
	var ms, first []float64
	for range 5 {
		p := planPage(b)
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
	slices.Sort(first)
	b.ReportMetric(first[len(first)/2], "ms-first")
	report(b, ms)
}

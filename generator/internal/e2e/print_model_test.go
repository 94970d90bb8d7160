package e2e

import (
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"testing"
)

// printModel opens a page with the catalogue and the pure parts of print.
func printModel(t testing.TB) *page {
	t.Helper()
	s := serve(t, "/", built(t))
	p := newPage(t)
	p.open(s.address + "about.html")
	eval[any](p, module(t, `import * as breaks from "./paper/breaks.ts"; import * as options from "./paper/options.ts"; import * as passage from "./paper/passage.ts";
		globalThis.model = { ...breaks, ...options, ...passage };`))
	eval[any](p, `(async () => {
		const url = (await `+documentOf(`"index.html"`)+`).documentElement.dataset.catalogue;
		globalThis.c = JSON.parse(await new Response((await fetch(url)).body.pipeThrough(new DecompressionStream("gzip"))).text());
		globalThis.def = { kind: "practice", part: "verses", from: { s: 78, a: 1 }, to: { s: 78, a: 10 }, rule: "noon-ikhfa", also: [], show: "focus", paper: "a4", turn: "portrait", size: 32, name: false, booklet: { juz: 30, rules: undefined, answers: "end", lay: "one", size: 28 } };
	})()`)
	return p
}

// TestLineBreaks breaks lines of random words: every word is on one line, in order, and no line is
// longer than it may be unless it is one word.
func TestLineBreaks(t *testing.T) {
	p := printModel(t)
	r := rand.New(rand.NewPCG(1, 2))
	for i := range 200 {
		length, gap := 5+10*r.Float64(), .3+r.Float64()
		type piece struct {
			Width float64 `json:"width"`
			End   bool    `json:"end"`
		}
		words := make([]piece, 1+r.IntN(120))
		list := ""
		for k := range words {
			words[k] = piece{.5 + 5*r.Float64(), r.IntN(6) == 0 || k == len(words)-1}
			list += fmt.Sprintf("{width:%v,end:%v},", words[k].Width, words[k].End)
		}
		starts := eval[[]int](p, fmt.Sprintf("model.lines([%s], %v, %v)", list, gap, length))
		if len(starts) == 0 || starts[0] != 0 {
			t.Fatalf("case %d: lines begin at %v", i, starts)
		}
		for k, from := range starts {
			to := len(words)
			if k+1 < len(starts) {
				to = starts[k+1]
			}
			if to <= from {
				t.Fatalf("case %d: line %d is empty: %v", i, k, starts)
			}
			wide := -gap
			for _, w := range words[from:to] {
				wide += gap + w.Width
			}
			if wide > length+1e-9 && to-from > 1 {
				t.Errorf("case %d: line %d is %.2f wide, %.2f is the most", i, k, wide, length)
			}
		}
	}
}

// TestPageBreaks: a head is never the last row of a page, no page has more rows than fit, and the
// last has two where it can.
func TestPageBreaks(t *testing.T) {
	p := printModel(t)
	r := rand.New(rand.NewPCG(3, 4))
	for i := range 200 {
		heads := make([]bool, 1+r.IntN(80))
		for k := range heads {
			heads[k] = k+1 < len(heads) && r.IntN(9) == 0 && (k == 0 || !heads[k-1])
		}
		first, rest := 1+r.IntN(9), 2+r.IntN(9)
		list := fmt.Sprint(heads)
		starts := eval[[]int](p, fmt.Sprintf("model.pages(%q.split(' ').map(x => x === 'true'), %d, %d)", list[1:len(list)-1], first, rest))
		for k, from := range starts {
			to, most := len(heads), rest
			if k+1 < len(starts) {
				to = starts[k+1]
			}
			if k == 0 {
				most = first
			}
			if k == 0 && from != 0 || to <= from || to-from > most && most > 1 {
				t.Errorf("case %d: page %d has rows %d to %d of %d, at most %d fit", i, k, from, to, len(heads), most)
			}
			if heads[to-1] && to-from > 1 {
				t.Errorf("case %d: page %d ends with a head", i, k)
			}
		}
		if n := len(starts); n > 1 && len(heads)-starts[n-1] == 1 && starts[n-1]-starts[n-2] > 2 && !heads[starts[n-1]-2] {
			t.Errorf("case %d: the last page has one line: %v of %d", i, starts, len(heads))
		}
	}
}

// TestPrintParts: the surahs, the pages and the juz each cover the whole text once, and every one
// can be printed.
func TestPrintParts(t *testing.T) {
	p := printModel(t)
	for by, want := range map[string]int{"surah": 114, "page": 604, "juz": 30} {
		got := eval[struct {
			N, Verses, Most int
			Gaps            []string
		}](p, fmt.Sprintf(`(() => {
			let n = 0, verses = 0, most = 0, last; const gaps = [];
			for (let i = 1, x; x = model.part(c, %q, i); i++, n++) {
				const size = model.span(c, x.from, x.to);
				verses += size; most = Math.max(most, size);
				if (size < 1 || (last && model.span(c, last, x.from) !== 2)) gaps.push(i + "");
				last = x.to;
			}
			return { n, verses, most, gaps };
		})()`, by))
		if got.N != want || got.Verses != 6236 || len(got.Gaps) > 0 || got.Most > 600 {
			t.Errorf("%s: %+v, want %d that have 6236 verses, none more than 600", by, got, want)
		}
	}
	if none := eval[bool](p, `["surah", "page", "juz"].every(x => !model.part(c, x, 0) && !model.part(c, x, 9999))`); !none {
		t.Error("there are parts with impossible numbers")
	}
}

// TestPrintAddressRoundTrip: the address of a sheet says the same sheet again.
func TestPrintAddressRoundTrip(t *testing.T) {
	p := printModel(t)
	wrong := eval[[]string](p, `(() => {
		const out = [], { KINDS, SHOWS, PAPERS, TURNS } = model;
		let k = 0;
		for (const kind of KINDS) for (const show of SHOWS) for (const paper of PAPERS) for (const turn of TURNS)
			for (const part of ["verses", "surah", "page", "juz"]) for (const n of [1, 17, 30]) {
				const size = 24 + 2 * (k++ % 13), at = part === "verses" ? { from: { s: 2, a: n }, to: { s: 3, a: n } } : model.part(c, part, n);
				const o = { ...def, kind, show, paper, turn, size, part, ...at, rule: k % 2 ? "qalqalah" : "", also: [[], ["stops"], ["ghunnah", "all-long"]][k % 3], name: k % 3 === 0 };
				if (kind === "booklet") o.booklet = { juz: n, rules: [undefined, [], ["ghunnah", "qalqalah"]][k % 3], answers: ["end", "only", "none"][k % 3], lay: ["one", "two", "fold"][k % 3], size: 18 + 2 * (k % 10) };
				if (kind === "card" || kind === "record" || kind === "booklet") Object.assign(o, { part: def.part, from: def.from, to: def.to, rule: def.rule, also: def.also, show: def.show, size: def.size });
				const hash = model.format(c, o), got = model.parse(c, hash, def);
				const flat = (x) => JSON.stringify(Object.entries(x).sort());
				if (got.problem || flat(got.options) !== flat(o) || /nur/i.test(hash)) out.push(hash + " " + JSON.stringify(got));
			}
		return out;
	})()`)
	for _, w := range wrong[:min(len(wrong), 5)] {
		t.Error(w)
	}
}

// FuzzPrintAddress: whatever stands after #, the screen has a sheet to show and the reason for what
// it does not take.
func FuzzPrintAddress(f *testing.F) {
	for _, s := range []string{"#/print", "#/print?sheet=both&juz=30", "#/print?from=78:1&to=79:3&size=48", "#/print?size=1e9", "#/print?page=%", "#/print?from=9999999999:1", "#/print?rule=ghunnah&also=ghunnah,stops,,x,STOPS&show=focus", "#/print?rule=__proto__&sheet=constructor", "#/print?sheet=booklet&juz=31&key=x,ghunnah&lay=fold&answers=&size=1"} {
		f.Add(s)
	}
	p := printModel(f)
	f.Fuzz(func(t *testing.T, hash string) {
		p.t = t
		text, err := json.Marshal(hash)
		if err != nil {
			t.Fatal(err)
		}
		if bad := eval[string](p, fmt.Sprintf(`(() => {
			const { options: o } = model.parse(c, %s, def);
			return model.inside(c, o.from) && model.inside(c, o.to) && model.span(c, o.from, o.to) >= 1 && o.size >= 24 && o.size <= 48
				&& o.booklet.size >= 18 && o.booklet.size <= 36 && o.booklet.juz >= 1 && o.booklet.juz <= 30 && (o.booklet.rules ?? []).every(x => c.rules.some(r => r.id === x))
				&& (o.rule === "" || c.rules.some(r => r.id === o.rule)) && o.also.length <= 12 && new Set([o.rule, ...o.also]).size === o.also.length + 1
				&& o.also.every(x => x === "stops" || [...c.rules, ...c.groups].some(r => r.id === x)) && model.KINDS.includes(o.kind) ? "" : JSON.stringify(o);
		})()`, text)); bad != "" {
			t.Errorf("%q gives %s", hash, bad)
		}
	})
}

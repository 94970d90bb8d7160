package e2e

import (
	"fmt"
	"testing"

	"sutur/generator/internal/engine"
)

// fingers aims at letters of the lines on screen and sees where the finger comes down: with an
// error that is distributed normally, of sigma pixels across and as much up and down.
const fingers = `
import { hit, rival } from "./painting/hit.ts";
import { Sheet } from "./painting/sheet.ts";
import { loadCatalogue, verses } from "./text/data.ts";
import { standsOver } from "./text/letters.ts";

const sigma = 6, most = 16;

// mulberry32, and Box and Muller's way from even numbers to normal ones.
let seed = 0;
const even = () => {
	seed = (seed + 0x6d2b79f5) | 0;
	let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
	t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
	return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
};
const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());

/** The lines on screen. */
async function sheetOf(from, to) {
	const { catalogue, sha } = document.documentElement.dataset;
	const list = await verses(await loadCatalogue(catalogue, sha), from, to);
	const sheet = new Sheet();
	for (const w of document.querySelectorAll("[data-t=passage] .w"))
		sheet.add(Number(w.dataset.v), Number(w.dataset.w), w, list);
	return sheet;
}

/** The middle of a letter; of a small one over another, the middle of what is seen of it. */
function middle(s, l) {
	const b = Sheet.box(s, l), x = (b.left + b.right) / 2, wide = b.right - b.left;
	if (!standsOver(s.word, l)) return { x, y: (b.top + b.bottom) / 2, wide };
	return { x, y: Sheet.base(s) - Sheet.em(s) * (Sheet.crown(s, l) + Sheet.top(s, l)) / 2, wide };
}

/** Taps at every letter n times: what was aimed at, what is nearest, how near another is. */
globalThis.taps = async (from, to, n, seeded) => {
	seed = seeded;
	const sheet = await sheetOf(from, to), out = [];
	for (const s of sheet.shown) {
		s.el.scrollIntoView({ block: "center", behavior: "instant" });
		s.word.letters.forEach((_, l) => {
			const m = middle(s, l);
			for (let i = 0; i < n; i++) {
				const x = m.x + sigma * normal(), y = m.y + sigma * normal();
				const button = document.elementFromPoint(x, y)?.closest("button");
				const at = button ? undefined : hit(sheet, x, y);
				const word = !!at && at.v === s.v && at.w === s.w;
				out.push([button ? 0 : !at ? 1 : !word ? 2 : at.l !== l ? 3 : 4, at ? Math.min(rival(sheet, at, x, y, most), 99) : 99, m.wide]);
			}
		});
	}
	return out;
};
`

func TestFingers(t *testing.T) {
	s := serve(t, "/", built(t))
	code := bundled(t, fingers)
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		var all [][3]float64
		const passages = 30
		for i := range passages {
			first := len(text.Verses) * i / passages
			last, words := first, len(text.Verses[first].Words)
			for words < 20 && last+1 < len(text.Verses) && text.Verses[last+1].Surah == text.Verses[first].Surah {
				last++
				words += len(text.Verses[last].Words)
			}
			v := text.Verses[first]
			p.lines(s, rule, v.Surah, v.Ayah, text.Verses[last].Ayah)
			eval[any](p, code)
			all = append(all, eval[[][3]float64](p, fmt.Sprintf(`taps({s:%d,a:%d},{s:%[1]d,a:%[3]d},3,%[4]d)`, v.Surah, v.Ayah, text.Verses[last].Ayah, i+1))...)
		}
		n := float64(len(all))
		var kinds [5]int
		narrow := 0
		for _, x := range all {
			kinds[int(x[0])]++
			if x[2] < 24 {
				narrow++
			}
		}
		t.Logf("%d taps: on a stop %.1f%%, none %.1f%%, other word %.1f%%, other letter %.1f%%, right %.1f%%; narrow %.1f%%", len(all), 100*float64(kinds[0])/n, 100*float64(kinds[1])/n, 100*float64(kinds[2])/n, 100*float64(kinds[3])/n, 100*float64(kinds[4])/n, 100*float64(narrow)/n)
		for m := 0; m <= 15; m++ {
			wrong, open, otherw := 0, 0, 0
			for _, x := range all {
				if x[0] < 2 {
					continue
				}
				if x[1] < float64(m) {
					open++
					if x[0] == 2 {
						otherw++
					}
				} else if x[0] < 4 {
					wrong++
				}
			}
			t.Logf("margin %2d: wrong %.2f%%, opens %.1f%%, of these other word %.2f%%", m, 100*float64(wrong)/n, 100*float64(open)/n, 100*float64(otherw)/n)
		}
	})
}

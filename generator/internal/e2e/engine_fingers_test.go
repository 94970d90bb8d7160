package e2e

import (
	"fmt"
	"testing"

	"sutur/generator/internal/engine"
	"sutur/generator/internal/mushaf"
)

// fingers taps at the middle of every letter of the lines on screen, some times each, and sees what
// comes of it. Where the finger comes down is distributed normally around the middle, with sigma
// pixels across and as many up and down. Taps that open the right word are followed by one at the
// letter's button there, as far off.
const fingers = `
import { hit, rival } from "./painting/hit.ts";
import { Sheet } from "./painting/sheet.ts";
import { margin } from "./screens/lines/gesture.ts";
import { loadCatalogue, verses } from "./text/data.ts";
import { standsOver } from "./text/letters.ts";

// mulberry32, and the way of Box and Muller from even numbers to normal ones.
let seed = 0;
const even = () => {
	seed = (seed + 0x6d2b79f5) | 0;
	let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
	t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
	return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
};
const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());

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
	const b = Sheet.box(s, l), x = (b.left + b.right) / 2;
	const y = standsOver(s.word, l) ? Sheet.base(s) - Sheet.em(s) * (Sheet.crown(s, l) + Sheet.top(s, l)) / 2 : (b.top + b.bottom) / 2;
	return { x, y, wide: b.right - b.left };
}

const until = async (f) => { while (!f()) await new Promise(r => setTimeout(r)); };

/** The letters of which a tap in the large word marks another. */
async function inLarge(s, letters, sigma) {
	const dialog = () => document.querySelector("dialog.zoom");
	s.el.click(); // as a screen reader does it: the word opens at once
	await until(dialog);
	let wrong = 0;
	for (const l of letters) {
		const own = dialog().querySelector("[data-t=zoom-letter-" + l + "]");
		own.scrollIntoView({ block: "nearest", behavior: "instant" });
		const b = own.getBoundingClientRect(), x = (b.left + b.right) / 2 + sigma * normal(), y = (b.top + b.bottom) / 2 + sigma * normal();
		const at = document.elementFromPoint(x, y)?.closest(".zoom-letter");
		if (at && at !== own) wrong++;
	}
	dialog().close();
	await until(() => !dialog());
	return wrong;
}

globalThis.taps = async (from, to, sigma, seeded) => {
	seed = seeded;
	const sheet = await sheetOf(from, to), n = { taps: 0, narrow: 0, plain: 0, wrong: 0, opens: 0, other: 0, large: 0 };
	for (const s of sheet.shown) {
		s.el.scrollIntoView({ block: "center", behavior: "instant" });
		const opened = [];
		for (const l of [...s.word.letters.keys(), ...s.word.letters.keys(), ...s.word.letters.keys()]) {
			const m = middle(s, l), x = m.x + sigma * normal(), y = m.y + sigma * normal();
			n.taps++;
			if (m.wide < 24) n.narrow++;
			const at = document.elementFromPoint(x, y)?.closest("button") ? undefined : hit(sheet, x, y);
			if (!at) continue;
			const word = at.v === s.v && at.w === s.w, right = word && at.l === l;
			if (!right) n.plain++;
			if (rival(sheet, at, x, y, margin("touch")) < Infinity) {
				n.opens++;
				if (word) opened.push(l);
				else n.other++;
			} else if (!right) n.wrong++;
		}
		if (opened.length) n.large += await inLarge(s, opened, sigma);
	}
	return n;
};
`

// fingersSeen is how many taps there were, and of these how many at letters narrower than 24
// pixels; how many marked another letter (Plain) when every tap marked the nearest one, and mark
// another now, on the lines (Wrong) and in the word that they opened (Large); how many open a word,
// and how many of these another than that of the letter.
type fingersSeen struct{ Taps, Narrow, Plain, Wrong, Opens, Other, Large int }

// TestFingers measures how many taps of a finger mark a letter that was not meant: at all letters
// of 30 passages from all over the text, of twenty words and more.
//
// The error of 6 pixels (about a millimetre) is of the size that is known of adults who aim with a
// finger at a phone: X. Bi, Y. Li, S. Zhai, "FFitts law: modeling finger touch with Fitts' law",
// CHI 2013; cited from memory, the figure itself is not taken from there.
//
// What a margin (gesture.ts) comes to, in Chromium: with 0, 4, 6, 8, 10 and 12 pixels 25, 6.1, 2.6,
// 1.1, 0.5 and 0.2 percent mark another letter, and 0, 48, 63, 74, 82 and 89 percent open the word.
func TestFingers(t *testing.T) {
	const passages, sigma, most = 30, 6, .03
	s := serve(t, "/", built(t))
	code := bundled(t, fingers)
	text, err := theText()
	if err != nil {
		t.Fatal(err)
	}
	inEngines(t, func(t *testing.T, b engine.Browser) {
		p := newTab(t, b)
		var n fingersSeen
		for i := range passages {
			v, upTo := passageFrom(text, len(text.Verses)*i/passages)
			p.lines(s, rule, v.Surah, v.Ayah, upTo)
			eval[any](p, code)
			x := eval[fingersSeen](p, fmt.Sprintf(`taps({ s: %d, a: %d }, { s: %[1]d, a: %[3]d }, %[4]d, %[5]d)`, v.Surah, v.Ayah, upTo, sigma, i+1))
			n = fingersSeen{n.Taps + x.Taps, n.Narrow + x.Narrow, n.Plain + x.Plain, n.Wrong + x.Wrong, n.Opens + x.Opens, n.Other + x.Other, n.Large + x.Large}
		}
		part := func(x int) float64 { return float64(x) / float64(n.Taps) }
		t.Logf("%d taps, %.1f%% at letters narrower than 24 pixels: the nearest letter is another at %.2f%%; now %.2f%% mark another and %.1f%% open the word (%.2f%% another word), where %.2f%% mark another",
			n.Taps, 100*part(n.Narrow), 100*part(n.Plain), 100*part(n.Wrong), 100*part(n.Opens), 100*part(n.Other), 100*part(n.Large))
		if n.Taps < 5000 || part(n.Plain) < .1 {
			t.Error("too few taps, or hardly one that misses: this measure sees nothing")
		}
		if part(n.Wrong+n.Large) > most {
			t.Errorf("%.2f%% of the taps mark another letter, want %.0f%% at most", 100*part(n.Wrong+n.Large), 100*most)
		}
	})
}

// passageFrom is a passage of twenty words or more that begins with a verse, as far as the surah goes.
func passageFrom(text *mushaf.Text, first int) (from mushaf.Verse, upTo int) {
	from, words := text.Verses[first], 0
	for _, v := range text.Verses[first:] {
		if v.Surah != from.Surah || words >= 20 {
			break
		}
		words += len(v.Words)
		upTo = v.Ayah
	}
	return from, upTo
}

// Which lines to open: near the learner's place, about three lines of a sheet, with most places of the rule.
import type { Catalogue, Lines, Ref, Verse } from '../types.ts';
import { Stops } from '../text/stops.ts';

/** Words of about three lines, and the most that are still one short sitting. */
const FEW = 12, MANY = 30;

export const places = (verses: Verse[], rule: number) => {
  const stops = new Stops(verses);
  return verses.reduce((n, v, i) => n + v.events.filter((e) => e.rule === rule && !e.unwritten && stops.holds(i, e)).length, 0);
};

/** Places that make good practice: more than these in one sitting tire a child. */
const ENOUGH = 7;

/** Places that a verse's distance outweighs: near the place first, then anywhere in the surah. */
const NEAR = .5, FAR = .05;

/** Fewer places than these are worth looking further for. */
const FEWEST = 3;

/** The run of verses of one surah, starting at or after the place, with most places of the rule; -1 for any lines. */
export function best(verses: Verse[], rule: number, from: number, cost = NEAR): { first: number; last: number; n: number } {
  let top = { first: from, last: from, n: -1 };
  const worth = (n: number, away: number) => Math.min(n, ENOUGH) - away * cost;
  for (let i = from; i < verses.length; i++) {
    let size = 0, j = i;
    while (j < verses.length && (size < FEW || j === i)) {
      const add = verses[j]!.words.length;
      if (j > i && size + add > MANY) break;
      size += add;
      j++;
    }
    const n = rule < 0 ? 0 : places(verses.slice(i, j), rule);
    // A verse further on must be worth leaving the place for; beyond a handful, more places are no gain.
    if (top.n < 0 || worth(n, i - from) > worth(top.n, top.first - from)) top = { first: i, last: j - 1, n };
    if (rule < 0 || i - from > 60) break;
  }
  return top;
}

/** Looks through this surah and the next few for lines that have the rule; the place itself when none has. */
export async function choose(c: Catalogue, at: Ref, rule: string, load: (s: number) => Promise<Verse[]>): Promise<Lines & { n: number }> {
  const r = c.rules.findIndex((x) => x.id === rule), near = c.juz[29]?.[0] ?? 78;
  let first: (Lines & { n: number }) | undefined;
  for (let k = 0, s = at.s; k < 12; k++, s = s < c.surahs.length ? s + 1 : near) {
    const vs = await load(s), start = k === 0 ? Math.min(at.a, vs.length) - 1 : 0;
    let b = best(vs, r, start);
    if (r >= 0 && b.n < FEWEST) b = best(vs, r, start, FAR);
    const l = { rule, from: { s, a: b.first + 1 }, to: { s, a: b.last + 1 }, n: Math.max(b.n, 0) };
    if (r < 0 || b.n >= FEWEST) return l;
    if (!first || l.n > first.n) first = l;
  }
  return first!;
}

/** The place after the lines; after the last surah, the start of the last juz. */
export function after(c: Catalogue, to: Ref): Ref {
  if (to.a < c.surahs[to.s - 1]!.count) return { s: to.s, a: to.a + 1 };
  if (to.s < c.surahs.length) return { s: to.s + 1, a: 1 };
  const [s, a] = c.juz[29] ?? [78, 1];
  return { s, a };
}

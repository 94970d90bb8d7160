// What an answer sheet shows: for every letter the rules that act on it under the default stops, and the count held.
import { order } from '../plan/ladder.ts';
import { counts } from '../text/counts.ts';
import { Stops } from '../text/stops.ts';
import type { Catalogue, Lengths, Verse } from '../types.ts';
import type { Show } from './options.ts';

/** Letter l of a word: the rules on it, by index, the one whose colour is shown first; counts in the same order. */
export interface Cell { l: number; rules: number[]; counts: number[] }

/** Cells by verse and word; how many places each rule has. */
export interface Marks { cells: Cell[][][]; totals: Map<number, number> }

/** The rules to show, by index, in teaching order with the one in hand first. */
export function shown(c: Catalogue, show: Show, focus: string, taught: ReadonlySet<string>): number[] {
  const index = new Map(c.rules.map((r, i) => [r.id, i]));
  const all = order(c).filter((r) => r.id !== focus && (show === 'all' || (show === 'learnt' && taught.has(r.id))));
  return [...index.has(focus) ? [focus] : [], ...all.map((r) => r.id)].map((id) => index.get(id)!);
}

export function marks(c: Catalogue, verses: Verse[], rules: number[], settings: Lengths): Marks {
  const rank = new Map(rules.map((r, i) => [r, i])), stops = new Stops(verses), totals = new Map(rules.map((r) => [r, 0]));
  const cells = verses.map((verse, v) => {
    const words: Cell[][] = verse.words.map(() => []);
    for (const e of verse.events) {
      if (!rank.has(e.rule) || e.unwritten || !stops.holds(v, e)) continue;
      totals.set(e.rule, totals.get(e.rule)! + 1);
      const here = words[e.w]!, n = counts(c.rules[e.rule]!, e, settings).want;
      const cell = here.find((x) => x.l === e.l);
      if (!cell) { here.push({ l: e.l, rules: [e.rule], counts: [n] }); continue; }
      const at = cell.rules.findIndex((r) => rank.get(r)! > rank.get(e.rule)!), to = at < 0 ? cell.rules.length : at;
      cell.rules.splice(to, 0, e.rule);
      cell.counts.splice(to, 0, n);
    }
    return words.map((w) => w.sort((a, b) => a.l - b.l));
  });
  return { cells, totals };
}

// No i, l or o: on paper they are read as figures.
const KEYS = 'abcdefghjkmnpqrstuvwxyz';

/** Short names that tell rules apart without colour: a, b, … z, then aa, ab, …; none where there is but one rule. */
export function keys(m: Marks): Map<number, string> {
  const present = [...m.totals].filter(([, n]) => n > 0).map(([r]) => r);
  if (m.totals.size < 2) return new Map();
  return new Map(present.map((r, i) => [r, i < KEYS.length ? KEYS[i]! : KEYS[Math.floor(i / KEYS.length) - 1]! + KEYS[i % KEYS.length]!]));
}

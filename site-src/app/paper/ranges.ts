// How many places each rule has in every ten verses, as tables that pages hold.
import type { Hit } from '../marking/check.ts';
import type { Verse } from '../types.ts';

/** Verses a to b of surah s, which are those from and to in a list of verses. */
export interface VerseRange {
  s: number;
  a: number;
  b: number;
  from: number;
  to: number;
}

const TEN = 10;
/** Fewer verses than this at a surah's end go with those before them. */
const LEFT = 4;

/** Every verse once, in order: by tens, none over the end of a surah. */
export function ranges(verses: Verse[]): VerseRange[] {
  const out: VerseRange[] = [];
  verses.forEach(({ s, a }, v) => {
    const last = out.at(-1);
    const left = verses.findLastIndex((x) => x.s === s) - v + 1;
    const joins = last?.s === s && (a % TEN !== 1 || left < LEFT);
    if (joins) Object.assign(last, { b: a, to: v });
    else out.push({ s, a, b: a, from: v, to: v });
  });
  return out;
}

/** Places of each rule in each range; hits are by verse and word. */
export const countIn = (list: VerseRange[], hits: Hit[][][], rules: number[]): number[][] =>
  list.map(({ from, to }) => {
    const here = hits.slice(from, to + 1).flat(2);
    return rules.map((r) => here.filter((h) => h.e.rule === r).length);
  });

/** A table: from one range to another, from one rule to another, the second not included. */
export interface Table {
  rows: [number, number];
  rules: [number, number];
}

/** Measures in millimetres of a page's room, and of a table's parts. */
export interface Room {
  width: number;
  height: number;
  name: number;
  column: number;
  row: number;
  gap: number;
}

/** How many rows the head of a table takes, which has the rules' shapes and keys. */
const HEAD = 2;

/** All tables by page, side by side where there is room. */
export function tables(rows: number, rules: number, r: Room): Table[][] {
  if (!rules) return [];
  const most = Math.max(1, Math.floor((r.width - r.name) / r.column));
  const blocks = Math.ceil(rules / most);
  const wide = Math.ceil(rules / blocks);
  const across = Math.max(1, Math.floor((r.width + r.gap) / (r.name + wide * r.column + r.gap)));
  const high = Math.max(1, Math.floor(r.height / r.row) - HEAD);
  const all: Table[] = [];
  for (let k = 0; k < rules; k += wide)
    for (let i = 0; i < rows; i += high)
      all.push({ rows: [i, Math.min(rows, i + high)], rules: [k, Math.min(rules, k + wide)] });
  return Array.from({ length: Math.ceil(all.length / across) }, (_, i) =>
    all.slice(i * across, (i + 1) * across),
  );
}

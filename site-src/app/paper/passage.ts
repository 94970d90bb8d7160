// Verses, surahs, pages and juz as a first and a last verse.
import type { Catalogue, Ref } from '../types.ts';

export const PARTS = ['verses', 'surah', 'page', 'juz'] as const;
export type Part = (typeof PARTS)[number];
/** A part of the text that has a number. */
export type Whole = Exclude<Part, 'verses'>;

/** More verses than this are no sheet any more; every juz, page and surah has fewer. */
export const MOST = 600;

export const inside = (c: Catalogue, r: Ref) =>
  r.s >= 1 && r.s <= c.surahs.length && r.a >= 1 && r.a <= c.surahs[r.s - 1]!.count;

/**
 * How many verses lie from one to another, both included; less than 1 when they are in the wrong
 * order.
 */
export function span(c: Catalogue, from: Ref, to: Ref): number {
  if (to.s < from.s) return 0;
  let n = to.a - from.a + 1;
  for (let s = from.s; s < to.s; s++) n += c.surahs[s - 1]!.count;
  return n;
}

const before = (c: Catalogue, s: number, a: number): Ref =>
  a > 1 ? { s, a: a - 1 } : { s: s - 1, a: c.surahs[s - 2]?.count ?? 1 };

/** How many there are in the text. */
export const partCount = (c: Catalogue, by: Whole): number =>
  ({ surah: c.surahs, page: c.pages, juz: c.juz })[by].length;

/** The nth surah, page or juz, from 1; undefined when there is none. */
export function part(c: Catalogue, by: Whole, n: number): { from: Ref; to: Ref } | undefined {
  if (by === 'surah')
    return c.surahs[n - 1] && { from: { s: n, a: 1 }, to: { s: n, a: c.surahs[n - 1]!.count } };
  const list = by === 'juz' ? c.juz : c.pages;
  const at = list[n - 1];
  const next = list[n];
  if (!at) return undefined;
  const end = c.surahs.length;
  return {
    from: { s: at[0], a: at[1] },
    to: next ? before(c, next[0], next[1]) : { s: end, a: c.surahs[end - 1]!.count },
  };
}

/** The number of the part in which a verse is: the last that begins at or before it. */
export function partAt(c: Catalogue, by: Whole, { s, a }: Ref): number {
  if (by === 'surah') return s;
  const begun = (by === 'juz' ? c.juz : c.pages).filter(
    (x) => x[0] < s || (x[0] === s && x[1] <= a),
  );
  return Math.max(1, begun.length);
}

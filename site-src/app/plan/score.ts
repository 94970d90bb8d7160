// What a passage is worth to a child. The weights are explained in
// generator/internal/plan/score.go.
import { Tally } from './counter.ts';
import type { Order } from './order.ts';
import { PauseEnd, type Phrases } from './phrases.ts';
import type { Weights } from './search.ts';

export interface Query {
  focus: number[]; // rules to find and mark; none for plain reading
  known: number[]; // rules taught
  due: number[]; // rules due for review, the most overdue first
  place: number; // verse where the child is, from 0 over the whole text
  back?: boolean; // the child reads surah after surah backwards, each of them forwards
  from?: number; // first and last verse to look in
  to?: number;
  used: [number, number][]; // phrases of the passages of the last days, both included
  level: number; // lessons taught
  min?: number; // words
  max?: number;
  short?: number; // words down to which a passage may be shortened for its places
  want?: number; // places of the focus that are enough
  fewest?: number; // places of the focus aimed at
  most?: number;
  best?: number; // passages asked for
}

export const MIN = 15;
export const MAX = 30;
export const ENOUGH = 4;
export const BEST = 10;
export const MAX_DUE = 8;
export const REST_DAYS = 14;
const BEGINNER = 4;

/** Whole division of numbers that are not negative. */
export const div = (a: number, b: number) => (a / b) | 0;

/** What passages earn; near counts from the verse at which the child is, as the child reads. */
export function weights(
  x: Phrases,
  q: Query & { min: number; max: number; short: number },
  order: Order,
): Weights {
  const due = q.due.slice(0, MAX_DUE);
  const tally = new Tally(x, [...q.known, ...q.focus], due);
  const near = q.focus.length ? 4 : 8;
  const long = Math.max(0, BEGINNER - q.level);
  const { fewest = 0, most = Infinity } = q;
  const places = (f: number) =>
    30 * Math.min(f, 8) +
    6 * Math.min(Math.max(f - 8, 0), 8) -
    10 * Math.max(0, fewest - f) -
    60 * Math.max(0, f - most);
  const begins = (words: number, f: number): number => {
    const far = words < 0 ? -4 * words : words;
    return (
      places(f) + near * Math.max(0, 100 - div(far, 12)) - div(far, 500) + (far ? 0 : 15 * near)
    );
  };
  return {
    most(a, b, f) {
      const [from, to] = order.between(a, b);
      const whole = a < b || x.first[a] === 0;
      return (
        // Up to most another place is worth more, and less beyond it.
        begins(from > 0 ? from : to < 0 ? to : 0, Math.min(f, most)) +
        (whole ? 30 : 0) +
        3 * 100 +
        25 * due.length +
        20
      );
    },
    exact(a, b, f) {
      const words = x.at[b + 1]! - x.at[a]!;
      const has = tally.of(a, b);
      let s = begins(order.on(a), f) + 25 * has.due;
      if (has.total) s += 3 * div(100 * has.readable, has.total);
      if (x.first[a] === 0) s += 30;
      if (x.end[b] !== PauseEnd) s += 20;
      s -= div(
        long * Math.max(0, div(100 * (x.lettersAt[b + 1]! - x.lettersAt[a]!), words) - 300),
        10,
      );
      if (q.short < q.min) s -= 4 * Math.max(0, q.min - words);
      return s - Math.max(0, words - q.min) - 8 * Math.max(0, words - q.max);
    },
  };
}

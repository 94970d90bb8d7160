// What a passage is worth to a child. The weights are explained in generator/internal/plan/rank.go.
import { allOf, Channel } from './counter.ts';
import { PauseEnd, type Phrases } from './phrases.ts';

export interface Query {
  focus: number[]; // rules to find and mark; none for plain reading
  known: number[]; // rules taught
  due: number[]; // rules due for review, the most overdue first
  place: number; // verse where the child is, from 0 over the whole text
  from?: number; // first and last verse to look in
  to?: number;
  used: [number, number][]; // phrases of the passages of the last days, both included
  level: number; // lessons taught
  min?: number; // words
  max?: number;
  want?: number; // places of the focus that are enough
  best?: number; // passages asked for
}

export const MIN = 15, MAX = 30, ENOUGH = 4, BEST = 10, MAX_DUE = 8, REST_DAYS = 14, BEGINNER = 4;

/** Whole division of numbers that are not negative. */
export const div = (a: number, b: number) => (a / b) | 0;

/** The points of a passage with f places of the focus. */
export function scorer(x: Phrases, q: Query & { min: number; max: number }, place: number) {
  const every = allOf(x), known = new Channel(x, [...new Set(q.known)].filter((r) => !q.focus.includes(r)));
  const due = q.due.slice(0, MAX_DUE).map((r) => new Channel(x, [r])), near = q.focus.length ? 4 : 8, long = Math.max(0, BEGINNER - q.level);
  return (a: number, b: number, f: number): number => {
    const words = x.at[b + 1]! - x.at[a]!, total = every.places(a, b);
    let far = x.at[a]! - place, s = 30 * Math.min(f, 8) + 6 * Math.min(Math.max(f - 8, 0), 8);
    if (total) s += 3 * div(100 * (f + known.places(a, b)), total);
    for (let d = 0; d < due.length; d++) if (due[d]!.places(a, b) > 0) s += 25;
    if (far < 0) far *= -4;
    s += near * Math.max(0, 100 - div(far, 12)) - div(far, 500);
    if (far === 0) s += 15 * near;
    if (x.first[a] === 0) s += 30;
    if (x.end[b] !== PauseEnd) s += 20;
    s -= div(long * Math.max(0, div(100 * (x.lettersAt[b + 1]! - x.lettersAt[a]!), words) - 300), 10);
    return s - Math.max(0, words - q.min) - 8 * Math.max(0, words - q.max);
  };
}

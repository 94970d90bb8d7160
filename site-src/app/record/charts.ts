// What the charts of the record show, as numbers.
import type { Entry } from '../types.ts';
import { shareOf, tallies } from './totals.ts';
import { dateOf, dayNumber, today } from './week.ts';

/** Weeks that the charts show. */
export const WEEKS = 12;

/**
 * A week of the record: its first day, a Monday as in ISO 8601, how many sessions it had, and in
 * those that say it, how many places were found of how many.
 */
export interface Week {
  from: string;
  sessions: number;
  found: number;
  of: number;
}

/** The Monday on or before a day. 1 January 1970 was a Thursday. */
export function monday(day: string): string {
  const n = dayNumber(day);
  return dateOf(n - ((n + 3) % 7));
}

/** The last weeks, the oldest first, that of end last; sessions may come in any order. */
export function weeks(sessions: Entry[], end = today()): Week[] {
  const first = dayNumber(monday(end)) - (WEEKS - 1) * 7;
  const list = Array.from({ length: WEEKS }, (_, i) => ({
    from: dateOf(first + i * 7),
    sessions: 0,
    found: 0,
    of: 0,
  }));
  for (const s of sessions) {
    if (s.day < list[0]!.from || s.day > end) continue;
    const week = list[Math.floor((dayNumber(s.day) - first) / 7)];
    if (!week) continue;
    const { found, of } = shareOf(tallies(s));
    week.sessions++;
    week.found += found;
    week.of += of;
  }
  return list;
}

/** Percent found of all there were, undefined where nobody knows; 100 only where all were found. */
export const percent = ({ found, of }: { found: number; of: number }) =>
  of ? Math.floor((100 * found) / of) : undefined;

/** A bar of a chart, in units of its drawing, whose top is 0. */
export interface Bar {
  x: number;
  y: number;
  wide: number;
  high: number;
}

/**
 * A bar for each value, from the side where reading begins, on a base line; most is the value that
 * reaches the top.
 */
export function barsOf(
  values: number[],
  { most, wide, top, base }: { most: number; wide: number; top: number; base: number },
): Bar[] {
  const step = wide / values.length;
  return values.map((n, i) => {
    const high = most > 0 ? Math.round(((base - top) * n * 100) / most) / 100 : 0;
    return { x: Math.round(i * step), y: base - high, wide: Math.round(step * 0.7), high };
  });
}

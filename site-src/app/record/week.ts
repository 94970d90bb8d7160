// Dates of the record. A day is the learner's local date, YYYY-MM-DD.
import type { Entry } from '../types.ts';

const DAY = 864e5;

/** Days since 1970 of a date, and the date of such a number. */
export const dayNumber = (d: string) => Math.round(Date.parse(`${d}T00:00Z`) / DAY);
export const dateOf = (day: number) => new Date(day * DAY).toISOString().slice(0, 10);

export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/**
 * The last seven days, the oldest first, each with its number of sessions; these are newest first,
 * as the store gives them.
 */
export function week(sessions: Entry[], end = today()): { day: string; n: number }[] {
  const ago = (n: number) => dateOf(dayNumber(end) - n);
  const days = new Map(Array.from({ length: 7 }, (_, i) => [ago(6 - i), 0]));
  const before = ago(8); // a local day is off by one at most
  for (const { day, at } of sessions) {
    if (at < before) break;
    if (days.has(day)) days.set(day, days.get(day)! + 1);
  }
  return [...days].map(([day, n]) => ({ day, n }));
}

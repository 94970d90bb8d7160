// What the record says of each rule.
import type { Entry } from '../types.ts';

/**
 * Sessions that marked a rule; places found of all there were, and of those in the last sessions;
 * the day of the last one.
 */
export interface Total {
  rule: string;
  sessions: number;
  days: number;
  found: number;
  of: number;
  lastFound: number;
  lastOf: number;
  day: string;
}

/** Sessions that count as the last ones. */
export const LAST = 2;

/**
 * A total for every rule that was marked, the one met last first; sessions are newest first, as the
 * store gives them.
 */
export function totals(sessions: Entry[]): Total[] {
  const by = new Map<string, Entry[]>();
  const sum = (list: Entry[], f: (s: Entry) => number) => list.reduce((n, s) => n + f(s), 0);
  for (const s of sessions) {
    if (!s.rule) continue;
    const list = by.get(s.rule);
    if (list) list.push(s);
    else by.set(s.rule, [s]);
  }
  return [...by].map(([rule, all]) => {
    const last = all.slice(0, LAST);
    const places = (s: Entry) => s.found + s.missed;
    return {
      rule,
      sessions: all.length,
      days: new Set(all.map((s) => s.day)).size,
      found: sum(all, (s) => s.found),
      of: sum(all, places),
      lastFound: sum(last, (s) => s.found),
      lastOf: sum(last, places),
      day: all[0]!.day,
    };
  });
}

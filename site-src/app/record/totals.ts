// What the record says of each rule.
import { groupBy } from '../group.ts';
import type { Entry, Tally } from '../types.ts';

/**
 * Sessions that marked a rule; places found of all there were, and of those in the last sessions that
 * say how many; the day of the last one.
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

type Tallied = Pick<Entry, 'rule' | 'found' | 'missed' | 'also'>;

/** The rules that a session marked, that of the lines first. */
export const tallies = ({ rule, found, missed, also = [] }: Tallied): Tally[] =>
  rule ? [{ rule, found, missed }, ...also] : also;

/** Places found of all there were, of some tallies. */
export const shareOf = (list: Pick<Tally, 'found' | 'missed'>[]) => {
  const found = list.reduce((n, x) => n + x.found, 0);
  return { found, of: found + list.reduce((n, x) => n + x.missed, 0) };
};

/**
 * A total for every rule that was marked, the one met last first; sessions are newest first, as the
 * store gives them.
 */
export function totals(sessions: Entry[]): Total[] {
  const marked = sessions.flatMap((s) => tallies(s).map((x) => ({ ...x, day: s.day })));
  return [...groupBy(marked, (x) => x.rule)].map(([rule, all]) => {
    const last = shareOf(all.filter((x) => x.found + x.missed > 0).slice(0, LAST));
    return {
      rule,
      sessions: all.length,
      days: new Set(all.map((x) => x.day)).size,
      ...shareOf(all),
      lastFound: last.found,
      lastOf: last.of,
      day: all[0]!.day,
    };
  });
}

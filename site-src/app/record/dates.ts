// Dates of the rules that were taught, corrected by hand. Pure.
import { date } from '../store/checks.ts';
import type { Taught } from '../types.ts';

/** What is wrong with a date, as a key of the string catalogue below "dates.". */
export type Wrong = 'no-date' | 'future' | 'order';

/**
 * The entries of one lesson's rules with a date corrected, or what is wrong with it. A rule is
 * known on the day it was begun at the soonest, and nothing was done on a day that has not come.
 */
export function corrected(
  entries: readonly Taught[],
  field: 'since' | 'known',
  typed: string,
  today: string,
): Taught[] | Wrong {
  if (!date(typed)) return 'no-date'; // while a year is typed, it has fewer digits
  if (typed > today) return 'future';
  const all = entries.map((x) => ({ ...x, [field]: field === 'known' && !x.known ? '' : typed }));
  return all.some((x) => x.known && x.known < x.since) ? 'order' : all;
}

// Dates of the rules that were taught, corrected by hand. Pure.
import type { Taught } from '../types.ts';

/** What is wrong with a date, as a key of the string catalogue below "dates.". */
export type Wrong = 'no-date' | 'future' | 'order';

const DATE = /^\d{4}-\d\d-\d\d$/;

/** No record has an earlier day; while a year is typed, it has fewer digits. */
const FIRST = '1970-01-01';

/**
 * The entries of one lesson's rules with a date corrected, or what is wrong with it. A rule is
 * known on the day it was begun at the soonest, and nothing was done on a day that has not come.
 */
export function corrected(
  entries: readonly Taught[],
  field: 'since' | 'known',
  date: string,
  today: string,
): Taught[] | Wrong {
  if (!DATE.test(date) || Number.isNaN(Date.parse(date)) || date < FIRST) return 'no-date';
  if (date > today) return 'future';
  const all = entries.map((x) => ({ ...x, [field]: field === 'known' && !x.known ? '' : date }));
  return all.some((x) => x.known && x.known < x.since) ? 'order' : all;
}

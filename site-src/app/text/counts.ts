// The count a rule is held, under the two settings teachers differ in.
import type { Event, Rule, Settings } from '../types.ts';

const FOUR_OR_FIVE = new Set(['madd-muttasil', 'madd-munfasil', 'madd-silah-long']);
const AT_STOP = new Set(['madd-arid', 'madd-lin']);

// Lengths that some teachers accept in single places, which the event's detail names.
const PLACES: Record<string, number[]> = { 'four-or-six': [4], 'two-or-six': [2], 'six-at-stop': [6] };

/** The count expected for an event (0 for none), and every count that some teachers accept. detail is the event's, by id. */
export function counts(rule: Rule, e: Event, s: Pick<Settings, 'madd' | 'arid'>, detail = ''): { want: number; also: number[] } {
  if (!e.count) return { want: 0, also: [] };
  const want = FOUR_OR_FIVE.has(rule.id) ? s.madd : AT_STOP.has(rule.id) ? s.arid : e.count;
  const others = [...rule.id === 'madd-lazim-letter' ? [] : rule.counts, ...PLACES[detail] ?? []]; // of those letters few have two ways
  return { want, also: [...new Set([e.count, ...others])].filter((c) => c && c !== want) };
}

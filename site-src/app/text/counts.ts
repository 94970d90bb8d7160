// The count a rule is held, under the two settings teachers differ in.
import type { Event, Rule, Settings } from '../types.ts';

const FOUR_OR_FIVE = new Set(['madd-muttasil', 'madd-munfasil', 'madd-silah-long']);
const AT_STOP = new Set(['madd-arid', 'madd-lin']);

/** The count expected for an event (0 for none), and every count that some teachers accept. */
export function counts(rule: Rule, e: Event, s: Pick<Settings, 'madd' | 'arid'>): { want: number; also: number[] } {
  if (!e.count) return { want: 0, also: [] };
  const want = FOUR_OR_FIVE.has(rule.id) ? s.madd : AT_STOP.has(rule.id) ? s.arid : e.count;
  // Of the opening letters only those with two ways, as the event's detail says, may be held otherwise.
  const others = rule.id === 'madd-lazim-letter' && !e.detail ? [] : rule.counts;
  return { want, also: [...new Set([e.count, ...others])].filter((c) => c && c !== want) };
}

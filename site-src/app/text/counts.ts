// The lengths that are right for an event, in counts. The catalogue says which.
import type { Detail, Event, Length, Lengths, Rule } from '../types.ts';

/**
 * The count expected for an event (0 for none), and every other count that some teachers accept.
 * stop: whether the reader stops after the event's word; without it, what is accepted only there or
 * only elsewhere is left out.
 */
export function counts(
  rule: Rule,
  e: Event,
  s: Lengths,
  detail?: Detail,
  stop?: boolean,
): { want: number; also: number[] } {
  if (!e.count) return { want: 0, also: [] };
  const want = rule.setting ? s[rule.setting] : e.count;
  const here = !detail?.at || stop === (detail.at === 'stop');
  const all = [e.count, ...(rule.setting ? rule.counts : []), ...((here && detail?.counts) || [])];
  return { want, also: [...new Set(all)].filter((c) => c !== want) };
}

/** Each length once, the shortest first. */
export const sorted = (list: number[]) => [...new Set(list)].sort((a, b) => a - b);

/** The lengths that a family chooses from. */
export const choices = (rules: Rule[], setting: Length) =>
  sorted(rules.flatMap((r) => (r.setting === setting ? r.counts : [])));

// How many places a child is to find in a session. The figures are ours; DEVELOPERS.md says how
// they were chosen.
import type { Learner, Load } from '../types.ts';

export const LOADS: Load[] = ['few', 'usual', 'many'];
export const DEFAULT: Load = 'few';

/** Sessions of a rule that are its first ones. */
export const FIRST = 3;

/** Words down to which lines may be shortened for their places: a short verse or half of one. */
const SHORT = 4;

/** Places in the first sessions of a rule, and after them. */
export const PLACES: Record<Load, { first: [number, number]; later: [number, number] }> = {
  few: { first: [4, 7], later: [8, 12] },
  usual: { first: [6, 10], later: [12, 18] },
  many: { first: [8, 14], later: [16, 24] },
};

/** Places aimed at, and lines that may be shortened, in a session of a rule that has had so many. */
export function loadOf(l: Pick<Learner, 'load'>, sessions: number) {
  const [fewest, most] = PLACES[l.load ?? DEFAULT][sessions < FIRST ? 'first' : 'later'];
  return { fewest, most, short: SHORT };
}

// How far a learner is with a unit.
import type { Readiness } from './ready.ts';

export type State = 'not-yet' | 'learning' | 'known' | 'due';

/** A unit as it stands with a learner: dates are day numbers, -1 for none. */
export interface Standing {
  unit: number;
  state: State;
  since: number;
  known: number;
  readiness: Readiness | undefined;
  due: number;
}

// Lines that several learners read together.
import * as state from '../state.ts';
import type { Learner } from '../types.ts';
import type { Practice } from './core.ts';

/** Those who read the lines beside their learner, as far as they are still there. */
export function others({ draft: { learner, together = [] } }: Practice): Learner[] {
  const there = state.readers();
  return together.flatMap((id) => there.find((x) => x.id === id && id !== learner) ?? []);
}

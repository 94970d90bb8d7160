// Lines that several learners read together.
import * as state from '../state.ts';
import type { Learner } from '../types.ts';
import type { Practice } from './core.ts';

/** Those who read the lines beside their learner, as far as they are still there. */
export const others = ({ draft }: Practice): Learner[] =>
  state.readers().filter((x) => x.id !== draft.learner && draft.together?.includes(x.id));

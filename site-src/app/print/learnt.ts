// The rules the learner has been taught, in teaching order.
import { order } from '../plan/ladder.ts';
import * as state from '../state.ts';
import type { Rule } from '../types.ts';

export function learnt(): Rule[] {
  const l = state.learner(),
    taught = new Set(l ? state.taughtOf(l.id).map((x) => x.rule) : []);
  return order(state.get().catalogue).filter((r) => taught.has(r.id));
}

// The rules a learner has been taught, in teaching order.
import { rulesInOrder } from '../plan/ladder.ts';
import type { Catalogue, Rule, Taught } from '../types.ts';

export function learnt(c: Catalogue, taught: Taught[]): Rule[] {
  const ids = new Set(taught.map((x) => x.rule));
  return rulesInOrder(c).filter((r) => ids.has(r.id));
}

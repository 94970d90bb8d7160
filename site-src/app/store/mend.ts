// Learners as far as they are whole, so that what belongs to them can still be found.
import type { Learner } from '../types.ts';
import { has, SHAPES, sound } from './shapes.ts';

/** A learner in whom what is damaged begins anew; undefined where not even the id is left. */
export function learner(x: unknown): Learner | undefined {
  const now = new Date().toISOString();
  const l = {
    name: '',
    place: { s: 78, a: 1 },
    settled: true,
    made: now,
    updated: now,
    ...sound('learners', x),
  };
  return has(l, SHAPES.learners.fields) ? (l as unknown as Learner) : undefined;
}

/** Learners without a name, for what belongs to nobody. */
export function heirs(learners: Learner[], belongings: { learner: string }[]): Learner[] {
  const known = new Set(learners.map((l) => l.id)),
    lost = new Set(belongings.map((x) => x.learner).filter((id) => !known.has(id)));
  return [...lost].map((id) => learner({ id })!);
}

// Makes learners whole again, so that what belongs to them can still be found.
import type { Learner } from '../types.ts';
import { isValid, validFields } from './validate.ts';

/** A learner in whom damaged fields begin anew; undefined where not even the id is left. */
export function repairLearner(x: unknown): Learner | undefined {
  const now = new Date().toISOString();
  const learner = {
    name: '',
    place: { s: 78, a: 1 },
    settled: true,
    made: now,
    updated: now,
    ...validFields('learners', x),
  };
  return isValid('learners', learner) ? learner : undefined;
}

/** Learners without a name, for records whose learner is not among the known. */
export function replaceLost(known: Learner[], belongings: { learner: string }[]): Learner[] {
  const ids = new Set(known.map((learner) => learner.id));
  const lost = new Set(belongings.map((record) => record.learner).filter((id) => !ids.has(id)));
  return [...lost].map((id) => repairLearner({ id })!);
}

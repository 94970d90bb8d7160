// Adds a learner.
import { newId } from '../store/id.ts';
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import type { Learner } from '../types.ts';
import { keep } from './keep.ts';
import { changeSettings } from './settings.ts';

/** Characters of a name that are kept. */
export const LONGEST = 40;

/** A name as it is kept. */
export const nameOf = (typed: string) => typed.trim().slice(0, LONGEST);

/** Where a learner begins, in which direction reading goes on, and the colour. */
export type Beginning = Pick<Learner, 'place' | 'direction' | 'colour'>;

/** Reading on from where the last thirtieth of the text begins. */
export function lastJuz(): Beginning {
  const [s, a] = state.get().catalogue.juz[29] ?? [78, 1];
  return { place: { s, a } };
}

function newLearner(name: string, beginning: Beginning): Learner {
  const now = new Date().toISOString();
  return {
    id: newId(),
    name: nameOf(name),
    ...beginning,
    settled: false,
    made: now,
    updated: now,
  };
}

/** Puts the record of a learner on the screens, from now on. */
export const choose = (id: string) => changeSettings({ learner: id });

/** Keeps a new learner and takes it in hand; whether the device kept it. */
export async function add(name: string, beginning = lastJuz()): Promise<boolean> {
  const l = newLearner(name, beginning);
  if (!(await keep(() => store.addLearner(l)))) return false;
  await choose(l.id);
  return true;
}

// Learners, and what belongs to them.
import type { Learner, Own } from '../types.ts';
import { forgetRecord } from './mark.ts';
import type { Writing } from './schema.ts';
import { type Patch, patched } from './patch.ts';
import { modify, write } from './transaction.ts';

/** All that a learner has under keys of more than one part. */
export const keysOf = (learner: string) => IDBKeyRange.bound([learner], [learner, []]);

/** Keeps a learner, who is given what was marked while there was none. */
export const addLearner = (learner: Learner) =>
  write(['learners', 'drafts'], async (tx) => {
    await tx.objectStore('learners').put(learner);
    const drafts = tx.objectStore('drafts');
    for (const draft of await drafts.getAll(keysOf(''))) {
      await drafts.delete(['', draft.at]);
      await drafts.put({ ...draft, learner: learner.id });
    }
  });

/** Changes some fields of a learner; one who is gone stays so. */
export const changeLearner = (id: string, patch: Patch<Learner>) =>
  write(['learners'], (tx) => patchLearner(tx, id, patch));

/** Changes settings of a learner's own. */
export const changeOwn = (id: string, patch: Partial<Own>) =>
  write(['learners'], (tx) =>
    modify(
      tx,
      'learners',
      id,
      (stored) =>
        stored &&
        patched(stored, { own: { ...stored.own, ...patch }, updated: new Date().toISOString() }),
    ),
  );

/** changeLearner within a write. */
export const patchLearner = (tx: Writing<'learners'>, id: string, patch: Patch<Learner>) =>
  modify(
    tx,
    'learners',
    id,
    (stored) => stored && patched(stored, { updated: new Date().toISOString(), ...patch }),
  );

/** Within a write: whether the learner is still there. Nothing is kept for one who is gone. */
export const hasLearner = async (tx: Writing<'learners'>, id: string) =>
  (await tx.objectStore('learners').getKey(id)) !== undefined;

/** Removes a learner with everything that belongs to it; with the last one, also the mark. */
export async function removeLearner(id: string) {
  let left = 0;
  const stores = await write(
    ['learners', 'sessions', 'months', 'taught', 'drafts', 'gone'],
    async (tx) => {
      await tx.objectStore('learners').delete(id);
      left = await tx.objectStore('learners').count();
      const sessions = tx.objectStore('sessions');
      const own = await sessions.index('learner').getAllKeys(id);
      await Promise.all(own.map((key) => sessions.delete(key)));
      for (const store of ['months', 'taught', 'drafts'] as const)
        await tx.objectStore(store).delete(keysOf(id));
      const gone = tx.objectStore('gone');
      for (const x of await gone.getAll()) if (x.learner === id) await gone.delete(x.id);
    },
  );
  if (!left) forgetRecord();
  return stores;
}

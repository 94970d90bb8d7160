// Everything kept on the device goes through here. Other modules see plain values and promises. A
// write changes the fields it means of the record as it is stored, never all of it: another tab may
// have changed the rest.
import type { Settings, Taught } from '../types.ts';
import { hasLearner } from './learners.ts';
import { patched, type Patch } from './patch.ts';
import { modify, write } from './transaction.ts';

export { onConnection } from './connection.ts';
export { draft, drafts, dropDraft, saveDraft, updateDraft } from './drafts.ts';
export { addLearner, changeLearner, changeOwn, removeLearner } from './learners.ts';
export { all, complete, type Kept } from './reading.ts';
export {
  addSession,
  bringBack,
  changeSession,
  type Finished,
  forget,
  removed,
  removeSession,
  saveSessions,
  unsaveSessions,
} from './sessions.ts';

/** Says anew how far some rules of a learner are; those without an entry are not taught. */
export const replaceTaught = (learner: string, rules: string[], entries: Taught[]) =>
  write(['taught', 'learners'], async (tx) => {
    if (!(await hasLearner(tx, learner))) return;
    const updated = new Date().toISOString();
    for (const rule of rules) {
      const entry = entries.find((x) => x.rule === rule) ?? { learner, rule, since: '', known: '' };
      await tx.objectStore('taught').put({ ...entry, updated });
    }
  });

/** Says of rules that they are taught, where that is not said yet. */
export const addTaught = (learner: string, entries: Taught[]) =>
  write(['taught', 'learners'], async (tx) => {
    if (!(await hasLearner(tx, learner))) return;
    const updated = new Date().toISOString();
    for (const entry of entries)
      await modify(tx, 'taught', [learner, entry.rule], (stored) =>
        stored?.since ? stored : { ...entry, updated },
      );
  });

/** Changes some settings. */
export const changeSettings = (patch: Patch<Settings>) =>
  write(['settings'], (tx) =>
    modify(tx, 'settings', 'device', (stored) =>
      patched((stored ?? {}) as Partial<Settings>, patch),
    ),
  );

/** Notes that so many damaged records were told of. */
export const tellDamaged = (n: number) =>
  write(['settings'], (tx) => tx.objectStore('settings').put(n, 'told'));

// Everything kept on the device goes through here. Other modules see plain values and promises.
import type { Draft, Learner, Session, Settings, Taught } from '../types.ts';
import { done, read, write } from './db.ts';

export interface Kept { learners: Learner[]; sessions: Session[]; taught: Taught[]; settings: Partial<Settings> }

/** All that is kept, of every learner. */
export const all = (): Promise<Kept> => read(['learners', 'sessions', 'taught', 'settings'], async (tx) => {
  const [learners, sessions, taught, settings] = await Promise.all([
    done<Learner[]>(tx.objectStore('learners').getAll()), done<Session[]>(tx.objectStore('sessions').getAll()),
    done<Taught[]>(tx.objectStore('taught').getAll()), done<Partial<Settings> | undefined>(tx.objectStore('settings').get('device')),
  ]);
  sessions.sort((a, b) => (a.at < b.at ? 1 : -1));
  return { learners, sessions, taught, settings: settings ?? {} };
});

export const saveLearner = (l: Learner) => write(['learners'], (tx) => { tx.objectStore('learners').put(l); });

/** Removes a learner with everything that belongs to it. */
export const removeLearner = (k: Kept, id: string) => write(['learners', 'sessions', 'taught', 'drafts'], (tx) => {
  tx.objectStore('learners').delete(id);
  for (const s of k.sessions) if (s.learner === id) tx.objectStore('sessions').delete(s.id);
  for (const x of k.taught) if (x.learner === id) tx.objectStore('taught').delete([id, x.rule]);
  tx.objectStore('drafts').delete(id);
});

export const saveSettings = (s: Settings) => write(['settings'], (tx) => { tx.objectStore('settings').put(s, 'device'); });

/** Keeps a finished session with what follows from it: the learner's new place, the rules taught, no draft any more. */
export const saveSession = (s: Session, l: Learner, added: Taught[]) => write(['sessions', 'learners', 'taught', 'drafts'], (tx) => {
  tx.objectStore('sessions').put(s);
  tx.objectStore('learners').put(l);
  for (const x of added) tx.objectStore('taught').put(x);
  tx.objectStore('drafts').delete(l.id);
});

export const putSession = (s: Session) => write(['sessions'], (tx) => { tx.objectStore('sessions').put(s); });
export const dropSession = (id: string) => write(['sessions'], (tx) => { tx.objectStore('sessions').delete(id); });

/** Undoes saveSession: the session and the rules it added go, the learner is as before. */
export const unsaveSession = (id: string, was: Learner, added: Taught[]) => write(['sessions', 'learners', 'taught'], (tx) => {
  tx.objectStore('sessions').delete(id);
  tx.objectStore('learners').put(was);
  for (const x of added) tx.objectStore('taught').delete([x.learner, x.rule]);
});

export const saveTaught = (x: Taught) => write(['taught'], (tx) => { tx.objectStore('taught').put(x); });
export const dropTaught = (learner: string, rule: string) => write(['taught'], (tx) => { tx.objectStore('taught').delete([learner, rule]); });

/** Says anew how far some rules of a learner are; those without an entry are not taught. */
export const replaceTaught = (learner: string, rules: string[], now: Taught[]) => write(['taught'], (tx) => {
  for (const rule of rules) tx.objectStore('taught').delete([learner, rule]);
  for (const x of now) tx.objectStore('taught').put(x);
});

export const draft = (learner: string) => read(['drafts'], (tx) => done<Draft | undefined>(tx.objectStore('drafts').get(learner)));
export const saveDraft = (d: Draft) => write(['drafts'], (tx) => { tx.objectStore('drafts').put(d); });
export const dropDraft = (learner: string) => write(['drafts'], (tx) => { tx.objectStore('drafts').delete(learner); });

/** Adds the records of a backup in one transaction: all or nothing. */
export const merge = (k: Pick<Kept, 'learners' | 'sessions' | 'taught'>) => write(['learners', 'sessions', 'taught'], (tx) => {
  for (const l of k.learners) tx.objectStore('learners').put(l);
  for (const s of k.sessions) tx.objectStore('sessions').put(s);
  for (const x of k.taught) tx.objectStore('taught').put(x);
});

/** Asks the browser not to clear the record when space runs short. */
export async function persist(): Promise<boolean> {
  try {
    return await navigator.storage?.persist?.() ?? false;
  } catch {
    return false;
  }
}

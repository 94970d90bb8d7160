// Sessions that are kept, each with what follows from it.
import type { Draft, Learner, Ref, Session, Taught } from '../types.ts';
import { hasLearner, patchLearner } from './learners.ts';
import { addEntries, removeEntry } from './months.ts';
import { modify, write } from './transaction.ts';

/**
 * Keeps a finished session with what follows from it: the learner's new place, the rules taught, no
 * draft any more. Nothing but the draft changes if it is kept already, or its learner is gone.
 */
export const saveSession = (session: Session, draft: string, place: Ref, added: Taught[]) =>
  write(['sessions', 'months', 'learners', 'taught', 'drafts'], async (tx) => {
    await tx.objectStore('drafts').delete([session.learner, draft]);
    if (!(await hasLearner(tx, session.learner))) return;
    if (await tx.objectStore('sessions').getKey(session.id)) return;
    await tx.objectStore('sessions').put(session);
    await addEntries(tx, [session]);
    await patchLearner(tx, session.learner, { place });
    for (const rule of added)
      await modify(tx, 'taught', [rule.learner, rule.rule], (stored) => stored ?? rule);
  });

/**
 * Undoes saveSession: the session is a draft again, the rules it added go, and the place if nobody
 * has changed it since. Nothing happens if the session has been removed meanwhile.
 */
export const unsaveSession = (draft: Draft, place: { was: Ref; now: Ref }, added: Taught[]) =>
  write(['sessions', 'months', 'learners', 'taught', 'drafts'], async (tx) => {
    const session = await tx.objectStore('sessions').get(draft.id);
    if (!session) return;
    await removeEntry(tx, session);
    await tx.objectStore('sessions').delete(draft.id);
    await tx.objectStore('drafts').put(draft);
    await modify(tx, 'learners', draft.learner, (stored) => placeBack(stored, place));
    for (const { learner, rule } of added) await tx.objectStore('taught').delete([learner, rule]);
  });

const placeBack = (learner: Learner | undefined, place: { was: Ref; now: Ref }) =>
  learner && JSON.stringify(learner.place) === JSON.stringify(place.now)
    ? { ...learner, place: place.was, updated: new Date().toISOString() }
    : undefined;

export const putSession = (session: Session) =>
  write(['sessions', 'months', 'learners'], async (tx) => {
    if (!(await hasLearner(tx, session.learner))) return;
    await addEntries(tx, [session]);
    await tx.objectStore('sessions').put(session);
  });

export const dropSession = (id: string) =>
  write(['sessions', 'months'], async (tx) => {
    const session = await tx.objectStore('sessions').get(id);
    if (!session) return;
    await removeEntry(tx, session);
    await tx.objectStore('sessions').delete(id);
  });

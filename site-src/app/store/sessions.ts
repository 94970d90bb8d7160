// Sessions that are kept, each with what follows from it.
import type { Draft, Gone, Learner, Ref, Session, Taught } from '../types.ts';
import { hasLearner, patchLearner } from './learners.ts';
import { addEntries, removeEntry } from './months.ts';
import { type Patch, patched } from './patch.ts';
import type { Writing } from './schema.ts';
import { modify, read, write } from './transaction.ts';
import { isValid } from './validate.ts';

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
      await modify(tx, 'taught', [rule.learner, rule.rule], (stored) =>
        stored?.since ? stored : rule,
      );
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

/** Adds a session that was held elsewhere, unless its learner is gone. */
export const addSession = (session: Session) =>
  write(['sessions', 'months', 'learners', 'gone'], async (tx) => {
    if (!(await hasLearner(tx, session.learner))) return;
    await tx.objectStore('gone').delete(session.id);
    await put(tx, session);
  });

/** Corrects a session as it is stored; one that is gone stays so. */
export const changeSession = (id: string, patch: Patch<Session>) =>
  write(['sessions', 'months'], async (tx) => {
    const stored = await tx.objectStore('sessions').get(id);
    if (stored) await put(tx, patched(stored, { ...patch, updated: now() }), stored);
  });

/** Removes a session, which can be brought back. */
export const removeSession = (id: string) =>
  write(['sessions', 'months', 'gone'], async (tx) => {
    const session = await tx.objectStore('sessions').get(id);
    if (!session) return;
    await removeEntry(tx, session);
    await tx.objectStore('sessions').delete(id);
    await tx.objectStore('gone').put({ id, learner: session.learner, at: now(), session });
  });

/** Brings a removed session back, unless its learner is gone. */
export const bringBack = (id: string) =>
  write(['sessions', 'months', 'learners', 'gone'], async (tx) => {
    const session = (await tx.objectStore('gone').get(id))?.session;
    if (!session || !(await hasLearner(tx, session.learner))) return;
    await tx.objectStore('gone').delete(id);
    // Later than its removal, which another device may have heard of.
    await put(tx, { ...session, updated: now() });
  });

/** Removes sessions for good: only that they were removed is still known. */
export const forget = (ids: string[]) =>
  write(['gone'], async (tx) => {
    for (const id of ids)
      await modify(tx, 'gone', id, (stored) => stored && patched(stored, { session: undefined }));
  });

/** The sessions of a learner that can be brought back, the one removed last first. */
export async function removed(learner: string): Promise<Gone[]> {
  const stored = await read(['gone'], (tx) => tx.objectStore('gone').getAll());
  return stored
    .filter((x) => isValid('gone', x) && x.learner === learner && x.session)
    .sort((a, b) => (a.at < b.at ? 1 : -1));
}

const now = () => new Date().toISOString();

/** Within a write: keeps a session, in place of what it was. */
async function put(tx: Writing<'sessions' | 'months'>, session: Session, was?: Session) {
  if (was) await removeEntry(tx, was);
  await addEntries(tx, [session]);
  await tx.objectStore('sessions').put(session);
}

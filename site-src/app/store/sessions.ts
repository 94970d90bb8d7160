// Sessions that are kept, each with what follows from it.
import type { Draft, Gone, Learner, Ref, Session, Taught } from '../types.ts';
import { hasLearner, patchLearner } from './learners.ts';
import { addEntries, changeEntries } from './months.ts';
import { type Patch, patched } from './patch.ts';
import type { Writing } from './schema.ts';
import { modify, read, write } from './transaction.ts';
import { isValid } from './validate.ts';

/** A session to keep, with what follows from it: the learner's new place, and the rules taught. */
export interface Finished {
  session: Session;
  place: { was: Ref; now: Ref };
  added: Taught[];
}

const TABLES = ['sessions', 'months', 'learners', 'taught', 'drafts'] as const;
type Tables = Writing<(typeof TABLES)[number]>;

/**
 * Keeps finished sessions of one draft, which goes, with what follows from each. Nothing changes
 * for one that is kept already, or whose learner is gone.
 */
export const saveSessions = (draft: Draft, all: Finished[]) =>
  write([...TABLES], async (tx) => {
    await tx.objectStore('drafts').delete([draft.learner, draft.at]);
    for (const one of all) await save(tx, one);
  });

async function save(tx: Tables, { session, place, added }: Finished) {
  if (!(await hasLearner(tx, session.learner))) return;
  if (await tx.objectStore('sessions').getKey(session.id)) return;
  await tx.objectStore('sessions').put(session);
  await addEntries(tx, [session]);
  await patchLearner(tx, session.learner, { place: place.now });
  for (const rule of added)
    await modify(tx, 'taught', [rule.learner, rule.rule], (stored) => taughtNow(stored, rule));
}

/** A rule is taught now; where it was said not to be, that is said later than that. */
const taughtNow = (stored: Taught | undefined, rule: Taught): Taught =>
  stored?.since ? stored : { ...rule, ...(stored && { updated: now() }) };

/** The same undone: where it was said before that it is not taught, it is said again. */
async function untaught(tx: Tables, { learner, rule }: Taught) {
  const store = tx.objectStore('taught');
  const stored = await store.get([learner, rule]);
  if (stored?.updated) await store.put({ ...stored, since: '', known: '', updated: now() });
  else await store.delete([learner, rule]);
}

/**
 * Undoes saveSessions: the draft is there again, the rules that were added go, and each place if
 * nobody has changed it since. Sessions that have been removed meanwhile stay so, and where all
 * have, so does the draft.
 */
export const unsaveSessions = (draft: Draft, all: Finished[]) =>
  write([...TABLES], async (tx) => {
    let any = false;
    for (const one of all) any = (await unsave(tx, one)) || any;
    if (any) await tx.objectStore('drafts').put(draft);
  });

/** Whether the session was there. */
async function unsave(tx: Tables, { session: { id, learner }, place, added }: Finished) {
  const session = await tx.objectStore('sessions').get(id);
  if (!session) return false;
  await changeEntries(tx, [session], []);
  await tx.objectStore('sessions').delete(id);
  await modify(tx, 'learners', learner, (stored) => placeBack(stored, place));
  for (const x of added) await untaught(tx, x);
  return true;
}

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
    await changeEntries(tx, [session], []);
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
  await changeEntries(tx, was ? [was] : [], [session]);
  await tx.objectStore('sessions').put(session);
}

// Sessions that are not kept yet: one for each learner and set of lines. Those marked before there is
// a learner have ''; they are given to the first one.
import type { Draft } from '../types.ts';
import { hasLearner, keysOf } from './learners.ts';
import { Quarantine } from './quarantine.ts';
import type { Writing } from './schema.ts';
import { onWrite } from './tabs.ts';
import { read, write } from './transaction.ts';

/** Drafts kept for a learner: older ones go. */
const MOST = 20;

const newestFirst = (a: Draft, b: Draft) => (a.updated < b.updated ? 1 : -1);

/** The drafts read last, until any is written: lines that are opened need not wait for them. */
let known: { learner: string; list: Promise<Draft[]> } | undefined;

onWrite((stores) => {
  if (stores.includes('drafts')) known = undefined;
});

/** The drafts of a learner, the newest first. */
export function drafts(learner: string): Promise<Draft[]> {
  if (known?.learner === learner) return known.list;
  const now = { learner, list: stored(learner) };
  known = now;
  now.list.catch(() => {
    if (known === now) known = undefined;
  });
  return now.list;
}

async function stored(learner: string): Promise<Draft[]> {
  const quarantine = new Quarantine();
  const all = await read(['drafts'], (tx) => tx.objectStore('drafts').getAll(keysOf(learner)));
  const valid = quarantine.accept('drafts', all);
  quarantine.setAside().catch(() => undefined); // passed over again at the next reading
  return valid.sort(newestFirst);
}

/** The draft of some lines. */
export const draft = async (learner: string, at: string) =>
  (await drafts(learner)).find((d) => d.at === at);

/**
 * Keeps a draft for good, unless it is a session by now or its learner is gone; older ones make
 * room.
 */
export const saveDraft = (draft: Draft) =>
  write(['drafts', 'sessions', 'learners'], async (tx) => {
    if (draft.learner && !(await hasLearner(tx, draft.learner))) return;
    if (await tx.objectStore('sessions').getKey(draft.id)) return;
    await makeRoom(tx, draft);
    await tx.objectStore('drafts').put(draft);
  });

async function makeRoom(tx: Writing<'drafts' | 'sessions' | 'learners'>, draft: Draft) {
  const stored = await tx.objectStore('drafts').getAll(keysOf(draft.learner));
  const others = stored.filter((d) => d.at !== draft.at).sort(newestFirst);
  for (const { learner, at } of others.slice(MOST - 1))
    await tx.objectStore('drafts').delete([learner, at]);
}

/**
 * Keeps a change of a draft as soon as can be: nothing is asked before, and a loss of power may
 * undo it.
 */
export const updateDraft = (draft: Draft) =>
  write(
    ['drafts'],
    (tx) => {
      const put = tx.objectStore('drafts').put(draft);
      tx.commit();
      return put;
    },
    'relaxed',
  );

export const dropDraft = ({ learner, at }: Draft) =>
  write(['drafts'], (tx) => tx.objectStore('drafts').delete([learner, at]));

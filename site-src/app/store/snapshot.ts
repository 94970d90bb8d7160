// The record with all its marks, as a backup has it.
import type { Learner, Session, Taught } from '../types.ts';
import { addEntries, rebuildMonths, sortSessions } from './months.ts';
import { Quarantine } from './quarantine.ts';
import type { Damaged, Reading } from './schema.ts';
import { read, write } from './transaction.ts';
import { isValid } from './validate.ts';

export interface Whole {
  learners: Learner[];
  sessions: Session[];
  taught: Taught[];
  damaged: Damaged[];
}

/** Everything of every learner, and what is damaged: set aside earlier, or found just now. */
export async function whole(): Promise<Whole> {
  const stored = await read(['learners', 'sessions', 'taught', 'damaged'], readStored);
  const quarantine = new Quarantine();
  const learners = quarantine.accept('learners', stored.learners);
  const taught = quarantine.accept('taught', stored.taught);
  const { sessions, damaged } = sortSessions(stored.sessions);
  const lost = quarantine.lostLearners(learners, [...sessions, ...taught]);
  if (damaged.length) rebuildMonths().catch(() => undefined); // sets them aside
  quarantine.setAside(lost).catch(() => undefined);
  const damagedSessions = damaged.map((record): Damaged => ({ table: 'sessions', record }));
  return {
    learners: [...learners, ...lost],
    sessions,
    taught,
    damaged: [...stored.damaged, ...damagedSessions, ...quarantine.damaged],
  };
}

async function readStored(tx: Reading<'learners' | 'sessions' | 'taught' | 'damaged'>) {
  const [learners, sessions, taught, damaged] = await Promise.all([
    tx.objectStore('learners').getAll(),
    tx.objectStore('sessions').getAll(),
    tx.objectStore('taught').getAll(),
    tx.objectStore('damaged').getAll(),
  ]);
  return { learners, sessions, taught, damaged };
}

/** A session with its marks, if it can be read. */
export async function session(id: string): Promise<Session | undefined> {
  const stored = await read(['sessions'], (tx) => tx.objectStore('sessions').get(id));
  if (isValid('sessions', stored)) return stored;
  await rebuildMonths();
  return undefined;
}

/**
 * Adds the records of a backup in one transaction, all or nothing; its damaged ones are set aside.
 */
export const merge = ({ learners, sessions, taught, damaged }: Whole) =>
  write(['learners', 'sessions', 'months', 'taught', 'damaged'], async (tx) => {
    await addEntries(tx, sessions);
    await Promise.all([
      ...learners.map((learner) => tx.objectStore('learners').put(learner)),
      ...sessions.map((session) => tx.objectStore('sessions').put(session)),
      ...taught.map((entry) => tx.objectStore('taught').put(entry)),
      ...damaged.map((record) => tx.objectStore('damaged').add(record)),
    ]);
  });

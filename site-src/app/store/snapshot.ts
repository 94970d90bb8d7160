// The record with all its marks, as a backup has it.
import { change, merge } from '../record/merge.ts';
import type { Gone, Learner, Session, Taught } from '../types.ts';
import { changeEntries, rebuildMonths, sortSessions } from './months.ts';
import { Quarantine } from './quarantine.ts';
import type { Damaged, Value } from './schema.ts';
import { read, write } from './transaction.ts';
import { isValid, type Records, validFields } from './validate.ts';

export interface Whole {
  learners: Learner[];
  sessions: Session[];
  taught: Taught[];
  gone: Gone[];
  damaged: Damaged[];
}

const TABLES = ['learners', 'sessions', 'taught', 'gone', 'damaged'] as const;
type Table = (typeof TABLES)[number];

/** Everything of every learner, and what is damaged: set aside earlier, or found just now. */
export async function whole(): Promise<Whole> {
  const stored = await read([...TABLES], (tx) =>
    readStored((name) => tx.objectStore(name).getAll()),
  );
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
    gone: stored.gone.filter((x) => isValid('gone', x)),
    damaged: [...stored.damaged, ...damagedSessions, ...quarantine.damaged],
  };
}

async function readStored(all: <Name extends Table>(name: Name) => Promise<Value<Name>[]>) {
  const [learners, sessions, taught, gone, damaged] = await Promise.all([
    all('learners'),
    all('sessions'),
    all('taught'),
    all('gone'),
    all('damaged'),
  ]);
  return { learners, sessions, taught, gone, damaged };
}

/** What can be read of the record, and no fields that are not known. */
function known(stored: Whole): Whole {
  const valid = <Name extends keyof Records>(name: Name, list: unknown[]) =>
    list.filter((x) => isValid(name, x)).map((x) => validFields(name, x) as Records[Name]);
  return {
    learners: valid('learners', stored.learners),
    sessions: valid('sessions', stored.sessions),
    taught: valid('taught', stored.taught),
    gone: valid('gone', stored.gone),
    damaged: stored.damaged,
  };
}

/** A session with its marks, if it can be read. */
export async function session(id: string): Promise<Session | undefined> {
  const stored = await read(['sessions'], (tx) => tx.objectStore('sessions').get(id));
  if (isValid('sessions', stored)) return stored;
  await rebuildMonths();
  return undefined;
}

/**
 * Brings the record together with another in one transaction, all or nothing; the damaged records of
 * the other are set aside. Of sessions that it removes, the marks are kept, so that they can be
 * brought back.
 */
export const take = (other: Whole) =>
  write([...TABLES, 'months'], async (tx) => {
    const mine = known(await readStored((name) => tx.objectStore(name).getAll()));
    const { removed, ...add } = change(mine, merge(mine, other));
    const was = new Map(removed.map((session) => [session.id, session]));
    const coming = new Set(add.sessions.map((session) => session.id));
    const before = mine.sessions.filter((x) => was.has(x.id) || coming.has(x.id));
    await changeEntries(tx, before, add.sessions);
    await Promise.all([
      ...removed.map(({ id }) => tx.objectStore('sessions').delete(id)),
      ...mine.gone
        .filter((x) => coming.has(x.id))
        .map(({ id }) => tx.objectStore('gone').delete(id)),
      ...add.learners.map((learner) => tx.objectStore('learners').put(learner)),
      ...add.sessions.map((session) => tx.objectStore('sessions').put(session)),
      ...add.taught.map((entry) => tx.objectStore('taught').put(entry)),
      ...add.gone.map((x) => tx.objectStore('gone').put(withSession(x, was.get(x.id)))),
      ...add.damaged.map((record) => tx.objectStore('damaged').add(record)),
    ]);
  });

const withSession = (x: Gone, session: Session | undefined): Gone =>
  session && !x.session ? { ...x, session } : x;

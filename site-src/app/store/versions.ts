// Every version of the database, and how a device gets from the one before to it. A version is
// added below and never changed: a device may come from any of them. test/data/ holds what each of
// them kept.
import { linesKey } from '../share/link.ts';
import type { Draft, Settings } from '../types.ts';
import { isObject } from './checks.ts';
import { newId } from './id.ts';
import { recount } from './recount.ts';
import type { Database, Store, Upgrading, Value } from './schema.ts';

type Upgrade = (db: Database, tx: Upgrading) => Promise<void> | void;

const versions: Upgrade[] = [
  createStores,
  moveMarksToRecountedLetters,
  keepDraftOfEachLines,
  createMonths,
  allowPencils,
  allowCorrections,
];

/** The version of the database that this code reads and writes. */
export const VERSION = versions.length;

/**
 * Brings the database from the version that the device has (0 for none) to the present one, within
 * one transaction.
 */
export async function upgrade(db: Database, from: number, tx: Upgrading): Promise<void> {
  for (const toNext of versions.slice(from)) await toNext(db, tx);
}

/** Version 1. */
function createStores(db: Database) {
  db.createObjectStore('learners', { keyPath: 'id' });
  db.createObjectStore('sessions', { keyPath: 'id' }).createIndex('learner', 'learner');
  db.createObjectStore('taught', { keyPath: ['learner', 'rule'] });
  db.createObjectStore('settings');
  db.createObjectStore('drafts', { keyPath: 'learner' });
}

/** Version 2: the letters of 277 words are counted anew, and the marks on them move along. */
async function moveMarksToRecountedLetters(_: Database, tx: Upgrading) {
  await changeAll(tx.objectStore('sessions'), (session) => ({
    ...session,
    marks: recount(session.rule, session.from, session.marks),
  }));
  await changeAll(tx.objectStore('drafts'), (draft) => ({
    ...draft,
    marks: recount(draft.lines.rule, draft.lines.from, draft.marks),
  }));
}

/** Until version 2 a learner had one draft, without these fields. */
type DraftOfVersion2 = Omit<Draft, 'id' | 'at' | 'updated'>;

/** Version 3: a draft for each set of lines, and a place for records that cannot be read. */
async function keepDraftOfEachLines(db: Database, tx: Upgrading) {
  const damaged = db.createObjectStore('damaged', { autoIncrement: true });
  const before: DraftOfVersion2[] = await tx.objectStore('drafts').getAll();
  db.deleteObjectStore('drafts');
  const drafts = db.createObjectStore('drafts', { keyPath: ['learner', 'at'] });
  for (const draft of before) {
    try {
      const { lines, started } = draft;
      await drafts.put({ ...draft, id: newId(), at: linesKey(lines), updated: started });
    } catch {
      await damaged.add({ table: 'drafts', record: draft });
    }
  }
}

/** Version 4: what opening reads of the sessions; months.ts fills it. */
function createMonths(db: Database) {
  db.createObjectStore('months');
}

/**
 * Version 5: lines with several pencils, and what the check has told. Nothing that was kept changes;
 * older versions would take the new fields for damage.
 */
function allowPencils() {}

/**
 * Version 6: sessions can be corrected and removed, learners have settings of their own, and lengths
 * that were chosen together are chosen one by one.
 */
async function allowCorrections(db: Database, tx: Upgrading) {
  db.createObjectStore('gone', { keyPath: 'id' });
  const settings = tx.objectStore('settings');
  const device: unknown = await settings.get('device');
  if (!isObject(device)) return;
  const { madd, ...others } = device;
  const lengths = {
    ...(madd !== undefined && { muttasil: madd, munfasil: madd }),
    ...(device.arid !== undefined && { lin: device.arid }),
  };
  await settings.put({ ...others, ...lengths } as Partial<Settings>, 'device');
}

/** Changes every record; one that is damaged stays as it is until it is read. */
async function changeAll<Name extends 'sessions' | 'drafts'>(
  store: Store<Name, 'versionchange'>,
  change: (record: Value<Name>) => Value<Name>,
) {
  for (const record of await store.getAll()) {
    try {
      await store.put(change(record));
    } catch {
      // damaged
    }
  }
}

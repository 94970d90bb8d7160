// Opens the database on the device. Versions are added below, never changed: a phone may come from
// any of them.
import { linesHash } from '../share/link.ts';
import type { Draft, Session } from '../types.ts';
import { newId } from './id.ts';
import { recount } from './recount.ts';
import { tell } from './tabs.ts';

const NAME = 'sutur';
export type Table =
  'learners' | 'sessions' | 'months' | 'taught' | 'settings' | 'drafts' | 'damaged';

// Each calls next when it has done all it wants: requests are met in the order in which they are
// made.
const versions: ((db: IDBDatabase, tx: IDBTransaction, next: () => void) => void)[] = [
  (db, _, next) => {
    db.createObjectStore('learners', { keyPath: 'id' });
    db.createObjectStore('sessions', { keyPath: 'id' }).createIndex('learner', 'learner');
    db.createObjectStore('taught', { keyPath: ['learner', 'rule'] });
    db.createObjectStore('settings');
    db.createObjectStore('drafts', { keyPath: 'learner' });
    next();
  },
  // The letters of 277 words are counted anew: marks on them are moved to the letter they were made
  // on.
  (_, tx, next) => {
    each<Session>(
      tx.objectStore('sessions'),
      (s) => ({ ...s, marks: recount(s.rule, s.from, s.marks) }),
      () =>
        each<Draft>(
          tx.objectStore('drafts'),
          (d) => ({ ...d, marks: recount(d.lines.rule, d.lines.from, d.marks) }),
          next,
        ),
    );
  },
  // A draft for each set of lines, and a place for what cannot be read.
  (db, tx, next) => {
    db.createObjectStore('damaged', { autoIncrement: true });
    const r = tx.objectStore('drafts').getAll();
    r.onsuccess = () => {
      db.deleteObjectStore('drafts');
      const to = db.createObjectStore('drafts', { keyPath: ['learner', 'at'] });
      for (const d of r.result as Draft[]) {
        try {
          to.put({ ...d, id: newId(), at: linesHash(d.lines), updated: d.started });
        } catch {
          tx.objectStore('damaged').add({ table: 'drafts', record: d });
        }
      }
      next();
    };
  },
  // What opening reads of the sessions: see months.ts, which fills it.
  (db, _, next) => {
    db.createObjectStore('months');
    next();
  },
];

/** Changes every record; one that is damaged stays as it is until it is read. */
function each<T>(store: IDBObjectStore, to: (x: T) => T, next: () => void) {
  const r = store.openCursor();
  r.onsuccess = () => {
    if (!r.result) return next();
    try {
      r.result.update(to(r.result.value as T));
    } catch {
      /* see above */
    }
    r.result.continue();
  };
}

/** A request's result as a promise. */
export const done = <T>(r: IDBRequest<T>) =>
  new Promise<T>((ok, no) => {
    r.onsuccess = () => ok(r.result);
    r.onerror = () => no(r.error);
  });

/**
 * Within a write: changes the record as it is stored now, not as some page remembers it. Undefined
 * leaves it alone.
 */
export function change<T>(
  store: IDBObjectStore,
  key: IDBValidKey,
  to: (x: T | undefined) => T | undefined,
) {
  const r = store.get(key) as IDBRequest<T | undefined>;
  r.onsuccess = () => {
    const now = to(r.result);
    if (now !== undefined) store.put(now, ...(store.keyPath === null ? [key] : []));
  };
}

let opening: Promise<IDBDatabase> | undefined,
  outdated: () => void = () => undefined;

/** Calls f when a newer version, in another tab, takes the database over. */
export const onOutdated = (f: () => void) => {
  outdated = f;
};

function open(): Promise<IDBDatabase> {
  return (opening ??= new Promise<IDBDatabase>((ok, no) => {
    const r = indexedDB.open(NAME, versions.length);
    r.onupgradeneeded = (e) => {
      const from = (v: number) => versions[v]?.(r.result, r.transaction!, () => from(v + 1));
      from(e.oldVersion);
    };
    r.onsuccess = () => {
      // A newer page in another tab must be able to upgrade; writes that were begun are still done.
      r.result.onversionchange = (e) => {
        r.result.close();
        opening = undefined;
        if (e.newVersion) outdated();
      };
      r.result.onclose = () => {
        opening = undefined;
      };
      ok(r.result);
    };
    r.onerror = () => {
      opening = undefined;
      no(r.error);
    };
    r.onblocked = () => undefined; // resolves when the other tab closes its connection
  }));
}

/**
 * Longest wait (ms) for a database: one that another tab holds, or that is broken, may never
 * answer.
 */
const PATIENCE = 8000;

function soon<T>(p: Promise<T>): Promise<T> {
  const late = new Promise<T>((_, no) =>
    setTimeout(no, PATIENCE, new DOMException('the database does not answer', 'TimeoutError')),
  );
  p.catch(() => undefined);
  return Promise.race([p, late]);
}

export async function read<T>(
  tables: Table[],
  run: (tx: IDBTransaction) => Promise<T>,
): Promise<T> {
  return run((await soon(open())).transaction(tables, 'readonly'));
}

/**
 * Runs one write as one transaction, and resolves, with the tables, when it is safely on the
 * device; with relaxed, when the system has it, which no end of the browser undoes, but a loss of
 * power may.
 */
export async function write(
  tables: Table[],
  run: (tx: IDBTransaction) => void,
  durability: 'strict' | 'relaxed' = 'strict',
): Promise<Table[]> {
  const tx = (await soon(open())).transaction(tables, 'readwrite', { durability });
  const end = new Promise<void>((ok, no) => {
    tx.oncomplete = () => ok();
    tx.onabort = () => no(tx.error ?? new DOMException('aborted', 'AbortError'));
  });
  try {
    run(tx);
  } catch (e) {
    tx.abort();
    await end.catch(() => undefined);
    throw e;
  }
  await end;
  tell(tables);
  return tables;
}

// Opens the database on the device. Versions are added below, never changed: a phone may come from any of them.
import type { Draft, Session } from '../types.ts';
import { recount } from './recount.ts';

const NAME = 'sutur';
export type Table = 'learners' | 'sessions' | 'taught' | 'settings' | 'drafts';

const versions: ((db: IDBDatabase, tx: IDBTransaction) => void)[] = [
  (db) => {
    db.createObjectStore('learners', { keyPath: 'id' });
    db.createObjectStore('sessions', { keyPath: 'id' }).createIndex('learner', 'learner');
    db.createObjectStore('taught', { keyPath: ['learner', 'rule'] });
    db.createObjectStore('settings');
    db.createObjectStore('drafts', { keyPath: 'learner' });
  },
  // The letters of 277 words are counted anew: marks on them are moved to the letter they were made on.
  (_, tx) => {
    change<Session>(tx.objectStore('sessions'), (s) => ({ ...s, marks: recount(s.rule, s.from, s.marks) }));
    change<Draft>(tx.objectStore('drafts'), (d) => ({ ...d, marks: recount(d.lines.rule, d.lines.from, d.marks) }));
  },
];

function change<T>(store: IDBObjectStore, to: (x: T) => T) {
  const r = store.openCursor();
  r.onsuccess = () => {
    if (!r.result) return;
    r.result.update(to(r.result.value as T));
    r.result.continue();
  };
}

/** A request's result as a promise. */
export const done = <T>(r: IDBRequest<T>) => new Promise<T>((ok, no) => {
  r.onsuccess = () => ok(r.result);
  r.onerror = () => no(r.error);
});

let opening: Promise<IDBDatabase> | undefined;

function open(): Promise<IDBDatabase> {
  return opening ??= new Promise<IDBDatabase>((ok, no) => {
    const r = indexedDB.open(NAME, versions.length);
    r.onupgradeneeded = (e) => versions.slice(e.oldVersion).forEach((up) => up(r.result, r.transaction!));
    r.onsuccess = () => {
      // A newer page in another tab must be able to upgrade; this one opens again when it next needs the database.
      r.result.onversionchange = () => { r.result.close(); opening = undefined; };
      r.result.onclose = () => { opening = undefined; };
      ok(r.result);
    };
    r.onerror = () => { opening = undefined; no(r.error); };
    r.onblocked = () => undefined; // resolves when the other tab closes its connection
  });
}

/** Longest wait (ms) for a database: one that another tab holds, or that is broken, may never answer. */
const PATIENCE = 8000;

function soon<T>(p: Promise<T>): Promise<T> {
  const late = new Promise<T>((_, no) => setTimeout(no, PATIENCE, new DOMException('the database does not answer', 'TimeoutError')));
  p.catch(() => undefined);
  return Promise.race([p, late]);
}

export async function read<T>(tables: Table[], run: (tx: IDBTransaction) => Promise<T>): Promise<T> {
  return run((await soon(open())).transaction(tables, 'readonly'));
}

/** Runs one write as one transaction, and resolves when it is safely on the device. */
export async function write(tables: Table[], run: (tx: IDBTransaction) => void): Promise<void> {
  const tx = (await soon(open())).transaction(tables, 'readwrite', { durability: 'strict' });
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
  return end;
}

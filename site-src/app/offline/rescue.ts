// Saves the record as a backup without the rest of the app: it opens the database as it finds it,
// and changes nothing.

const TABLES = ['learners', 'sessions', 'taught', 'gone', 'damaged'];

/** The database with the version that it has; nothing if there is none. */
const open = () =>
  new Promise<IDBDatabase | undefined>((ok, no) => {
    const r = indexedDB.open('sutur');
    r.onupgradeneeded = () => r.transaction!.abort(); // there was none, and none is made
    r.onsuccess = () => ok(r.result);
    r.onerror = () => (r.error?.name === 'AbortError' ? ok(undefined) : no(r.error));
    setTimeout(() => no(new Error('no answer')), 10_000);
  });

const all = (db: IDBDatabase, table: string) =>
  new Promise<unknown[]>((ok, no) => {
    const r = db.transaction(table).objectStore(table).getAll();
    r.onsuccess = () => ok(r.result);
    r.onerror = () => no(r.error);
  });

/** A record as JSON has it; what it cannot have, in words. */
function plain(x: unknown): unknown {
  try {
    return JSON.parse(
      JSON.stringify(x, (_, v: unknown) => (typeof v === 'bigint' ? String(v) : v)),
    );
  } catch {
    return String(x);
  }
}

/**
 * Hands the record over as a file; false if there is none. Shape as in record/backup.ts: its version
 * is that of the database. Checking records takes too much code for this place; so the file says
 * that they are unchecked, and reading it back checks.
 */
export async function rescue(): Promise<boolean> {
  const db = await open();
  if (!db) return false;
  const now = new Date();
  const file: Record<string, unknown> = {
    format: 'sutur-backup',
    v: db.version,
    saved: now.toISOString(),
    unchecked: true,
  };
  let n = 0;
  for (const table of TABLES) {
    const rows = db.objectStoreNames.contains(table) ? await all(db, table) : [];
    n += rows.length;
    file[table] = rows.map(plain);
  }
  db.close();
  if (!n) return false;
  const url = URL.createObjectURL(new Blob([JSON.stringify(file)], { type: 'application/json' }));
  const a = document.createElement('a');
  a.href = url;
  a.download = `sutur-${new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10)}.json`;
  a.click();
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  return true;
}

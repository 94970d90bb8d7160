// Reading and writing. A write is one transaction: all of it is kept, or nothing. Within one,
// nothing but the database may be awaited, or it ends too soon.
import { abort, connect, disconnect } from './connection.ts';
import type { Database, Key, Reading, StoreName, Value, Writing } from './schema.ts';
import { broadcast, written } from './tabs.ts';

/** Begins a transaction, on a new connection where the one there was has died unnoticed. */
async function begin<T>(transaction: (database: Database) => T): Promise<T> {
  try {
    return transaction(await connect());
  } catch (e) {
    if ((e as DOMException | undefined)?.name !== 'InvalidStateError') throw e;
    disconnect();
    return transaction(await connect());
  }
}

const ignore = () => undefined;

/** Runs a read over some stores, and returns what it returns. */
export async function read<Names extends StoreName, T>(
  stores: Names[],
  run: (tx: Reading<Names>) => Promise<T>,
): Promise<T> {
  const tx = await begin((database) => database.transaction(stores, 'readonly'));
  tx.done.catch(ignore); // what fails is the request that run awaits
  return run(tx);
}

/**
 * Runs a write, which awaits all its requests, and resolves, with the stores, when it is safely on
 * the device; with relaxed, when the system has it, which no end of the browser undoes, but a loss
 * of power may. Tells other tabs.
 */
export async function write<Names extends StoreName>(
  stores: Names[],
  run: (tx: Writing<Names>) => Promise<unknown>,
  durability: 'strict' | 'relaxed' = 'strict',
): Promise<StoreName[]> {
  const tx = await begin((database) => database.transaction(stores, 'readwrite', { durability }));
  written(stores); // what is read from now on waits for this
  tx.done.catch(ignore); // awaited below
  try {
    await run(tx);
  } catch (e) {
    abort(tx);
    await tx.done.catch(ignore);
    throw e;
  }
  await tx.done;
  broadcast(stores);
  return stores;
}

/**
 * Within a write: changes a record as it is stored now, not as some page remembers it. Where change
 * returns undefined, it stays as it is.
 */
export async function modify<Name extends StoreName>(
  tx: Writing<NoInfer<Name>>,
  name: Name,
  key: Key<Name>,
  change: (stored: Value<Name> | undefined) => Value<Name> | undefined,
): Promise<void> {
  const store = tx.objectStore(name);
  const changed = change(await store.get(key));
  if (changed === undefined) return;
  await (store.keyPath === null ? store.put(changed, key) : store.put(changed));
}

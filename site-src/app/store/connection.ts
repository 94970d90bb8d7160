// The one connection of this page to the database: opened when it is first needed, and again after
// the browser has ended it.
import { openDB } from 'idb';
import type { Database, Schema, Upgrading } from './schema.ts';
import { written } from './tabs.ts';
import { openingFailed, Unavailable, type Reason } from './unavailable.ts';
import { upgrade, VERSION } from './versions.ts';

const NAME = 'sutur';

/** Longest wait (ms) for a database, which may never answer where something is broken. */
const PATIENCE = 8000;

/**
 * Wait (ms) for other tabs with an older version. Ours let go at once, but for writes that have
 * begun.
 */
const BLOCKED_PATIENCE = 1000;

/**
 * What may happen to the connection at any time: a newer version in another tab has taken the
 * database over; the browser has ended the connection, or the database is deleted; it opened after
 * all, later than this page was told that it is unavailable.
 */
export type ConnectionEvent = 'superseded' | 'lost' | 'available';

const unheard: ConnectionEvent[] = [];
let report = (event: ConnectionEvent) => {
  unheard.push(event);
};

/** Calls listener at every event, and now with those that nobody has heard yet. */
export function onConnection(listener: (event: ConnectionEvent) => void) {
  report = listener;
  unheard.splice(0).forEach(listener);
}

let connection: Promise<Database> | undefined;

/** The open database; rejects with Unavailable. */
export const connect = (): Promise<Database> => (connection ??= open());

/** Has the next call of connect open the database again. */
export function disconnect() {
  connection = undefined;
  written(['drafts']); // for all that is known
}

function open(): Promise<Database> {
  return new Promise((resolve, reject) => {
    let late = false;
    let timer: ReturnType<typeof setTimeout>;
    const giveUp = (reason: Reason) => {
      late = true;
      reject(new Unavailable(reason));
    };
    const wait = (longest: number, reason: Reason) => {
      clearTimeout(timer);
      timer = setTimeout(giveUp, longest, reason);
    };
    wait(PATIENCE, 'slow');
    openDatabase({
      blocked: () => wait(BLOCKED_PATIENCE, 'blocked'),
      upgrading: () => wait(PATIENCE, 'slow'),
    }).then(
      (database) => {
        clearTimeout(timer);
        resolve(database);
        if (!late) return;
        connection = Promise.resolve(database);
        report('available');
      },
      (e: unknown) => {
        clearTimeout(timer);
        disconnect();
        reject(openingFailed(e));
      },
    );
  });
}

/** A tab with an older version holds the database; an upgrade has begun. */
interface Progress {
  blocked: () => void;
  upgrading: () => void;
}

async function openDatabase({ blocked, upgrading }: Progress): Promise<Database> {
  return openDB<Schema>(NAME, VERSION, {
    upgrade: (database, from, _to, tx) => {
      upgrading();
      tx.done.catch(() => undefined); // opening fails with it, and says so
      upgrade(database, from, tx).catch(() => abort(tx));
    },
    blocked,
    blocking: (_from, to, event) => {
      // A newer version must be able to upgrade. Writes that have begun are still done.
      (event.target as IDBDatabase).close();
      disconnect();
      report(to === null ? 'lost' : 'superseded');
    },
    terminated: () => {
      disconnect();
      report('lost');
    },
  });
}

/** Undoes what a transaction has done so far, unless it has been undone already. */
export function abort(tx: Pick<Upgrading, 'abort'>) {
  try {
    tx.abort();
  } catch {
    // the failed request has done it
  }
}

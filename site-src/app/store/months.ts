// What the record says of every session, without the marks, by learner and month: a device reads a
// few records at once and thousands slowly. It follows the sessions within each write, and is made
// of them anew wherever it is missing or wrong.
import type { Entry, Session } from '../types.ts';
import { change, done, read, write } from './db.ts';
import { fits, sound } from './shapes.ts';

/**
 * Below MADE stands the version of what is here; where it stands not, or differs, nothing here
 * counts.
 */
const MADE = 'made',
  VERSION = 1;

/** The key of the month that a session is in; it holds a list of entries as JSON. */
const key = (s: Entry) => [s.learner, s.day.slice(0, 7)];

function byMonth<T extends Entry>(list: T[]): T[][] {
  const months = new Map<string, T[]>();
  for (const s of list) {
    const name = key(s).join(' '),
      month = months.get(name);
    if (month) month.push(s);
    else months.set(name, [s]);
  }
  return [...months.values()];
}

const entry = (s: Session) => sound('months', s) as unknown as Entry;

/** Every entry; undefined where they have to be made anew. */
export async function entries(tx: IDBTransaction): Promise<Entry[] | undefined> {
  // a text comes before all other keys
  const [made, ...months] = await done<unknown[]>(tx.objectStore('months').getAll());
  if (made !== VERSION) return (await done(tx.objectStore('sessions').count())) ? undefined : [];
  try {
    const all = months.flatMap((x) => JSON.parse(x as string) as unknown[]);
    return all.every((x) => fits('months', x)) ? (all as Entry[]) : undefined;
  } catch {
    return undefined;
  }
}

/** Makes every entry anew, and sets damaged sessions aside. */
export async function rebuild(): Promise<{ entries: Entry[]; odd: number }> {
  let good: Entry[] = [],
    odd: unknown[] = [];
  const split = (sessions: unknown[]) => {
    good = (sessions.filter((x) => fits('sessions', x)) as Session[])
      .map(entry)
      .sort((a, b) => (a.at < b.at ? -1 : 1));
    odd = sessions.filter((x) => !fits('sessions', x));
  };
  await write(['sessions', 'months', 'damaged'], (tx) => {
    const sessions = tx.objectStore('sessions'),
      months = tx.objectStore('months'),
      r = sessions.getAll();
    r.onsuccess = () => {
      split(r.result);
      for (const record of odd) {
        tx.objectStore('damaged').add({ table: 'sessions', record });
        sessions.delete((record as { id: IDBValidKey }).id);
      }
      months.clear();
      for (const list of byMonth(good)) months.put(JSON.stringify(list), key(list[0]!));
      months.put(VERSION, MADE);
    };
  }).catch(async () =>
    split(await read(['sessions'], (tx) => done(tx.objectStore('sessions').getAll()))),
  ); // nothing is moved then
  return { entries: good, odd: odd.length };
}

/** Within a write: adds entries for sessions, in place of those they have. */
export const note = (tx: IDBTransaction, sessions: Session[]) => alter(tx, sessions, entry);

/** Within a write: takes the entry of a session away. */
export const forget = (tx: IDBTransaction, s: Session) => alter(tx, [s], () => []);

function alter(tx: IDBTransaction, sessions: Session[], to: (s: Session) => Entry | Entry[]) {
  const months = tx.objectStore('months'),
    again = () => {
      months.delete(MADE);
    };
  if (!sessions.every((s) => fits('months', s))) return again();
  for (const list of byMonth(sessions)) {
    const ids = new Set(list.map((s) => s.id));
    change<string>(months, key(list[0]!), (was) => {
      try {
        return JSON.stringify([
          ...(JSON.parse(was ?? '[]') as Entry[]).filter((x) => !ids.has(x.id)),
          ...list.flatMap(to),
        ]);
      } catch {
        again();
        return undefined;
      }
    });
  }
}

// What opening reads of the sessions: their entries, which lack the marks and stops, as one text of
// JSON for each learner and month. A device reads a few long records fast and thousands slowly.
// Entries follow the sessions within each write, and are made of them anew wherever they are
// missing or wrong.
import { groupBy } from '../group.ts';
import type { Entry, Session } from '../types.ts';
import type { Key, Reading, Writing } from './schema.ts';
import { read, write } from './transaction.ts';
import { isValid, validFields } from './validate.ts';

/** The version of all entries; where another is stored, or none, none of them counts. */
const VERSION = 1;

/** The key below which it stands. A text comes before all other keys. */
const VERSION_KEY = 'made';

const monthOf = (s: Entry): Key<'months'> => [s.learner, s.day.slice(0, 7)];

const entryOf = (s: Session) => validFields('months', s) as Entry;

const groupByMonth = <T extends Entry>(list: T[]): T[][] => [
  ...groupBy(list, (s) => String(monthOf(s))).values(),
];

/** Every entry; undefined where they have to be made anew. */
export async function readEntries(
  tx: Reading<'sessions' | 'months'>,
): Promise<Entry[] | undefined> {
  const [version, ...months] = await tx.objectStore('months').getAll();
  if (version !== VERSION) return (await tx.objectStore('sessions').count()) ? undefined : [];
  const lists = months.map(parseMonth);
  return lists.every((list) => list !== undefined) ? lists.flat() : undefined;
}

/** The entries of a month; undefined if any of them is damaged. */
function parseMonth(month: unknown): Entry[] | undefined {
  try {
    const entries: unknown = JSON.parse(String(month));
    if (!Array.isArray(entries)) return undefined;
    return entries.every((x) => isValid('months', x)) ? entries : undefined;
  } catch {
    return undefined; // no JSON
  }
}

interface Sorted {
  sessions: Session[];
  damaged: unknown[];
}

export const sortSessions = (stored: unknown[]): Sorted => ({
  sessions: stored.filter((x) => isValid('sessions', x)),
  damaged: stored.filter((x) => !isValid('sessions', x)),
});

/**
 * Makes all entries anew and sets damaged sessions aside; returns the entries, and how many
 * sessions are damaged. Where the device writes nothing, everything stays where it is.
 */
export async function rebuildMonths(): Promise<{ entries: Entry[]; damaged: number }> {
  let sorted: Sorted | undefined;
  try {
    await write(['sessions', 'months', 'damaged'], async (tx) => {
      sorted = sortSessions(await tx.objectStore('sessions').getAll());
      await setAside(tx, sorted.damaged);
      await replaceMonths(tx, sorted.sessions.map(entryOf));
    });
  } catch {
    sorted = sortSessions(await read(['sessions'], (tx) => tx.objectStore('sessions').getAll()));
  }
  const { sessions, damaged } = sorted!;
  return { entries: sessions.map(entryOf), damaged: damaged.length };
}

async function setAside(tx: Writing<'sessions' | 'months' | 'damaged'>, sessions: unknown[]) {
  for (const record of sessions) {
    await tx.objectStore('damaged').add({ table: 'sessions', record });
    await tx.objectStore('sessions').delete((record as Session).id);
  }
}

async function replaceMonths(tx: Writing<'sessions' | 'months' | 'damaged'>, entries: Entry[]) {
  const months = tx.objectStore('months');
  await months.clear();
  const oldestFirst = [...entries].sort((a, b) => (a.at < b.at ? -1 : 1));
  for (const group of groupByMonth(oldestFirst))
    await months.put(JSON.stringify(group), monthOf(group[0]!));
  await months.put(VERSION, VERSION_KEY);
}

/** Within a write: adds the entries of sessions, in place of those that they have. */
export const addEntries = (tx: Writing<'months'>, sessions: Session[]) =>
  changeEntries(tx, [], sessions);

/**
 * Within a write: the entries of some sessions go, and those of others come in place of any that
 * they have in their month. Each month is read and written once.
 */
export async function changeEntries(tx: Writing<'months'>, gone: Session[], come: Session[]) {
  const months = tx.objectStore('months');
  const makeAnew = () => months.delete(VERSION_KEY);
  const all = [...gone, ...come];
  if (!all.every((s) => isValid('months', s))) return makeAnew();
  const coming = new Set(come);
  for (const group of groupByMonth(all)) {
    const month = monthOf(group[0]!);
    const before = parseMonth((await months.get(month)) ?? '[]');
    if (!before) return makeAnew();
    const ids = new Set(group.map((s) => s.id));
    const others = before.filter((entry) => !ids.has(entry.id));
    const own = group.filter((s) => coming.has(s)).map(entryOf);
    await months.put(JSON.stringify([...others, ...own]), month);
  }
}

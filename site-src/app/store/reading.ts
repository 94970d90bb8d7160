// Reads what the screens show.
import type { Entry, Learner, Settings, Taught } from '../types.ts';
import { readEntries, rebuildMonths } from './months.ts';
import { Quarantine } from './quarantine.ts';
import type { Reading, StoreName } from './schema.ts';
import { read } from './transaction.ts';

/**
 * What is kept. damaged is how many damaged records were set aside so far, reported how many of them
 * the family was told of.
 */
export interface Kept {
  learners: Learner[];
  sessions: Entry[];
  taught: Taught[];
  settings: Partial<Settings>;
  damaged: number;
  reported: number;
}

const STORES: StoreName[] = ['learners', 'sessions', 'months', 'taught', 'settings', 'damaged'];

/** All that the screens show, of every learner; or only what is in some of the stores. */
export async function all(): Promise<Kept>;
export async function all(stores: StoreName[]): Promise<Partial<Kept>>;
export async function all(stores = STORES): Promise<Partial<Kept>> {
  const quarantine = new Quarantine();
  const kept = await read(STORES, (tx) => readStores(tx, stores, quarantine));
  kept.damaged += quarantine.damaged.length;
  if (stores.includes('sessions') && !kept.sessions) {
    const { entries, damaged } = await rebuildMonths();
    kept.sessions = entries;
    kept.damaged += damaged;
  }
  kept.sessions?.sort((a, b) => (a.at < b.at ? 1 : -1));
  const lost = kept.learners
    ? quarantine.lostLearners(kept.learners, [...(kept.sessions ?? []), ...(kept.taught ?? [])])
    : [];
  kept.learners?.push(...lost);
  quarantine.setAside(lost).catch(() => undefined); // passed over again at the next reading
  return kept;
}

type Found = Partial<Kept> & Pick<Kept, 'damaged' | 'reported'>;

/** What is valid in the stores; no sessions where their entries have to be made anew. */
async function readStores(
  tx: Reading<StoreName>,
  stores: StoreName[],
  quarantine: Quarantine,
): Promise<Found> {
  const wanted = (store: StoreName) => stores.includes(store);
  const [learners, taught, sessions, device, reported, damaged] = await Promise.all([
    wanted('learners') ? tx.objectStore('learners').getAll() : undefined,
    wanted('taught') ? tx.objectStore('taught').getAll() : undefined,
    wanted('sessions') ? readEntries(tx) : undefined,
    wanted('settings') ? tx.objectStore('settings').get('device') : undefined,
    tx.objectStore('settings').get('told'),
    tx.objectStore('damaged').count(),
  ]);
  const found: Found = { damaged, reported: Number(reported) || 0 };
  if (learners) found.learners = quarantine.accept('learners', learners);
  if (taught) found.taught = quarantine.accept('taught', taught).filter((x) => x.since);
  if (sessions) found.sessions = sessions;
  if (wanted('settings'))
    found.settings = quarantine.accept('settings', device === undefined ? [] : [device])[0] ?? {};
  return found;
}

/** Whether n is how many sessions there are; if not, the next reading finds all of them. */
export async function complete(n: number): Promise<boolean> {
  const same = (await read(['sessions'], (tx) => tx.objectStore('sessions').count())) === n;
  if (!same) await rebuildMonths();
  return same;
}

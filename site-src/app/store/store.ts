// Everything kept on the device goes through here. Other modules see plain values and promises. A
// write changes the fields it means of the record as it is stored, never all of it: another tab may
// have changed the rest.
import type { Draft, Entry, Learner, Ref, Session, Settings, Taught } from '../types.ts';
import { change, done, read, type Table, write } from './db.ts';
import { entries, forget, note, rebuild } from './months.ts';
import { Sift } from './sift.ts';

export { onOutdated } from './db.ts';

/** aside is how many damaged records were set aside so far, told how many of them were told of. */
export interface Kept {
  learners: Learner[];
  sessions: Entry[];
  taught: Taught[];
  settings: Partial<Settings>;
  aside: number;
  told: number;
}

/** Drafts kept for a learner: older ones go. */
const DRAFTS = 20;

/** All that a learner has under keys of more than one part. */
const allOf = (learner: string) => IDBKeyRange.bound([learner], [learner, []]);

/** All that the screens show, of every learner; or only what is in some of the tables. */
export async function all(): Promise<Kept>;
export async function all(tables: Table[]): Promise<Partial<Kept>>;
export async function all(
  tables: Table[] = ['learners', 'sessions', 'taught', 'settings', 'damaged'],
): Promise<Partial<Kept>> {
  const sift = new Sift(),
    k: Partial<Kept> = {};
  await read(['learners', 'sessions', 'months', 'taught', 'settings', 'damaged'], async (tx) => {
    const records = async <T>(t: 'learners' | 'taught') => {
      if (tables.includes(t))
        k[t] = sift.whole<T & never>(t, await done<unknown[]>(tx.objectStore(t).getAll()));
    };
    const value = (key: string) => done<unknown>(tx.objectStore('settings').get(key));
    await Promise.all([
      records<Learner>('learners'),
      records<Taught>('taught'),
      tables.includes('sessions') &&
        entries(tx).then((x) => {
          if (x) k.sessions = x;
        }),
      tables.includes('settings') &&
        value('device').then((x) => {
          k.settings = sift.whole<Settings>('settings', x === undefined ? [] : [x])[0] ?? {};
        }),
      value('told').then((x) => {
        k.told = Number(x) || 0;
      }),
      done(tx.objectStore('damaged').count()).then((n) => {
        k.aside = n;
      }),
    ]);
  });
  k.aside! += sift.odd.length;
  if (tables.includes('sessions') && !k.sessions) {
    const made = await rebuild();
    k.sessions = made.entries;
    k.aside! += made.odd;
  }
  const heirs = k.learners
    ? sift.heirs(k.learners, [...(k.sessions ?? []), ...(k.taught ?? [])])
    : [];
  k.learners?.push(...heirs);
  // what cannot be moved stays where it is, and is passed over again
  sift.done(heirs).catch(() => undefined);
  k.sessions?.sort((a, b) => (a.at < b.at ? 1 : -1));
  return k;
}

/** Whether n is how many sessions there are; if not, the next reading finds all of them. */
export async function complete(n: number): Promise<boolean> {
  const same = (await read(['sessions'], (tx) => done(tx.objectStore('sessions').count()))) === n;
  if (!same) await rebuild();
  return same;
}

export const addLearner = (l: Learner) =>
  write(['learners'], (tx) => {
    tx.objectStore('learners').put(l);
  });

/** Changes some fields of a learner, undefined takes one away; a learner who is gone stays so. */
export const changeLearner = (
  id: string,
  patch: Partial<{ [K in keyof Learner]: Learner[K] | undefined }>,
) => write(['learners'], (tx) => patchLearner(tx, id, patch));

function patchLearner(
  tx: IDBTransaction,
  id: string,
  patch: Partial<{ [K in keyof Learner]: Learner[K] | undefined }>,
) {
  change<Learner>(
    tx.objectStore('learners'),
    id,
    (l) =>
      l &&
      (Object.fromEntries(
        Object.entries({ ...l, updated: new Date().toISOString(), ...patch }).filter(
          ([, v]) => v !== undefined,
        ),
      ) as unknown as Learner),
  );
}

/** Runs what belongs to a learner, if there is the learner still. */
function ifThere(tx: IDBTransaction, learner: string, run: () => void) {
  change(tx.objectStore('learners'), learner, (l) => {
    if (l) run();
    return undefined;
  });
}

/** Removes a learner with everything that belongs to it. */
export const removeLearner = (id: string) =>
  write(['learners', 'sessions', 'months', 'taught', 'drafts'], (tx) => {
    tx.objectStore('learners').delete(id);
    const own = tx.objectStore('sessions').index('learner').getAllKeys(id);
    own.onsuccess = () => {
      for (const key of own.result) tx.objectStore('sessions').delete(key);
    };
    tx.objectStore('months').delete(allOf(id));
    tx.objectStore('taught').delete(allOf(id));
    tx.objectStore('drafts').delete(allOf(id));
  });

/** Changes some settings. */
export const changeSettings = (
  patch: Partial<{ [K in keyof Settings]: Settings[K] | undefined }>,
) =>
  write(['settings'], (tx) =>
    change<object>(tx.objectStore('settings'), 'device', (s) => ({ ...s, ...patch })),
  );

/**
 * Keeps a finished session with what follows from it: the learner's new place, the rules taught, no
 * draft any more. Nothing happens if it is kept already, or its learner is gone.
 */
export const saveSession = (s: Session, draft: string, place: Ref, added: Taught[]) =>
  write(['sessions', 'months', 'learners', 'taught', 'drafts'], (tx) => {
    tx.objectStore('drafts').delete([s.learner, draft]);
    ifThere(tx, s.learner, () =>
      change<Session>(tx.objectStore('sessions'), s.id, (was) => {
        if (was) return undefined;
        note(tx, [s]);
        patchLearner(tx, s.learner, { place });
        for (const x of added)
          change<Taught>(tx.objectStore('taught'), [x.learner, x.rule], (now) => now ?? x);
        return s;
      }),
    );
  });

/**
 * Undoes saveSession: the session is a draft again, the rules it added go, and the place if nobody
 * has changed it since.
 */
export const unsaveSession = (d: Draft, place: { was: Ref; now: Ref }, added: Taught[]) =>
  write(['sessions', 'months', 'learners', 'taught', 'drafts'], (tx) => {
    change<Session>(tx.objectStore('sessions'), d.id, (s) => {
      if (!s) return undefined; // removed meanwhile
      forget(tx, s);
      tx.objectStore('sessions').delete(d.id);
      tx.objectStore('drafts').put(d);
      change<Learner>(tx.objectStore('learners'), d.learner, (l) =>
        l && JSON.stringify(l.place) === JSON.stringify(place.now)
          ? { ...l, place: place.was, updated: new Date().toISOString() }
          : undefined,
      );
      for (const x of added) tx.objectStore('taught').delete([x.learner, x.rule]);
      return undefined;
    });
  });

export const putSession = (s: Session) =>
  write(['sessions', 'months', 'learners'], (tx) =>
    ifThere(tx, s.learner, () => {
      note(tx, [s]);
      tx.objectStore('sessions').put(s);
    }),
  );

export const dropSession = (id: string) =>
  write(['sessions', 'months'], (tx) =>
    change<Session>(tx.objectStore('sessions'), id, (s) => {
      if (s) forget(tx, s);
      tx.objectStore('sessions').delete(id);
      return undefined;
    }),
  );

/** Says anew how far some rules of a learner are; those without an entry are not taught. */
export const replaceTaught = (learner: string, rules: string[], now: Taught[]) =>
  write(['taught', 'learners'], (tx) =>
    ifThere(tx, learner, () => {
      for (const rule of rules) tx.objectStore('taught').delete([learner, rule]);
      for (const x of now) tx.objectStore('taught').put(x);
    }),
  );

/** The drafts of a learner, the newest first. */
export async function drafts(learner: string): Promise<Draft[]> {
  const sift = new Sift(),
    list = await read(['drafts'], (tx) =>
      done<unknown[]>(tx.objectStore('drafts').getAll(allOf(learner))),
    );
  const out = sift.whole<Draft>('drafts', list).sort((a, b) => (a.updated < b.updated ? 1 : -1));
  sift.done().catch(() => undefined);
  return out;
}

/** The draft of some lines. */
export const draft = async (learner: string, at: string) =>
  (await drafts(learner)).find((d) => d.at === at);

/**
 * Keeps a draft for good, unless it is a session by now or its learner is gone; older ones make
 * room.
 */
export const saveDraft = (d: Draft) =>
  write(['drafts', 'sessions', 'learners'], (tx) => {
    const to = tx.objectStore('drafts');
    ifThere(tx, d.learner, () =>
      change<Session>(tx.objectStore('sessions'), d.id, (kept) => {
        if (kept) return undefined;
        trim(to, d);
        to.put(d);
        return undefined;
      }),
    );
  });

/**
 * Keeps a change of a draft as soon as can be: nothing is asked before, and a loss of power may
 * undo it.
 */
export const updateDraft = (d: Draft) =>
  write(
    ['drafts'],
    (tx) => {
      tx.objectStore('drafts').put(d);
      tx.commit?.();
    },
    'relaxed',
  );

function trim(drafts: IDBObjectStore, d: Draft) {
  const r = drafts.getAll(allOf(d.learner)) as IDBRequest<Draft[]>;
  r.onsuccess = () => {
    const old = r.result
      .filter((x) => x.at !== d.at)
      .sort((a, b) => (a.updated < b.updated ? 1 : -1))
      .slice(DRAFTS - 1);
    for (const x of old) drafts.delete([x.learner, x.at]);
  };
}

export const dropDraft = (d: Draft) =>
  write(['drafts'], (tx) => {
    tx.objectStore('drafts').delete([d.learner, d.at]);
  });

/** Notes that so many damaged records were told of. */
export const tellDamaged = (n: number) =>
  write(['settings'], (tx) => {
    tx.objectStore('settings').put(n, 'told');
  });

/** Asks the browser not to clear the record when space runs short. */
export async function persist(): Promise<boolean> {
  try {
    return (await navigator.storage?.persist?.()) ?? false;
  } catch {
    return false;
  }
}

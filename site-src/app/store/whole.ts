// The record with all its marks, as a backup has it.
import type { Learner, Session, Taught } from '../types.ts';
import { done, read, write } from './db.ts';
import { note, rebuild } from './months.ts';
import { fits } from './shapes.ts';
import { type Damaged, Sift } from './sift.ts';

export interface Whole {
  learners: Learner[];
  sessions: Session[];
  taught: Taught[];
  damaged: Damaged[];
}

/** Everything of every learner, and what is damaged: set aside earlier, or found just now. */
export async function whole(): Promise<Whole> {
  const sift = new Sift();
  const [learners, sessions, taught, damaged] = await read(
    ['learners', 'sessions', 'taught', 'damaged'],
    (tx) => {
      const all = <T = unknown>(t: 'learners' | 'sessions' | 'taught' | 'damaged') =>
        done<T[]>(tx.objectStore(t).getAll());
      return Promise.all([
        all('learners'),
        all('sessions'),
        all('taught'),
        all<Damaged>('damaged'),
      ]);
    },
  );
  const odd = sessions
    .filter((x) => !fits('sessions', x))
    .map((record): Damaged => ({ table: 'sessions', record }));
  const k = {
    learners: sift.whole<Learner>('learners', learners),
    sessions: sessions.filter((x) => fits('sessions', x)) as Session[],
    taught: sift.whole<Taught>('taught', taught),
  };
  const heirs = sift.heirs(k.learners, [...k.sessions, ...k.taught]);
  if (odd.length) rebuild().catch(() => undefined);
  sift.done(heirs).catch(() => undefined);
  return {
    ...k,
    learners: [...k.learners, ...heirs],
    damaged: [...damaged, ...odd, ...sift.odd.map(({ table, record }) => ({ table, record }))],
  };
}

/** A session with its marks, if it can be read. */
export async function session(id: string): Promise<Session | undefined> {
  const s = await read(['sessions'], (tx) => done<unknown>(tx.objectStore('sessions').get(id)));
  if (fits('sessions', s)) return s as Session;
  await rebuild();
  return undefined;
}

/**
 * Adds the records of a backup in one transaction, all or nothing; its damaged ones are set aside.
 */
export const merge = (k: Whole) =>
  write(['learners', 'sessions', 'months', 'taught', 'damaged'], (tx) => {
    for (const l of k.learners) tx.objectStore('learners').put(l);
    note(tx, k.sessions);
    for (const s of k.sessions) tx.objectStore('sessions').put(s);
    for (const x of k.taught) tx.objectStore('taught').put(x);
    for (const x of k.damaged) tx.objectStore('damaged').add(x);
  });

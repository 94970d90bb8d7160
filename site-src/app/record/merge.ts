// Brings two records together. Of everything that both have, the later stays; where both are from the
// same moment, their content decides, so that it never matters which device reads the file of which,
// how often, and in which order. A session that was removed stays so, unless it was changed later.
import type { Damaged } from '../store/schema.ts';
import type { Whole } from '../store/snapshot.ts';
import type { Gone, Learner, Session, Taught } from '../types.ts';
import { canonical, plain } from './plain.ts';

/** A session, or that it was removed. */
type Fate = Session | Gone;

const isGone = (x: Fate): x is Gone => !('outcome' in x);

/** What decides between two of one id, most important first. */
const rank = (x: Fate): (string | number)[] =>
  isGone(x) ? [x.at, 1, x.session ? 1 : 0] : [x.updated ?? x.at, 0, 0];

function later<T>(a: T, b: T, order: (x: T) => (string | number)[]): T {
  const [x, y] = [order(a), order(b)];
  for (let i = 0; i < x.length; i++) if (x[i] !== y[i]) return x[i]! > y[i]! ? a : b;
  return canonical(a) >= canonical(b) ? a : b;
}

/** The earlier of two dates, '' being none. */
const earlier = (a: string, b: string) => (!a ? b : !b ? a : a < b ? a : b);

/** What was said later of a rule; of the same moment, or of none, the earlier dates. */
function bothTaught(a: Taught, b: Taught): Taught {
  const [x, y] = [a.updated ?? '', b.updated ?? ''];
  if (x !== y) return x > y ? a : b;
  return { ...a, since: earlier(a.since, b.since), known: earlier(a.known, b.known) };
}

/** All of both lists, those of one key joined. */
function joined<T>(a: T[], b: T[], key: (x: T) => string, join: (x: T, y: T) => T): T[] {
  const all = new Map<string, T>();
  for (const x of [...a, ...b]) {
    const there = all.get(key(x));
    all.set(key(x), there === undefined ? x : join(there, x));
  }
  return [...all.values()];
}

const textOf = (d: Damaged) => canonical([d.table, plain(d.record)]);

/** The record that holds all of both. */
export function merge(a: Whole, b: Whole): Whole {
  const fates = joined<Fate>(
    [...a.sessions, ...a.gone],
    [...b.sessions, ...b.gone],
    (x) => x.id,
    (x, y) => later(x, y, rank),
  );
  return {
    learners: joined(
      a.learners,
      b.learners,
      (x) => x.id,
      (x, y) => later<Learner>(x, y, (l) => [l.updated]),
    ),
    sessions: fates.filter((x): x is Session => !isGone(x)),
    gone: fates.filter(isGone),
    taught: joined(a.taught, b.taught, (x) => `${x.learner} ${x.rule}`, bothTaught),
    damaged: joined(a.damaged, b.damaged, textOf, (x) => x),
  };
}

/** What has to be written, and which sessions removed, for a record to become another. */
export interface Change extends Whole {
  removed: Session[];
}

/** What is new or other in a record that holds all of another. */
export function change(from: Whole, to: Whole): Change {
  const others = <T>(before: T[], after: T[], key: (x: T) => string) => {
    const had = new Map(before.map((x) => [key(x), x]));
    return after.filter((x) => {
      const was = had.get(key(x));
      return was !== x && (was === undefined || canonical(was) !== canonical(x));
    });
  };
  const gone = others(from.gone, to.gone, (x) => x.id);
  const goneNow = new Set(gone.map((x) => x.id));
  const aside = new Set(from.damaged.map(textOf));
  return {
    learners: others(from.learners, to.learners, (x) => x.id),
    sessions: others(from.sessions, to.sessions, (x) => x.id),
    taught: others(from.taught, to.taught, (x) => `${x.learner} ${x.rule}`),
    gone,
    damaged: to.damaged.filter((d) => !aside.has(textOf(d))),
    removed: from.sessions.filter((x) => goneNow.has(x.id)),
  };
}

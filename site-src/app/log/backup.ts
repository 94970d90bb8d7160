// The backup file: JSON, {"format":"sutur-backup","v":2,"saved":ISO time,"learners":[],"sessions":[],"taught":[]}.
// Reading one checks every field before anything is written, so that a damaged or foreign file changes nothing. Version 1
// counted letters in another way; its marks are moved when it is read.
import { recount } from '../store/recount.ts';
import type { Kept } from '../store/store.ts';
import type { Learner, Session, Taught } from '../types.ts';

type Records = Pick<Kept, 'learners' | 'sessions' | 'taught'>;

/** Why a file is refused; code is a key of the string catalogue below "backup.". */
export class BackupError extends Error {
  constructor(readonly code: 'not-json' | 'foreign' | 'newer' | 'damaged' | 'big', readonly where = '') { super(`${code} ${where}`); }
}

/** A file larger than this (bytes) is no backup of ours: a session takes about 1 KB. */
export const LARGEST = 32 << 20;

const VERSION = 2;

export const write = (k: Records, saved: string): string =>
  JSON.stringify({ format: 'sutur-backup', v: VERSION, saved, learners: k.learners, sessions: k.sessions, taught: k.taught }, null, 1);

type Check = (x: unknown) => boolean;
const text: Check = (x) => typeof x === 'string' && x.length <= 200;
const id: Check = (x) => typeof x === 'string' && /^[\w-]{1,64}$/.test(x);
const time: Check = (x) => typeof x === 'string' && /^\d{4}-\d\d-\d\dT[\d:.]+Z$/.test(x) && !Number.isNaN(Date.parse(x));
const date: Check = (x) => typeof x === 'string' && /^\d{4}-\d\d-\d\d$/.test(x) && !Number.isNaN(Date.parse(x));
const whole = (most: number): Check => (x) => Number.isInteger(x) && (x as number) >= 0 && (x as number) <= most;
const flag: Check = (x) => typeof x === 'boolean';
const shape = (fields: Record<string, Check>): Check => (x) =>
  typeof x === 'object' && x !== null && Object.entries(fields).every(([k, ok]) => ok((x as Record<string, unknown>)[k]));
const list = (most: number, ok: Check): Check => (x) => Array.isArray(x) && x.length <= most && x.every(ok);
const or = (...checks: Check[]): Check => (x) => checks.some((ok) => ok(x));
const is = (...values: unknown[]): Check => (x) => values.includes(x);

const absent = is(undefined);
const ref = shape({ s: (x) => whole(114)(x) && x !== 0, a: (x) => whole(286)(x) && x !== 0, w: or(absent, whole(199)) });
const mark = shape({ v: whole(999), w: whole(999), l: whole(99), count: whole(9) });
const stop: Check = (x) => Array.isArray(x) && x.length === 3 && whole(999)(x[0]) && whole(999)(x[1]) && flag(x[2]);

const learner = shape({
  id, name: text, place: ref, settled: flag, made: time, updated: time, order: or(absent, list(99, id)),
  ready: or(absent, shape({ sessions: whole(20), days: whole(20), percent: whole(100) })),
});
const session = shape({
  id, learner: id, day: date, at: time, rule: or(id, is('')), from: ref, to: ref, marks: list(5000, mark), stops: list(5000, stop),
  found: whole(5000), missed: whole(5000), extra: whole(5000), helped: flag, outcome: is('alone', 'some', 'much'),
});
const taught = shape({ learner: id, rule: id, since: date, known: or(date, is('')) });

function records<T>(x: unknown, name: string, ok: Check): T[] {
  if (!Array.isArray(x)) throw new BackupError('damaged', name);
  const at = x.findIndex((y) => !ok(y));
  if (at >= 0) throw new BackupError('damaged', `${name}, ${at + 1}`);
  return x as T[];
}

/** Reads a backup file, or throws a BackupError that says what was wrong. */
export function parse(file: string): Records {
  let x: Record<string, unknown>;
  try {
    x = JSON.parse(file) as Record<string, unknown>;
  } catch {
    throw new BackupError('not-json');
  }
  if (typeof x !== 'object' || x === null || x.format !== 'sutur-backup') throw new BackupError('foreign');
  if (x.v !== 1 && x.v !== VERSION) throw new BackupError(Number(x.v) > VERSION ? 'newer' : 'damaged', 'v');
  const out = {
    learners: records<Learner>(x.learners, 'learners', learner), sessions: records<Session>(x.sessions, 'sessions', session),
    taught: records<Taught>(x.taught, 'taught', taught),
  };
  const known = new Set(out.learners.map((l) => l.id));
  for (const [name, of] of [['sessions', out.sessions], ['taught', out.taught]] as const) {
    const at = of.findIndex((r) => !known.has(r.learner));
    if (at >= 0) throw new BackupError('damaged', `${name}, ${at + 1}`);
  }
  return x.v === 1 ? { ...out, sessions: out.sessions.map((s) => ({ ...s, marks: recount(s.rule, s.from, s.marks) })) } : out;
}

/**
 * What has to be written so that the device has all of both: sessions are never changed once kept, so an id is enough;
 * of two versions of a learner the later one stays; of two dates of a rule the earlier one.
 */
export function additions(mine: Records, file: Records): Records {
  const learners = new Map(mine.learners.map((l) => [l.id, l])), sessions = new Set(mine.sessions.map((s) => s.id));
  const key = (x: Taught) => `${x.learner} ${x.rule}`, rules = new Map(mine.taught.map((x) => [key(x), x]));
  const earlier = (a: string, b: string) => (!a ? b : !b ? a : a < b ? a : b);
  const out: Records = { learners: [], sessions: [], taught: [] };
  for (const l of file.learners) {
    const own = learners.get(l.id);
    if (!own || own.updated < l.updated) { out.learners.push(l); learners.set(l.id, l); }
  }
  for (const s of file.sessions) if (!sessions.has(s.id)) { out.sessions.push(s); sessions.add(s.id); }
  for (const x of file.taught) {
    const own = rules.get(key(x));
    const both = own ? { ...own, since: earlier(own.since, x.since), known: earlier(own.known, x.known) } : x;
    if (!own || both.since !== own.since || both.known !== own.known) { out.taught.push(both); rules.set(key(x), both); }
  }
  return out;
}

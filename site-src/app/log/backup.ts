// The backup file: JSON, {"format":"sutur-backup","v":3,"saved":ISO time,"learners":[],"sessions":[],"taught":[]}, and
// "damaged" with what could not be read on the device, as it was found; it is never read back. Reading a file checks every
// field before anything is written, so that a damaged or foreign file changes nothing. Version 1 counted letters in another
// way; its marks are moved when it is read.
import { recount } from '../store/recount.ts';
import { fits, sound } from '../store/shapes.ts';
import type { Damaged } from '../store/sift.ts';
import type { Kept } from '../store/store.ts';
import type { Learner, Session, Taught } from '../types.ts';

type Records = Pick<Kept, 'learners' | 'sessions' | 'taught'>;

/** Why a file is refused; code is a key of the string catalogue below "backup.". */
export class BackupError extends Error {
  constructor(readonly code: 'not-json' | 'foreign' | 'newer' | 'damaged' | 'big', readonly where = '') { super(`${code} ${where}`); }
}

/** A file larger than this (bytes) is no backup of ours: a session takes about 1 KB. */
export const LARGEST = 32 << 20;

/** As that of the database, so that the record can be saved from there as it is. */
const VERSION = 3;

export function write(k: Records, damaged: Damaged[], saved: string): string {
  const ids = new Set(k.learners.map((l) => l.id)), odd: Damaged[] = damaged.map(({ table, record }) => ({ table, record: plain(record) }));
  // What no version knows, and what belongs to nobody, could not be read back.
  const known = (table: keyof Records) => k[table].flatMap((x: Records[keyof Records][number]) => {
    if (!('learner' in x) || ids.has(x.learner)) return [sound(table, x)];
    odd.push({ table, record: x });
    return [];
  });
  const file = { format: 'sutur-backup', v: VERSION, saved, learners: known('learners'), sessions: known('sessions'), taught: known('taught') };
  return JSON.stringify({ ...file, ...odd.length && { damaged: odd } }, null, 1);
}

/** A value as JSON has it; one that it cannot have, in words. */
function plain(x: unknown): unknown {
  try {
    return JSON.stringify(x) === undefined ? String(x) : x;
  } catch {
    return String(x);
  }
}

const FIELDS = ['format', 'v', 'saved', 'learners', 'sessions', 'taught', 'damaged'];

function records<T>(x: unknown, name: 'learners' | 'sessions' | 'taught'): T[] {
  if (!Array.isArray(x)) throw new BackupError('damaged', name);
  const at = x.findIndex((y) => !fits(name, y, true));
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
  if (![1, 2, VERSION].includes(x.v as number)) throw new BackupError(Number(x.v) > VERSION ? 'newer' : 'damaged', 'v');
  const odd = Object.keys(x).find((k) => !FIELDS.includes(k));
  if (odd !== undefined) throw new BackupError('damaged', odd.slice(0, 40));
  const out = {
    learners: records<Learner>(x.learners, 'learners'), sessions: records<Session>(x.sessions, 'sessions'),
    taught: records<Taught>(x.taught, 'taught'),
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

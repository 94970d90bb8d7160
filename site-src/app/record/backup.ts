// The backup file: JSON, {"format":"sutur-backup","v":6,"saved":ISO
// time,"learners":[],"sessions":[],"taught":[],"gone":[]}, and "damaged" with what could not be read
// on the device, as it was found; it is never read back. gone (from version 6 on) says which sessions
// were removed and when. Reading a file checks every field before anything
// is written, so that a damaged or foreign file changes nothing. Only in a file with
// "unchecked":true, of offline/rescue.ts, are damaged records set aside and the others read.
// Version 1 counted letters in another way; its marks are moved when it is read.
import { recount } from '../store/recount.ts';
import { repairLearner, replaceLost } from '../store/repair.ts';
import type { Damaged } from '../store/schema.ts';
import { isValid, validFields } from '../store/validate.ts';
import type { Whole } from '../store/snapshot.ts';
import type { Gone, Learner, Session, Taught } from '../types.ts';
import { plain } from './plain.ts';

type Records = Omit<Whole, 'damaged'>;

/** Why a file is refused; code is a key of the string catalogue below "backup.". */
export class BackupError extends Error {
  constructor(
    readonly code: 'not-json' | 'foreign' | 'newer' | 'damaged' | 'big',
    readonly where = '',
  ) {
    super(`${code} ${where}`);
  }
}

/** As that of the database, so that the record can be saved from there as it is. */
const VERSION = 6;

/** The file, with a line for each record. */
export function write(k: Whole, saved: string): string {
  const ids = new Set(k.learners.map((l) => l.id));
  const odd: Damaged[] = k.damaged.map(({ table, record }) => ({ table, record: plain(record) }));
  // What no version knows, and what belongs to nobody, could not be read back.
  const known = (table: keyof Records) =>
    k[table].flatMap((x: Records[keyof Records][number]) => {
      if (!('learner' in x) || ids.has(x.learner)) return [validFields(table, x)];
      odd.push({ table, record: x });
      return [];
    });
  const file = {
    format: 'sutur-backup',
    v: VERSION,
    saved,
    learners: known('learners'),
    sessions: known('sessions'),
    taught: known('taught'),
    gone: known('gone').map((x) => ({ ...x, session: undefined })),
  };
  const list = (x: unknown) =>
    Array.isArray(x) ? `[${x.map((y) => `\n${JSON.stringify(y)}`).join(',')}]` : JSON.stringify(x);
  return `{${Object.entries({ ...file, ...(odd.length && { damaged: odd }) })
    .map(([k, x]) => `"${k}":${list(x)}`)
    .join(',\n')}}\n`;
}

const TABLES = ['learners', 'sessions', 'taught', 'gone'] as const;
const FIELDS = ['format', 'v', 'saved', 'unchecked', 'damaged', ...TABLES];

/** Reads a backup file, or throws a BackupError that says what was wrong. */
export function parse(file: string): Whole {
  const x = opened(file);
  const damaged: Damaged[] = [];
  const out: Whole = {
    learners: records<Learner>(x, 'learners', damaged),
    sessions: records<Session>(x, 'sessions', damaged),
    taught: records<Taught>(x, 'taught', damaged),
    gone: x.gone === undefined ? [] : records<Gone>(x, 'gone', damaged),
    damaged,
  };
  if (x.unchecked === true) out.learners.push(...found(damaged, out));
  const known = new Set(out.learners.map((l) => l.id));
  for (const name of ['sessions', 'taught', 'gone'] as const)
    refuse(
      name,
      out[name].findIndex((r) => !known.has(r.learner)),
    );
  if (x.v !== 1) return out;
  const sessions = out.sessions.map((s) => ({ ...s, marks: recount(s.rule, s.from, s.marks) }));
  return { ...out, sessions };
}

/** What is in a file, if it is a backup of a version that is known and has no other fields. */
function opened(file: string): Record<string, unknown> {
  let x: Record<string, unknown>;
  try {
    x = JSON.parse(file) as Record<string, unknown>;
  } catch {
    throw new BackupError('not-json');
  }
  if (typeof x !== 'object' || x === null || x.format !== 'sutur-backup')
    throw new BackupError('foreign');
  if (![1, 2, 3, 4, 5, VERSION].includes(x.v as number))
    throw new BackupError(Number(x.v) > VERSION ? 'newer' : 'damaged', 'v');
  const odd = Object.keys(x).find((k) => !FIELDS.includes(k));
  if (odd !== undefined) throw new BackupError('damaged', odd.slice(0, 40));
  return x;
}

/** Refuses the file for one of its records, counted from 0; none is -1. */
function refuse(name: string, at: number) {
  if (at >= 0) throw new BackupError('damaged', `${name}, ${at + 1}`);
}

/**
 * The records of a kind, without fields that no version knows. A damaged one refuses the file, or,
 * where the file was saved unchecked, goes into damaged.
 */
function records<T>(x: Record<string, unknown>, name: keyof Records, damaged: Damaged[]): T[] {
  const list = x[name];
  if (!Array.isArray(list)) throw new BackupError('damaged', name);
  if (x.unchecked !== true)
    refuse(
      name,
      list.findIndex((y) => !isValid(name, y, true)),
    );
  for (const record of list as unknown[])
    if (!isValid(name, record)) damaged.push({ table: name, record });
  return list.filter((y) => isValid(name, y)).map((y) => validFields(name, y) as T);
}

/**
 * Learners to be added so that everything belongs to somebody. One that the device has stays as it
 * is there.
 */
function found(damaged: Damaged[], k: Records): Learner[] {
  const repaired = damaged.flatMap(
    (d) => (d.table === 'learners' && repairLearner(d.record)) || [],
  );
  const lost = replaceLost([...k.learners, ...repaired], [...k.sessions, ...k.taught, ...k.gone]);
  return [...repaired, ...lost].map((l) => ({ ...l, updated: new Date(0).toISOString() }));
}

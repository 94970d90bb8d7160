// What records look like. Whatever is read from the device or from a file is checked here before
// anything else sees it.
import { linesHash } from '../share/link.ts';
import type { Draft, Ref } from '../types.ts';
import { VERSES } from './surahs.ts';

export type Check = (x: unknown) => boolean;
export type Fields = Record<string, Check>;

const text: Check = (x) => typeof x === 'string' && x.length <= 200;
const id: Check = (x) => typeof x === 'string' && /^[\w-]{1,64}$/.test(x);
let last = ''; // a day that exists: many records in a row have the same

/** Whether the day a date begins with is in the calendar. */
function exists(x: string): boolean {
  const day = x.slice(0, 10);
  if (day === last) return true;
  const y = Number(x.slice(0, 4)),
    m = Number(x.slice(5, 7)),
    d = Number(x.slice(8, 10));
  const ok =
    y >= 1970 &&
    m >= 1 &&
    m <= 12 &&
    d >= 1 &&
    (d <= 28 || d <= new Date(Date.UTC(y, m, 0)).getUTCDate());
  if (ok) last = day;
  return ok;
}
const time: Check = (x) =>
  typeof x === 'string' &&
  /^\d{4}-\d\d-\d\dT([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{1,9})?Z$/.test(x) &&
  exists(x);
const date: Check = (x) => typeof x === 'string' && /^\d{4}-\d\d-\d\d$/.test(x) && exists(x);
const whole =
  (most: number, least = 0): Check =>
  (x) =>
    Number.isInteger(x) && (x as number) >= least && (x as number) <= most;
const between =
  (a: number, b: number): Check =>
  (x) =>
    typeof x === 'number' && x >= a && x <= b;
const flag: Check = (x) => typeof x === 'boolean';
const list =
  (most: number, ok: Check): Check =>
  (x) =>
    Array.isArray(x) && x.length <= most && x.every(ok);
const or =
  (...checks: Check[]): Check =>
  (x) =>
    checks.some((ok) => ok(x));
const is =
  (...values: unknown[]): Check =>
  (x) =>
    values.includes(x);
const object = (x: unknown): x is Record<string, unknown> =>
  typeof x === 'object' && x !== null && !Array.isArray(x);

/**
 * Whether x has the fields, each as its check wants it; alone: and no others. Run for thousands of
 * records at the start.
 */
export function has(x: unknown, fields: Fields, alone = false): boolean {
  if (!object(x)) return false;
  for (const k in fields) if (!fields[k]!(x[k])) return false;
  if (alone) for (const k in x) if (!Object.hasOwn(fields, k)) return false;
  return true;
}
const shape =
  (fields: Fields): Check =>
  (x) =>
    has(x, fields, true);

const rule: Check = (x) => x === '' || id(x);
const may = (ok: Check) => or(is(undefined), ok);
const inOrder = (from: Ref, to: Ref) =>
  from.s < to.s ||
  (from.s === to.s && (from.a < to.a || (from.a === to.a && (from.w ?? 0) <= (to.w ?? 999))));
const upTo = (most: number, x: unknown) =>
  Number.isInteger(x) && (x as number) >= 0 && (x as number) <= most;
// Most of a record is places and marks, so they are gone through without detours.
const ref: Check = (x) =>
  object(x) &&
  upTo(114, x.s) &&
  upTo(VERSES[(x.s as number) - 1] ?? 0, x.a) &&
  (x.a as number) > 0 &&
  (x.w === undefined || upTo(199, x.w)) &&
  Object.keys(x).length === ('w' in x ? 3 : 2);
const mark: Check = (x) =>
  object(x) &&
  upTo(999, x.v) &&
  upTo(999, x.w) &&
  upTo(99, x.l) &&
  upTo(9, x.count) &&
  Object.keys(x).length === 4;
const marks = list(5000, mark);
const stops = list(
  5000,
  (x) => Array.isArray(x) && x.length === 3 && whole(999)(x[0]) && whole(999)(x[1]) && flag(x[2]),
);

const entry = {
  id,
  learner: id,
  day: date,
  at: time,
  rule,
  from: ref,
  to: ref,
  found: whole(5000),
  missed: whole(5000),
  extra: whole(5000),
  helped: flag,
  outcome: is('alone', 'some', 'much'),
};
const forward = (x: { from: Ref; to: Ref }) => inOrder(x.from, x.to);

/**
 * The tables of records, each with the fields of one and, where a field must fit another, a check
 * of the whole.
 */
export const SHAPES = {
  learners: {
    fields: {
      id,
      name: text,
      place: ref,
      settled: flag,
      made: time,
      updated: time,
      order: may(list(99, id)),
      ready: may(shape({ sessions: whole(20), days: whole(20), percent: whole(100) })),
    },
  },
  sessions: { fields: { ...entry, marks, stops }, fits: forward },
  months: { fields: entry, fits: forward }, // an entry of one
  taught: { fields: { learner: id, rule: id, since: date, known: or(date, is('')) } },
  drafts: {
    fields: {
      id,
      learner: id,
      at: text,
      lines: shape({ rule, from: ref, to: ref }),
      phase: is('find', 'check', 'read', 'done'),
      marks,
      stops,
      helped: flag,
      started: time,
      updated: time,
    },
    fits: (x: Draft) =>
      inOrder(x.lines.from, x.lines.to) &&
      x.at === linesHash(x.lines) &&
      (x.lines.rule !== '' || (x.phase !== 'find' && x.phase !== 'check')),
  },
  settings: {
    fields: {
      learner: may(or(id, is(''))),
      size: may(between(0.5, 3)),
      spacing: may(between(0, 5)),
      theme: may(is('auto', 'light', 'dark')),
      madd: may(is(4, 5)),
      arid: may(is(2, 4, 6)),
      pencils: may(
        (x) =>
          object(x) &&
          Object.keys(x).length <= 99 &&
          Object.values(x).every((y) => typeof y === 'string' && /^#[\da-f]{6}$/i.test(y)),
      ),
    },
  },
} satisfies Record<string, { fields: Fields; fits?: (x: never) => boolean }>;

/** Whether x is a whole record of the table; alone: with no field that is not known. */
export function fits(table: keyof typeof SHAPES, x: unknown, alone = false): boolean {
  const s: { fields: Fields; fits?: (x: never) => boolean } = SHAPES[table];
  return has(x, s.fields, alone) && (s.fits?.(x as never) ?? true);
}

/** The fields of x that are as they should be, and no others. */
export const sound = (table: keyof typeof SHAPES, x: unknown): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(SHAPES[table].fields as Fields).flatMap(([k, ok]) =>
      object(x) && k in x && ok(x[k]) ? [[k, x[k]]] : [],
    ),
  );

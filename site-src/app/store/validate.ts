// What records look like. Whatever is read from the device or from a file is checked here before
// anything else sees it.
import { linesKey } from '../share/link.ts';
import type { Draft, Entry, Gone, Learner, Ref, Session, Settings, Taught } from '../types.ts';
import { OUTCOMES } from '../types.ts';
import {
  between,
  type Check,
  color,
  date,
  either,
  type Fields,
  flag,
  hasFields,
  id,
  isObject,
  isWhole,
  listOf,
  LONGEST_NOTE,
  MOST_MINUTES,
  MOST_PLACES,
  objectOf,
  oneOf,
  optional,
  shortText,
  textOf,
  time,
  upTo,
} from './checks.ts';
import { VERSE_COUNTS } from './surahs.ts';

/** The kinds of records that are checked; months is one entry of a month. */
export interface Records {
  learners: Learner;
  sessions: Session;
  months: Entry;
  taught: Taught;
  gone: Gone;
  drafts: Draft;
  settings: Partial<Settings>;
}

// Most of a record is places and marks, so they are checked without detours.
const ref: Check = (x) =>
  isObject(x) &&
  isWhole(x.s, 114) &&
  isWhole(x.a, VERSE_COUNTS[x.s - 1] ?? 0) &&
  x.a > 0 &&
  (x.w === undefined || isWhole(x.w, 199)) &&
  Object.keys(x).length === ('w' in x ? 3 : 2);
const mark: Check = (x) =>
  isObject(x) &&
  isWhole(x.v, 999) &&
  isWhole(x.w, 999) &&
  isWhole(x.l, 99) &&
  isWhole(x.count, 9) &&
  (x.pencil === undefined || id(x.pencil)) &&
  Object.keys(x).length === ('pencil' in x ? 5 : 4);
const stop: Check = (x) =>
  Array.isArray(x) && x.length === 3 && isWhole(x[0], 999) && isWhole(x[1], 999) && flag(x[2]);

const rule: Check = (x) => x === '' || id(x);
const day = either(date, oneOf(''));
const marks = listOf(5000, mark);
const stops = listOf(5000, stop);

const pencils = optional(listOf(99, id));
const length = { hamza: oneOf(4, 5), stop: oneOf(2, 4, 6) };

/** Settings that a learner may have too. */
const own = {
  size: optional(between(0.5, 3)),
  spacing: optional(between(0, 5)),
  muttasil: optional(length.hamza),
  munfasil: optional(length.hamza),
  arid: optional(length.stop),
  lin: optional(length.stop),
  counting: optional(oneOf('once', 'every', 'never')),
  large: optional(flag),
};

const lines = objectOf({ rule, also: pencils, from: ref, to: ref });

const entry = {
  id,
  learner: id,
  day: date,
  at: time,
  rule,
  from: ref,
  to: ref,
  found: upTo(MOST_PLACES),
  missed: upTo(MOST_PLACES),
  extra: upTo(MOST_PLACES),
  helped: flag,
  outcome: oneOf(...OUTCOMES),
  also: optional(
    listOf(99, objectOf({ rule: id, found: upTo(MOST_PLACES), missed: upTo(MOST_PLACES) })),
  ),
  pencils,
  looked: optional(upTo(MOST_PLACES)),
  paper: optional(flag),
  together: optional(flag),
  minutes: optional(upTo(MOST_MINUTES)),
  note: optional(textOf(LONGEST_NOTE)),
  updated: optional(time),
};

const byPencil =
  (ok: Check): Check =>
  (x) =>
    isObject(x) && listOf(99, id)(Object.keys(x)) && Object.values(x).every(ok);

const FIELDS: Record<keyof Records, Fields> = {
  learners: {
    id,
    name: shortText,
    place: ref,
    settled: flag,
    made: time,
    updated: time,
    order: optional(listOf(99, id)),
    ready: optional(objectOf({ sessions: upTo(20), days: upTo(20), percent: upTo(100) })),
    direction: optional(oneOf('forwards', 'backwards')),
    load: optional(oneOf('few', 'usual', 'many')),
    colour: optional(upTo(7)),
    archived: optional(time),
    own: optional(objectOf(own)),
    work: optional(objectOf({ lines, since: date, times: upTo(99), say: shortText })),
  },
  sessions: { ...entry, marks, stops },
  months: entry,
  taught: { learner: id, rule: id, since: day, known: day, updated: optional(time) },
  gone: { id, learner: id, at: time, session: optional((x) => isValid('sessions', x)) },
  drafts: {
    id,
    learner: rule, // '' where there is none yet
    at: shortText,
    lines,
    phase: oneOf('find', 'check', 'read', 'done'),
    marks,
    stops,
    helped: flag,
    told: optional(oneOf('some', 'all')),
    looked: optional(upTo(MOST_PLACES)),
    lengths: optional(byPencil(upTo(9))),
    paper: optional(byPencil(upTo(MOST_PLACES))),
    together: optional(listOf(99, id)),
    started: time,
    updated: time,
  },
  settings: {
    learner: optional(rule),
    ...own,
    theme: optional(oneOf('auto', 'light', 'dark')),
    backed: optional(time),
    toldLarge: optional(flag),
    noHome: optional(flag),
    sort: optional(oneOf('read', 'made')),
    pencils: optional((x) => isObject(x) && listOf(99, color)(Object.values(x))),
  },
};

const inOrder = ({ from, to }: { from: Ref; to: Ref }) =>
  from.s < to.s ||
  (from.s === to.s && (from.a < to.a || (from.a === to.a && (from.w ?? 0) <= (to.w ?? 999))));

/** Where one field must fit another: checks of records whose fields are valid. */
const WHOLE: { [Name in keyof Records]?: (record: Records[Name]) => boolean } = {
  sessions: inOrder,
  months: inOrder,
  drafts: ({ at, lines, phase }) =>
    inOrder(lines) &&
    at === linesKey(lines) &&
    (lines.rule !== '' || !!lines.also?.length || (phase !== 'find' && phase !== 'check')),
};

/** Whether x is a valid record of its kind; exact: with no field that is not known. */
export function isValid<Name extends keyof Records>(
  name: Name,
  x: unknown,
  exact = false,
): x is Records[Name] {
  if (!hasFields(x, FIELDS[name], exact)) return false;
  const fits = WHOLE[name];
  return !fits || fits(x as Records[Name]);
}

/** The fields of x that are valid, and no others. */
export function validFields<Name extends keyof Records>(
  name: Name,
  x: unknown,
): Partial<Records[Name]> {
  if (!isObject(x)) return {};
  const valid = Object.entries(FIELDS[name])
    .filter(([field, ok]) => field in x && ok(x[field]))
    .map(([field]) => [field, x[field]]);
  return Object.fromEntries(valid) as Partial<Records[Name]>;
}

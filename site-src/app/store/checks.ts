// Checks of single values and of objects field by field, from which validate.ts puts together what
// a record looks like.

/** The most places of a rule, minutes and characters of a note that a session has. */
export const MOST_PLACES = 5000;
export const MOST_MINUTES = 600;
export const LONGEST_NOTE = 500;

export type Check = (x: unknown) => boolean;
export type Fields = Record<string, Check>;

export const isObject = (x: unknown): x is Record<string, unknown> =>
  typeof x === 'object' && x !== null && !Array.isArray(x);

/**
 * Whether x has the fields, each as its check asks; exact: and no others. Run for thousands of
 * records at the start.
 */
export function hasFields(x: unknown, fields: Fields, exact: boolean): boolean {
  if (!isObject(x)) return false;
  for (const name in fields) if (!fields[name]!(x[name])) return false;
  if (exact) for (const name in x) if (!Object.hasOwn(fields, name)) return false;
  return true;
}

export const textOf =
  (most: number): Check =>
  (x) =>
    typeof x === 'string' && x.length <= most;
export const shortText = textOf(200);
export const id: Check = (x) => typeof x === 'string' && /^[\w-]{1,64}$/.test(x);
export const color: Check = (x) => typeof x === 'string' && /^#[\da-f]{6}$/i.test(x);
export const flag: Check = (x) => typeof x === 'boolean';

export const isWhole = (x: unknown, most: number): x is number =>
  Number.isInteger(x) && (x as number) >= 0 && (x as number) <= most;
export const upTo =
  (most: number): Check =>
  (x) =>
    isWhole(x, most);
export const between =
  (least: number, most: number): Check =>
  (x) =>
    typeof x === 'number' && x >= least && x <= most;
export const listOf =
  (most: number, ok: Check): Check =>
  (x) =>
    Array.isArray(x) && x.length <= most && x.every(ok);
export const oneOf =
  (...values: unknown[]): Check =>
  (x) =>
    values.includes(x);
export const either =
  (...checks: Check[]): Check =>
  (x) =>
    checks.some((ok) => ok(x));
export const optional = (ok: Check) => either(oneOf(undefined), ok);
export const objectOf =
  (fields: Fields): Check =>
  (x) =>
    hasFields(x, fields, true);

const daysIn = (year: number, month: number) => new Date(Date.UTC(year, month, 0)).getUTCDate();

let lastDay = ''; // one that exists: many records in a row have the same

/** Whether the day that a date begins with is in the calendar. */
function dayExists(date: string): boolean {
  const day = date.slice(0, 10);
  if (day === lastDay) return true;
  const year = Number(day.slice(0, 4));
  const month = Number(day.slice(5, 7));
  const dayOfMonth = Number(day.slice(8));
  if (year < 1970 || month < 1 || month > 12 || dayOfMonth < 1) return false;
  if (dayOfMonth > 28 && dayOfMonth > daysIn(year, month)) return false;
  lastDay = day;
  return true;
}

const TIME = /^\d{4}-\d\d-\d\dT([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{1,9})?Z$/;
export const time: Check = (x) => typeof x === 'string' && TIME.test(x) && dayExists(x);
export const date: Check = (x) =>
  typeof x === 'string' && /^\d{4}-\d\d-\d\d$/.test(x) && dayExists(x);

// Looks strings up in the catalogue of the language: what the first screen says comes with it, the
// rest with the screens that are fetched later (later.ts). Plural forms are chosen by
// Intl.PluralRules.
import en from '../strings/en.json' with { type: 'json' };
import type later from '../strings/later.json';

type Entry = string | Record<string, string>;

/**
 * A key of the catalogue. The type check wants it of every key, also of one that is put together;
 * where it depends on rules or letters of the text, which the check does not know,
 * test/strings.test.mjs goes through them all.
 */
export type Key = keyof typeof en | keyof typeof later;
/** The keys that begin with P and a dot, without these. */
export type Below<P extends string> = Key extends infer K
  ? K extends `${P}.${infer R}`
    ? R
    : never
  : never;
export type Vars = Record<string, string | number>;

const table: Record<string, Entry> = { ...en };

/** Takes in more of the catalogue. */
export const add = (more: Record<string, Entry>) => void Object.assign(table, more);

export const lang = 'en';
const plural = new Intl.PluralRules(lang);

/** Whether the catalogue has the key. */
export const has = (key: string): key is Key => key in table;

const figures = new Intl.NumberFormat(lang);

/**
 * A name that someone has given, apart from the words around it: whatever its direction, or signs
 * of direction in it, do.
 */
export const isolate = (name: string) => `\u2068${name.replace(/[\u2066-\u2069]/g, '')}\u2069`;

const GIVEN = ['child', 'file', 'found', 'where'];

/** Puts values into a text's {places}. */
export const fill = (text: string, vars: Vars) =>
  text.replace(/\{(\w+)\}/g, (all, k: string) => {
    const v = vars[k];
    return typeof v === 'number'
      ? figures.format(v)
      : v === undefined
        ? all
        : GIVEN.includes(k)
          ? isolate(v)
          : v;
  });

/**
 * The string for a key; an entry with plural forms chooses by vars.n, and may have its own words
 * for zero. A missing key shows itself.
 */
export function t(key: Key, vars: Vars = {}): string {
  const e = table[key];
  if (e === undefined) return key;
  if (typeof e === 'string') return fill(e, vars);
  const n = Number(vars.n);
  return fill((n === 0 ? e.zero : undefined) ?? e[plural.select(n)] ?? e.other ?? key, vars);
}

const format = (how: Intl.DateTimeFormatOptions) =>
  new Intl.DateTimeFormat(lang, { ...how, timeZone: 'UTC' });
const day = { weekday: 'long', day: 'numeric', month: 'long' } as const;
const date = { day: 'numeric', month: 'short' } as const;
const short = format({ weekday: 'narrow' });
const list = new Intl.ListFormat(lang, { type: 'conjunction' });

/** In words, with the year where it is not this one. */
const named = (how: Intl.DateTimeFormatOptions) => {
  const inYear = format(how);
  const other = format({ ...how, year: 'numeric' });
  return (d: string) => {
    const now = d.startsWith(String(new Date().getFullYear()));
    return (now ? inYear : other).format(new Date(`${d}T00:00Z`));
  };
};

/** A date YYYY-MM-DD in words; dateName leaves out the day of the week. */
export const dayName = named(day);
export const dateName = named(date);
export const weekday = (d: string) => short.format(new Date(`${d}T00:00Z`));
export const join = (parts: string[]) => list.format(parts);

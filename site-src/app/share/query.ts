// What stands in a link that somebody was sent. Chat and mail programs wrap, escape and end links in
// ways of their own; what is unambiguous is undone. No value of ours holds a blank, a percent sign,
// a bracket, or ends in a punctuation mark.
import type { Below } from '../i18n.ts';
import type { Catalogue, Lines } from '../types.ts';
import { mark } from './coding.ts';
import { unescaped } from './escapes.ts';
import { lines, showRef } from './link.ts';

/** The version of links that is written, and the last one that can be read. */
const VERSION = '1';

/** What was read, or why not, as a key below "unread.". */
export type Read<T> =
  { given: T } | { bad: Below<'unread'>; vars?: Record<string, string | number> };

export const refused = <T>(bad: Below<'unread'>, found = ''): Read<T> => ({
  bad,
  vars: { found: found.slice(0, 40) },
});

// Blanks, brackets around a link, and signs that are not seen.
const WRAPPED = /[\s<>\u00ad\u200b-\u200f\u2060\ufeff]/g;
const ENDED = /[.,;:!?'"»”’)\]}*~|]+$/;

const clean = (value: string) =>
  unescaped(value, (s) => /%[\da-f]{2}/i.test(s))
    .replace(WRAPPED, '')
    .replace(ENDED, '');

/** Values by their key: each key once, in the order in which they are written. */
export type Values = [key: string, value: string][];

/** A query of ours: the version first, the check last. What has no value is left out. */
export function written(values: Values): string {
  const there = values.filter(([, value]) => value);
  const body = there.map(([key, value]) => `&${key}=${value}`).join('');
  return `v=${VERSION}${body}&end=${checkOf(there)}`;
}

const checkOf = (values: Values) => mark(values.map((x) => x.join('=')).join('&'));

/** Where lower case is written, and a phone may have made capitals of it. */
const CASELESS = ['rule', 'also', 'more', 'went'];

/** The values of a query of ours, by the keys that it may have, in the order of writing. */
export function values(query: string, keys: readonly string[]): Read<Map<string, string>> {
  const there = new Map<string, string>();
  for (const [key, value] of new URLSearchParams(
    unescaped(query, (s) => !s.includes('=') && /%3d/i.test(s)),
  )) {
    const name = key
      .replace(WRAPPED, '')
      .replace(/^(amp;)+/, '')
      .toLowerCase();
    if (!there.has(name)) there.set(name, value);
  }
  const v = clean(there.get('v') ?? '');
  if (!v) return refused('foreign');
  if (v !== VERSION) return refused(/^\d{1,4}$/.test(v) && +v > 1 ? 'newer' : 'foreign');
  const own: Values = keys.map((key) => {
    const value = clean(there.get(key) ?? '');
    return [key, CASELESS.includes(key) ? value.toLowerCase() : value];
  });
  const check = checkOf(own.filter(([, value]) => value));
  if (!ends(there.get('end') ?? '', check)) return refused('cut');
  return { given: new Map(own) };
}

/** Whether a value is the check; words may follow it, and it may be broken into two lines. */
const ends = (value: string, check: string) =>
  [value.trimStart(), clean(value)].some((s) => new RegExp(`^${check}(?![\\da-z])`, 'i').test(s));

/** Lines as an address has them. */
export const lineValues = ({ rule, also = [], from, to }: Lines): Values => [
  ['rule', rule],
  ['also', also.join()],
  ['from', showRef(from)],
  ['to', showRef(to)],
];

/** Reads them. */
export function linesIn(c: Catalogue, read: Map<string, string>): Read<Lines> {
  const [from, to] = [read.get('from'), read.get('to')];
  if (!from || !to) return refused('field', from ? 'to' : 'from');
  const route = lines(c, new URLSearchParams([...read].filter(([, value]) => value)));
  if (route.name === 'lines') return { given: route.lines };
  return route.name === 'bad' && route.reason === 'rule'
    ? refused('rule', String(route.vars.found))
    : refused('lines', `${from}–${to}`);
}

/** What a piece of text that was pasted says of a link to work or a result: what stands after #. */
export function hashIn(text: string): string | undefined {
  const begins = /#\/?(work|result)\W*\?/i;
  const m = begins.exec(unescaped(text, (s) => !begins.test(s) && /%(25)*(23|2f|3f)/i.test(s)));
  if (!m) return undefined;
  // An address loses its line ends, which keep what follows a link apart from it.
  const query = m.input.slice(m.index + m[0].length).replace(/\s+/g, '+');
  return `#/${m[1]!.toLowerCase()}?${query}`;
}

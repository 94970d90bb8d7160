// A link by which a teacher gives lines as work: passage, rules, what is taught, lengths, how often,
// and a line of text. It names nobody.
import { join, t } from '../i18n.ts';
import { pencilIds, pencils, STOPS } from '../marking/pencils.ts';
import { linesName } from '../text/names.ts';
import { type Catalogue, type Lengths, LENGTHS, type Lines } from '../types.ts';
import { readBits, readText, writeBits, writeText } from './coding.ts';
import { LESSONS } from './lessons.ts';
import { linesIn, lineValues, type Read, refused, values, written } from './query.ts';

/** The lengths of a held vowel, in the order in which a link has them, with what each can be. */
const HELD = { munfasil: [4, 5], muttasil: [4, 5], arid: [2, 4, 6], lin: [2, 4, 6] } as const;

/** More days than these are not in a week. */
export const MOST_TIMES = 7;

/**
 * Lines with what a teacher says of them: times this week, ids of lessons taught so far, lengths
 * held, and a line of text, '' for none.
 */
export interface Given {
  lines: Lines;
  times: number;
  lessons: string[];
  held?: Lengths;
  say: string;
}

const KEYS = ['rule', 'also', 'from', 'to', 'known', 'hold', 'times', 'say'];

/** The address of work, after #. */
export const workHash = ({ lines, times, lessons, held, say }: Given): string =>
  `#/work?${written([
    ...lineValues(lines),
    ['known', writeBits(LESSONS, new Set(lessons))],
    ['hold', held ? names.map((x) => held[x]).join('') : ''],
    ['times', String(times)],
    ['say', writeText(say)],
  ])}`;

const names = Object.keys(HELD) as (keyof Lengths)[];

/** Reads what stands after the question mark. */
export function readWork(c: Catalogue, query: string): Read<Given> {
  const read = values(query, KEYS);
  if ('bad' in read) return read;
  const of = (key: string) => read.given.get(key) ?? '';
  const lines = linesIn(c, read.given);
  if ('bad' in lines) return lines;
  const lessons = readBits(LESSONS, of('known'));
  const held = readHeld(of('hold'));
  const times = /^[1-7]$/.test(of('times')) ? Number(of('times')) : undefined;
  const say = readText(of('say'));
  if (!lessons) return refused('field', 'known');
  if (!held) return refused('field', 'hold');
  if (!times) return refused('field', 'times');
  if (say === undefined) return refused('field', 'say');
  return { given: { lines: lines.given, times, lessons, ...held, say } };
}

function readHeld(s: string): Pick<Given, 'held'> | undefined {
  if (!s) return {};
  if (s.length !== names.length) return undefined;
  const held = names.map((x, i) => [x, Number(s[i])] as const);
  return held.every(([x, n]) => (HELD[x] as readonly number[]).includes(n))
    ? { held: Object.fromEntries(held) as Lengths }
    : undefined;
}

/** What is to be found in the lines, or that they are only read. */
export function taskOf(c: Catalogue, lines: Lines): string {
  const all = pencils(c, pencilIds(lines), 'all');
  const names = all.map((p) => (p.id === STOPS ? t('case.stops') : p.name));
  return names.length ? t('given.find', { pencils: join(names) }) : t('given.read');
}

/** Work in a line of text. */
export const workLine = (c: Catalogue, lines: Lines, n: number) =>
  [linesName(c.surahs, lines.from, lines.to), taskOf(c, lines), t('given.times', { n })].join(
    ' · ',
  );

/** The lengths in words. */
export const lengthsLine = ({ munfasil, muttasil, arid, lin }: Lengths) =>
  t('given.lengths', { munfasil, muttasil, arid, lin });

/** Those of some settings. */
export const heldBy = (s: Lengths): Lengths =>
  Object.fromEntries(LENGTHS.map((x) => [x, s[x]])) as Lengths;

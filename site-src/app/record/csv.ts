// The sessions as a table for spreadsheets: CSV as RFC 4180 has it, in UTF-8 with a byte order mark,
// which tells spreadsheets so. A cell that a spreadsheet would take for a formula begins with an
// apostrophe.
import { join, t } from '../i18n.ts';
import { nameOfRule } from '../text/names.ts';
import type { Catalogue, Entry, Ref } from '../types.ts';
import { shareOf, tallies } from './totals.ts';

const COLUMNS = [
  'day',
  'surah',
  'verses',
  'rules',
  'found',
  'of',
  'looked',
  'outcome',
  'helped',
  'paper',
  'together',
  'minutes',
  'note',
] as const;

type Column = (typeof COLUMNS)[number];
type Cell = string | number | undefined;

/** The byte order mark. */
const MARK = '\ufeff';

/** Signs with which a formula begins, also in their wide forms, or that hide one behind them. */
const FORMULA = /^[\t\r\n]|^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]/;

/** A cell as the file has it. Nothing that was written by hand may count as a formula. */
export function cellOf(x: Cell): string {
  if (x === undefined) return '';
  if (typeof x === 'number') return String(x);
  // A lone half of a character has no UTF-8; a zero byte ends a file early in some programs.
  const text = x.replace(/\0/g, '').replace(/\p{Surrogate}/gu, '\ufffd');
  const safe = FORMULA.test(text) ? `'${text}` : text;
  return /[",;\t\r\n]|^ | $/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

const lineOf = (cells: Cell[]) => `${cells.map(cellOf).join(',')}\r\n`;

/** Sessions, in the order of the list, with a first row of names. */
export const csv = (c: Catalogue, sessions: Entry[]) =>
  MARK +
  [
    COLUMNS.map((x) => t(`csv.${x}`)),
    ...sessions.map((s) => {
      const row = rowOf(c, s);
      return COLUMNS.map((x) => row[x]);
    }),
  ]
    .map(lineOf)
    .join('');

const yes = (x: boolean | undefined) => (x ? t('csv.yes') : undefined);

function rowOf(c: Catalogue, s: Entry): Record<Column, Cell> {
  const all = tallies(s);
  const { found, of } = shareOf(all);
  const surah = (r: Ref) => c.surahs[r.s - 1]!.la;
  return {
    day: s.day,
    surah: s.from.s === s.to.s ? surah(s.from) : `${surah(s.from)} – ${surah(s.to)}`,
    verses: versesOf(s),
    rules: join(all.map((x) => nameOfRule(c.rules, x.rule))),
    found: of ? found : undefined,
    of: of || undefined,
    looked: s.looked,
    outcome: t(`outcome.${s.outcome}`),
    helped: yes(s.helped),
    paper: yes(s.paper),
    together: yes(s.together),
    minutes: s.minutes,
    note: s.note,
  };
}

/** As 12–16, with a long dash: a spreadsheet takes 1-5 for a day in May. */
function versesOf({ from, to }: Entry): string {
  const place = (r: Ref, word: number | undefined) =>
    word === undefined ? String(r.a) : t('csv.word', { a: r.a, w: word + 1 });
  const first = place(from, from.w);
  const last = place(to, to.w);
  return from.s === to.s && first === last ? first : `${first}–${last}`;
}

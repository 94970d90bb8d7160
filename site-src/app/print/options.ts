// What is to be printed, as it stands after # in the address. Never a name.
import type { Below, Key } from '../i18n.ts';
import { parseRef, showRef } from '../share/link.ts';
import type { Catalogue, Ref } from '../types.ts';
import { inside, part, type Part, PARTS, span } from './passage.ts';

export const KINDS = ['practice', 'answer', 'both', 'card', 'record'] as const;
export const SHOWS = ['focus', 'learnt', 'all'] as const;
export const PAPERS = ['a4', 'letter'] as const;
export const TURNS = ['portrait', 'landscape'] as const;
export type Kind = (typeof KINDS)[number];
export type Show = (typeof SHOWS)[number];
export type Paper = (typeof PAPERS)[number];
export type Turn = (typeof TURNS)[number];

/** Letter size in points: the least, the most, and the step between. */
export const LEAST = 24,
  LARGEST = 48,
  STEP = 2;

/** Part says how the lines were named; from and to are what it comes to. */
export interface Options {
  kind: Kind;
  part: Part;
  from: Ref;
  to: Ref;
  rule: string;
  show: Show;
  paper: Paper;
  turn: Turn;
  size: number;
  name: boolean;
}
export interface Problem {
  key: Key;
  vars: Record<string, string | number>;
}

const among = <T extends string>(list: readonly T[], x: string | null): T | undefined =>
  list.find((y) => y === x);

/**
 * Reads the address; what is missing is taken from the defaults, what cannot be read too, and the
 * first such is told.
 */
export function parse(
  c: Catalogue,
  hash: string,
  def: Options,
): { options: Options; problem?: Problem } {
  const q = new URLSearchParams(hash.split('?')[1] ?? ''),
    o = { ...def };
  let problem: Problem | undefined;
  const not = (key: Below<'print.bad'>, found: string, vars: Problem['vars'] = {}) => {
    problem ??= { key: `print.bad.${key}`, vars: { found, ...vars } };
  };
  const pick = <T extends string>(key: string, list: readonly T[], now: T): T => {
    const x = q.get(key),
      y = among(list, x);
    if (x !== null && !y) not('choice', x, { name: key, accepted: list.join(', ') });
    return y ?? now;
  };
  o.kind = pick('sheet', KINDS, o.kind);
  o.paper = pick('paper', PAPERS, o.paper);
  o.turn = pick('turn', TURNS, o.turn);
  o.name = q.has('name') ? q.get('name') === 'yes' : o.name;
  const size = q.get('size');
  if (size !== null) {
    if (/^\d{1,3}$/.test(size) && Number(size) >= LEAST && Number(size) <= LARGEST)
      o.size = Number(size);
    else not('size', size, { least: LEAST, most: LARGEST });
  }
  const rule = q.get('rule');
  if (rule !== null) {
    if (!rule || c.rules.some((r) => r.id === rule)) o.rule = rule;
    else not('rule', rule);
  }
  o.show = pick('show', SHOWS, o.rule ? o.show : 'learnt');
  const by = PARTS.find((p): p is Exclude<Part, 'verses'> => p !== 'verses' && q.has(p)),
    text = by ? q.get(by)! : '';
  if (by) {
    const n = /^\d{1,3}$/.test(text) ? part(c, by, Number(text)) : undefined;
    if (n) Object.assign(o, n, { part: by });
    else
      not(by, text, {
        most: by === 'juz' ? c.juz.length : by === 'page' ? c.pages.length : c.surahs.length,
      });
  } else if (q.has('from')) {
    const from = parseRef(q.get('from')!),
      to = q.has('to') ? parseRef(q.get('to')!) : from;
    if (!from || !inside(c, from)) not('verse', q.get('from')!);
    else if (!to || !inside(c, to)) not('verse', q.get('to')!);
    else if (span(c, from, to) < 1) not('order', showRef(from), { to: showRef(to) });
    else Object.assign(o, { part: 'verses', from, to });
  }
  return problem ? { options: o, problem } : { options: o };
}

/** The address of a sheet, after #. */
export function format(c: Catalogue, o: Options): string {
  const q = new URLSearchParams({ sheet: o.kind });
  if (o.kind !== 'card' && o.kind !== 'record') {
    const whole = o.part !== 'verses' && number(c, o);
    if (whole) q.set(o.part, String(whole));
    else {
      q.set('from', showRef(o.from));
      q.set('to', showRef(o.to));
    }
    q.set('rule', o.rule);
    q.set('show', o.show);
    q.set('size', String(o.size));
  }
  q.set('paper', o.paper);
  q.set('turn', o.turn);
  if (o.name) q.set('name', 'yes');
  return `#/print?${q.toString().replaceAll('%3A', ':')}`;
}

/** The number of the surah, page or juz that the options name, 0 for none. */
export function number(c: Catalogue, o: Options): number {
  const most =
    o.part === 'juz'
      ? c.juz.length
      : o.part === 'page'
        ? c.pages.length
        : o.part === 'surah'
          ? c.surahs.length
          : 0;
  for (let n = 1; n <= most; n++)
    if (part(c, o.part, n)!.from.s === o.from.s && part(c, o.part, n)!.from.a === o.from.a)
      return n;
  return 0;
}

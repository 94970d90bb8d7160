// What is to be printed, as it is written after # in the address. Never a name.
import { isPencil, parseRef, pencilsIn, showRef } from '../share/link.ts';
import type { Catalogue, Ref } from '../types.ts';
import { type Booklet, formatBooklet, parseBooklet } from './booklet.ts';
import { inside, part, partCount, type Part, PARTS, span, type Whole } from './passage.ts';
import { type Problem, Query } from './query.ts';

export const KINDS = ['practice', 'answer', 'both', 'booklet', 'card', 'record'] as const;
export const SHOWS = ['focus', 'learnt', 'all'] as const;
export const PAPERS = ['a4', 'letter'] as const;
export const TURNS = ['portrait', 'landscape'] as const;
export type Kind = (typeof KINDS)[number];
export type Show = (typeof SHOWS)[number];
export type Paper = (typeof PAPERS)[number];
export type Turn = (typeof TURNS)[number];

/** Letter size in points: the smallest. */
export const SMALLEST = 24;
/** Letter size in points: the largest. */
export const LARGEST = 48;
/** From one letter size to the next, in points. */
export const STEP = 2;

export interface Options {
  kind: Kind;
  /** How the lines were named. */
  part: Part;
  /** The first verse of the lines. */
  from: Ref;
  /** The last verse of the lines. */
  to: Ref;
  /** The id of the rule to find, empty for none. */
  rule: string;
  /** The other pencils for the lines, by their ids. */
  also: string[];
  /** The rules that an answer sheet shows. */
  show: Show;
  paper: Paper;
  turn: Turn;
  /** Letter size in points. */
  size: number;
  /** Whether the learner's name is written on it. */
  name: boolean;
  /** What a booklet has in place of lines, size and turn. */
  booklet: Booklet;
}

/** Whether the sheet has lines that are chosen; the card and the record have none. */
export const hasLines = ({ kind }: Options) =>
  kind === 'practice' || kind === 'answer' || kind === 'both';

/** Whether there is something to find. */
export const hasPencils = (o: Options) => !!o.rule || o.also.length > 0;

/**
 * Reads the address. What is missing, and what cannot be read, is taken from the defaults; problem
 * names the first that cannot be read.
 */
export function parse(
  c: Catalogue,
  hash: string,
  usual: Options,
): { options: Options; problem: Problem | undefined } {
  const q = new Query(hash);
  const name = q.get('name');
  const o = { ...usual };
  o.kind = q.choice('sheet', KINDS, o.kind);
  o.paper = q.choice('paper', PAPERS, o.paper);
  o.turn = q.choice('turn', TURNS, o.turn);
  if (name !== null) o.name = name === 'yes';
  if (o.kind === 'booklet') {
    o.booklet = parseBooklet(q, c, o.booklet);
    return { options: o, problem: q.problem };
  }
  o.size = q.number('size', SMALLEST, LARGEST, o.size);
  o.rule = parseRule(q, c, o.rule);
  o.also = parseAlso(q, c, o);
  o.show = q.choice('show', SHOWS, hasPencils(o) ? o.show : 'learnt');
  return { options: { ...o, ...parseLines(q, c) }, problem: q.problem };
}

function parseRule(q: Query, c: Catalogue, usual: string): string {
  const id = q.get('rule');
  if (id === null) return usual;
  if (!id || c.rules.some((r) => r.id === id)) return id;
  q.bad('rule', id);
  return usual;
}

function parseAlso(q: Query, c: Catalogue, { rule, also }: Options): string[] {
  const list = q.get('also');
  const ids = list === null ? also.filter((id) => id !== rule) : pencilsIn(list, rule);
  return q.known(ids, (id) => isPencil(c, id));
}

/** Which lines, and how they were named. */
export type LinesOf = Pick<Options, 'part' | 'from' | 'to'>;

/** The lines that the address names, by a part of the text or by verses; nothing for none. */
function parseLines(q: Query, c: Catalogue): LinesOf | undefined {
  const by = PARTS.find((p): p is Whole => p !== 'verses' && q.get(p) !== null);
  if (by) return parsePart(q, c, by);
  const first = q.get('from');
  if (first === null) return undefined;
  const last = q.get('to');
  const from = parseRef(first);
  const to = last === null ? from : parseRef(last);
  if (!from || !inside(c, from)) q.bad('verse', first);
  else if (!to || !inside(c, to)) q.bad('verse', last ?? first);
  else if (span(c, from, to) < 1) q.bad('order', showRef(from), { to: showRef(to) });
  else return { part: 'verses', from, to };
  return undefined;
}

function parsePart(q: Query, c: Catalogue, by: Whole): LinesOf | undefined {
  const text = q.get(by)!;
  const n = /^\d{1,3}$/.test(text) ? part(c, by, Number(text)) : undefined;
  if (n) return { part: by, ...n };
  q.bad(by, text, { most: partCount(c, by) });
  return undefined;
}

/** The address of a sheet, after #. */
export function format(c: Catalogue, o: Options): string {
  const q = new URLSearchParams({ sheet: o.kind });
  if (hasLines(o)) {
    const whole = o.part !== 'verses' && number(c, o);
    if (whole) q.set(o.part, String(whole));
    else {
      q.set('from', showRef(o.from));
      q.set('to', showRef(o.to));
    }
    q.set('rule', o.rule);
    if (o.also.length) q.set('also', o.also.join());
    q.set('show', o.show);
    q.set('size', String(o.size));
  }
  if (o.kind === 'booklet') formatBooklet(o.booklet, q);
  q.set('paper', o.paper);
  q.set('turn', o.turn);
  if (o.name) q.set('name', 'yes');
  return `#/print?${q.toString().replaceAll('%3A', ':').replaceAll('%2C', ',')}`;
}

/** The number of the surah, page or juz that the options name, 0 for none. */
export function number(c: Catalogue, o: Options): number {
  if (o.part === 'verses') return 0;
  for (let n = 1; n <= partCount(c, o.part); n++) {
    const { s, a } = part(c, o.part, n)!.from;
    if (s === o.from.s && a === o.from.a) return n;
  }
  return 0;
}

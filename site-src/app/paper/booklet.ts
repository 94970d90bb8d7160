// A whole juz as a booklet: what can be chosen for it, and how that is written in the address.
import type { Catalogue, Ref } from '../types.ts';
import { part, partAt } from './passage.ts';
import type { Query } from './query.ts';

export const ANSWERS = ['end', 'only', 'none'] as const;
export const LAYS = ['one', 'two', 'fold'] as const;
/** At the end; nothing but the answers; none. */
export type Answers = (typeof ANSWERS)[number];
/** One page a side of paper, two in their order, or two that a fold brings into order. */
export type Lay = (typeof LAYS)[number];

/** Letter size in points: the smallest and the largest of a booklet. */
export const LEAST = 18;
export const MOST_POINTS = 36;
/** Letter size in points of the answers, which are for the adult. */
export const ANSWER_SIZE = 16;

/** Letter size in points that a booklet begins with. */
export const usualSize = (lay: Lay) => (lay === 'one' ? 28 : 20);

export interface Booklet {
  /** From 1. */
  juz: number;
  /** The ids of the rules in its key; undefined for those learnt. */
  rules: string[] | undefined;
  answers: Answers;
  lay: Lay;
  /** Letter size in points. */
  size: number;
}

/** The booklet of the juz in which a verse is. */
export const usual = (c: Catalogue, at: Ref): Booklet => ({
  juz: partAt(c, 'juz', at),
  rules: undefined,
  answers: 'end',
  lay: 'one',
  size: usualSize('one'),
});

/** Its first and its last verse. */
export const versesOf = (c: Catalogue, b: Booklet) => part(c, 'juz', b.juz)!;

/** Reads a booklet from the address; what is missing or cannot be read is taken from usual. */
export function parseBooklet(q: Query, c: Catalogue, from: Booklet): Booklet {
  const b = { ...from };
  b.lay = q.choice('lay', LAYS, b.lay);
  b.answers = q.choice('answers', ANSWERS, b.answers);
  b.size = q.number('size', LEAST, MOST_POINTS, usualSize(b.lay));
  b.juz = q.number('juz', 1, c.juz.length, b.juz);
  const key = q.get('key');
  if (key === null) return b;
  const ids = [...new Set(key.split(',').filter(Boolean))];
  b.rules = q.known(ids, (id) => c.rules.some((r) => r.id === id));
  return b;
}

/** Writes it into an address. */
export function formatBooklet(b: Booklet, q: URLSearchParams) {
  q.set('juz', String(b.juz));
  if (b.rules) q.set('key', b.rules.join());
  q.set('answers', b.answers);
  q.set('lay', b.lay);
  q.set('size', String(b.size));
}

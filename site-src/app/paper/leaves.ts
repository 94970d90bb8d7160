// The pages of a booklet in the order in which they are read.
import type { Booklet } from './booklet.ts';
import { filled } from './impose.ts';

/** How many pages each part of a booklet has. */
export interface Parts {
  /** The key of the pencils; at least one. */
  pencils: number;
  practice: number;
  /** Places of each rule in a table, and the lines with their marks: the answers. */
  counts: number;
  answer: number;
}

/** A page: what it is, and which of its part, from 0. */
export interface Leaf {
  is: 'cover' | keyof Parts | 'days' | 'blank';
  n: number;
}

/** Pages of the record; those that fill up the last sheet are more of them. */
const DAYS = 2;

const many = (is: Leaf['is'], count: number): Leaf[] =>
  Array.from({ length: count }, (_, n) => ({ is, n }));

export function leavesOf(p: Parts, { answers, lay }: Pick<Booklet, 'answers' | 'lay'>): Leaf[] {
  const pencils = many('pencils', p.pencils);
  const answer = [...many('counts', p.counts), ...many('answer', p.answer)];
  const more = (n: number) => filled(n, lay) - n;
  if (answers === 'only') {
    const list = [...pencils, ...answer];
    return [...list, ...many('blank', more(list.length))];
  }
  const list = [
    ...many('cover', 1),
    ...pencils,
    ...many('practice', p.practice),
    ...(answers === 'end' ? answer : []),
  ];
  return [...list, ...many('days', DAYS + more(list.length + DAYS))];
}

/** How many pages were added to fill the last sheet. */
export const added = (list: Leaf[]) =>
  list.filter((x) => x.is === 'blank' || (x.is === 'days' && x.n >= DAYS)).length;

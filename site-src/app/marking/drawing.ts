// What is drawn over the lines of the shared screen: rings around letters, lines under words, and
// strokes as a hand draws them. All of it is bound to letters, so that it stays on them when the
// lines are laid anew. Pure.
import { type Place, samePlace, type WordAt } from '../types.ts';

/**
 * A point of a stroke, by the word it is bound to: how far left of the word's right edge, in widths
 * of the word, how far below its baseline and how far from the point before it, in em.
 */
export interface Dot extends WordAt {
  x: number;
  y: number;
  step: number;
}

export interface Ring {
  kind: 'ring';
  at: Place;
  /** The number above it. */
  n?: number;
}

/** A straight line below words, in the order of the text. */
export interface Under {
  kind: 'under';
  words: WordAt[];
}

export interface Stroke {
  kind: 'stroke';
  dots: Dot[];
}

export type Drawn = Ring | Under | Stroke;

/** What is drawn, the last on top, and what was there before each change. */
export interface Drawing {
  drawn: Drawn[];
  before: Drawn[][];
}

export const BLANK: Drawing = { drawn: [], before: [] };

/** Numbers that can be written above a ring. */
export const NUMBERS = [2, 3, 4, 5, 6] as const;

const change = (d: Drawing, drawn: Drawn[]): Drawing => ({
  drawn,
  before: [...d.before, d.drawn],
});

export const add = (d: Drawing, x: Drawn): Drawing => change(d, [...d.drawn, x]);

export const remove = (d: Drawing, x: Drawn): Drawing =>
  change(
    d,
    d.drawn.filter((y) => y !== x),
  );

export const ringAt = (d: Drawing, at: Place): Ring | undefined =>
  d.drawn.find((x): x is Ring => x.kind === 'ring' && samePlace(x.at, at));

/** A ring around a letter, or none where one was. */
export function ring(d: Drawing, at: Place): Drawing {
  const there = ringAt(d, at);
  return there ? remove(d, there) : add(d, { kind: 'ring', at });
}

/** A line under words, or none where exactly that line was. */
export function under(d: Drawing, words: WordAt[]): Drawing {
  const same = (x: Drawn) => x.kind === 'under' && key(x.words) === key(words);
  const there = d.drawn.find(same);
  return there ? remove(d, there) : add(d, { kind: 'under', words });
}

const key = (words: WordAt[]) => words.map(({ v, w }) => `${v}.${w}`).join();

/** Writes a number above the ring at a place, or above the one made last; the same again: none. */
export function number(d: Drawing, n: number, at?: Place): Drawing {
  const last = d.drawn.findLast((x): x is Ring => x.kind === 'ring');
  const to = at ? ringAt(d, at) : last;
  if (!to) return d;
  const now: Ring = { kind: 'ring', at: to.at, ...(to.n !== n && { n }) };
  return change(
    d,
    d.drawn.map((x) => (x === to ? now : x)),
  );
}

export const clear = (d: Drawing): Drawing => (d.drawn.length ? change(d, []) : d);

/** Takes the last change back, a clearing too. */
export const undo = (d: Drawing): Drawing =>
  d.before.length ? { drawn: d.before.at(-1)!, before: d.before.slice(0, -1) } : d;

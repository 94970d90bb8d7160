// The rows of a passage: surahs' names, and lines of whole words. Both sheets are drawn from the
// same rows.
import type { Verse, WordAt } from '../types.ts';
import * as breaks from './breaks.ts';
import type { Geometry } from './geometry.ts';

/** The head of surah head, or the words of a line. */
export type Row = { head: number } | { words: WordAt[] };

/** Widths of the words of each verse, and of the space between words, in letter sizes. */
export interface Widths {
  words: number[][];
  space: number;
}

/**
 * What the ring at a verse's end takes with the space after it, in letter sizes. As in the style
 * sheet.
 */
const RING = 0.75;

/** within says that the passage begins inside a verse: then its surah is not named. */
export function rows(verses: Verse[], m: Widths, g: Geometry, within: boolean): Row[] {
  const out: Row[] = [];
  for (let v = 0; v < verses.length;) {
    const { s, a } = verses[v]!;
    if (a === 1 && !(within && v === 0)) out.push({ head: s });
    const words: WordAt[] = [];
    for (; verses[v]?.s === s; v++) verses[v]!.words.forEach((_, w) => words.push({ v, w }));
    const pieces = words.map((x) => {
      const end = endsVerse(verses, x);
      return { width: m.words[x.v]![x.w]! + (end ? RING : 0), end };
    });
    // The space after the last word is set too, and is empty paper.
    const starts = breaks.lines(pieces, m.space, g.line / g.em - m.space);
    starts.forEach((first, i) => out.push({ words: words.slice(first, starts[i + 1]) }));
  }
  return out;
}

/** Whether a verse ends with the word; one that is cut off does not end. */
export const endsVerse = (verses: Verse[], { v, w }: WordAt): boolean =>
  w === verses[v]!.words.length - 1 && !verses[v]!.open;

// The line over the words of a prostration is drawn by the style sheet over a word's element: the
// text stays untouched.
import type { Word } from '../types.ts';

const SIGN = '\u06e9'; // stands after the last word, outside the line

/** The classes of word w: the line goes on to the next word where that bears it too. */
export const lined = (words: (Word | undefined)[], w: number): string =>
  !words[w]?.lined
    ? ''
    : words[w + 1]?.lined
      ? ' lined on'
      : words[w]!.text.includes(SIGN)
        ? ' lined signed'
        : ' lined';

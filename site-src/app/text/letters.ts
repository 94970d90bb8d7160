// Splits a verse into words and letters exactly as the generator does: the numbers in the data files count these letters.
// Code points are written as numbers; no letter of the text is typed here.
import type { Letter, Word } from '../types.ts';

const TATWEEL = 0x640, SAD = 0x635, SEEN = 0x6dc, QUARTER = 0x6de, SAJDAH = 0x6e9;
export const SMALL_ALIF = 0x670, SMALL_YA_TOP = 0x6e7, SMALL_NOON = 0x6e8;

const isLetter = (c: number) =>
  (c >= 0x621 && c <= 0x63a) || (c >= 0x641 && c <= 0x64a) || c === 0x671 || c === SMALL_ALIF || (c >= 0x6e5 && c <= SMALL_NOON);

const isPause = (c: number) => c >= 0x6d6 && c <= 0x6db;

/** Whether the letter is a sign that stands over the letter before it and has no place of its own in the line. */
export const stands = (word: Word, l: number) => {
  const x = word.letters[l];
  return !!x && (x.rune === SMALL_ALIF || x.rune === SMALL_YA_TOP || x.rune === SMALL_NOON) && word.text.charCodeAt(x.from) === x.rune;
};

const LAM = 0x644, ALIFS = new Set([0x622, 0x623, 0x625, 0x627, 0x671]);

/** Whether letters l and l+1 are lam and alif, which fonts draw as one form. */
export const lamAlif = (word: Word, l: number) => word.letters[l]?.rune === LAM && ALIFS.has(word.letters[l + 1]?.rune ?? 0);

function word(text: string): Word {
  const letters: Letter[] = [];
  let stretch = -1, pause = 0;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i), last = letters[letters.length - 1];
    if (c === TATWEEL) stretch = i;
    else if (stretch >= 0 && (c === 0x654 || c === 0x655)) {
      letters.push({ rune: TATWEEL, from: stretch, to: i + 1, marks: [c] });
      stretch = -1;
    } else if (isLetter(c)) {
      letters.push({ rune: c, from: stretch >= 0 ? stretch : i, to: i + 1, marks: [] });
      stretch = -1;
    } else if (isPause(c)) pause = c;
    else if (c === SEEN && last && last.rune !== SAD) pause ||= c;
    else if (last && c !== QUARTER && c !== SAJDAH) {
      last.marks.push(c);
      last.to = i + 1;
    }
  }
  return { text, letters, pause };
}

/** The words of a verse; joined by single spaces they are the verse again. */
export const words = (text: string): Word[] => text.split(' ').map(word);

// Splits a verse into words and letters exactly as the generator does: the numbers in the data
// files count these letters. Code points are written as numbers; no letter of the text is typed
// here.
import type { Letter, Word } from '../types.ts';

const TATWEEL = 0x640;
const HAMZAS = [0x654, 0x655];
const SAD = 0x635;
const SEEN = 0x6dc;
const QUARTER = 0x6de;
const SAJDAH = 0x6e9;
export const SMALL_ALIF = 0x670;
const SMALL_YA_TOP = 0x6e7;
const SMALL_NOON = 0x6e8;

const isLetter = (c: number) =>
  (c >= 0x621 && c <= 0x63a) ||
  (c >= 0x641 && c <= 0x64a) ||
  c === 0x671 ||
  c === SMALL_ALIF ||
  (c >= 0x6e5 && c <= SMALL_NOON);

const isPause = (c: number) => c >= 0x6d6 && c <= 0x6db;

/**
 * Whether the letter is a sign that stands over the letter before it and has no place of its own in
 * the line: a small alif after a letter that does not join, or over the waw or ya that carries it.
 * One that stands on a stretch begins with the stretch, has its place in the line and is a letter
 * like any other.
 */
export const standsOver = (word: Word, l: number) => {
  const x = word.letters[l];
  return (
    !!x &&
    (x.rune === SMALL_ALIF || x.rune === SMALL_YA_TOP || x.rune === SMALL_NOON) &&
    word.text.charCodeAt(x.from) === x.rune
  );
};

const LAM = 0x644;
const ALIFS = new Set([0x622, 0x623, 0x625, 0x627, 0x671]);

/** Whether letters l and l+1 are lam and alif, which fonts draw as one form. */
export const lamAlif = (word: Word, l: number) =>
  word.letters[l]?.rune === LAM && ALIFS.has(word.letters[l + 1]?.rune ?? 0);

// Letters that do not join to the letter after them (Unicode, ArabicShaping: joining types U and
// R).
const ENDS = new Set([
  0x621, 0x622, 0x623, 0x624, 0x625, 0x627, 0x629, 0x62f, 0x630, 0x631, 0x632, 0x648, 0x671,
]);

/**
 * Letter l with its marks in the form it has in the word, by joiners (U+200D) in place of its
 * neighbours: for measuring.
 */
export function shaped(word: Word, l: number): string {
  const x = word.letters[l];
  if (!x) return '';
  let before = l - 1;
  let after = l + 1;
  while (standsOver(word, before)) before--;
  while (standsOver(word, after)) after++;
  const prior = word.letters[before];
  const joins = prior && !ENDS.has(prior.rune);
  const on = word.letters[after] && !ENDS.has(x.rune);
  return (joins ? '\u200d' : '') + word.text.slice(x.from, x.to) + (on ? '\u200d' : '');
}

const MARK = /\p{M}/u;

/**
 * Letters l to l+n-1 with all that stands on them, pause signs too, in UTF-16 units: browsers paint
 * no less than that.
 */
export function cluster(word: Word, l: number, n: number): { from: number; to: number } {
  let from = word.letters[l]!.from;
  let to = word.letters[l + n - 1]!.to;
  while (from > 0 && MARK.test(word.text[from]!)) from--;
  while (to < word.text.length && MARK.test(word.text[to]!)) to++;
  return { from, to };
}

function word(text: string): Word {
  const letters: Letter[] = [];
  let stretch = -1;
  let pause = 0;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    const last = letters[letters.length - 1];
    if (c === TATWEEL) stretch = i;
    else if (stretch >= 0 && HAMZAS.includes(c)) {
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

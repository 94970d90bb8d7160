// The shapes that stand under a marked letter beside its colour: one for what was found, missed and
// marked too much, and one for each line form of the rule families. They are our own, and each can
// be told from the others under the narrowest letter (an alif, a fifth of an em wide) at the size
// of a phone's lines, in grey as in colour.
//
// None of them may be taken for a sign of the text: no dot, which would be a letter's own; no ring,
// which would be a sukun or the zero of a letter that is not read; no wave, which would be a
// maddah. So what CSS calls dotted is a comb here, and what it calls wavy a row of teeth.
//
// Pure: a shape is the path of a stroke in hundredths of the letter size (em). x grows to the
// right, y downwards.

export type Sign = 'solid' | 'double' | 'dotted' | 'dashed' | 'wavy' | 'found' | 'missed' | 'extra';

/** How thick each shape's stroke is, in hundredths of an em. */
export const THICK: Record<Sign, number> = {
  solid: 6,
  double: 4,
  dotted: 3.5,
  dashed: 4.5,
  wavy: 4,
  found: 12,
  missed: 5.5,
  extra: 6,
};

/** What a shape needs below its top, in hundredths of an em. */
export const DEEP = 22;

const round = (n: number) => Math.round(n * 10) / 10;
const go = (command: string, ...n: number[]) => command + n.map(round).join(' ');

/** Places of n things spread evenly over a letter. */
const spread = (n: number, x: number, wide: number) =>
  Array.from({ length: n }, (_, i) => x + (wide * (i + 0.5)) / n);

const line = (x: number, y: number, wide: number) => go('M', x, y) + go('h', wide);

const DRAW: Record<Sign, (x: number, y: number, wide: number) => string> = {
  solid: (x, y, w) => line(x + 1, y + 6, w - 2),
  double: (x, y, w) => line(x + 1, y + 3, w - 2) + line(x + 1, y + 13, w - 2),
  dotted: (x, y, w) =>
    line(x + 1, y + 2, w - 2) +
    spread(Math.max(2, Math.round(w / 12)), x, w)
      .map((c) => go('M', c, y + 2) + go('v', 11))
      .join(''),
  dashed: (x, y, w) =>
    spread(Math.max(2, Math.round(w / 11)), x, w)
      .map((c) => go('M', c - 3, y + 15) + go('l', 6, -12))
      .join(''),
  wavy: (x, y, w) =>
    spread(Math.max(1, Math.round(w / 17)), x, w)
      .map((c) => go('M', c - 5, y + 13) + go('l', 5, -9) + go('l', 5, 9) + 'z')
      .join(''),
  found: (x, y, w) => {
    const wide = Math.max(w - 2, 22);
    return line(x + (w - wide) / 2, y + 8, wide);
  },
  missed: (x, y, w) =>
    go('M', x + w / 2 - 8, y + 3) + go('h', 16) + go('v', 16) + go('h', -16) + 'z',
  extra: (x, y, w) => go('M', x + w / 2 - 12, y + 17) + go('l', 12, -13) + go('l', 12, 13),
};

/** The path of a shape with its top at y under a letter that begins at x and is wide. */
export const path = (sign: Sign, x: number, y: number, wide: number): string =>
  DRAW[sign](x, y, wide);

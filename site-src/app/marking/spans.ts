// What is marked: letters, each with the look of its kind. Every screen and every sheet is a list
// of these, and two painters draw it: paint.ts on the lines, screens/paper/ink.ts on paper. Pure.
import { cluster, lamAlif, standsOver } from '../text/letters.ts';
import type { Place, Word } from '../types.ts';
import type { Hit } from './check.ts';
import type { Sign } from './signs.ts';

/**
 * The colour and shape of a mark; name is that of its highlight, colour a CSS colour, key a letter
 * beside the shape, where several pencils have the same.
 */
export interface Look {
  name: string;
  colour: string;
  sign: Sign;
  key?: string | undefined;
}

/**
 * A letter and how it is marked. Where two meet on a letter, the first of a list is the one shown;
 * one with under has its shape all the same, so many below the first.
 */
export interface Span extends Look, Place {
  under?: number;
}

/** The look of a rule family. */
export const familyLook = (id: string, sign: Sign): Look => ({
  name: `f-${id}`,
  colour: `var(--c-${id})`,
  sign,
});

/** The letter of a place of a rule. */
export const spanOf = ({ v, e }: Hit, look: Look): Span => ({ v, w: e.w, l: e.l, ...look });

/** Not seen itself: both halves of a lam-alif that differ are drawn over it. */
const HOLLOW = 'hollow';

/**
 * How the letters of a word get their colours: by ranges of it, in UTF-16 units, each in the
 * highlight of its name; where no range can, by letters that are drawn again, in ink where they
 * have no colour; and the shapes under them.
 */
export interface Inked {
  ranges: { name: string; from: number; to: number }[];
  again: { l: number; colour: string | undefined }[];
  shapes: { l: number; look: Look; under?: number }[];
}

/**
 * A range cannot colour everything alone. A small alif that stands over its letter is painted with
 * it as one; lam and alif in their joined form are one shape, of which engines paint now the one
 * half, now the other, now both. There the letter is drawn once more; with every, wherever there is
 * a colour.
 */
export function inked(word: Word, spans: Span[], every = false): Inked {
  const out: Inked = { ranges: [], again: [], shapes: [] };
  if (!spans.length) return out;
  const look = (l: number) => spans.find((s) => s.l === l);
  const halves = (l: number) => lamAlif(word, l) && look(l)?.colour !== look(l + 1)?.colour;
  word.letters.forEach((_, l) => {
    const mine = look(l);
    const over = standsOver(word, l);
    if (mine) out.shapes.push({ l, look: mine });
    for (const s of spans)
      if (s.l === l && s.under) out.shapes.push({ l, look: s, under: s.under });
    if (halves(l) || halves(l - 1) || (over ? mine?.colour !== look(l - 1)?.colour : every && mine))
      out.again.push({ l, colour: mine?.colour });
    if (halves(l)) out.ranges.push({ name: HOLLOW, ...cluster(word, l, 2) });
    else if (mine && !over && !lamAlif(word, l - 1))
      out.ranges.push({ name: mine.name, ...cluster(word, l, lamAlif(word, l) ? 2 : 1) });
  });
  return out;
}

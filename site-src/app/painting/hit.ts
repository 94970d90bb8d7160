// Which letter a touch is meant for, and how near another one is.
import { standsOver } from '../text/letters.ts';
import type { Place } from '../types.ts';
import { Sheet, type Shown } from './sheet.ts';

/** How far (px) from a word a touch is still meant for it. */
const REACH = 40;

/** How far a point is from a word: to the side, and over or under its line; in pixels. */
function away(s: Shown, x: number, y: number): { side: number; line: number } {
  const r = s.el.getBoundingClientRect();
  return {
    side: Math.max(r.left - x, 0, x - r.right),
    line: Math.max(r.top - y, 0, y - r.bottom),
  };
}

/**
 * How far a point of a word's line is from one of its letters, in pixels. A small letter and the one
 * it stands over share their place: the crown of the lower one is between them.
 */
function gap(s: Shown, l: number, x: number, y: number): number {
  const { left, right } = Sheet.across(s, l);
  const across = Math.max(left - x, 0, x - right);
  const over = standsOver(s.word, l);
  if (!over && !standsOver(s.word, l + 1)) return across;
  const up = Sheet.base(s) - y - Sheet.crown(s, over ? l : l + 1) * Sheet.em(s);
  return Math.hypot(across, Math.max(over ? -up : up, 0));
}

/** The word that is touched, or the nearest within reach. */
function wordAt(sheet: Sheet, x: number, y: number): Shown | undefined {
  // Something that keeps the text from being selected may lie over the words.
  const el = document.elementsFromPoint(x, y).find((e): e is HTMLElement => e.matches('.w'));
  const own = el && sheet.word(Number(el.dataset.v), Number(el.dataset.w));
  if (own?.el === el && own) return own;
  let best: Shown | undefined;
  let least = REACH;
  for (const s of sheet.shown) {
    const { side, line } = away(s, x, y);
    const d = Math.hypot(side, line);
    if (d < least) {
      least = d;
      best = s;
    }
  }
  return best;
}

/** The letter nearest to a touch: first the word, then its letter. */
export function hit(sheet: Sheet, x: number, y: number): Place | undefined {
  const s = wordAt(sheet, x, y);
  if (!s) return undefined;
  let l = 0;
  let least = Infinity;
  s.word.letters.forEach((_, i) => {
    const { left, right } = Sheet.across(s, i);
    const d = gap(s, i, x, y) + Math.abs((left + right) / 2 - x) / 1e4;
    if (d < least) {
      least = d;
      l = i;
    }
  });
  return { v: s.v, w: s.w, l };
}

/**
 * How far a touch of a letter is from the nearest other letter, of its word or of a word beside it
 * or on the next line; in pixels, and Infinity from `most` on.
 */
export function rival(sheet: Sheet, at: Place, x: number, y: number, most: number): number {
  let least = Infinity;
  for (const s of sheet.shown) {
    const { side, line } = away(s, x, y);
    if (Math.hypot(side, line) >= most) continue;
    const own = s.v === at.v && s.w === at.w;
    s.word.letters.forEach((_, l) => {
      if (own && l === at.l) return;
      least = Math.min(least, Math.hypot(line, gap(s, l, x, y)));
    });
  }
  return least < most ? least : Infinity;
}

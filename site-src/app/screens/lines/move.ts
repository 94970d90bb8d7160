// Moves the place of the keyboard: by letter, by word, by line. In Arabic the next letter stands on
// the left.
import type { Place, Verse } from '../../types.ts';
import { Sheet } from '../../painting/sheet.ts';

function words(vs: Verse[], p: Place, by: 1 | -1): Place | undefined {
  const w = p.w + by;
  if (vs[p.v]!.words[w]) return { v: p.v, w, l: 0 };
  const v = p.v + by;
  const next = vs[v];
  return next ? { v, w: by > 0 ? 0 : next.words.length - 1, l: 0 } : undefined;
}

/** The place one letter on or back; past a word's end, the next word. */
export function byLetter(vs: Verse[], p: Place, by: 1 | -1): Place {
  const l = p.l + by;
  if (vs[p.v]!.words[p.w]!.letters[l]) return { ...p, l };
  const to = words(vs, p, by);
  if (!to) return p;
  return by > 0 ? to : { ...to, l: vs[to.v]!.words[to.w]!.letters.length - 1 };
}

export const byWord = (vs: Verse[], p: Place, by: 1 | -1): Place => words(vs, p, by) ?? p;

/** The word above or below on screen. */
export function byLine(sheet: Sheet, p: Place, by: 1 | -1): Place {
  const at = sheet.word(p.v, p.w);
  if (!at) return p;
  const b = Sheet.box(at, p.l);
  const x = (b.left + b.right) / 2;
  let best = p;
  let least = Infinity;
  let line = 0;
  for (const s of by > 0 ? sheet.shown : [...sheet.shown].reverse()) {
    const r = s.el.getBoundingClientRect();
    if (by > 0 ? r.top < b.bottom : r.bottom > b.top) continue;
    if (line && Math.abs(r.top - line) > r.height / 2) break;
    line = r.top;
    const d = Math.max(r.left - x, 0, x - r.right);
    if (d < least) {
      least = d;
      best = { v: s.v, w: s.w, l: 0 };
    }
  }
  return best;
}

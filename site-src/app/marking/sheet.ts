// The words on screen: one element and one text node a word, and where each letter stands.
import type { Place, Verse, Word } from '../types.ts';
import { shaped, stands } from '../text/letters.ts';

export interface Shown { v: number; w: number; el: HTMLElement; node: Text; word: Word }
export interface Box { left: number; right: number; top: number; bottom: number }

const pen = document.createElement('canvas').getContext('2d');

export class Sheet {
  readonly shown: Shown[] = [];
  private readonly at = new Map<string, Shown>();

  add(v: number, w: number, el: HTMLElement, verses: Verse[]) {
    this.put({ v, w, el, node: el.firstChild as Text, word: verses[v]!.words[w]! });
  }

  put(s: Shown) {
    this.shown.push(s);
    this.at.set(`${s.v}.${s.w}`, s);
  }

  word(v: number, w: number) { return this.at.get(`${v}.${w}`); }

  /** Letters l to l+n-1 of a word as a range over its untouched text. */
  static range(s: Shown, l: number, n = 1): Range | undefined {
    const a = s.word.letters[l], b = s.word.letters[l + n - 1];
    if (!a || !b) return undefined;
    const r = new Range();
    r.setStart(s.node, a.from);
    // A pause sign belongs to no letter but stands on the last one: browsers paint a letter only with all that stands on it.
    r.setEnd(s.node, b.to + /^[\u06d6-\u06dc]*/.exec(s.node.data.slice(b.to))![0].length);
    return r;
  }

  /** Where a letter stands on screen. A small letter standing over another has that letter's box. */
  static box(s: Shown, l: number): Box {
    const rects = Sheet.range(s, stands(s.word, l) && l > 0 ? l - 1 : l)?.getClientRects() ?? [];
    let b: Box | undefined;
    for (const r of rects) {
      if (!b) b = { left: r.left, right: r.right, top: r.top, bottom: r.bottom };
      else b = { left: Math.min(b.left, r.left), right: Math.max(b.right, r.right), top: Math.min(b.top, r.top), bottom: Math.max(b.bottom, r.bottom) };
    }
    return b ?? s.el.getBoundingClientRect();
  }

  /** The height on screen above which only the small letter stands, below which the letter that bears it. */
  static split(s: Shown, l: number, box = Sheet.box(s, l)): number {
    return Sheet.ink(s, shaped(s.word, l - 1) || ' ', box) - 1;
  }

  /**
   * A height on screen at or above the top of a small letter that stands over another. It is measured with the letters
   * before it, because fonts lift it out of the way of their signs.
   */
  static crown(s: Shown, l: number, box = Sheet.box(s, l)): number {
    return Sheet.ink(s, s.word.text.slice(s.word.letters[Math.max(l - 2, 0)]!.from, s.word.letters[l]!.to) + '\u200d', box);
  }

  private static ink(s: Shown, text: string, box: Box): number {
    if (!pen) return (box.top + box.bottom) / 2;
    pen.font = getComputedStyle(s.el).font;
    const m = pen.measureText(text);
    return box.top + m.fontBoundingBoxAscent - m.actualBoundingBoxAscent;
  }

  private nearest(x: number, y: number): Shown | undefined {
    let best: Shown | undefined, least = 40;
    for (const s of this.shown) {
      const r = s.el.getBoundingClientRect();
      const d = Math.hypot(Math.max(r.left - x, 0, x - r.right), Math.max(r.top - y, 0, y - r.bottom));
      if (d < least) { least = d; best = s; }
    }
    return best;
  }

  /** The letter nearest to a touch: first the word touched (or nearest, within a finger's width), then its letter. */
  hit(x: number, y: number): Place | undefined {
    const el = document.elementFromPoint(x, y)?.closest<HTMLElement>('.w');
    const s = (el && this.shown.find((q) => q.el === el)) ?? this.nearest(x, y);
    if (!s) return undefined;
    let l = 0, least = Infinity;
    s.word.letters.forEach((_, i) => {
      if (stands(s.word, i)) return;
      const b = Sheet.box(s, i), d = Math.max(b.left - x, 0, x - b.right);
      const tie = Math.abs((b.left + b.right) / 2 - x) / 1e4;
      if (d + tie < least) { least = d + tie; l = i; }
    });
    if (stands(s.word, l + 1) && y < Sheet.split(s, l + 1)) l++;
    return { v: s.v, w: s.w, l };
  }
}

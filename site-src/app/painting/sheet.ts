// The words on screen: one element and one text node a word, and where each letter stands.
import type { Verse, Word } from '../types.ts';
import { cluster, lamAlif, shaped, standsOver } from '../text/letters.ts';
import type { Slot } from './pieces.ts';

/** bits is what was drawn on the word's baseline, and key what it shows. */
export interface Shown {
  v: number;
  w: number;
  el: HTMLElement;
  node: Text;
  word: Word;
  bits?: HTMLElement;
  key?: string;
}
export interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

const pen = document.createElement('canvas').getContext('2d');

/** The reading font, as the style sheets name it; the size does not matter. */
const FONT = '16px "Scheherazade New"';

/**
 * How far a letter's box reaches over and under the baseline, in em: engines give boxes of
 * different heights.
 */
const UP = 1;
const DOWN = 0.5;

export class Sheet {
  readonly shown: Shown[] = [];
  private readonly at = new Map<string, Shown>();

  /** The words of verses that stand below an element, each as .w with its data-v and data-w. */
  static of(root: HTMLElement, verses: Verse[]): Sheet {
    const sheet = new Sheet();
    for (const el of root.querySelectorAll<HTMLElement>('.w'))
      sheet.add(Number(el.dataset.v), Number(el.dataset.w), el, verses);
    return sheet;
  }

  add(v: number, w: number, el: HTMLElement, verses: Verse[]) {
    this.put({ v, w, el, node: el.firstChild as Text, word: verses[v]!.words[w]! });
  }

  put(s: Shown) {
    this.shown.push(s);
    this.at.set(`${s.v}.${s.w}`, s);
  }

  /**
   * Has everything measured and drawn anew by draw once the reading font has come for text, unless
   * it is there already. To be asked together with the first measuring: the font may come a frame
   * later.
   */
  whenFont(text: string, draw: () => void) {
    if (document.fonts.check(FONT, text)) return;
    void document.fonts.load(FONT, text).then(
      () => {
        for (const s of this.shown) if (s.key) s.key = 'old';
        draw();
      },
      () => undefined,
    ); // without the font, what was measured stays right
  }

  word(v: number, w: number) {
    return this.at.get(`${v}.${w}`);
  }

  /** Letters l to l+n-1 of a word as a range over its untouched text. */
  static range(s: Shown, l: number, n = 1): Range | undefined {
    if (!s.word.letters[l] || !s.word.letters[l + n - 1]) return undefined;
    const r = new Range();
    const { from, to } = cluster(s.word, l, n);
    r.setStart(s.node, from);
    r.setEnd(s.node, to);
    return r;
  }

  /** The size of the letters, in pixels. */
  static em(s: Shown): number {
    return parseFloat(getComputedStyle(s.el).fontSize);
  }

  /**
   * From where to where on screen a letter stands. A small letter standing over another has that
   * letter's place.
   */
  static across(s: Shown, l: number): { left: number; right: number } {
    if (l > 0 && standsOver(s.word, l)) return Sheet.across(s, l - 1);
    // Lam and alif are one form, of which each has a half; engines differ in what they say of
    // either alone.
    const lam = lamAlif(s.word, l);
    const alif = lamAlif(s.word, l - 1);
    const r =
      Sheet.range(s, alif ? l - 1 : l, lam || alif ? 2 : 1)?.getBoundingClientRect() ??
      s.el.getBoundingClientRect();
    const middle = (r.left + r.right) / 2;
    return { left: alif || !lam ? r.left : middle, right: lam || !alif ? r.right : middle };
  }

  /** Where a letter stands in its word, in em. */
  static slot(s: Shown, l: number): Slot {
    const { left, right } = Sheet.across(s, l);
    const size = Sheet.em(s);
    return { at: (s.el.getBoundingClientRect().right - right) / size, wide: (right - left) / size };
  }

  /** Where a letter stands on screen. */
  static box(s: Shown, l: number): Box {
    const size = Sheet.em(s);
    const base = Sheet.base(s);
    return { ...Sheet.across(s, l), top: base - UP * size, bottom: base + DOWN * size };
  }

  /**
   * The height on screen of a word's baseline: its line is evenly led around the font's own height.
   */
  static base(s: Shown): number {
    const r = s.el.getBoundingClientRect();
    const middle = (r.top + r.bottom) / 2;
    if (!pen) return middle;
    pen.font = getComputedStyle(s.el).font;
    const m = pen.measureText(' ');
    return middle + (m.fontBoundingBoxAscent - m.fontBoundingBoxDescent) / 2;
  }

  /**
   * How high over the baseline a letter with its signs reaches before a small letter that stands
   * over it, in em.
   */
  static crown(s: Shown, l: number): number {
    return Sheet.ink(s, shaped(s.word, l - 1) || ' ');
  }

  /**
   * How high a small letter that stands over another reaches, in em, or more. It is measured with
   * the letters before it, because fonts lift it out of the way of their signs.
   */
  static top(s: Shown, l: number): number {
    return Sheet.ink(
      s,
      s.word.text.slice(s.word.letters[Math.max(l - 2, 0)]!.from, s.word.letters[l]!.to) + '\u200d',
    );
  }

  /** How far a letter with its signs reaches over and under the baseline, in em. */
  static reach(s: Shown, l: number): { up: number; down: number } {
    if (standsOver(s.word, l)) return { up: Sheet.top(s, l), down: -Sheet.crown(s, l) };
    if (!pen) return { up: UP, down: DOWN };
    pen.font = getComputedStyle(s.el).font;
    const m = pen.measureText(shaped(s.word, l));
    const em = Sheet.em(s);
    return { up: m.actualBoundingBoxAscent / em, down: m.actualBoundingBoxDescent / em };
  }

  private static ink(s: Shown, text: string): number {
    if (!pen) return 0.7;
    pen.font = getComputedStyle(s.el).font;
    return pen.measureText(text).actualBoundingBoxAscent / Sheet.em(s);
  }
}

// Measures words and letters once, in letter sizes, so that both sheets are laid out from the same
// figures. The text is set with exact widths (geometricPrecision), which a browser's print uses
// too, but not every engine for every size, so what is measured has the size it will be printed in.
import { html, render } from 'lit-html';
import type { Slot } from '../../painting/pieces.ts';
import { Sheet, type Shown } from '../../painting/sheet.ts';
import { turnOf } from '../../paper/geometry.ts';
import type { Options } from '../../paper/options.ts';
import type { Widths } from '../../paper/rows.ts';
import type { Verse, Word } from '../../types.ts';
import { pageStyle } from './page.ts';

/** What was measured of the words of some verses; it can be asked until it is dropped. */
export interface Measured extends Widths {
  /** Where a letter stands in its word. */
  slot: (v: number, w: number, l: number) => Slot;
  /** How high over the baseline the letter below a small letter reaches. */
  crown: (v: number, w: number, l: number) => number;
  drop: () => void;
}

/** Letter size (px) for what is printed in more than one size. */
const BIG = 100;

/**
 * A word: one text node with the space after it, so that every last letter is painted like one in
 * the middle.
 */
export const wordOf = (word: Word, more = '') =>
  html`<span class="w${more}" .textContent=${`${word.text} `}></span>`;

/** An empty place on the page, out of sight. */
function hiddenBox(cls: string, style: string): HTMLElement {
  const box = document.createElement('div');
  box.className = cls;
  box.style.cssText = style;
  box.ariaHidden = 'true';
  document.body.append(box);
  return box;
}

/** Runs make with an empty place of a page's measures, in full size. */
export async function inHiddenPages<T>(
  o: Options,
  make: (box: HTMLElement) => T | Promise<T>,
): Promise<T> {
  const box = hiddenBox('leaves print-measure', pageStyle(o));
  box.dataset.turn = turnOf(o);
  try {
    return await make(box);
  } finally {
    box.remove();
  }
}

/** Sets all words of verses out of sight, with letters of size pixels. */
export async function measure(verses: Verse[], size = BIG): Promise<Measured> {
  await document.fonts
    .load(`${size}px "Scheherazade New"`, verses[0]?.text.slice(0, 20) ?? 'a')
    .catch(() => undefined);
  const box = hiddenBox('print-measure', `font-size:${size}px`);
  render(
    verses.map(
      (v) => html`<p class="line" lang="ar" dir="rtl">${v.words.map((x) => wordOf(x))}</p>`,
    ),
    box,
  );
  const els = [...box.children].map((p) => [...p.querySelectorAll<HTMLElement>('.w')]);
  const shown = (v: number, w: number): Shown => {
    const el = els[v]![w]!;
    return { v, w, el, node: el.firstChild as Text, word: verses[v]!.words[w]! };
  };
  return {
    ...widths(els, size),
    slot: (v, w, l) => Sheet.slot(shown(v, w), l),
    crown: (v, w, l) => Sheet.crown(shown(v, w), l),
    drop: () => box.remove(),
  };
}

function widths(els: HTMLElement[][], size: number): Widths {
  const range = new Range();
  const widthOf = (x: Range | HTMLElement) => x.getBoundingClientRect().width / size;
  const words = els.map((verse) =>
    verse.map((el) => {
      const text = el.firstChild as Text;
      range.setStart(text, 0);
      range.setEnd(text, text.length - 1); // without the space after it
      return widthOf(range);
    }),
  );
  // Not by a range: WebKit leaves the spacing of words out of one over the space.
  return { words, space: widthOf(els[0]![0]!) - words[0]![0]! };
}

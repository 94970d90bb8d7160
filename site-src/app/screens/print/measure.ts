// Measures words and letters once, in letter sizes, so that both sheets are laid out from the same
// figures. The text is set with exact widths (geometricPrecision), which a browser's print uses
// too, but not every engine for every size, so what is measured has the size it will be printed in.
import { h } from '../../dom.ts';
import type { Slot } from '../../marking/pieces.ts';
import { Sheet, type Shown } from '../../marking/sheet.ts';
import type { Verse, Word } from '../../types.ts';

/**
 * Widths of words, places of letters, and for a small letter how high over the baseline the letter
 * below it reaches.
 */
export interface Measured {
  words: number[][];
  space: number;
  slot: (v: number, w: number, l: number) => Slot;
  crown: (v: number, w: number, l: number) => number;
  drop: () => void;
}

const BIG = 100;

/**
 * The element of a word: one text node with the space after it, so that every last letter is
 * painted like one in the middle.
 */
export const wordEl = (word: Word) => h('span', { class: 'w' }, `${word.text} `);

/** Sets all words in a corner nobody sees, size pixels large; drop takes them away again. */
export async function measure(verses: Verse[], size = BIG): Promise<Measured> {
  await document.fonts
    .load(`${size}px "Scheherazade New"`, verses[0]?.text.slice(0, 20) ?? 'a')
    .catch(() => undefined);
  const els = verses.map((v) => v.words.map(wordEl));
  const box = h(
    'div',
    { class: 'print-measure', 'aria-hidden': 'true', style: `font-size:${size}px` },
    els.map((v) => h('p', { class: 'line', lang: 'ar', dir: 'rtl' }, v)),
  );
  document.body.append(box);
  const range = new Range(),
    wide = (x: Range | HTMLElement) => x.getBoundingClientRect().width / size;
  const words = els.map((v) =>
    v.map((el) => {
      const text = el.firstChild as Text;
      range.setStart(text, 0);
      range.setEnd(text, text.length - 1); // without the space after it
      return wide(range);
    }),
  );
  // Not by a range: WebKit leaves the spacing of words out of one over the space.
  const space = wide(els[0]![0]!) - words[0]![0]!;
  const at = (v: number, w: number): Shown => {
    const el = els[v]![w]!;
    return { v, w, el, node: el.firstChild as Text, word: verses[v]!.words[w]! };
  };
  return {
    words,
    space,
    slot: (v, w, l) => Sheet.slot(at(v, w), l),
    crown: (v, w, l) => Sheet.crown(at(v, w), l),
    drop: () => box.remove(),
  };
}

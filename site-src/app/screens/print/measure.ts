// Measures words and letters once, in letter sizes, so that every size and both sheets are laid out from the same figures.
// The text is set with exact widths (geometricPrecision), which a browser's print uses too.
import { h } from '../../dom.ts';
import type { Slot } from '../../marking/pieces.ts';
import { Sheet, type Shown } from '../../marking/sheet.ts';
import type { Verse, Word } from '../../types.ts';

/** Widths of words, places of letters, and for a small letter how high over the baseline the letter below it reaches. */
export interface Measured { words: number[][]; space: number; slot: (v: number, w: number, l: number) => Slot; crown: (v: number, w: number, l: number) => number; drop: () => void }

const BIG = 100;

/** The element of a word: one text node with the space after it, so that every last letter is painted like one in the middle. */
export const wordEl = (word: Word) => h('span', { class: 'w' }, `${word.text} `);

/** Sets all words in a corner nobody sees; drop takes them away again. */
export async function measure(verses: Verse[]): Promise<Measured> {
  await document.fonts.load(`${BIG}px "Scheherazade New"`, verses[0]?.text.slice(0, 20) ?? 'a').catch(() => undefined);
  const els = verses.map((v) => v.words.map(wordEl));
  const box = h('div', { class: 'print-measure', 'aria-hidden': 'true', style: `font-size:${BIG}px` },
    els.map((v) => h('p', { class: 'line', lang: 'ar', dir: 'rtl' }, v)));
  document.body.append(box);
  const range = new Range(), widths = (el: HTMLElement, from: number, to: number) => {
    range.setStart(el.firstChild!, from);
    range.setEnd(el.firstChild!, to);
    return range.getBoundingClientRect().width / BIG;
  };
  const words = els.map((v, i) => v.map((el, w) => widths(el, 0, verses[i]!.words[w]!.text.length)));
  const first = els[0]![0]!, text = verses[0]!.words[0]!.text;
  const at = (v: number, w: number): Shown => {
    const el = els[v]![w]!;
    return { v, w, el, node: el.firstChild as Text, word: verses[v]!.words[w]! };
  };
  return {
    words, space: widths(first, text.length, text.length + 1),
    slot: (v, w, l) => Sheet.slot(at(v, w), l),
    crown: (v, w, l) => Sheet.crown(at(v, w), l),
    drop: () => box.remove(),
  };
}

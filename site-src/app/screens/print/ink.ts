// The painter of paper: as on the lines, named highlights over untouched text, and on each word's
// baseline the shapes of its marks and letters drawn once more (marking/spans.ts).
import { add, highlight, ranges, type Ranges } from '../../marking/highlights.ts';
import { bits, whole } from '../../marking/pieces.ts';
import { inked, type Span } from '../../marking/spans.ts';
import type { Word } from '../../types.ts';
import { type Measured, wordEl } from './measure.ts';

/**
 * Gecko prints a copy of the page in which there are no highlights: there each coloured letter is
 * drawn again.
 */
const EVERY = CSS.supports('-moz-appearance', 'none');

export class Ink {
  private readonly mine: Ranges = new Map();

  /**
   * The element of a word with its letters coloured, and the hook for what else is to lie over it.
   */
  word(
    word: Word,
    spans: Span[],
    m: Measured,
    v: number,
    w: number,
  ): { el: HTMLElement; base: HTMLElement } {
    const el = wordEl(word),
      startContainer = el.firstChild!,
      ink = inked(word, spans, EVERY);
    whole(el, spans);
    for (const { name, from, to } of ink.ranges)
      add(
        this.mine,
        name,
        new StaticRange({
          startContainer,
          startOffset: from,
          endContainer: startContainer,
          endOffset: to,
        }),
      );
    const base = bits(word, ink.shapes, ranges ? ink.again : [], {
      edge: 0,
      slot: (l) => m.slot(v, w, l),
      crown: (l) => m.crown(v, w, l),
    });
    if (base.firstChild) el.prepend(base);
    return { el, base };
  }

  show() {
    highlight('paper', this.mine);
  }

  static clear() {
    highlight('paper', new Map());
  }
}

// Colours the letters of the answer sheets as on screen: named highlights over untouched text, and on each word's baseline
// the shapes of its families and copies of what a range cannot colour alone (see marking/paint.ts).
import { look } from '../../colour/ink.ts';
import { bits, type Look, marked, ranges } from '../../marking/paint.ts';
import type { Word } from '../../types.ts';
import { type Measured, wordEl } from './measure.ts';

/** A letter of a word in the colour of a family. */
export interface Stroke { l: number; family: string }

/** Gecko prints a copy of the page in which there are no highlights: there each coloured letter is drawn again. */
const COPIES = CSS.supports('-moz-appearance', 'none') ? 'all' : 'special';

export class Ink {
  private readonly names = new Map<string, Highlight>();

  private add(name: string, range: { from: number; to: number }, node: Text) {
    let set = this.names.get(name);
    if (!set) this.names.set(name, set = new Highlight());
    set.add(new StaticRange({ startContainer: node, startOffset: range.from, endContainer: node, endOffset: range.to }));
  }

  /** The element of a word with its letters coloured, and the hook for what else is to lie over it. */
  word(word: Word, strokes: Stroke[], m: Measured, v: number, w: number): { el: HTMLElement; base: HTMLElement } {
    const el = wordEl(word), node = el.firstChild as Text;
    const looks = (l: number): Look | undefined => {
      const s = strokes.find((x) => x.l === l);
      return s && look(s.family);
    };
    if (!ranges && strokes.length) {
      el.classList.add('whole');
      el.style.setProperty('--whole', `var(--c-${strokes[0]!.family})`);
    }
    if (ranges) marked(word, looks, (name, range) => this.add(name, range, node));
    const base = bits(word, looks, { edge: 0, slot: (l) => m.slot(v, w, l), crown: (l) => m.crown(v, w, l) }, ranges ? COPIES : 'none');
    if (base.firstChild) el.prepend(base);
    return { el, base };
  }

  show() { for (const [name, set] of this.names) CSS.highlights.set(name, set); }

  clear() {
    for (const [name, set] of this.names) if (CSS.highlights.get(name) === set) CSS.highlights.delete(name);
    this.names.clear();
  }
}

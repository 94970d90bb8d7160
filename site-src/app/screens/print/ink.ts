// Colours the letters of the answer sheets by named highlights over untouched text.
// A browser paints a letter and what stands on it as one, so ranges take whole clusters, small alif and pause sign included;
// and lam with alif is one glyph: an uncoloured alif after a coloured lam is named too, in ink.
import { ranges } from '../../marking/paint.ts';
import type { Word } from '../../types.ts';

const ALIFS = new Set([0x622, 0x623, 0x625, 0x627, 0x671]), LAM = 0x644;
const mark = /\p{M}/u;

export class Ink {
  private readonly names = new Map<string, Highlight>();

  private add(name: string, node: Text, from: number, to: number) {
    let set = this.names.get(name);
    if (!set) this.names.set(name, set = new Highlight());
    set.add(new StaticRange({ startContainer: node, startOffset: from, endContainer: node, endOffset: to }));
  }

  /** Letters l to l+n-1 in the colour of a family; taken tells which letters have a colour of their own. */
  letter(node: Text, word: Word, l: number, n: number, family: string, taken: (l: number) => boolean) {
    if (!ranges) return;
    const { from, to } = cluster(word, l, n);
    // A double line takes two highlights: engines draw both lines of one in the same place.
    for (const name of [`f-${family}`, `f-${family}-2`]) this.add(name, node, from, to);
    const next = word.letters[l + n];
    if (word.letters[l + n - 1]?.rune === LAM && next && ALIFS.has(next.rune) && !taken(l + n)) {
      const c = cluster(word, l + n, 1);
      this.add('print-ink', node, c.from, c.to);
    }
  }

  show() { for (const [name, set] of this.names) CSS.highlights.set(name, set); }

  clear() {
    if (ranges) for (const [name, set] of this.names) if (CSS.highlights.get(name) === set) CSS.highlights.delete(name);
    this.names.clear();
  }
}

/** The UTF-16 offsets of whole clusters around letters l to l+n-1. */
export function cluster(word: Word, l: number, n: number): { from: number; to: number } {
  let from = word.letters[l]!.from, to = word.letters[l + n - 1]!.to;
  while (from > 0 && mark.test(word.text[from]!)) from--;
  while (to < word.text.length && mark.test(word.text[to]!)) to++;
  return { from, to };
}

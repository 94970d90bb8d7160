// Colours the letters of the answer sheets by named highlights over untouched text, on paper exactly as on screen.
// A browser paints a letter and what stands on it as one, so a small alif over its letter is drawn once more, as a copy of
// the word cut to where nothing else stands; and lam with alif is one shape: an uncoloured alif after a coloured lam is
// named too, in ink.
import { h } from '../../dom.ts';
import { ranges } from '../../marking/paint.ts';
import { lamAlif, stands } from '../../text/letters.ts';
import type { Family, Word } from '../../types.ts';
import { type Measured, wordEl } from './measure.ts';

/** Letters of a word in the colour of a family. */
export interface Stroke { l: number; n: number; family: string }
const mark = /\p{M}/u;

/** What lies over a word hangs on its baseline, whose place in a line is known whatever font the device falls back to. */
const hook = () => h('span', { class: 'base', 'aria-hidden': 'true' });

/** The lines alone, without colour; as thick as the generator draws them (package colour). */
export function lineStyles(families: Family[]): string {
  const thick: Record<string, string> = { solid: '.05em', double: '.05em', dotted: '.06em', dashed: '.03em', wavy: '.05em' };
  return families.map((f) => `.leaves .w::highlight(line-${f.id}){text-decoration:underline ${f.form === 'double' ? 'solid' : f.form} ${thick[f.form] ?? '.05em'} var(--c-${f.id});`
    + 'text-underline-offset:.42em;text-decoration-skip-ink:none}').join('');
}

export class Ink {
  private readonly names = new Map<string, Highlight>();

  private add(name: string, node: Text, { from, to }: { from: number; to: number }) {
    let set = this.names.get(name);
    if (!set) this.names.set(name, set = new Highlight());
    set.add(new StaticRange({ startContainer: node, startOffset: from, endContainer: node, endOffset: to }));
  }

  /** The element of a word with its letters coloured, and the hook for what else is to lie over it. */
  word(word: Word, strokes: Stroke[], m: Measured, v: number, w: number): { el: HTMLElement; base: HTMLElement } {
    const el = wordEl(word), node = el.firstChild as Text, base = hook(), on = (l: number) => strokes.find((s) => l >= s.l && l < s.l + s.n);
    if (!ranges && strokes.length) {
      el.classList.add('whole');
      el.style.setProperty('--whole', `var(--c-${strokes[0]!.family})`);
    }
    for (const { l, n, family } of ranges ? strokes : []) {
      const all = cluster(word, l, n), small = stands(word, l);
      // Under the letter that bears a small one stands the line of the small one's family, unless it has a line of its own.
      if (small && !on(l - 1)) this.add(`line-${family}`, node, all);
      if (small) base.append(copy(word, l, `var(--c-${family})`, m, v, w));
      if (small && n === 1) continue;
      const own = small ? cluster(word, l + 1, n - 1) : all;
      // A double line takes two highlights: engines draw both lines of one in the same place.
      for (const name of [`f-${family}`, `f-${family}-2`]) this.add(name, node, own);
      const next = l + n;
      if (stands(word, next) && !on(next)) base.append(copy(word, next, '#000', m, v, w));
      if (lamAlif(word, next - 1) && !on(next)) this.add('print-ink', node, cluster(word, next, 1));
    }
    if (base.firstChild) el.prepend(base);
    return { el, base };
  }

  show() { for (const [name, set] of this.names) CSS.highlights.set(name, set); }

  clear() {
    for (const [name, set] of this.names) if (CSS.highlights.get(name) === set) CSS.highlights.delete(name);
    this.names.clear();
  }
}

/** The word once more, cut to a small letter over another. */
function copy(word: Word, l: number, colour: string, m: Measured, v: number, w: number): HTMLElement {
  const { at, wide } = m.slot(v, w, l), rest = m.words[v]![w]! - at - wide;
  const cut = [-.5, at - .02, m.crown(v, w, l) + .01, rest - .02].map((x) => `${Math.round(x * 1000) / 1000}em`);
  return h('span', { class: 'again', style: `color:${colour};clip-path:inset(${cut.join(' ')})` }, word.text);
}

/** The UTF-16 offsets of whole clusters around letters l to l+n-1. */
export function cluster(word: Word, l: number, n: number): { from: number; to: number } {
  let from = word.letters[l]!.from, to = word.letters[l + n - 1]!.to;
  while (from > 0 && mark.test(word.text[from]!)) from--;
  while (to < word.text.length && mark.test(word.text[to]!)) to++;
  return { from, to };
}

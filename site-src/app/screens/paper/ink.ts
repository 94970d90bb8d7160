// The painter of paper: as on the lines, named highlights over untouched text, and on each word's
// baseline the shapes of its marks and letters drawn once more (marking/spans.ts). What it needs is
// measured before the pages are drawn.
import { html, render } from 'lit-html';
import { add, ranges, type Ranges } from '../../painting/highlights.ts';
import { bits, type Slot, whole } from '../../painting/pieces.ts';
import { type Inked, inked, type Span } from '../../marking/spans.ts';
import type { Note } from '../../paper/marks.ts';
import type { Word, WordAt } from '../../types.ts';
import type { Measured } from './measure.ts';

/**
 * Gecko prints a copy of the page in which there are no highlights: there each coloured letter is
 * drawn again.
 */
const EVERY = CSS.supports('-moz-appearance', 'none');

/** A word with what is painted on it. */
export interface InkedWord {
  word: Word;
  spans: Span[];
  ink: Inked;
  /** Where its marked letters stand. */
  slots: Map<number, Slot>;
  /** How high the letters below its small letters reach. */
  crowns: Map<number, number>;
  notes: Note[];
}

/** The word at a place of the measured verses, with its marks. */
export function inkedWord(
  word: Word,
  { v, w }: WordAt,
  spans: Span[],
  m: Measured,
  notes: Note[] = [],
): InkedWord {
  const ink = inked(word, spans, EVERY);
  const again = ink.again.map((x) => x.l);
  const letters = new Set([...again, ...ink.shapes.map((x) => x.l)]);
  return {
    word,
    spans,
    ink,
    slots: new Map([...letters].map((l) => [l, m.slot(v, w, l)])),
    crowns: new Map(again.map((l) => [l, m.crown(v, w, l)])),
    notes,
  };
}

/** Paints the words below root, which are those of list in its order; adds their ranges to out. */
export function paint(root: ParentNode, list: InkedWord[], out: Ranges = new Map()): Ranges {
  const els = root.querySelectorAll<HTMLElement>('.leaf:not([data-sheet="practice"]) .w');
  list.forEach((x, i) => paintWord(els[i]!, x, out));
  return out;
}

function paintWord(el: HTMLElement, x: InkedWord, out: Ranges) {
  const node = el.firstChild!;
  whole(el, x.spans);
  for (const { name, from, to } of x.ink.ranges) add(out, name, rangeOf(node, from, to));
  const base = bits(x.word, x.ink.shapes, ranges ? x.ink.again : [], {
    edge: 0,
    slot: (l) => x.slots.get(l)!,
    crown: (l) => x.crowns.get(l)!,
  });
  if (x.notes.length)
    render(
      x.notes.map((n) => noteOf(n, x.slots.get(n.l)!)),
      base,
    );
  if (base.firstChild) el.prepend(base);
}

const rangeOf = (node: Node, startOffset: number, endOffset: number) =>
  new StaticRange({ startContainer: node, startOffset, endContainer: node, endOffset });

/** Counts above a letter, short names of rules below it. */
function noteOf({ counts, keys }: Note, { at, wide }: Slot) {
  const style = `--at:${Math.round((at + wide / 2) * 1000) / 1000}`;
  const note = (cls: string, list: (string | number)[]) =>
    list.length ? html`<span class=${cls} .style=${style}>${list.join(' ')}</span>` : '';
  return [note('held', counts), note('key', keys)];
}

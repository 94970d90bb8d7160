// A letter of the enlarged word, by itself: its slice of the whole word, so that the joined forms
// stay as they are in the line.
import { html, type TemplateResult } from 'lit-html';
import { Sheet, type Shown } from '../../painting/sheet.ts';
import { standsOver } from '../../text/letters.ts';

/** Pixels of the neighbours that are seen, faint, at either side of a letter. */
const PAD = 10;

/**
 * One slice: the word again, faint, moved so that letter l is in the middle, and over it a copy cut
 * to that letter, in ink or, when it is marked, in the pencil's colour. Both are drawn by the style
 * sheet from the word that they name: a button's words are then its letter's name alone, and a search
 * in the page finds the word once.
 */
export function face(s: Shown, l: number, box: DOMRect): TemplateResult {
  const b = Sheet.box(s, l);
  const inside = (up: number) => `${Sheet.base(s) - up * Sheet.em(s) - box.top}px`;
  const top = standsOver(s.word, l + 1) ? inside(Sheet.crown(s, l + 1)) : '-.4em';
  const bottom = standsOver(s.word, l) ? `calc(100% - ${inside(Sheet.crown(s, l))})` : '-.4em';
  const at = `left:${box.left - b.left + PAD}px;width:${box.width}px`;
  const cut = `clip-path:inset(${top} ${box.right - b.right}px ${bottom} ${b.left - box.left}px)`;
  const size = `width:${b.right - b.left + 2 * PAD}px;height:${box.height}px`;
  const { text } = s.word;
  return html`<span class="slice" .style=${size} aria-hidden="true"
    ><span class="slice-word" lang="ar" data-word=${text} .style=${at}></span
    ><span class="slice-word ink" lang="ar" data-word=${text} .style=${`${at};${cut}`}></span
  ></span>`;
}

// The line over the words of a prostration is drawn by the style sheet over an element around them: the text of a word
// stays one untouched node.
import { h } from '../dom.ts';

const SIGN = '\u06e9'; // stands after the last word, outside the line

/** The element that draws the line over a word, or over the space between two. */
export const lined = (kid: HTMLElement | string): HTMLElement =>
  h('span', { class: (typeof kid === 'string' ? kid : kid.textContent).includes(SIGN) ? 'lined signed' : 'lined' }, kid);

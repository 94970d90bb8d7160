// How a family of rules is drawn beside words: its pencil's colour and its shape.
import { html, nothing } from 'lit-html';
import { look } from '../../colour/ink.ts';
import { path, type Sign, THICK } from '../../marking/signs.ts';

/** The style that gives an element, and what is below it, a family's pencil. */
export const pencil = (family: string) => `--pencil:var(--c-${family})`;

/** A short stroke of a shape, as in a key; decoration, without a name of its own. */
export const stroke = (sign: Sign, colour = 'currentcolor', cls = 'swatch') =>
  html`<svg class=${cls} viewBox="0 0 60 30" aria-hidden="true">
    <path
      class="sign ${sign}"
      d=${path(sign, 3, 6, 54)}
      stroke-width=${THICK[sign]}
      .style=${`stroke:${colour}`}
    ></path>
  </svg>`;

/** A stroke of a family's pencil, to stand before a rule's name; with the pencil's key, if it has one. */
export function swatch(family: string, key?: string) {
  const { sign, colour } = look(family);
  return [stroke(sign, colour), key ? html`<span class="pencil-key">${key}</span>` : nothing];
}

// The key of the colours: a press on a pencil shows its places, another hides them. At first there
// are none, so that children look for themselves.
import { html, nothing } from 'lit-html';
import { look } from '../../colour/ink.ts';
import { t } from '../../i18n.ts';
import { written } from '../../marking/check.ts';
import { type Pencil, STOPS } from '../../marking/pencils.ts';
import { type Span, spanOf } from '../../marking/spans.ts';
import { stacked } from '../lines/colours.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { type Board, set } from './board.ts';

/** The letters that are coloured, each as its pencil in the key. */
export const spansOf = ({ verses, stops, pencils, shown }: Board): Span[] =>
  stacked(
    pencils
      .filter((x) => shown.includes(x.id))
      .flatMap((x) => written(verses, x.rules, stops).map((h) => spanOf(h, look(x.family, x.key)))),
  );

export function key(b: Board) {
  const list = b.pencils.filter((x) => x.id !== STOPS);
  if (!list.length) return nothing;
  return html`<div class="board-key" role="group" aria-label=${t('shared.key')} data-t="key">
    ${list.map((x) => item(b, x))}
  </div>`;
}

const item = ({ shown }: Board, { id, family, name, key }: Pencil) =>
  html`<button
    class="chip"
    .style=${pencil(family)}
    aria-pressed=${shown.includes(id)}
    data-t="key-${id}"
    @click=${() => set({ shown: turned(shown, id) })}
  >
    ${swatch(family, key)}${name}
  </button>`;

const turned = (shown: string[], id: string) =>
  shown.includes(id) ? shown.filter((x) => x !== id) : [...shown, id];

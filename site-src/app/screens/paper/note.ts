// What is said about a sheet before it is printed, and what can be done about it.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import type { LinesOf } from '../../paper/options.ts';
import { linesName } from '../../text/names.ts';
import type { Catalogue } from '../../types.ts';
import { fewOf, type Offer } from './better.ts';
import type { Layout } from './layout.ts';
import { change, type Printing } from './printing.ts';

const FIRST = '[data-t="better-1"]';

/** Lines with more places of the rule, each a press away, and the way back from them. */
export function better(c: Catalogue, p: Printing) {
  const few = fewOf(p.layout);
  const { part, from, to } = p.options;
  const take = ({ lines }: Offer) =>
    change({ part: 'verses', from: lines.from, to: lines.to }, { part, from, to });
  return html`<div class="print-note" data-t="print-note">
    ${p.before ? moved(c, p.before) : nothing}
    ${
      few && p.offers.length
        ? html`<p>${t('print.better', { rule: few.name })}</p>
            <div class="row">${p.offers.map((x, i) => offer(c, x, i, take))}</div>`
        : nothing
    }
  </div>`;
}

const moved = (c: Catalogue, before: LinesOf) => html`
  <p>${t('print.moved')}</p>
  <div class="row">
    <button
      type="button"
      class="plain"
      data-t="print-back"
      data-next="#print-part"
      @click=${() => change(before)}
    >
      ${t('print.back', { lines: linesName(c.surahs, before.from, before.to) })}
    </button>
  </div>
`;

const offer = (c: Catalogue, x: Offer, i: number, take: (x: Offer) => void) => html`
  <button
    type="button"
    class="plain"
    data-t="better-${i + 1}"
    data-next='[data-t="print-back"]'
    @click=${() => take(x)}
  >
    ${t('print.better-lines', {
      lines: linesName(c.surahs, x.lines.from, x.lines.to),
      n: x.places,
    })}
  </button>
`;

/** What the pages lack, in a sentence; empty for nothing. */
export function lacks(l: Layout): string {
  const few = fewOf(l);
  if (few) return t('print.few', { rule: few.name, n: few.n });
  if (l.sheet === 'card') return l.inked.length ? '' : t('print.card-empty');
  if (l.sheet === 'booklet') return l.pencils.length ? '' : t('print.key-none');
  return '';
}

/** At the top of the screen: Print lies over its foot. */
function showFirst() {
  const first = document.querySelector<HTMLElement>(FIRST);
  first?.focus({ preventScroll: true });
  first?.closest('.print-note')?.scrollIntoView();
}

/** Leads from the sentence beside Print to the lines that are offered. */
export const seeBetter = (p: Printing) =>
  p.offers.length
    ? html`<button type="button" class="link" data-t="see-better" @click=${showFirst}>
        ${t('print.see-better')}
      </button>`
    : nothing;

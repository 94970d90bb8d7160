// What an answer sheet adds up to: a line a rule, with its colour, form and short name, which is
// the key to the letters' labels.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Marks } from '../../paper/marks.ts';
import type { Catalogue } from '../../types.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { arabic } from '../parts/words.ts';

/** keys are the short names of rules by their index; above are the places of each verse. */
export function totals(c: Catalogue, m: Marks, keys: Map<number, string>, above: unknown) {
  const list = [...m.totals].filter(([, n]) => n > 0 || m.totals.size === 1);
  return html`
    <section class="totals">
      <h3>${t('print.totals')}</h3>
      ${above}
      ${
        list.length
          ? html`<ul>
              ${list.map(([rule, n]) => total(c, rule, n, keys.get(rule)))}
            </ul>`
          : html`<p>${t('print.no-rules')}</p>`
      }
      <p class="said-once">${t('print.stops')} ${t('caution')}</p>
    </section>
  `;
}

function total(c: Catalogue, index: number, n: number, key: string | undefined) {
  const r = c.rules[index]!;
  return html`<li data-rule=${r.id} data-n=${n} .style=${pencil(r.family)}>
    ${key === undefined ? nothing : html`<b class="key-name">${key}</b>`}
    <span class="inked">${swatch(r.family)}${r.name}</span> ${arabic(r.ar)}
    <span class="total">${n}</span>
  </li>`;
}

// The key of a booklet: the rules that will be met, each with its pencil.
import { html, nothing } from 'lit-html';
import { join, t } from '../../../i18n.ts';
import { pencil, swatch } from '../../parts/pencil.ts';
import { arabic } from '../../parts/words.ts';
import type { BookletPencil } from './content.ts';
import type { BookletLayout } from './layout.ts';

export function keyPage(l: BookletLayout, n: number) {
  const list = l.pencils.slice(n * l.perKey, (n + 1) * l.perKey);
  return html`
    <div class="key-page">
      <h2>${t('print.key-title', { n: l.options.booklet.juz })}</h2>
      <p>${t(list.length ? 'print.key-what' : 'print.key-empty')}</p>
      <ul class="key-list" .style=${`--row:${l.keyRow}mm`}>
        ${list.map(item)}
      </ul>
      ${
        n === 0 && l.without.length
          ? html`<p>${t('print.without', { rules: join(l.without.map((r) => r.name)) })}</p>`
          : nothing
      }
    </div>
  `;
}

const item = ({ rule, key, places }: BookletPencil) => html`
  <li data-rule=${rule.id} data-n=${places} .style=${pencil(rule.family)}>
    <b class="key-name">${key ?? ''}</b>
    <span class="key-text inked">${swatch(rule.family)}${rule.name}</span> ${arabic(rule.ar)}
    <span class="dots"></span><b>${places}</b><span class="try"></span>
  </li>
`;

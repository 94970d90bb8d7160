// Answers in figures: how many places each rule has in every ten verses.
import { html } from 'lit-html';
import { t } from '../../../i18n.ts';
import type { Table, VerseRange } from '../../../paper/ranges.ts';
import { linesName } from '../../../text/names.ts';
import { pencil, swatch } from '../../parts/pencil.ts';
import type { BookletLayout } from './layout.ts';

export function countsPage(l: BookletLayout, n: number) {
  const title = t('print.answers', { title: t('next.juz', { n: l.options.booklet.juz }) });
  return html`
    <div class="counts-page">
      <header class="counts-head">
        <h2>${title}</h2>
        <p>${n ? t('print.totals') : `${t('print.how-shown')} ${t('print.stops')}`}</p>
      </header>
      <div class="tables">${l.tables[n]!.map((x) => table(l, x))}</div>
    </div>
  `;
}

function table(l: BookletLayout, { rows, rules }: Table) {
  return html`<table class="tally" .style=${`--rules:${rules[1] - rules[0]}`}>
    <tr>
      <td></td>
      ${l.pencils
        .slice(...rules)
        .map(
          ({ rule, key }) =>
            html`<th scope="col" .style=${pencil(rule.family)}>
              ${swatch(rule.family)}<b>${key ?? ''}</b><span class="hidden">${rule.name}</span>
            </th>`,
        )}
    </tr>
    ${l.ranges.slice(...rows).map((r, i) => countsRow(l, r, l.counts[rows[0] + i]!, rules))}
  </table>`;
}

const countsRow = (l: BookletLayout, r: VerseRange, all: number[], rules: [number, number]) => html`
  <tr data-range="${r.s}:${r.a}-${r.b}">
    <th scope="row">
      <span>${linesName(l.c.surahs, { s: r.s, a: r.a }, { s: r.s, a: r.b })}</span>
    </th>
    ${all
      .slice(...rules)
      .map((n, i) => html`<td data-rule=${l.pencils[rules[0] + i]!.rule.id}>${n || '·'}</td>`)}
  </tr>
`;

// The record of a booklet: a row for each day.
import { html } from 'lit-html';
import { t } from '../../../i18n.ts';
import { roomOf } from '../../../paper/geometry.ts';
import { OUTCOMES } from '../../../types.ts';
import type { BookletLayout } from './layout.ts';

/** Heights in millimetres, as in the style sheet. */
const TOP = 26;
const ROW = 9.5;

export function days({ options: o }: BookletLayout) {
  const rows = Math.floor((roomOf(o)[1] - TOP) / ROW);
  return html`
    <div class="days-page">
      <h2>${t('print.days', { n: o.booklet.juz })}</h2>
      <table class="days">
        <tr>
          <th class="day">${t('print.day')}</th>
          <th>${t('print.read')}</th>
          <th class="slim">${t('print.found')}</th>
          ${OUTCOMES.map((x) => html`<th class="slim">${t(`print.went.${x}`)}</th>`)}
        </tr>
        ${Array.from(
          { length: rows },
          () =>
            html`<tr>
              <td></td>
              <td></td>
              <td></td>
              ${OUTCOMES.map(() => html`<td><span class="tick"></span></td>`)}
            </tr>`,
        )}
      </table>
    </div>
  `;
}

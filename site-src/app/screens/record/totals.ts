// Progress by rule: how often each was marked, and how much of it was found, in figures and as a
// bar. The table is the chart, so that everybody reads the same.
import { html, nothing } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { dateName, t } from '../../i18n.ts';
import { LAST, type Total, totals } from '../../record/totals.ts';
import * as state from '../../state.ts';
import type { Entry } from '../../types.ts';
import { pencil } from '../parts/pencil.ts';
import { shareBar } from './charts.ts';
import { ruleName } from './row.ts';

export function byRule(sessions: Entry[]) {
  const all = totals(sessions);
  if (!all.length) return nothing;
  return html`
    <details class="by-rule opens" data-t="by-rule" open>
      <summary><h2>${t('record.by-rule')}</h2></summary>
      <table>
        <thead class="hidden">
          <tr>
            <th scope="col">${t('charts.rule-column')}</th>
            <th scope="col">${t('charts.found-column')}</th>
          </tr>
        </thead>
        <tbody>
          ${repeat(all, (x) => x.rule, row)}
        </tbody>
      </table>
    </details>
  `;
}

function row(x: Total) {
  const rule = state.get().catalogue.rules.find((r) => r.id === x.rule);
  return html`<tr data-t="total-${x.rule}" .style=${rule ? pencil(rule.family) : ''}>
    <th scope="row">
      <a href="#/rules">${ruleName(x.rule)}</a>
      <p class="quiet">
        ${`${t('record.sessions', { n: x.sessions })} ${t('record.on-days', { n: x.days })}, `}<span
          class="date"
          >${t('record.last-day', { day: dateName(x.day) })}</span
        >${lately(x)}
      </p>
    </th>
    <td>${x.of > 0 ? share(x) : t('charts.no-figure')}</td>
  </tr>`;
}

const share = (x: Total) =>
  html`<span class="plan-figure">${t('record.found', { n: x.found, of: x.of })}</span
    >${shareBar(x)}`;

/** How the last sessions went, where there were others before. */
const lately = (x: Total) =>
  x.sessions > LAST && x.lastOf > 0
    ? ` · ${t('record.lately', { n: x.lastFound, of: x.lastOf, last: LAST })}`
    : nothing;

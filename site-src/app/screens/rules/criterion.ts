// When a rule counts as known: how far it is, what the figures are, and where the idea is from.
import { html, nothing } from 'lit-html';
import { keep } from '../../actions/keep.ts';
import { t } from '../../i18n.ts';
import type { Child } from '../../plan/child.ts';
import type { Standing } from '../../plan/standing.ts';
import { CRITERION } from '../../plan/ready.ts';
import { child } from '../../planner.ts';
import * as store from '../../store/store.ts';
import { numberField } from '../parts/number.ts';
import { resetOrder } from './change.ts';

type Figure = 'sessions' | 'days' | 'percent';

/** What is there and what is expected, one line each. */
export function progress(c: Child, s: Standing) {
  const r = s.readiness!;
  const want = c.criterion;
  const rule = c.course.c.rules[r.rule]!.name;
  const several = c.course.units[s.unit]!.rules.length > 1;
  const item = (met: boolean, text: string) =>
    html`<li class=${met ? 'met' : ''}>
      ${text}<span class="quiet"> · ${t(met ? 'ready.met' : 'ready.not-yet')}</span>
    </li>`;
  return html`
    <ul class="plan-ready" data-t="ready">
      ${item(r.sessions >= want.sessions, t('ready.sessions', { n: r.sessions, of: want.sessions }))}
      ${item(r.days >= want.days, t('ready.days', { n: r.days, of: want.days }))}
      ${
        r.percent >= 0
          ? item(r.percent >= want.percent, t('ready.found', { n: r.percent, of: want.percent }))
          : nothing
      }
      ${item(!r.muchHelp, t('ready.help'))}
      ${
        several
          ? item(r.practised >= r.wanted, t('ready.rule', { n: r.practised, of: r.wanted, rule }))
          : nothing
      }
    </ul>
  `;
}

export const criterion = (c: Child) => html`
  <details class="card" data-t="criterion">
    <summary>${t('ready.title')}</summary>
    <p>${t('ready.what')}</p>
    <div class="fields">
      ${field(c, 'sessions', 1, 20)} ${field(c, 'days', 1, 20)} ${field(c, 'percent', 50, 100)}
    </div>
    <p class="quiet">${t('ready.source')}</p>
    <p class="quiet">${t('ready.review-source')}</p>
    <p class="quiet">${t('rules.order-source')}</p>
    ${
      c.learner.order
        ? html`<button class="plain" data-t="reset-order" @click=${() => void resetOrder()}>
            ${t('rules.reset-order')}
          </button>`
        : nothing
    }
  </details>
`;

function field(c: Child, name: Figure, least: number, most: number) {
  const id = `ready-${name}`;
  const now = c.criterion[name];
  const choose = (n: number) => void save({ [name]: n });
  return html`<div>
    <label for=${id}>${t(`ready.${name}-field`)}</label>
    ${numberField({ id, least, most, now, usual: CRITERION[name], choose })}
  </div>`;
}

async function save(part: Partial<Record<Figure, number>>) {
  const c = child();
  if (!c) return;
  const { sessions, days, percent } = { ...c.criterion, ...part };
  await keep(() => store.changeLearner(c.learner.id, { ready: { sessions, days, percent } }));
}

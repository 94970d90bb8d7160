// Progress by rule: how often each was marked, and how much of it was found.
import * as state from '../../state.ts';
import { pencil, swatch } from '../../colour/ink.ts';
import { h } from '../../dom.ts';
import { dateName, t } from '../../i18n.ts';
import { LAST, type Total, totals } from '../../record/totals.ts';
import type { Entry } from '../../types.ts';

export function byRule(
  sessions: Entry[],
  open: boolean,
  toggled: (open: boolean) => void,
): HTMLElement | false {
  const all = totals(sessions);
  if (!all.length) return false;
  const box: HTMLDetailsElement = h(
    'details',
    { class: 'by-rule opens', 'data-t': 'by-rule', open, ontoggle: () => toggled(box.open) },
    h('summary', {}, h('h2', {}, t('record.by-rule'))),
    h('ul', { class: 'plan-bars' }, all.map(row)),
  );
  return box;
}

function row(x: Total): HTMLElement {
  const rule = state.get().catalogue.rules.find((r) => r.id === x.rule),
    share = x.of ? Math.round((100 * x.found) / x.of) : 0;
  return h(
    'li',
    { 'data-t': `total-${x.rule}`, style: rule ? pencil(rule.family) : '' },
    h(
      'a',
      { href: '#/rules' },
      h('b', { class: rule ? 'inked' : '' }, rule && swatch(rule.family), rule?.name ?? x.rule),
    ),
    x.of > 0 && h('span', { class: 'plan-figure' }, t('record.found', { n: x.found, of: x.of })),
    x.of > 0 &&
      h(
        'span',
        { class: 'plan-bar', 'aria-hidden': 'true' },
        h('span', { style: `inline-size:${share}%` }),
      ),
    h(
      'p',
      { class: 'quiet' },
      `${t('record.sessions', { n: x.sessions })} ${t('record.on-days', { n: x.days })}, `,
      h('span', { class: 'date' }, t('record.last-day', { day: dateName(x.day) })),
      x.sessions > LAST &&
        x.lastOf > 0 &&
        ` · ${t('record.lately', { n: x.lastFound, of: x.lastOf, last: LAST })}`,
    ),
  );
}

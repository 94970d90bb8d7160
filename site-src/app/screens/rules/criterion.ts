// When a rule counts as in hand: how far it is, what the figures are, and where the idea is from.
import * as store from '../../store/store.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { keep } from '../../log/log.ts';
import type { Child, Standing } from '../../plan/child.ts';
import { child } from '../../plan/held.ts';
import { CRITERION } from '../../plan/ready.ts';
import { resetOrder } from './change.ts';

/** What is there and what is expected, one line each. */
export function progress(c: Child, s: Standing): HTMLElement {
  const r = s.readiness!,
    want = c.criterion,
    rule = c.course.c.rules[r.rule]!.name;
  const item = (ok: boolean, text: string) =>
    h(
      'li',
      { class: ok ? 'met' : '' },
      text,
      h('span', { class: 'quiet' }, ` · ${t(ok ? 'ready.met' : 'ready.not-yet')}`),
    );
  return h(
    'ul',
    { class: 'plan-ready', 'data-t': 'ready' },
    item(r.sessions >= want.sessions, t('ready.sessions', { n: r.sessions, of: want.sessions })),
    item(r.days >= want.days, t('ready.days', { n: r.days, of: want.days })),
    r.percent >= 0 &&
      item(r.percent >= want.percent, t('ready.found', { n: r.percent, of: want.percent })),
    item(!r.muchHelp, t('ready.help')),
    c.course.units[s.unit]!.rules.length > 1 &&
      item(r.practised >= r.wanted, t('ready.rule', { n: r.practised, of: r.wanted, rule })),
  );
}

export function criterion(c: Child, open: Set<string>): HTMLElement {
  const field = (name: 'sessions' | 'days' | 'percent', min: number, max: number) => {
    const el: HTMLInputElement = h('input', {
      id: `ready-${name}`,
      type: 'number',
      inputmode: 'numeric',
      min,
      max,
      value: c.criterion[name],
      'data-t': `ready-${name}`,
      onchange: () =>
        void save({
          [name]: Math.min(max, Math.max(min, Math.round(Number(el.value)) || CRITERION[name])),
        }),
    });
    return h('div', {}, h('label', { for: el.id }, t(`ready.${name}-field`)), el);
  };
  return h(
    'details',
    { class: 'card', 'data-t': 'criterion', open: open.has('criterion') },
    h('summary', {}, t('ready.title')),
    h('p', {}, t('ready.what')),
    h(
      'div',
      { class: 'fields' },
      field('sessions', 1, 20),
      field('days', 1, 20),
      field('percent', 50, 100),
    ),
    h('p', { class: 'quiet' }, t('ready.source')),
    h('p', { class: 'quiet' }, t('ready.review-source')),
    h('p', { class: 'quiet' }, t('rules.order-source')),
    c.learner.order &&
      h(
        'button',
        { class: 'plain', 'data-t': 'reset-order', onclick: () => void resetOrder() },
        t('rules.reset-order'),
      ),
  );
}

async function save(part: Partial<Record<'sessions' | 'days' | 'percent', number>>) {
  const c = child();
  if (!c) return;
  const { sessions, days, percent } = { ...c.criterion, ...part };
  await keep(() => store.changeLearner(c.learner.id, { ready: { sessions, days, percent } }));
}

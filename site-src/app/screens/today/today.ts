// Today: one card with the next thing and one line why; below it the week, small.
import * as state from '../../state.ts';
import { whenCalm } from '../../calm.ts';
import { h, renew } from '../../dom.ts';
import { t, weekday } from '../../i18n.ts';
import { week } from '../../record/week.ts';
import type { Learner } from '../../types.ts';
import { reopen } from '../../offline/tools.ts';
import { closed } from '../closed.ts';
import { kept } from '../kept.ts';
import { type View, when } from '../view.ts';
import { first } from './first.ts';
import { resume } from './resume.ts';

export function today(): View {
  const node = h('div'),
    line = kept(false),
    main = h('main', { class: 'today' }, node, line.node);
  let failed = false,
    asked = false,
    left: HTMLElement | undefined,
    whose = '';
  const draw = () => {
    const l = state.learner(),
      begun = !!node.querySelector('form'),
      shut = closed();
    if (shut) return renew(node, shut);
    if (!l) {
      if (!begun) renew(node, first());
      return;
    } // what is being typed stays
    renew(
      node,
      h('h1', { tabindex: '-1' }, t('today.title', { child: l.name || t('child') })),
      make?.() ?? wait(failed, () => again(reopen)),
      left,
      days(l),
    );
    if (begun) node.querySelector('h1')?.focus({ preventScroll: true });
    if (!make && !asked) {
      // not before there is somebody to plan for: the first open stays small
      asked = true;
      fetchPlan();
    }
  };
  const fetchPlan = (after: () => void = () => undefined) => {
    failed = false;
    plan()
      .catch(() => {
        failed = true;
        after();
      })
      .then(() => whenCalm(draw));
  };
  const again = (after?: () => void) => {
    if (failed) {
      fetchPlan(after);
      draw();
    }
  };
  const online = () => again();
  addEventListener('online', online);
  const look = async (l = state.learner()) => {
    left = l && (await resume(l));
    if (l === state.learner()) whenCalm(draw);
  };
  const update = when(
    () => [...state.records(), state.get().drafts],
    () => {
      if (state.learner()?.id !== whose) left = undefined;
      whose = state.learner()?.id ?? '';
      draw();
      void look();
    },
  );
  return {
    node: main,
    title: t('nav.today'),
    update: () => {
      update();
      line.update();
    },
    leave: () => removeEventListener('online', online),
  };
}

/**
 * Makes the card, once what it takes has been fetched: the planner's code and the passage index.
 */
let make: (() => HTMLElement | undefined) | undefined;

async function plan() {
  const { card, load } = await import('./card.ts');
  await load();
  make = card;
}

const wait = (failed: boolean, again: () => void) =>
  h(
    'section',
    { class: 'card', role: 'status', 'data-t': failed ? 'no-plan' : 'planning' },
    h('p', {}, t(failed ? 'today.no-lines' : 'today.looking')),
    failed &&
      h(
        'div',
        { class: 'row' },
        h('a', { class: 'button main', href: '#/lines' }, t('today.choose')),
        h('button', { class: 'plain', 'data-t': 'plan-again', onclick: again }, t('error.again')),
      ),
  );

function days(l: Learner): HTMLElement {
  const all = week(state.sessionsOf(l.id)),
    n = all.reduce((x, d) => x + d.n, 0);
  return h(
    'section',
    { class: 'week', 'aria-label': t('week.title'), 'data-t': 'week' },
    h('p', { class: 'quiet' }, t('week.said', { n }), ' ', t('week.aim')),
    h(
      'ol',
      { 'aria-hidden': 'true' },
      all.map((d) => h('li', { class: d.n ? 'on' : '' }, weekday(d.day))),
    ),
  );
}

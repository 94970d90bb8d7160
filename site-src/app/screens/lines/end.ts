// The end of a session: how it went, in one choice, and it is kept.
import { finish } from '../../log/finish.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import type { Outcome } from '../../types.ts';
import * as live from './live.ts';
import { start } from './start.ts';

const CHOICES: Outcome[] = ['alone', 'some', 'much'];

async function keep(l: live.Live, o: Outcome) {
  live.closing(l.draft.id);
  if (!(await finish(l.draft, live.result(l), o))) live.closing('');
}

export function end(l: live.Live): HTMLElement {
  const who = live.learner(l),
    child = who?.name || t('child');
  if (!who) {
    return h(
      'div',
      { class: 'card' },
      h('p', {}, t('end.no-learner')),
      h('a', { class: 'button main', href: '#/today', 'data-t': 'end-learner' }, t('end.to-today')),
    );
  }
  return h(
    'div',
    { class: 'card', 'data-t': 'end' },
    h('h2', {}, t('end.title', { child })),
    l.draft.helped && h('p', { class: 'quiet' }, t('end.helped')),
    h(
      'div',
      { class: 'stack' },
      CHOICES.map((o) =>
        h(
          'button',
          {
            class: o === 'alone' ? 'main' : 'big',
            'data-t': `outcome-${o}`,
            onclick: () => void keep(l, o),
          },
          t(`outcome.${o}`),
        ),
      ),
    ),
    h(
      'button',
      {
        class: 'plain',
        'data-t': 'end-back',
        onclick: () => {
          live.phase('read');
          start();
        },
      },
      t('end.back'),
    ),
  );
}

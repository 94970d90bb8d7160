// The end of a session: how it went, in one choice, and it is kept.
import * as log from '../../log/log.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { Outcome } from '../../types.ts';
import * as live from './live.ts';

const CHOICES: Outcome[] = ['alone', 'some', 'much'];

export function end(l: live.Live): HTMLElement {
  const child = state.learner()?.name || t('child');
  if (!state.learner()) {
    return h('div', { class: 'card' }, h('p', {}, t('end.no-learner')), h('a', { class: 'button main', href: '#/today', 'data-t': 'end-learner' }, t('end.to-today')));
  }
  return h('div', { class: 'card', 'data-t': 'end' },
    h('h2', {}, t('end.title', { child })),
    l.draft.helped && h('p', { class: 'quiet' }, t('end.helped')),
    h('div', { class: 'stack' }, CHOICES.map((o) => h('button', {
      class: o === 'alone' ? 'main' : 'big', 'data-t': `outcome-${o}`, onclick: () => void log.finish(l, live.result(l), o),
    }, t(`outcome.${o}`)))));
}

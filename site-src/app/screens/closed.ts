// In place of a screen about the record where the record cannot be opened: what is wrong, and a way
// on. It is never taken for an empty one.
import * as state from '../state.ts';
import { h } from '../dom.ts';
import { t } from '../i18n.ts';
import { reopen, wayOut } from '../offline/tools.ts';

export const closed = () =>
  state.get().closed &&
  h(
    'section',
    { class: 'card', role: 'alert', 'data-t': 'closed' },
    h('h1', { tabindex: '-1' }, t('closed.title')),
    h('p', {}, t(`closed.${state.get().closed!}`)),
    h(
      'div',
      { class: 'row' },
      h('button', { class: 'main', 'data-t': 'closed-again', onclick: reopen }, t('error.again')),
      h('a', { class: 'button big', href: '#/lines' }, t('today.choose')),
    ),
    wayOut(),
  );

// The learner and the settings of this device.
import * as state from '../../state.ts';
import { whenCalm } from '../../calm.ts';
import { h, refill } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { reopen } from '../../offline/tools.ts';
import { closed } from '../closed.ts';
import { kept } from '../kept.ts';
import { type View, when } from '../view.ts';
import { people } from './people.ts';
import { place } from './place.ts';
import { looks } from './looks.ts';

export function learner(): View {
  const node = h('main', { class: 'learner' }),
    pencils = h('div', { class: 'card' });
  const fill = (after?: () => void) =>
    void import('../../colour/panel.ts')
      .then((m) => whenCalm(() => pencils.replaceChildren(m.panel())))
      .catch(() => {
        whenCalm(() =>
          pencils.replaceChildren(
            h('p', { role: 'alert' }, t('error.part')),
            h(
              'button',
              { class: 'plain', 'data-t': 'pencils-again', onclick: () => fill(reopen) },
              t('error.again'),
            ),
          ),
        );
        after?.();
      });
  fill();
  const line = kept(true);
  const draw = when(
    () => [...state.records(), state.get().settings],
    () => {
      const l = state.learner();
      const shut = closed();
      refill(
        node,
        shut || [h('h1', { tabindex: '-1' }, t('nav.learner')), people()],
        l && place(l),
        looks(),
        pencils,
        h(
          'section',
          { class: 'card' },
          h('h2', {}, t('print.on-paper')),
          h('p', { class: 'quiet' }, t('print.on-paper-what')),
          h('a', { class: 'button big', href: '#/print', 'data-t': 'to-print' }, t('print.title')),
        ),
        line.node,
        h(
          'p',
          { class: 'quiet' },
          t('caution'),
          ' ',
          h('a', { href: 'about.html' }, t('nav.about')),
        ),
      );
    },
  );
  return {
    node,
    title: t('nav.learner'),
    update: () => {
      draw();
      line.update();
    },
  };
}

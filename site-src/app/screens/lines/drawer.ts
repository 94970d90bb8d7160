// The adult's help. It stays shut while the child works, and closes again at every step.
import { h, renew } from '../../dom.ts';
import { t } from '../../i18n.ts';
import * as live from './live.ts';
import { perVerse } from './told.ts';

export function drawer(el: HTMLElement) {
  const l = live.get();
  if (!l) return;
  const child = live.learner(l)?.name || t('child'),
    { phase } = l.draft;
  const hints = l.rule && l.drawer ? perVerse(l) : [];
  renew(
    el,
    h(
      'button',
      {
        class: 'handle',
        'data-t': 'drawer',
        'aria-expanded': String(l.drawer),
        'aria-controls': 'help',
        onclick: () => live.set({ drawer: !l.drawer }),
      },
      t('drawer.title'),
    ),
    h(
      'div',
      { id: 'help', class: 'help', hidden: !l.drawer },
      l.drawer && [
        h('p', {}, t(`drawer.say.${phase}`, { child })),
        l.rule && h('p', {}, l.rule.short),
        phase === 'find' &&
          hints.length > 0 &&
          h(
            'p',
            { 'data-t': 'hint' },
            t('drawer.places', { n: hints.reduce((n, x) => n + x.n, 0) }),
            ' ',
            hints.map((x) => t('drawer.in-verse', x)).join(' · '),
          ),
        phase === 'find' &&
          hints.length === 0 &&
          h('p', { 'data-t': 'hint' }, t('drawer.no-places')),
        h(
          'div',
          { class: 'row' },
          l.rule &&
            (phase === 'find' || phase === 'check') &&
            h(
              'button',
              {
                class: 'plain',
                'data-t': 'answer',
                'aria-pressed': String(l.answer),
                onclick: live.answer,
              },
              t(l.answer ? 'drawer.hide' : 'drawer.show'),
            ),
          phase === 'find' &&
            h(
              'button',
              {
                class: 'plain',
                'data-t': 'ask',
                'aria-pressed': String(l.ask),
                onclick: () => live.set({ ask: !l.ask, drawer: l.ask }),
              },
              t(l.ask ? 'drawer.mark' : 'drawer.ask'),
            ),
        ),
        h('p', { class: 'quiet' }, t('drawer.stops')),
        h('p', { class: 'quiet' }, t('drawer.caution')),
        h('p', { class: 'quiet keys' }, t('drawer.keys')),
      ],
    ),
  );
}

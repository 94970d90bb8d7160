// What lies under the thumb: the rule's pencil, undo, the counts, and the one button that moves on.
import * as state from '../../state.ts';
import { pencil, swatch } from '../../colour/ink.ts';
import { h, renew } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { lengths } from '../../text/counts.ts';
import * as live from './live.ts';
import { start } from './start.ts';

const NEXT = { find: 'check', check: 'read', read: 'done', done: 'done' } as const;

/**
 * Characters of a rule's name that fit beside the button; a longer one gives way to the short
 * Arabic term.
 */
const LONG = 20;

/** Moves on: find, check, read, done. */
export function advance() {
  const l = live.get();
  if (!l || l.draft.phase === 'done') return;
  live.phase(NEXT[l.draft.phase]);
  start();
}

export function bar(el: HTMLElement) {
  const l = live.get();
  if (!l) return;
  const { phase } = l.draft,
    p = l.caret,
    m = p && live.marked(l, p),
    find = phase === 'find' && l.rule;
  const colour = l.rule ? pencil(l.rule.family) : '';
  renew(
    el,
    find &&
      l.rule!.counts.length > 0 &&
      h(
        'div',
        { class: 'counts', role: 'group', 'aria-label': t('count.label') },
        h('span', { class: 'quiet' }, t(m ? 'count.here' : 'count.first')),
        lengths(state.get().catalogue.rules).map((n) =>
          h(
            'button',
            {
              class: 'chip',
              'data-t': `count-${n}`,
              disabled: !m,
              'aria-pressed': String(m?.count === n),
              onclick: () => {
                const at = live.get()?.caret;
                if (at) live.count(at, n);
              },
            },
            String(n),
          ),
        ),
      ),
    h(
      'div',
      { class: 'tools' },
      find &&
        h(
          'span',
          { class: 'pencil', style: colour, 'data-t': 'pencil' },
          swatch(l.rule!.family),
          l.rule!.name.length > LONG ? l.rule!.tr : l.rule!.name,
        ),
      find &&
        h(
          'button',
          {
            class: 'plain',
            'data-t': 'undo',
            disabled: l.history.length === 0,
            onclick: live.undo,
          },
          t('lines.undo'),
        ),
      phase === 'check' &&
        h(
          'button',
          {
            class: 'plain',
            'data-t': 'again',
            onclick: () => {
              live.phase('find');
              start();
            },
          },
          t('lines.again'),
        ),
      phase !== 'done' &&
        h(
          'button',
          { class: 'main', 'data-t': 'next', onclick: advance },
          t(`lines.next.${phase}`),
        ),
    ),
  );
}

// What else can be done with these lines: others, a link, print.
import * as state from '../../state.ts';
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import { linesHash, showRef } from '../../share/link.ts';
import { send } from '../../share/send.ts';
import type { Lines } from '../../types.ts';
import * as live from './live.ts';
import { start } from './start.ts';

export function menu(l: Lines): HTMLElement {
  const box: HTMLDetailsElement = h(
    'details',
    { class: 'menu', 'data-t': 'menu' },
    h('summary', { class: 'button plain' }, t('menu.title')),
    h(
      'div',
      { class: 'menu-list' },
      h('a', { class: 'button plain', href: '#/lines', 'data-t': 'choose' }, t('menu.choose')),
      h(
        'button',
        {
          class: 'plain',
          'data-t': 'share',
          onclick: () => {
            box.open = false;
            void share(l);
          },
        },
        t('menu.share'),
      ),
      h(
        'button',
        {
          class: 'plain',
          'data-t': 'restart',
          onclick: () => {
            box.open = false;
            anew();
          },
        },
        t('menu.restart'),
      ),
      h(
        'a',
        {
          class: 'button plain',
          href: `#/print?sheet=practice&from=${showRef(l.from)}&to=${showRef(l.to)}&rule=${l.rule}`,
          'data-t': 'print',
        },
        t('menu.print'),
      ),
    ),
  );
  box.addEventListener('focusout', (e) => {
    if (!box.contains(e.relatedTarget as Node | null) && e.relatedTarget) box.open = false;
  });
  return box;
}

/** From the beginning, with a way back. */
function anew() {
  const was = live.get()?.draft;
  live.restart();
  start();
  if (was)
    state.set({
      notice: {
        text: t('menu.restarted'),
        action: {
          label: t('undo'),
          run: () => {
            if (live.get()?.draft.at === was.at) live.restart(was);
          },
        },
      },
    });
}

async function share(l: Lines) {
  const url = new URL(linesHash(l), location.href).href,
    how = await send(url);
  if (how === 'copied') state.set({ notice: { text: t('share.copied') } });
  if (how === 'shown') state.set({ notice: { text: t('share.shown', { url }), hold: true } });
}

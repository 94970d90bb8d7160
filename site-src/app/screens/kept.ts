// One line about what is kept for use without a signal: how far it is, when it is safe to go, what
// went wrong.
import * as state from '../state.ts';
import { h, renew } from '../dom.ts';
import { t } from '../i18n.ts';
import { reopen } from '../offline/tools.ts';

let during = false; // something was fetched in this visit

/**
 * The line, and a function that follows the state; always also where there is nothing to wait for.
 */
export function kept(always: boolean): { node: HTMLElement; update: () => void } {
  const node = h('div', { class: 'kept quiet', role: 'status', 'data-t': 'offline' });
  const update = () => {
    const { kind, n, of, why } = state.get().offline;
    if (kind === 'saving' || kind === 'failed') during = true;
    if (kind === 'unknown' || (kind === 'ready' && !during && !always))
      return node.replaceChildren();
    const key =
      kind === 'failed'
        ? (`failed-${why ?? 'network'}` as const)
        : kind === 'saving' && of
          ? 'so-far'
          : kind;
    renew(
      node,
      h('p', {}, t(`offline.${key}`, { n: n ?? 0, of: of ?? 0 })),
      kind === 'failed' &&
        h(
          'button',
          { class: 'plain', 'data-t': 'offline-again', onclick: again },
          t('error.again'),
        ),
    );
  };
  update();
  return { node, update };
}

function again() {
  state.set({ offline: { kind: 'saving' } });
  void import('../offline/offline.ts')
    .then((m) => m.attempt())
    .catch(() => {
      state.set({ offline: { kind: 'failed', why: 'network' } });
      reopen();
    });
}

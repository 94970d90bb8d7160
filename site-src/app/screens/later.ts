// A screen whose code is fetched when it is first needed, so that the first open does not wait for
// it. Offline it comes from what the service worker keeps.
import { whenCalm } from '../calm.ts';
import { h } from '../dom.ts';
import { t } from '../i18n.ts';
import { reopen, wayOut } from '../offline/tools.ts';
import type { View } from './view.ts';

/** Puts a style sheet into effect that the page names as data-NAME, unless it is already. */
export const sheet = (name: string) =>
  new Promise<void>((ok, no) => {
    const href = document.documentElement.dataset[name],
      have = document.querySelector(`link[href="${href}"]`);
    if (!href || have) return ok();
    const link = h('link', {
      rel: 'stylesheet',
      href,
      onload: () => ok(),
      onerror: () => {
        link.remove();
        no(new Error(href));
      },
    });
    document.head.append(link);
  });

/**
 * Stands for the view that load will give; title is what the page is called meanwhile. Trying again
 * opens the page anew: in Firefox nothing else asks again for a part that failed (reopen in
 * offline/tools.ts).
 */
export function later(title: string, load: () => Promise<View>): View {
  const node = h('div', { 'aria-busy': 'true' }, h('h1', { tabindex: '-1' }, title));
  let real: View | undefined,
    left = false;
  const come = (v: View) => {
    if (left) return v.leave?.();
    real = v;
    const at = node.contains(document.activeElement);
    node.replaceChildren(v.node);
    if (at) node.querySelector('h1')?.focus({ preventScroll: true });
    node.removeAttribute('aria-busy');
    v.update();
  };
  const fail = () => {
    node.replaceChildren(
      h(
        'main',
        { class: 'plain', role: 'alert' },
        h('h1', {}, t('error.title')),
        h('p', {}, t('error.part')),
        h('button', { class: 'main', 'data-t': 'part-again', onclick: reopen }, t('error.again')),
        wayOut(),
      ),
    );
    node.removeAttribute('aria-busy');
  };
  load().then(
    (v) => whenCalm(() => come(v)),
    () => whenCalm(fail),
  );
  return {
    node,
    title,
    update: () => real?.update(),
    leave: () => {
      left = true;
      real?.leave?.();
    },
  };
}

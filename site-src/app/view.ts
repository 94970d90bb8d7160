// What every screen shares: the way between screens, and the notice at the foot. Also size, spacing
// and theme.
import * as state from './state.ts';
import { h, refill, renew } from './dom.ts';
import { t } from './i18n.ts';
import type { Route, Settings } from './types.ts';

const TABS = ['today', 'lines', 'rules', 'record', 'learner'] as const;

export function tabs(el: HTMLElement, route: Route) {
  const here = route.name === 'choose' || route.name === 'bad' ? 'lines' : route.name;
  renew(
    el,
    TABS.map((x) =>
      h(
        'a',
        { href: `#/${x}`, 'data-t': `nav-${x}`, 'aria-current': x === here && 'page' },
        t(`nav.${x}`),
      ),
    ),
  );
}

const lost: state.Notice = { text: t('error.not-kept'), hold: true, name: 'not-kept' };
let timer = 0,
  said: state.Notice | undefined;

/**
 * Makes room for the notice: the page grows by its height, and a main button that it would cover is
 * scrolled free.
 */
export const room = (el: HTMLElement) =>
  new ResizeObserver(() => {
    const at = el.getBoundingClientRect();
    document.documentElement.style.setProperty('--said', at.height ? `${at.height + 8}px` : '0px');
    if (!at.height) return;
    for (const m of document.querySelectorAll('.screen .main, .screen .stack button')) {
      const b = m.getBoundingClientRect();
      if (b.height && b.bottom > at.top && b.top < at.bottom)
        scrollBy({ top: b.bottom - at.top + 8, behavior: 'instant' });
    }
  }).observe(el);

export function notice(el: HTMLElement) {
  const s = state.get(),
    n = s.notice ?? (s.kept ? undefined : lost);
  if (n === said) return;
  said = n;
  clearTimeout(timer);
  const close = () => {
    state.set({ notice: undefined, kept: true });
    n?.closed?.();
  };
  if (n && !n.hold) timer = window.setTimeout(close, 9000);
  refill(
    el,
    n &&
      h(
        'div',
        { class: 'notice', 'data-t': `notice-${n.name ?? 'said'}` },
        h('p', {}, n.text),
        h(
          'div',
          { class: 'row' },
          n.action &&
            h(
              'button',
              {
                class: 'plain',
                'data-t': 'notice-action',
                onclick: () => {
                  const run = n.action!.run;
                  close();
                  run();
                },
              },
              n.action.label,
            ),
          h('button', { class: 'plain', 'data-t': 'notice-close', onclick: close }, t('close')),
        ),
      ),
  );
}

let applied: Settings | undefined;

/**
 * Puts the settings into effect, once for each change; the theme is also noted where the next page
 * finds it before it is drawn.
 */
export function apply(s: Settings) {
  if (s === applied) return;
  applied = s;
  const root = document.documentElement;
  root.style.setProperty('--size', String(s.size));
  root.style.setProperty('--spacing', String(s.spacing));
  if (s.theme === 'auto') delete root.dataset.theme;
  else root.dataset.theme = s.theme;
  if (s.pencils)
    void import('./colour/pencils.ts').then(
      (m) => m.apply(state.get().catalogue, state.get().settings.pencils),
      () => {
        applied = undefined;
      },
    );
  try {
    localStorage.setItem('sutur-theme', s.theme);
  } catch {
    /* a browser that keeps nothing still shows the page */
  }
}

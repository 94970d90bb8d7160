// The page around every screen: the way between screens below it, and the notice at the foot.
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { t } from '../i18n.ts';
import * as state from '../state.ts';
import type { Notice, State } from '../state.ts';
import { nameOf } from './screen.ts';

const TABS = ['today', 'lines', 'rules', 'record', 'learner'] as const;

/** The tab below which other screens lie. */
const BELOW: Partial<Record<string, string>> = {
  choose: 'lines',
  give: 'lines',
  work: 'lines',
  send: 'record',
  result: 'record',
};

/** The whole page; of is the screen as it is drawn now, at the address and of the kind of key. */
export const frame = (s: State, key: unknown, of: TemplateResult) => html`
  <a class="skip" href="#screen" data-t="skip" @click=${skip}
    >${t(nameOf(s.route) === 'lines' ? 'nav.skip-lines' : 'nav.skip')}</a
  >
  ${wide.matches ? nav(s) : nothing}
  <div class="screen" id="screen">${keyed(key, of)}</div>
  ${wide.matches ? nothing : nav(s)}
  <div class="said" role="status">${notice(said(s))}</div>
  ${s.dialog?.(s) ?? nothing}
`;

/** Where the tabs stand above the screen, as style/tabs.css has it, and come before it by Tab. */
const wide = matchMedia('(min-width: 50rem)');
wide.addEventListener('change', () => state.set({}));

const nav = (s: State) => html`<nav class="tabs" aria-label=${t('nav.label')}>${tabs(s)}</nav>`;

/** To the lines, or the heading of a screen; the address stays. */
function skip(e: Event) {
  e.preventDefault();
  const lines = document.querySelector<HTMLElement>('[data-t=passage]');
  (lines ?? document.querySelector<HTMLElement>('.screen h1'))?.focus();
}

function tabs(s: State) {
  const name = nameOf(s.route);
  const here = BELOW[name] ?? name;
  return TABS.map(
    (x) =>
      html`<a href="#/${x}" data-t="nav-${x}" aria-current=${x === here ? 'page' : nothing}
        >${t(`nav.${x}`)}</a
      >`,
  );
}

let lost: Notice | undefined;

/**
 * What is said at the foot: that something was not kept comes after what waits for an answer, and a
 * newer version last, which is not offered in the middle of lines. On the shared screen, which others
 * see, all of it waits.
 */
function said(s: State): Notice | undefined {
  if (s.route.name === 'shared') return undefined;
  if (s.notice) return s.notice;
  if (!s.kept) return (lost ??= { text: t('error.not-kept'), hold: true, name: 'not-kept' });
  return s.route.name === 'lines' ? undefined : s.newer;
}

function close(n: Notice) {
  state.set(n === state.get().newer ? { newer: undefined } : { notice: undefined, kept: true });
  n.closed?.();
}

function notice(n: Notice | undefined) {
  if (!n) return nothing;
  const act = () => {
    close(n);
    n.action?.run();
  };
  const action =
    n.action &&
    html`<button class="plain" data-t="notice-action" @click=${act}>${n.action.label}</button>`;
  return keyed(
    n,
    html`<div class="notice" data-t="notice-${n.name ?? 'said'}">
      <p>${n.text}</p>
      <div class="row">
        ${action}
        ${
          n.more &&
          html`<button class="plain" data-t="notice-more" @click=${n.more.run}>
            ${n.more.label}
          </button>`
        }
        <button class="plain" data-t="notice-close" @click=${() => close(n)}>${t('close')}</button>
      </div>
    </div>`,
  );
}

/** How long (ms) a notice stays that does not wait for an answer and offers nothing to do. */
const STAYS = 9000;

let timer = 0;
let shown: Notice | undefined;

/**
 * Takes a notice away in time, but not from under the keyboard, and never one with something to do:
 * Undo stays until it is used, closed or replaced.
 */
export function hush(s: State) {
  const n = said(s);
  if (n) requestAnimationFrame(freeLate);
  if (n === shown) return;
  shown = n;
  clearTimeout(timer);
  if (n && !n.hold && !n.action && !n.more) timer = window.setTimeout(leave, STAYS, n);
}

function leave(n: Notice) {
  if (document.activeElement?.closest('.said')) timer = window.setTimeout(leave, STAYS, n);
  else close(n);
}

/**
 * Makes room for the notice: the page grows by its height, and a main button that it would cover is
 * scrolled free.
 */
export function makeRoom(el: Element) {
  const make = () => {
    const at = el.getBoundingClientRect();
    document.documentElement.style.setProperty('--said', at.height ? `${at.height + 8}px` : '0px');
    free(el.getBoundingClientRect());
  };
  // Not while sizes are told: the page grows, which may bring a scroll bar and make this narrower.
  new ResizeObserver(() => requestAnimationFrame(make)).observe(el);
}

/** The main button that was last seen with a notice. */
let seen: Element | null = null;

/** Also a main button that comes after the notice, on a page that nobody has scrolled yet. */
function freeLate() {
  const main = document.querySelector('.screen .main');
  if (main === seen) return;
  seen = main;
  const notice = document.querySelector('.said');
  if (notice && scrollY === 0) free(notice.getBoundingClientRect());
}

function free(notice: DOMRect) {
  if (!notice.height) return;
  for (const m of document.querySelectorAll('.screen .main, .screen .stack button')) {
    const b = m.getBoundingClientRect();
    if (b.height && b.bottom > notice.top && b.top < notice.bottom)
      scrollBy({ top: b.bottom - notice.top + 8, behavior: 'instant' });
  }
}

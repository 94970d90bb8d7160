// Every screen by its name. All but Today are fetched when they are first needed, so that the first
// open does not wait for them; offline they come from what the service worker keeps.
import { html } from 'lit-html';
import { t } from '../i18n.ts';
import { reopen } from '../offline/tools.ts';
import * as state from '../state.ts';
import type { State } from '../state.ts';
import { linesName } from '../text/names.ts';
import type { Route } from '../types.ts';
import { wayOut } from './parts/wayout.ts';
import { type Name, nameOf, type Screen } from './screen.ts';
import { sheet } from './stylesheet.ts';
import { today } from './today/today.ts';

const FETCH: Record<Exclude<Name, 'today'>, () => Promise<Screen>> = {
  lines: () => import('./lines/lines.ts').then((m) => m.lines),
  choose: () => import('./choose/choose.ts').then((m) => m.choose),
  rules: () => import('./rules/rules.ts').then((m) => m.rules),
  record: () => Promise.all([import('./record/record.ts'), sheet('later')]).then(([m]) => m.record),
  learner: () => import('./learner/learner.ts').then((m) => m.learner),
  print: () => Promise.all([import('./paper/print.ts'), sheet('paper')]).then(([m]) => m.print),
};

/** The screen for an address: itself, or what stands for it until it has come. */
export function screenFor(s: State): Screen {
  const name = nameOf(s.route);
  if (name === 'today') return today;
  const there = s.screens[name];
  return there === 'failed' ? failed : (there ?? waiting);
}

function fetchScreen(r: Route) {
  const name = nameOf(r);
  if (name === 'today') return;
  const put = (x: Screen | 'failed') =>
    state.set({ screens: { ...state.get().screens, [name]: x } });
  void FETCH[name]().then(put, () => put('failed'));
}

/** What a page is called before its screen has come. */
function title({ route: r, catalogue }: State): string {
  if (r.name === 'lines') return linesName(catalogue.surahs, r.lines.from, r.lines.to);
  if (r.name === 'bad' || r.name === 'choose') return t('choose.title');
  return r.name === 'print' ? t('print.title') : t(`nav.${r.name}`);
}

const waiting: Screen = {
  title,
  view: (s) => html`<div aria-busy="true"><h1 tabindex="-1">${title(s)}</h1></div>`,
  enter: fetchScreen,
};

/**
 * Trying again opens the page anew: in Firefox nothing else asks again for a part that failed
 * (reopen in offline/tools.ts).
 */
const failed: Screen = {
  title,
  view: () => html`
    <main class="plain" role="alert">
      <h1 tabindex="-1">${t('error.title')}</h1>
      <p>${t('error.part')}</p>
      <button class="main" data-t="part-again" @click=${reopen}>${t('error.again')}</button>
      ${wayOut()}
    </main>
  `,
  // Another try at the next visit of the address.
  leave: () =>
    state.set({
      screens: Object.fromEntries(
        Object.entries(state.get().screens).filter(([, x]) => x !== 'failed'),
      ),
    }),
};

// Every screen by its name. All but Today are fetched when they are first needed, so that the first
// open does not wait for them; offline they come from what the service worker keeps.
import { html } from 'lit-html';
import { pageScreen, sheet } from '../edition/pages.ts';
import { t } from '../i18n.ts';
import { reopen } from '../offline/tools.ts';
import * as state from '../state.ts';
import type { State } from '../state.ts';
import { linesName } from '../text/names.ts';
import type { Route } from '../types.ts';
import { wayOut } from './parts/wayout.ts';
import { type Name, nameOf, type Screen } from './screen.ts';
import { today } from './today/today.ts';

/** A screen whose style is in a sheet of its own. */
const styled = <M>(name: string, module: Promise<M>): Promise<M> =>
  Promise.all([module, sheet(name)]).then(([m]) => m);

/** One that is printed or handed over. In this order: what a page is on paper comes last. */
const printed = <M>(module: Promise<M>) => styled('paper', styled('later', module));

const FETCH: Record<Exclude<Name, 'today'>, (r: Route) => Promise<Screen>> = {
  lines: () => styled('later', import('./lines/lines.ts')).then((m) => m.lines),
  choose: () => styled('later', import('./choose/choose.ts')).then((m) => m.choose),
  rules: () => styled('later', import('./rules/rules.ts')).then((m) => m.rules),
  record: () => styled('later', import('./record/record.ts')).then((m) => m.record),
  learner: () => styled('later', import('./learner/learner.ts')).then((m) => m.learner),
  learners: () => styled('later', import('./learners/learners.ts')).then((m) => m.learners),
  give: () => printed(import('./work/give.ts')).then((m) => m.give),
  work: () => printed(import('./work/work.ts')).then((m) => m.work),
  send: () => printed(import('./work/send.ts')).then((m) => m.send),
  result: () => printed(import('./work/result.ts')).then((m) => m.result),
  brought: () => printed(import('./brought/brought.ts')).then((m) => m.brought),
  print: () => printed(import('./paper/print.ts')).then((m) => m.print),
  read: pageScreen,
  shared: () => styled('shared', import('./shared/shared.ts')).then((m) => m.shared),
};

/** The screen for an address: itself, or what stands for it until it has come. */
export function screenFor(s: State): Screen {
  const name = nameOf(s.route);
  if (name === 'today') return today;
  const there = s.screens[name];
  return there === 'failed' ? failed : (there ?? waiting);
}

/** Makes a screen ready for an address that will probably be asked for; failures wait until it is. */
export async function ahead(r: Route) {
  const name = nameOf(r);
  if (name === 'today') return;
  try {
    if (!state.get().screens[name]) put(name)(await FETCH[name](r));
    const screen = state.get().screens[name];
    if (screen !== 'failed') await screen?.ahead?.(r);
  } catch {
    // told of when it is asked for
  }
}

const put = (name: Name) => (x: Screen | undefined) =>
  state.set({ screens: { ...state.get().screens, [name]: x ?? 'failed' } });

function fetchScreen(r: Route) {
  const name = nameOf(r);
  if (name === 'today') return;
  // A part that was cut off may still be a script, which lacks the screen.
  void FETCH[name](r).then(put(name), () => put(name)(undefined));
}

/** What a page is called before its screen has come. */
function title({ route: r, catalogue }: State): string {
  if (r.name === 'lines' || r.name === 'shared')
    return linesName(catalogue.surahs, r.lines.from, r.lines.to);
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

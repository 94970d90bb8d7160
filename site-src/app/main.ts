// Starts the app: reads what is kept and the catalogue, then shows the screen that the address
// names.
import * as state from './state.ts';
import { whenCalm } from './calm.ts';
import { closedBy } from './store/closed.ts';
import * as store from './store/store.ts';
import { hear } from './store/tabs.ts';
import { h } from './dom.ts';
import { t } from './i18n.ts';
import { reopen, started, wayOut } from './offline/tools.ts';
import { learner } from './screens/learner/learner.ts';
import { later, sheet } from './screens/later.ts';
import { tellAside } from './screens/record/aside.ts';
import { today } from './screens/today/today.ts';
import type { View } from './screens/view.ts';
import { follow, recheck } from './log/log.ts';
import { linesHash, parseHash } from './share/link.ts';
import { loadCatalogue, TextError } from './text/data.ts';
import { early } from './theme.ts';
import { linesName } from './text/names.ts';
import type { Route } from './types.ts';
import { apply, notice, room, tabs } from './view.ts';

early();
const app = document.getElementById('app')!,
  nav = h('nav', { class: 'tabs', 'aria-label': t('nav.label') });
const hold = h('div', { class: 'screen' }),
  said = h('div', { class: 'said', role: 'status' });
let view: View | undefined,
  shown = '';

/** Time (ms) from the first screen on in which nothing is done that can wait. */
const QUIET = 3000;

const choose = (r: Extract<Route, { name: 'bad' }> | undefined, pick = '') =>
  later(t('choose.title'), () =>
    import('./screens/choose/choose.ts').then((m) => m.choose(r, pick)),
  );

function screen(r: Route): View {
  switch (r.name) {
    case 'today':
      return today();
    case 'rules':
      return later(t('nav.rules'), () => import('./screens/rules/rules.ts').then((m) => m.rules()));
    case 'record':
      return later(t('nav.record'), () =>
        import('./screens/record/record.ts').then((m) => m.record()),
      );
    case 'learner':
      return learner();
    case 'print':
      return later(t('print.title'), () =>
        Promise.all([import('./screens/print/print.ts'), sheet('paper')]).then(([m]) => m.print()),
      );
    case 'lines':
      return later(linesName(state.get().catalogue.surahs, r.lines.from, r.lines.to), () =>
        import('./screens/lines/lines.ts').then((m) => m.lines(r.lines)),
      );
    case 'bad':
      return choose(r);
    case 'choose':
      return choose(undefined, r.pick);
  }
}

function draw() {
  // Told by the route alone: the address changes a moment before the route does, and something else
  // may be drawn between.
  const s = state.get(),
    r = s.route,
    key = r.name === 'lines' ? linesHash(r.lines) : JSON.stringify(r);
  apply(s.settings);
  if (key === shown) whenCalm(update);
  else {
    view?.leave?.();
    const first = !shown;
    shown = key;
    view = screen(r);
    hold.replaceChildren(view.node);
    app.dataset.screen = r.name;
    document.title = t('page.title', { screen: view.title });
    // With the frame that shows it, and after: before, each would lay the half-made page out once
    // more.
    requestAnimationFrame(() => {
      scrollTo(0, 0);
      if (!first) setTimeout(begin);
    });
  }
  tabs(nav, r);
  whenCalm(say);
}

/** The keyboard begins with the heading of a new screen, unless it is in use there already. */
function begin() {
  if (!hold.contains(document.activeElement))
    hold.querySelector('h1')?.focus({ preventScroll: true });
}

const update = () => view?.update(),
  say = () => notice(said);

async function start() {
  const { catalogue, sha } = document.documentElement.dataset,
    kept = store.all().catch(closedBy);
  const c = await loadCatalogue(catalogue!, sha!),
    answer = await kept,
    [k, closed] = typeof answer === 'string' ? [undefined, answer] : [answer];
  state.onChange(draw);
  state.set({
    catalogue: c,
    route: parseHash(c, location.hash),
    ...k,
    settings: { ...state.defaults, ...k?.settings },
    ...(closed && { closed }),
  });
  addEventListener('hashchange', () => state.set({ route: parseHash(c, location.hash) }));
  hear((tables) => void follow(tables).catch(() => undefined));
  // What is on the screen is kept by now, and is there again; with the version that the other tab
  // has.
  store.onOutdated(() => whenCalm(() => location.reload()));
  app.replaceChildren(hold, nav, said);
  room(said);
  app.removeAttribute('aria-busy');
  started();
  tellAside();
}

start()
  .catch((e: unknown) => {
    const code = e instanceof TextError ? e.code : 'damaged';
    app.replaceChildren(
      h(
        'main',
        { class: 'plain', role: 'alert' },
        h('h1', {}, t('error.title')),
        h('p', {}, t(`error.${code}`)),
        h('button', { class: 'main', onclick: reopen }, t('error.again')),
        wayOut(),
      ),
    );
  })
  .then(() => {
    const idle = window.requestIdleCallback ?? ((f: () => void) => setTimeout(f, 500));
    const failed = () => state.set({ offline: { kind: 'failed', why: 'network' } });
    setTimeout(
      () =>
        idle(
          () =>
            void recheck().then(
              (more) => {
                if (more) tellAside();
              },
              () => undefined,
            ),
        ),
      QUIET,
    );
    idle(
      () =>
        void import('./offline/offline.ts').then(
          (m) =>
            m.keep('sw.js', {
              kept: (offline) => state.set({ offline }),
              noRoom: () => state.set({ notice: { text: t('update.full'), name: 'no-room' } }),
              newer: (take) =>
                state.set({
                  notice: {
                    text: t('update.ready'),
                    hold: true,
                    name: 'update',
                    action: { label: t('update.take'), run: take },
                  },
                }),
            }),
          failed,
        ),
    );
  });

// A page that is read, within the one file: what is a document of its own on the site is shown here as
// a screen. Links in it are those that the build has written for this place (page in
// edition/files.one.ts).
import '../../later.ts';
import { html } from 'lit-html';
import { page as addressOf } from '../../edition/files.ts';
import { pageText, styles } from '../../edition/pages.one.ts';
import { t } from '../../i18n.ts';
import { afterFrame } from '../../idle.ts';
import { enliven, still } from '../../lesson/page.ts';
import { reveal } from '../../lesson/fold.ts';
import { parsed } from '../../offline/trusted.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Route } from '../../types.ts';
import type { Screen } from '../screen.ts';

let left = new AbortController();

async function load(name: string, visit: AbortSignal) {
  const main = await pageText(name).then(
    (text) => parsed(text).querySelector('main') ?? ('failed' as const),
    () => 'failed' as const,
  );
  if (visit.aborted) return;
  if (main !== 'failed') main.querySelector('h1')?.setAttribute('tabindex', '-1');
  state.set({ shown: main === 'failed' ? main : document.adoptNode(main) });
}

const view = ({ shown }: State) => html`
  <div class="page inside" @click=${within}>
    <nav class="pages quiet" aria-label=${t('read.pages')}>
      <a href=${addressOf('lessons/index.html')}>${t('today.lessons')}</a>
      <a href=${addressOf('about.html')}>${t('nav.about')}</a>
    </nav>
    ${
      shown === 'failed'
        ? html`<main role="alert">
            <h1 tabindex="-1">${t('error.title')}</h1>
            <p data-t="page-missing">${t('read.damaged')}</p>
          </main>`
        : (shown ?? html`<main aria-busy="true"><h1 tabindex="-1">${t('nav.read')}</h1></main>`)
    }
  </div>
`;

/** A link to a place in this page; the address stays, so that Back leaves the page. */
function within(e: Event) {
  const a = (e.target as Element).closest('a');
  const { route } = state.get();
  if (!a || route.name !== 'read') return;
  const start = `${addressOf(route.page)}&at=`;
  const href = a.getAttribute('href') ?? '';
  if (!href.startsWith(start)) return;
  e.preventDefault();
  show(decodeURIComponent(href.slice(start.length)));
}

function show(at: string) {
  const place = /^[\w-]+$/.test(at) && document.getElementById(at);
  if (!place) return;
  reveal(`#${at}`);
  place.scrollIntoView();
}

/** What was last brought to life. */
let alive: Element | undefined;

function drawn({ shown, route }: State) {
  if (!shown || shown === 'failed' || shown === alive || route.name !== 'read') return;
  alive = shown;
  document.title = t('page.title', { screen: read.title(state.get()) }); // known only now
  const { at } = route;
  enliven(shown, `#${at}`, left.signal);
  // After the page has been scrolled to its beginning (draw.ts).
  if (at) afterFrame(() => show(at));
}

export const read: Screen = {
  title: ({ shown }) =>
    (shown && shown !== 'failed' && shown.querySelector('h1')?.textContent?.trim()) ||
    t('nav.read'),
  view,
  drawn,
  enter(r: Route) {
    left.abort();
    left = new AbortController();
    styles(true);
    if (r.name === 'read') void load(r.page, left.signal);
  },
  leave() {
    left.abort();
    still();
    styles(false);
    alive = undefined;
    state.set({ shown: undefined });
  },
};

// The learner and the settings of this device.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { look } from '../../actions/safe.ts';
import { page } from '../../edition/files.ts';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { closed } from '../parts/closed.ts';
import { keptLine } from '../parts/kept.ts';
import { pencilPanel } from '../parts/pencils.ts';
import { safePanel } from '../parts/safe.ts';
import type { Screen } from '../screen.ts';
import { counting } from './counting.ts';
import { dates } from './dates.ts';
import { load } from './load.ts';
import { looks, readSample } from './looks.ts';
import { archive, people } from './people.ts';
import { person } from './person.ts';
import { place } from './place.ts';
import { removal } from './removal.ts';

export { sayKept } from '../parts/safe.ts';

const all = () => html`<p>${t('offline.ready')}</p>`;

function view(s: State) {
  const l = state.learner(s);
  return html`
    <main class="learner">
      ${
        s.closed
          ? closed(s.closed)
          : html`<h1 tabindex="-1">${t('nav.learner')}</h1>
              ${people(s, l)}`
      }
      ${l ? [person(s, l), place(s, l), dates(s, l), load(l)] : nothing} ${looks(s)} ${counting(s)}
      <div class="card">${pencilPanel(s)}</div>
      <section class="card">
        <h2>${t('print.on-paper')}</h2>
        <p class="quiet">${t('print.on-paper-what')}</p>
        <a class="button big" href="#/print" data-t="to-print">${t('print.title')}</a>
      </section>
      ${s.closed ? nothing : safePanel(s)} ${l ? archive(s) : nothing} ${keptLine(s.offline, all())}
      <p class="quiet">${t('caution')} <a href=${page('about.html')}>${t('nav.about')}</a></p>
      ${s.removing ? removal(s, s.removing) : nothing}
    </main>
  `;
}

export const learner: Screen = {
  title: () => t('nav.learner'),
  view,
  enter() {
    void readSample();
    void look();
  },
  leave() {
    const { removing, adding } = state.get();
    if (removing || adding) state.set({ removing: undefined, adding: false });
  },
};

// Today: one card with the next thing and one line why; below it the week, small.
import { html, nothing, type TemplateResult } from 'lit-html';
import { choose } from '../../actions/learner.ts';
import { page } from '../../edition/files.ts';
import { t, weekday } from '../../i18n.ts';
import { sameItems } from '../../memo.ts';
import { reopen } from '../../offline/tools.ts';
import { week } from '../../record/week.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Learner } from '../../types.ts';
import { closed } from '../parts/closed.ts';
import { sign } from '../parts/sign.ts';
import { called } from '../parts/words.ts';
import type { Screen } from '../screen.ts';
import { first } from './first.ts';
import { readLeft, resume } from './resume.ts';

function view(s: State) {
  const l = state.learner(s);
  return html`
    <main class="today">
      <div>${s.closed ? closed(s.closed) : l ? day(s, l) : first(s)}</div>
      ${sign(s)} ${l && !s.closed ? s.keeping?.view(s) : nothing}
    </main>
  `;
}

const day = (s: State, l: Learner) => html`
  <header class="row">
    <h1 tabindex="-1">${t('today.title', { child: called(l) })}</h1>
    <div class="switch-room">${s.switcher?.(s, l, (id) => void choose(id))}</div>
  </header>
  ${card(s)} ${resume(s, l)} ${l.work ? given(s) : nothing} ${days(l)} ${pages()}
`;

/** The place of the card that is on its way, so that what is below it stays where it is. */
const ROOM = 'min-block-size:21rem';

function card(s: State): TemplateResult {
  if (s.card === 'failed') return noPlan();
  return (
    s.card?.view(s) ??
    html`<section class="card" role="status" data-t="planning" .style=${ROOM}>
      <p>${t('today.looking')}</p>
    </section>`
  );
}

const noPlan = () => html`
  <section class="card" role="status" data-t="no-plan">
    <p>${t('today.no-lines')}</p>
    <div class="row">
      <a class="button main" href="#/lines">${t('today.choose')}</a>
      <button class="plain" data-t="plan-again" @click=${() => again(reopen)}>
        ${t('error.again')}
      </button>
    </div>
  </section>
`;

/** Work that a teacher gave. What shows it is fetched only where there is some. */
const given = (s: State) => html`
  <section class="card" data-t="work" .style=${'min-block-size:11rem'}>
    ${
      s.work === 'failed'
        ? html`<p>${t('error.part')}</p>
            <button class="plain" data-t="part-again" @click=${reopen}>${t('error.again')}</button>`
        : s.work?.view(s)
    }
  </section>
`;

let fetchingWork = false;

async function fetchWork() {
  if (fetchingWork) return;
  fetchingWork = true;
  const work = await import('./work.ts').then(
    (m) => m.work,
    () => 'failed' as const,
  );
  fetchingWork = false;
  state.set({ work });
}

function days(l: Learner) {
  const all = week(state.sessionsOf(l.id));
  const n = all.reduce((x, d) => x + d.n, 0);
  return html`
    <section class="week" aria-label=${t('week.title')} data-t="week">
      <p class="quiet">${t('week.said', { n })} ${t('week.aim')}</p>
      <ol aria-hidden="true">
        ${all.map((d) => html`<li class=${d.n ? 'on' : ''}>${weekday(d.day)}</li>`)}
      </ol>
    </section>
  `;
}

/** What an adult may want to read at any time. */
const pages = () => html`
  <nav class="pages quiet" aria-label=${t('today.pages')}>
    <a href=${page('lessons/index.html')} data-t="lessons">${t('today.lessons')}</a>
    <a href=${page('lessons/getting-ready.html')}>${t('today.getting-ready')}</a>
    <a href=${page('lessons/settling-in.html')}>${t('today.settling-in')}</a>
  </nav>
`;

let fetching = false;

/** Fetches the card and what it computes with; failed is called where they do not come. */
async function fetchCard(failed?: () => void) {
  if (fetching) return;
  fetching = true;
  try {
    const { card, loadCourse, switcher } = await import('./card.ts');
    state.set({ switcher });
    await loadCourse();
    state.set({ card });
  } catch {
    state.set({ card: 'failed' });
    failed?.();
  } finally {
    fetching = false;
  }
}

function again(failed?: () => void) {
  if (state.get().card !== 'failed') return;
  state.set({ card: undefined });
  void fetchCard(failed);
}

const online = () => again();

let asked = false;

/**
 * Fetches what is said of how the record is kept; without it nothing is said. It comes with the
 * screen of the learner, which says the same.
 */
function fetchKeeping() {
  if (asked) return;
  asked = true;
  import('../learner/learner.ts').then((m) => m.sayKept()).catch(() => undefined);
}

/** What the sessions that were left were last read for. */
let readFor: unknown[] = [];

export const today: Screen = {
  title: () => t('nav.today'),
  view,
  enter() {
    const { card, unfinished, work } = state.get();
    readFor = [];
    state.set({ home: 'today', together: [] });
    if (unfinished.length) state.set({ unfinished: [] });
    if (card === 'failed') state.set({ card: undefined });
    if (work === 'failed') state.set({ work: undefined });
    addEventListener('online', online);
  },
  drawn(s) {
    const l = state.learner(s);
    if (s.closed) return;
    // Not before there is somebody to plan for: the first open stays small.
    if (l && !s.card) void fetchCard();
    if (l?.work && !s.work) void fetchWork();
    if (s.sessions.length) fetchKeeping();
    if (s.card && s.card !== 'failed') s.card.drawn?.(s);
    const now = [...state.records(), s.draftWrites];
    if (sameItems(now, readFor)) return;
    readFor = now;
    void readLeft(l);
  },
  leave() {
    removeEventListener('online', online);
    state.get().keeping?.leave?.();
  },
};

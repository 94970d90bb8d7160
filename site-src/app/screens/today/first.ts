// The first time: whom we read with, and where we begin. The name may stay empty, and never leaves
// the device.
import { html, nothing } from 'lit-html';
import { add, type Beginning, lastJuz } from '../../actions/learner.ts';
import { page } from '../../edition/files.ts';
import { dateName, t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Mark } from '../../store/mark.ts';
import { chips } from '../parts/chips.ts';
import { askName } from '../parts/name.ts';
import { placeFields } from '../parts/place.ts';
import { restoreButton } from '../parts/restore.ts';
import { withTerm } from '../parts/term.ts';

const WAYS = ['forwards', 'backwards', 'chosen'] as const;
type Way = (typeof WAYS)[number];

export const first = (s: State) => html`
  <form class="first" data-t="first" @submit=${begin}>
    ${s.was ? emptied(s.was) : welcome()}
    <section class="card">
      ${s.was ? html`<h2>${t('first.anew')}</h2>` : nothing} ${askName('name')} ${where(s)}
      <button class="main" data-t="begin">${t('first.begin')}</button>
      <p class="quiet">${t('first.change')}</p>
    </section>
    ${s.was ? nothing : before(s)}
    <p class="quiet">${t('caution')} <a href=${page('about.html')}>${t('nav.about')}</a></p>
  </form>
`;

const welcome = () => html`
  <h1 tabindex="-1">${t('first.title')}</h1>
  <p>${t('first.what')}</p>
`;

/** Who is back: the archive knows them, or a backup does. */
const before = (s: State) =>
  s.learners.length
    ? html`<p class="quiet row" data-t="all-archived">
        ${t('first.archived')}
        <a class="button plain" href="#/learner">${t('first.unarchive')}</a>
      </p>`
    : html`<p class="quiet row">${t('first.before')} ${restoreButton('plain')}</p>`;

/** The browser has lost a record that was here: it is said before a new one begins. */
const emptied = ({ n, day }: Mark) => html`
  <section class="card" data-t="emptied">
    <h1 tabindex="-1">${t('first.emptied')}</h1>
    <p>${t('first.was', { n, day: dateName(day) })} ${t('first.back')}</p>
    <div class="row">${restoreButton('main')}</div>
  </section>
`;

/** A surah by its place among all, from 0; -1 for the last. */
const surah = (s: State, at: number) => s.catalogue.surahs.at(at)!.la;

function where(s: State) {
  const { way } = s.beginning;
  const names = { forwards: surah(s, lastJuz().place.s - 1), backwards: surah(s, -1), chosen: '' };
  const words = (x: Way) => t(`first.${x}`, { surah: names[x] });
  const choose = (x: Way) => state.set({ beginning: { ...s.beginning, way: x } });
  return html`
    ${chips(t('first.where'), 'from', WAYS, way, words, choose)}
    <p class="quiet">${withTerm(t(`first.what-${way}`))}</p>
    ${
      way === 'chosen'
        ? placeFields(s.catalogue, placeOf(s), (place) => state.set({ beginning: { way, place } }))
        : nothing
    }
  `;
}

const placeOf = (s: State) => s.beginning.place ?? lastJuz().place;

function beginning(s: State): Beginning {
  const last = { s: s.catalogue.surahs.length, a: 1 };
  if (s.beginning.way === 'backwards') return { place: last, direction: 'backwards' };
  return s.beginning.way === 'chosen' ? { place: placeOf(s) } : lastJuz();
}

function begin(e: SubmitEvent) {
  e.preventDefault();
  const form = e.currentTarget as HTMLFormElement;
  void add(form.querySelector('input')!.value, beginning(state.get()));
}

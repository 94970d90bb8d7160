// Who is learning: choose, in which order, add; and who is in the archive.
import { html, nothing } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { choose } from '../../actions/learner.ts';
import { bringBack } from '../../actions/people.ts';
import { changeSettings } from '../../actions/settings.ts';
import { dateName, t } from '../../i18n.ts';
import { ORDERS } from '../../record/people.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Learner } from '../../types.ts';
import { adder } from '../parts/adder.ts';
import { chips } from '../parts/chips.ts';
import { disc } from '../parts/disc.ts';
import { everyone, listed } from '../parts/switch.ts';
import { called } from '../parts/words.ts';

/** now is the learner who is reading, if there is one. */
export function people(s: State, now: Learner | undefined) {
  const all = listed(s);
  if (!now) return nobody(s);
  return html`
    <section class="card people">
      ${all.length > 1 ? [who(all, now), order(s)] : nothing}
      <div class="row">${everyone(s)}</div>
      ${adder(s)}
    </section>
  `;
}

const nobody = (s: State) => html`
  <section class="card">
    <p>${t('people.none')}</p>
    <a class="button main" href="#/today">${t('nav.today')}</a>
  </section>
  ${archive(s)}
`;

const who = (all: Learner[], now: Learner) => html`
  <fieldset class="choice">
    <legend>${t('people.who')}</legend>
    <div class="row">
      ${repeat(
        all,
        (l) => l.id,
        (l) =>
          html`<button
            type="button"
            class="chip"
            data-t="learner-${l.id}"
            aria-pressed=${l.id === now.id}
            @click=${() => void choose(l.id)}
          >
            ${disc(l)}<bdi>${called(l)}</bdi>
          </button>`,
      )}
    </div>
  </fieldset>
`;

const order = ({ settings }: State) =>
  chips(
    t('people.order'),
    'sort',
    ORDERS,
    settings.sort ?? 'read',
    (x) => t(`people.order-${x}`),
    (sort) => void changeSettings({ sort }),
  );

/** Those in the archive, with the way back. */
export function archive(s: State) {
  const all = s.learners.filter((l) => l.archived);
  if (!all.length) return nothing;
  return html`
    <details class="card opens" data-t="archive">
      <summary><h2>${t('people.archived-list', { n: all.length })}</h2></summary>
      <ul class="sessions">
        ${repeat(all, (l) => l.id, archived)}
      </ul>
    </details>
  `;
}

const archived = (l: Learner) => html`
  <li>
    <p class="who">
      ${disc(l)}<span
        ><bdi>${called(l)}</bdi>
        <span class="quiet"
          >${t('people.archived-since', { day: dateName(l.archived!.slice(0, 10)) })}</span
        ></span
      >
    </p>
    <div class="row">
      <button
        class="plain"
        data-t="back-${l.id}"
        aria-label=${t('people.back-child', { child: called(l) })}
        @click=${() => void bringBack(l)}
      >
        ${t('people.back')}
      </button>
      <button
        class="plain"
        data-t="remove-${l.id}"
        aria-label=${t('people.remove-child', { child: called(l) })}
        @click=${() => state.set({ removing: l })}
      >
        ${t('people.remove')}
      </button>
    </div>
  </li>
`;

// Where the learner is in the text, and which surah comes after this one.
import { html } from 'lit-html';
import { keep } from '../../actions/keep.ts';
import { t } from '../../i18n.ts';
import type { State } from '../../state.ts';
import * as store from '../../store/store.ts';
import type { Direction, Learner } from '../../types.ts';
import { placeFields } from '../parts/place.ts';

const DIRECTIONS: Direction[] = ['forwards', 'backwards'];

export function place({ catalogue: c }: State, l: Learner) {
  const save = (patch: Partial<Learner>) => void keep(() => store.changeLearner(l.id, patch));
  return html`
    <section class="card">
      <h2>${t('place.title')}</h2>
      <p class="quiet">${t('place.what')}</p>
      ${placeFields(c, l.place, (place) => save({ place }))}
      <fieldset class="choice">
        <legend>${t('place.direction')}</legend>
        <div class="row">
          ${DIRECTIONS.map(
            (direction) =>
              html`<button
                class="chip"
                data-t="direction-${direction}"
                aria-pressed=${direction === (l.direction ?? 'forwards')}
                @click=${() => save({ direction })}
              >
                ${t(`place.${direction}`)}
              </button>`,
          )}
        </div>
      </fieldset>
    </section>
  `;
}

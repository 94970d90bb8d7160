// Where the learner is in the text, and which surah comes after this one.
import { html } from 'lit-html';
import { keep } from '../../actions/keep.ts';
import { t } from '../../i18n.ts';
import type { State } from '../../state.ts';
import * as store from '../../store/store.ts';
import type { Direction, Learner } from '../../types.ts';
import { chips } from '../parts/chips.ts';
import { placeFields } from '../parts/place.ts';

const DIRECTIONS: Direction[] = ['forwards', 'backwards'];

export function place({ catalogue: c }: State, l: Learner) {
  const save = (patch: Partial<Learner>) => void keep(() => store.changeLearner(l.id, patch));
  const now = l.direction ?? 'forwards';
  const turn = (direction: Direction) => save({ direction });
  return html`
    <section class="card">
      <h2>${t('place.title')}</h2>
      <p class="quiet">${t('place.what')}</p>
      ${placeFields(c, l.place, (place) => save({ place }))}
      ${chips(t('place.direction'), 'direction', DIRECTIONS, now, (x) => t(`place.${x}`), turn)}
    </section>
  `;
}

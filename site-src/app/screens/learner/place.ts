// Where the learner is in the text.
import { html } from 'lit-html';
import { keep } from '../../actions/keep.ts';
import { t } from '../../i18n.ts';
import type { State } from '../../state.ts';
import * as store from '../../store/store.ts';
import type { Learner } from '../../types.ts';
import { surahSelect } from '../parts/surahs.ts';

export function place({ catalogue: c }: State, l: Learner) {
  const save = (s: number, a: number) =>
    void keep(() => store.changeLearner(l.id, { place: { s, a } }));
  const { count } = c.surahs[l.place.s - 1]!;
  const verse = (e: Event) => {
    const field = e.target as HTMLInputElement;
    const a = Math.min(Math.max(1, Number(field.value) || 1), count);
    field.value = String(a);
    save(l.place.s, a);
  };
  return html`
    <section class="card">
      <h2>${t('place.title')}</h2>
      <p class="quiet">${t('place.what')}</p>
      <div class="fields">
        <div>
          <label for="place-surah">${t('field.surah')}</label
          >${surahSelect(c, 'place-surah', l.place.s, (s) => save(s, 1))}
        </div>
        <div>
          <label for="place-verse">${t('field.verse')}</label>
          <input
            id="place-verse"
            type="number"
            inputmode="numeric"
            min="1"
            max=${count}
            .value=${String(l.place.a)}
            data-t="place-verse"
            @change=${verse}
          />
        </div>
      </div>
    </section>
  `;
}

// The fields of a place in the text: surah and verse.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Catalogue, Ref } from '../../types.ts';
import { surahSelect } from './surahs.ts';

/** now is the place that is shown; choose is given another, which exists. */
export function placeFields(c: Catalogue, now: Ref, choose: (place: Ref) => void) {
  const { count } = c.surahs[now.s - 1]!;
  const verse = (e: Event) => {
    const field = e.target as HTMLInputElement;
    const a = Math.min(Math.max(1, Math.round(Number(field.value)) || 1), count);
    field.value = String(a);
    choose({ s: now.s, a });
  };
  return html`
    <div class="fields">
      <div>
        <label for="place-surah">${t('field.surah')}</label
        >${surahSelect(c, 'place-surah', now.s, (s) => choose({ s, a: 1 }))}
      </div>
      <div>
        <label for="place-verse">${t('field.verse')}</label>
        <input
          id="place-verse"
          type="number"
          inputmode="numeric"
          min="1"
          max=${count}
          .value=${String(now.a)}
          data-t="place-verse"
          @change=${verse}
        />
      </div>
    </div>
  `;
}

// The fields of a place in the text: surah and verse.
import { html } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Catalogue, Ref } from '../../types.ts';
import { numberField } from './number.ts';
import { surahSelect } from './surahs.ts';

/** now is the place that is shown; choose is given another, which exists. */
export function placeFields(c: Catalogue, now: Ref, choose: (place: Ref) => void) {
  const verse = numberField({
    id: 'place-verse',
    least: 1,
    most: c.surahs[now.s - 1]!.count,
    now: now.a,
    usual: 1,
    choose: (a) => choose({ s: now.s, a }),
  });
  return html`
    <div class="fields">
      <div>
        <label for="place-surah">${t('field.surah')}</label
        >${surahSelect(c, 'place-surah', now.s, (s) => choose({ s, a: 1 }))}
      </div>
      <div><label for="place-verse">${t('field.verse')}</label> ${verse}</div>
    </div>
  `;
}

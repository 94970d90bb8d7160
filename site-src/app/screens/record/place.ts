// Where the lines of a session begin or end: a surah and a verse.
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { t } from '../../i18n.ts';
import type { Typed } from '../../record/typed.ts';
import type { Catalogue } from '../../types.ts';
import { surahSelect } from '../parts/surahs.ts';
import { problem, problemOf, typedIn } from './fields.ts';
import type { Form } from './kept.ts';

export function placeField(
  c: Catalogue,
  x: Form,
  name: 'from' | 'to',
  choose: (place: Typed['from']) => void,
) {
  const now = x.typed[name];
  const surah = `edit-${name}-surah`;
  const verse = `edit-${name}`;
  return html`
    <div class="fields place">
      <div>
        <label for=${surah}>${t(`edit.${name}-surah`)}</label>
        ${surahSelect(c, surah, now.s, (s) => choose({ ...now, s }))}
      </div>
      <div>
        <label for=${verse}>${t(`field.${name}`)}</label>
        <input
          id=${verse}
          type="text"
          inputmode="numeric"
          autocomplete="off"
          aria-invalid=${problem(x, name) ? 'true' : nothing}
          aria-describedby="bad-${name}"
          data-t=${verse}
          .value=${live(now.a)}
          @input=${(e: Event) => choose({ ...now, a: typedIn(e) })}
        />
      </div>
    </div>
    ${problemOf(x, name)}
  `;
}

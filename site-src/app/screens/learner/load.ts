// How many places a session is to have.
import { html } from 'lit-html';
import { keep } from '../../actions/keep.ts';
import { t } from '../../i18n.ts';
import { DEFAULT, FIRST, LOADS, PLACES } from '../../plan/load.ts';
import * as store from '../../store/store.ts';
import type { Learner } from '../../types.ts';

export function load(l: Learner) {
  const now = l.load ?? DEFAULT;
  const { first, later } = PLACES[now];
  return html`
    <section class="card">
      <fieldset class="choice">
        <legend>${t('load.title')}</legend>
        <div class="row">
          ${LOADS.map(
            (x) =>
              html`<button
                class="chip"
                data-t="load-${x}"
                aria-pressed=${x === now}
                @click=${() => void keep(() => store.changeLearner(l.id, { load: x }))}
              >
                ${t(`load.${x}`)}
              </button>`,
          )}
        </div>
      </fieldset>
      <p class="quiet" data-t="load-what">
        ${t('load.what', { n: FIRST, a: first[0], b: first[1], c: later[0], d: later[1] })}
      </p>
    </section>
  `;
}

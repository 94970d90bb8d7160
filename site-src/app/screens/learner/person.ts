// The learner in hand: the name, the colour, and the ways out of the lists.
import { html } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { keep } from '../../actions/keep.ts';
import { LONGEST, nameOf } from '../../actions/learner.ts';
import { archive } from '../../actions/people.ts';
import { t } from '../../i18n.ts';
import { COLOURS, colourOf, initial } from '../../record/people.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import * as store from '../../store/store.ts';
import type { Learner } from '../../types.ts';
import { own } from '../parts/disc.ts';
import { called } from '../parts/words.ts';

export const person = (s: State, l: Learner) => html`
  <section class="card">
    <label for="nickname">${t('people.name')}</label>
    ${keyed(l.id, nameField(l))} ${colours(s, l)}
    <p class="quiet below">${t('people.archive-what')}</p>
    <div class="row">
      <button class="plain" data-t="archive-learner" @click=${() => void archive(l)}>
        ${t('people.archive')}
      </button>
      <button class="plain" data-t="remove-learner" @click=${() => state.set({ removing: l })}>
        ${t('people.remove')}
      </button>
    </div>
  </section>
`;

function nameField(l: Learner) {
  const rename = ({ target }: Event) => {
    const field = target as HTMLInputElement;
    field.value = nameOf(field.value);
    void keep(() => store.changeLearner(l.id, { name: field.value }));
  };
  return html`<input
    id="nickname"
    .value=${l.name}
    maxlength=${LONGEST}
    autocomplete="off"
    placeholder=${t('child')}
    data-t="nickname"
    @change=${rename}
  />`;
}

/** The colours, each with the letter that the disc will have. */
function colours({ learners }: State, l: Learner) {
  const now = colourOf(l, learners);
  const choose = (colour: number) => void keep(() => store.changeLearner(l.id, { colour }));
  return html`
    <fieldset class="choice colours">
      <legend>${t('people.colour')}</legend>
      <div class="row">
        ${Array.from(
          { length: COLOURS },
          (_, i) =>
            html`<button
              type="button"
              class="plain"
              data-t="colour-${i}"
              aria-label=${t('people.colour-n', { n: i + 1 })}
              aria-pressed=${i === now}
              @click=${() => choose(i)}
            >
              <span class="disc" .style=${own(i)}>${initial(called(l))}</span>
            </button>`,
        )}
      </div>
    </fieldset>
  `;
}

// Adds a learner: asks for the name first, and writes nothing before that is confirmed.
import { html } from 'lit-html';
import { add, lastJuz, LONGEST } from '../../actions/learner.ts';
import { t } from '../../i18n.ts';
import { freeColour } from '../../record/people.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';

/** The keyboard is on the field once it is drawn, and goes back to the button after it. */
const NEXT = '[data-t=add-learner]';

export const adder = (s: State) =>
  s.adding
    ? html`<form class="card adder" data-t="add" @submit=${confirm} @keydown=${escape}>
        <label for="add-name">${t('people.new')}</label>
        <input
          id="add-name"
          maxlength=${LONGEST}
          autocomplete="off"
          required
          data-t="add-name"
          data-next=${NEXT}
        />
        <p class="quiet">${t('first.private')}</p>
        <div class="row">
          <button class="big" data-t="add-confirm" data-next=${NEXT}>
            ${t('people.add-this')}
          </button>
          <button
            type="button"
            class="plain"
            data-t="add-cancel"
            data-next=${NEXT}
            @click=${() => state.set({ adding: false })}
          >
            ${t('people.cancel')}
          </button>
        </div>
      </form>`
    : html`<button class="plain" data-t="add-learner" @click=${ask}>${t('people.add')}</button>`;

function ask() {
  state.set({ adding: true });
  requestAnimationFrame(() => document.getElementById('add-name')?.focus());
}

function escape(e: KeyboardEvent) {
  if (e.key === 'Escape') state.set({ adding: false });
}

async function confirm(e: SubmitEvent) {
  e.preventDefault();
  const name = (e.currentTarget as HTMLFormElement).querySelector('input')!.value.trim();
  if (!name) return;
  const colour = freeColour(state.get().learners);
  if (await add(name, { ...lastJuz(), colour })) state.set({ adding: false });
}

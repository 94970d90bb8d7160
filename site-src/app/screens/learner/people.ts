// Who is learning: choose, rename, add, remove.
import { html, nothing } from 'lit-html';
import { keyed } from 'lit-html/directives/keyed.js';
import { keep } from '../../actions/keep.ts';
import { add, choose, LONGEST, nameOf } from '../../actions/learner.ts';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import * as store from '../../store/store.ts';
import type { Learner } from '../../types.ts';
import { chips } from '../parts/chips.ts';
import { called } from '../parts/words.ts';

/** now is the learner who is reading, if there is one. */
export function people(s: State, now: Learner | undefined) {
  if (!now) return nobody();
  return html`
    <section class="card">
      ${s.learners.length > 1 ? who(s.learners, now) : nothing}
      <label for="nickname">${t('people.name')}</label>
      ${keyed(now.id, nameField(now))}
      <div class="row">
        <button class="plain" data-t="add-learner" @click=${() => void another()}>
          ${t('people.add')}
        </button>
        <button class="plain" data-t="remove-learner" @click=${() => state.set({ removing: now })}>
          ${t('people.remove')}
        </button>
      </div>
    </section>
  `;
}

const nobody = () => html`
  <section class="card">
    <p>${t('people.none')}</p>
    <a class="button main" href="#/today">${t('nav.today')}</a>
  </section>
`;

function who(all: Learner[], now: Learner) {
  const words = (id: string) => called(all.find((l) => l.id === id));
  const ids = all.map((l) => l.id);
  return chips(t('people.who'), 'learner', ids, now.id, words, (id) => void choose(id));
}

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

/** Adds a learner and asks for the name. */
async function another() {
  await add('');
  document.getElementById('nickname')?.focus();
}

const close = (e: Event) => (e.target as Element).closest('dialog')!.close();

/** Asks before everything of a learner goes. */
export function removal(l: Learner) {
  const remove = (e: Event) => {
    close(e);
    void keep(() => store.removeLearner(l.id));
  };
  const n = state.sessionsOf(l.id).length;
  return html`
    <dialog data-t="confirm" @close=${() => state.set({ removing: undefined })}>
      <p>${t('people.sure', { child: called(l), n })}</p>
      <div class="row">
        <button class="big" data-t="keep" @click=${close}>${t('people.keep')}</button>
        <button class="plain" data-t="confirm-remove" @click=${remove}>
          ${t('people.remove')}
        </button>
      </div>
    </dialog>
  `;
}

/** Opens the dialog once it is drawn. */
export function askRemoval() {
  const dialog = document.querySelector<HTMLDialogElement>('dialog[data-t=confirm]');
  if (dialog && !dialog.open) dialog.showModal();
}

// Fields of the form for a session, each with what is wrong with it.
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { t } from '../../i18n.ts';
import type { Form } from './kept.ts';

/** What is wrong with a field, in words. */
export function problem(x: Form, name: string): string {
  const found = x.problems.find((p) => p.field === name);
  return found ? t(`edit.bad.${found.key}`, found.vars) : '';
}

export const problemOf = (x: Form, name: string) =>
  html`<p
    class="problem"
    id="bad-${name}"
    data-t="bad-${name}"
    .textContent=${problem(x, name)}
  ></p>`;

export const typedIn = (e: Event) => (e.target as HTMLInputElement).value;

/** Whether the browser has fields for dates; else the day is typed, and has to be told how. */
export const hasDates = (() => {
  const input = document.createElement('input');
  input.type = 'date';
  return input.type === 'date';
})();

interface Field {
  type?: 'date';
  /** Whether a phone shows its figures. Not of the type number, which refuses digits of ours. */
  numeric?: boolean;
  most?: string;
  how?: string;
  value: string;
  choose: (typed: string) => void;
}

/** A field of one line; live, because what a date field cannot read is empty there. */
export const field = (x: Form, name: string, label: string, f: Field) => html`
  <div>
    <label for="edit-${name}">${label}</label>
    <input
      id="edit-${name}"
      type=${f.type ?? 'text'}
      inputmode=${f.numeric ? 'numeric' : nothing}
      max=${f.most ?? nothing}
      autocomplete="off"
      aria-invalid=${problem(x, name) ? 'true' : nothing}
      aria-describedby="bad-${name} how-${name}"
      data-t="edit-${name}"
      .value=${live(f.value)}
      @input=${(e: Event) => f.choose(typedIn(e))}
    />
    ${problemOf(x, name)}
    <p class="quiet how" id="how-${name}" .textContent=${f.how ?? ''}></p>
  </div>
`;

export const noteField = (x: Form, most: number, choose: (typed: string) => void) => html`
  <div>
    <label for="edit-note">${t('edit.note')}</label>
    <textarea
      id="edit-note"
      rows="3"
      dir="auto"
      aria-invalid=${problem(x, 'note') ? 'true' : nothing}
      aria-describedby="bad-note how-note"
      data-t="edit-note"
      .value=${live(x.typed.note)}
      @input=${(e: Event) => choose(typedIn(e))}
    ></textarea>
    ${problemOf(x, 'note')}
    <p class="quiet how" id="how-note">${t('edit.note-how', { most })}</p>
  </div>
`;

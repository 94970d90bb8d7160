// Who is reading, always in sight; where there are several learners, a press opens the others and a
// second one goes to one of them.
import { html, nothing } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { t } from '../../i18n.ts';
import { memo } from '../../memo.ts';
import { inOrder } from '../../record/people.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Learner } from '../../types.ts';
import { leave, shut } from './box.ts';
import { disc } from './disc.ts';
import { called } from './words.ts';

const last = memo<Learner[]>();

/** Those who read, in the order that the family has chosen. */
export function listed(s: State): Learner[] {
  const { learners, sessions, settings } = s;
  const by = settings.sort ?? 'read';
  return last([learners, sessions, by], () => inOrder(state.readers(s), sessions, by));
}

/** now is the one who reads; choose is given the id of another. */
export function switcher(s: State, now: Learner, choose: (id: string) => void) {
  const others = listed(s).filter((l) => l.id !== now.id);
  if (!others.length) return html`<span class="who">${disc(now)}${nameOf(now)}</span>`;
  const pick = (id: string) => (e: Event) => {
    shut((e.currentTarget as Element).closest('details')!);
    choose(id);
  };
  return html`
    <details class="menu who" data-t="switch" @focusout=${leave} @keydown=${escape}>
      <summary class="button plain">
        ${disc(now)}${nameOf(now)}<span class="hidden">: ${t('switch.what')}</span>
      </summary>
      <div class="menu-list">
        ${repeat(
          others,
          (l) => l.id,
          (l) =>
            html`<button class="plain" data-t="switch-${l.id}" @click=${pick(l.id)}>
              ${disc(l)}<bdi>${called(l)}</bdi>
            </button>`,
        )}
        ${everyone(s)}
      </div>
    </details>
  `;
}

const nameOf = (l: Learner) => html`<bdi data-t="whose">${called(l)}</bdi>`;

/** The way to all of them, where there are several. */
export const everyone = (s: State) =>
  state.readers(s).length > 1
    ? html`<a class="button plain" href="#/learners" data-t="everyone">${t('nav.learners')}</a>`
    : nothing;

export function escape(e: KeyboardEvent) {
  const box = e.currentTarget as HTMLDetailsElement;
  if (e.key !== 'Escape' || !box.open) return;
  e.preventDefault();
  e.stopPropagation();
  shut(box);
}

// The end of a session: how it went, in one choice, and it is kept. Where there is no learner yet,
// one is made first.
import { html, nothing } from 'lit-html';
import { finish } from '../../actions/finish.ts';
import { add, LONGEST } from '../../actions/learner.ts';
import { t } from '../../i18n.ts';
import { closing } from '../../practice/keeping.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { results } from '../../practice/steps.ts';
import type { Outcomes } from '../../record/entry.ts';
import * as state from '../../state.ts';
import type { Outcome } from '../../types.ts';
import { called } from '../parts/words.ts';
import { back } from './step.ts';

const CHOICES: Outcome[] = ['alone', 'some', 'much'];

async function keep(p: Practice, o: Outcome) {
  closing(p.draft.id);
  if (!(await finish(p.draft, outcomes(p), o))) closing('');
}

function outcomes(p: Practice): Outcomes[] {
  const { rules } = state.get().catalogue;
  return results(p).map(({ pencil, found, missed, extra }) => ({
    pencil: pencil.id,
    found: found.filter((f) => !f.e.unwritten).map((f) => rules[f.e.rule]!.id),
    missed: missed.map((m) => rules[m.e.rule]!.id),
    extra: extra.length,
  }));
}

export function end(p: Practice) {
  const who = practice.learner(p);
  const choice = (o: Outcome) => html`
    <button
      class=${o === 'alone' ? 'main' : 'big'}
      data-t="outcome-${o}"
      @click=${() => void keep(p, o)}
    >
      ${t(`outcome.${o}`)}
    </button>
  `;
  return html`<div class="card" data-t="end">
    ${
      who
        ? html`<h2>${t('end.title', { child: called(who) })}</h2>
            ${p.draft.helped ? html`<p class="quiet">${t('end.helped')}</p>` : nothing}
            <div class="stack">${CHOICES.map(choice)}</div>`
        : newLearner()
    }
    <button class="plain" data-t="step-back" @click=${back}>${t('end.back')}</button>
  </div>`;
}

/** Whom these lines are to be kept for. */
const newLearner = () => html`
  <form class="stack" data-t="end-learner" @submit=${begin}>
    <p>${t('end.no-learner')}</p>
    <label for="end-name">${t('first.name')}</label>
    <input
      id="end-name"
      maxlength=${LONGEST}
      autocomplete="off"
      placeholder=${t('child')}
      data-t="end-name"
    />
    <p class="quiet">${t('first.private')}</p>
    <button class="main" data-t="end-begin">${t('first.begin')}</button>
  </form>
`;

async function begin(e: SubmitEvent) {
  e.preventDefault();
  await add((e.currentTarget as HTMLFormElement).querySelector('input')!.value);
  const learner = state.learner();
  if (learner) practice.change({ learner: learner.id });
}

// The end of a session: how it went, in one choice, and it is kept. Where there is no learner yet,
// one is made first.
import { html, nothing } from 'lit-html';
import { finish } from '../../actions/finish.ts';
import { add } from '../../actions/learner.ts';
import { t } from '../../i18n.ts';
import type { Hit } from '../../marking/check.ts';
import { closing } from '../../practice/keeping.ts';
import { others } from '../../practice/others.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import { found, results } from '../../practice/steps.ts';
import type { Outcomes } from '../../record/entry.ts';
import * as state from '../../state.ts';
import { type Outcome, OUTCOMES } from '../../types.ts';
import { askName } from '../parts/name.ts';
import { called } from '../parts/words.ts';
import { each } from './each.ts';
import { back } from './step.ts';

async function keep(p: Practice, o: Outcome) {
  closing(p.draft.id);
  if (!(await finish(p.draft, outcomes(p), o))) closing('');
}

function outcomes(p: Practice): Outcomes[] {
  const { rules } = state.get().catalogue;
  const ids = (hits: Hit[]) => hits.map((h) => rules[h.e.rule]!.id);
  return results(p).map((r) => ({
    pencil: r.pencil.id,
    found: ids(found(r)),
    missed: ids(r.missed),
    extra: r.extra.length,
  }));
}

export function end(p: Practice) {
  const who = practice.learner(p);
  const more = who ? others(p) : [];
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
      who && more.length
        ? each(p, [who, ...more], outcomes(p))
        : who
          ? html`<h2>${t('end.title', { child: called(who) })}</h2>
              ${p.draft.helped ? html`<p class="quiet">${t('end.helped')}</p>` : nothing}
              <div class="stack">${OUTCOMES.map(choice)}</div>`
          : newLearner()
    }
    <button class="plain" data-t="step-back" @click=${back}>${t('end.back')}</button>
  </div>`;
}

/** Whom these lines are to be kept for. */
const newLearner = () => html`
  <form class="stack" data-t="end-learner" @submit=${begin}>
    <p>${t('end.no-learner')}</p>
    ${askName('end-name')}
    <button class="main" data-t="end-begin">${t('first.begin')}</button>
  </form>
`;

async function begin(e: SubmitEvent) {
  e.preventDefault();
  await add((e.currentTarget as HTMLFormElement).querySelector('input')!.value);
  const learner = state.learner();
  if (learner) practice.change({ learner: learner.id });
}

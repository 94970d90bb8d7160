// The end of a session: how it went, in one choice, and it is kept.
import { html, nothing } from 'lit-html';
import { finish } from '../../actions/finish.ts';
import { t } from '../../i18n.ts';
import { closing } from '../../practice/keeping.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import type { Outcome } from '../../types.ts';
import { called } from '../parts/words.ts';
import { goTo } from './step.ts';

const CHOICES: Outcome[] = ['alone', 'some', 'much'];

async function keep(p: Practice, o: Outcome) {
  closing(p.draft.id);
  if (!(await finish(p.draft, practice.result(p), o))) closing('');
}

export function end(p: Practice) {
  const who = practice.learner(p);
  if (!who)
    return html`<div class="card">
      <p>${t('end.no-learner')}</p>
      <a class="button main" href="#/today" data-t="end-learner">${t('end.to-today')}</a>
    </div>`;
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
    <h2>${t('end.title', { child: called(who) })}</h2>
    ${p.draft.helped ? html`<p class="quiet">${t('end.helped')}</p>` : nothing}
    <div class="stack">${CHOICES.map(choice)}</div>
    <button class="plain" data-t="end-back" @click=${() => goTo('read')}>${t('end.back')}</button>
  </div>`;
}

// What lies under the thumb: the pencils, undo, the counts, and the one button that moves on.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Practice } from '../../practice/practice.ts';
import { keepsBack, showAll } from '../../practice/steps.ts';
import { hand, opener, pencilCase } from './case.ts';
import { counts } from './counts.ts';
import { undo } from './say.ts';
import { advance, back, lookAgain } from './step.ts';

export function bar(p: Practice) {
  const { phase } = p.draft;
  const find = phase === 'find';
  const many = p.pencils.length > 1;
  return html`<div class="bar">
    ${p.case ? pencilCase(p) : nothing} ${find && !p.drawer ? counts(p) : nothing}
    ${find && many && !p.drawer ? hand(p) : nothing}
    <div class="tools">${TOOLS[phase](p)}</div>
  </div>`;
}

const TOOLS = {
  find: (p: Practice) => html`
    ${p.pencils.length > 1 ? nothing : hand(p)} ${opener(p)}
    <button class="plain" data-t="undo" ?disabled=${!p.history.length} @click=${undo}>
      ${t('lines.undo')}
    </button>
    ${next('find')}
  `,
  check: checking,
  read: (p: Practice) => html` ${p.pencils.length ? stepBack() : opener(p)} ${next('read')} `,
  done: () => nothing,
};

const next = (phase: 'find' | 'check' | 'read') => html`
  <button class="main" data-t="next" @click=${advance}>${t(`lines.next.${phase}`)}</button>
`;

const stepBack = () => html`
  <button class="plain" data-t="step-back" @click=${back}>${t('lines.step-back')}</button>
`;

/** First the way to look again; once everything is shown, the way on. */
function checking(p: Practice) {
  const show = html`<button class="plain" data-t="show-all" @click=${showAll}>
    ${t('lines.show-all')}
  </button>`;
  const again = (cls: string) =>
    html`<button class=${cls} data-t="again" @click=${lookAgain}>
      ${t(keepsBack(p) ? 'lines.again' : 'lines.mark-again')}
    </button>`;
  if (p.draft.paper) return html`${stepBack()} ${keepsBack(p) ? show : nothing} ${next('check')}`;
  return keepsBack(p) ? html`${show} ${again('main')}` : html`${again('plain')} ${next('check')}`;
}

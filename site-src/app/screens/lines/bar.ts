// What lies under the thumb: the rule's pencil, undo, the counts, and the one button that moves on.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import * as state from '../../state.ts';
import { lengths } from '../../text/counts.ts';
import type { Rule } from '../../types.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { advance, goTo } from './step.ts';

/** Characters of a name that fit beside the button; a longer one gives way to the Arabic term. */
const LONG = 20;

export function bar(p: Practice) {
  const { phase } = p.draft;
  const find = phase === 'find' ? p.rule : undefined;
  return html`<div class="bar">
    ${find?.counts.length ? counts(p) : nothing}
    <div class="tools">
      ${find ? tools(find, p.history.length > 0) : nothing}
      ${
        phase === 'check'
          ? html`<button class="plain" data-t="again" @click=${() => goTo('find')}>
              ${t('lines.again')}
            </button>`
          : nothing
      }
      ${
        phase === 'done'
          ? nothing
          : html`<button class="main" data-t="next" @click=${advance}>
              ${t(`lines.next.${phase}`)}
            </button>`
      }
    </div>
  </div>`;
}

const tools = (rule: Rule, undo: boolean) => html`
  <span class="pencil" .style=${pencil(rule.family)} data-t="pencil"
    >${swatch(rule.family)}${rule.name.length > LONG ? rule.tr : rule.name}</span
  >
  <button class="plain" data-t="undo" ?disabled=${!undo} @click=${practice.undo}>
    ${t('lines.undo')}
  </button>
`;

/** The counts that can be written at the letter marked last. */
function counts(p: Practice) {
  const at = p.caret;
  const mark = at && practice.marked(p, at);
  return html`<div class="counts" role="group" aria-label=${t('count.label')}>
    <span class="quiet">${t(mark ? 'count.here' : 'count.first')}</span>
    ${lengths(state.get().catalogue.rules).map(
      (n) =>
        html`<button
          class="chip"
          data-t="count-${n}"
          ?disabled=${!mark}
          aria-pressed=${mark?.count === n}
          @click=${() => at && practice.count(at, n)}
        >
          ${n}
        </button>`,
    )}
  </div>`;
}

// The rules that a session marked, with how many places of each were found.
import { html, nothing } from 'lit-html';
import { live } from 'lit-html/directives/live.js';
import { repeat } from 'lit-html/directives/repeat.js';
import { t } from '../../i18n.ts';
import { rulesInOrder } from '../../plan/ladder.ts';
import type { TypedRule } from '../../record/typed.ts';
import type { State } from '../../state.ts';
import { nameOfRule } from '../../text/names.ts';
import { problem, problemOf, typedIn } from './fields.ts';
import type { Form } from './kept.ts';
import { ruleName } from './row.ts';

type Choose = (rules: TypedRule[]) => void;

export const rulesField = (s: State, x: Form, choose: Choose) => html`
  <fieldset>
    <legend>${t('edit.rules')}</legend>
    <p class="quiet how">${t(x.typed.rules.length ? 'edit.rules-how' : 'edit.no-rules')}</p>
    <ul class="edit-rules">
      ${repeat(
        x.typed.rules,
        (r) => r.rule,
        (r) => ruleRow(s, x, r, choose),
      )}
    </ul>
    ${more(s, x, choose)}
  </fieldset>
`;

function ruleRow({ catalogue }: State, x: Form, r: TypedRule, choose: Choose) {
  const { rules } = x.typed;
  const name = nameOfRule(catalogue.rules, r.rule);
  const put = (patch: Partial<TypedRule>) =>
    choose(rules.map((y) => (y.rule === r.rule ? { ...y, ...patch } : y)));
  return html`<li data-t="edit-rule-${r.rule}">
    <div class="row">
      ${ruleName(r.rule)}
      <button
        type="button"
        class="plain"
        data-t="drop-rule"
        data-next="[data-t=edit-more]"
        aria-label=${t('edit.drop-rule', { rule: name })}
        @click=${() => choose(rules.filter((y) => y.rule !== r.rule))}
      >
        ${t('record.remove')}
      </button>
    </div>
    <div class="found-of">
      ${number(x, r, 'found', t('edit.found-of', { rule: name }), (found) => put({ found }))}
      <span>${t('edit.of')}</span>
      ${number(x, r, 'of', t('edit.all-of', { rule: name }), (of) => put({ of }))}
    </div>
    ${problemOf(x, `rule-${r.rule}`)}
  </li>`;
}

const number = (
  x: Form,
  r: TypedRule,
  what: 'found' | 'of',
  label: string,
  choose: (typed: string) => void,
) => html`
  <input
    type="text"
    inputmode="numeric"
    autocomplete="off"
    placeholder=${t(what === 'found' ? 'edit.found' : 'edit.of')}
    aria-label=${label}
    aria-invalid=${problem(x, `rule-${r.rule}`) ? 'true' : nothing}
    aria-describedby="bad-rule-${r.rule}"
    data-t="edit-${what}-${r.rule}"
    .value=${live(r[what])}
    @input=${(e: Event) => choose(typedIn(e))}
  />
`;

/** One more rule, of those that are not there. */
function more({ catalogue }: State, x: Form, choose: Choose) {
  const { rules } = x.typed;
  const pick = (e: Event) => {
    const rule = (e.target as HTMLSelectElement).value;
    if (rule) choose([...rules, { rule, found: '', of: '' }]);
  };
  const others = rulesInOrder(catalogue).filter((r) => !rules.some((y) => y.rule === r.id));
  return html`<label for="edit-more">${t('edit.add-rule')}</label>
    <select id="edit-more" data-t="edit-more" .value=${live('')} @change=${pick}>
      <option value="">${t('edit.choose-rule')}</option>
      ${others.map((r) => html`<option value=${r.id}>${r.name}</option>`)}
    </select>`;
}

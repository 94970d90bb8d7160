// The rules that were taught, lesson by lesson, with dates that can be corrected.
import { html, noChange, nothing } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { live } from 'lit-html/directives/live.js';
import { keep } from '../../actions/keep.ts';
import { offerUndo } from '../../actions/undo.ts';
import { t } from '../../i18n.ts';
import { type Unit, units } from '../../plan/units.ts';
import { corrected } from '../../record/dates.ts';
import { today } from '../../record/week.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import * as store from '../../store/store.ts';
import type { Learner, Taught } from '../../types.ts';
import { pencil, swatch } from '../parts/pencil.ts';

/** A lesson and what is kept of its rules. */
interface Begun {
  unit: Unit;
  entries: Taught[];
}

export const dates = (s: State, l: Learner) =>
  html`${guard([s.catalogue, s.taught, l.id], () => section(s, l))}`;

function section(s: State, l: Learner) {
  const all = begun(s, l);
  return html`
    <section class="card dates" data-t="dates">
      <h2>${t('dates.title')}</h2>
      <p class="quiet">${t(all.length ? 'dates.what' : 'dates.none')}</p>
      <ul>
        ${all.map(row)}
      </ul>
      <p><a href="#/rules" data-t="to-rules">${t('dates.rules')}</a></p>
    </section>
  `;
}

/** The lessons begun, the last first. */
function begun({ catalogue: c }: State, l: Learner): Begun[] {
  const taught = state.taughtOf(l.id);
  return units(c)
    .map((unit) => {
      const ids = unit.rules.map((r) => c.rules[r]!.id);
      return { unit, entries: taught.filter((x) => ids.includes(x.rule)) };
    })
    .filter((x) => x.entries.length)
    .sort((a, b) => (a.entries[0]!.since < b.entries[0]!.since ? 1 : -1));
}

function row({ unit, entries }: Begun) {
  const [first] = entries;
  return html`<li .style=${pencil(unit.family)}>
    <p class="inked">${swatch(unit.family)}${unit.name}</p>
    <div class="fields">
      ${field(unit, entries, 'since', first!.since)}
      ${first!.known ? field(unit, entries, 'known', first!.known) : nothing}
    </div>
  </li>`;
}

/** The field whose date is being typed: what stands there is not yet what is kept. */
let typed: HTMLInputElement | undefined;

const isTyped = (id: string) => typed?.id === id && typed === document.activeElement;

/**
 * A date is kept as soon as it is right: while one is typed, it passes through others, of which
 * nothing is said before the field is left, and no drawing takes it out of the hands.
 */
function field(unit: Unit, entries: Taught[], name: 'since' | 'known', now: string) {
  const id = `${name}-${unit.id}`;
  const change = async ({ target }: Event) => {
    const input = (typed = target as HTMLInputElement);
    const { value } = input;
    const all = corrected(entries, name, value, today());
    if (typeof all === 'string') return;
    await save(unit, entries, all);
    if (typed === input && input.value === value) typed = undefined;
  };
  const left = ({ target }: Event) => {
    const input = target as HTMLInputElement;
    typed = undefined;
    const wrong = corrected(entries, name, input.value, today());
    if (typeof wrong !== 'string') return;
    input.value = now;
    state.set({ notice: { text: t(`dates.${wrong}`), name: 'date' } });
  };
  return html`<div>
    <label for=${id}>${t(`dates.${name}`)}<span class="hidden">: ${unit.name}</span></label>
    <input
      id=${id}
      type="date"
      max=${today()}
      .value=${isTyped(id) ? noChange : live(now)}
      data-t=${id}
      @change=${change}
      @blur=${left}
    />
  </div>`;
}

/** Keeps corrected dates, with a way back. */
async function save(unit: Unit, was: Taught[], now: Taught[]) {
  const [{ learner }] = was as [Taught];
  const rules = was.map((x) => x.rule);
  if (!(await keep(() => store.replaceTaught(learner, rules, now)))) return;
  const back = () => keep(() => store.replaceTaught(learner, rules, was));
  offerUndo(t('dates.changed', { rule: unit.name }), back);
}

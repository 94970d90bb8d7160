// What can be chosen for a sheet. Each change is shown at once; nothing is kept but the address.
import { html, nothing } from 'lit-html';
import { type Key, t } from '../../i18n.ts';
import {
  hasLines,
  hasPencils,
  KINDS,
  LARGEST,
  type Options,
  PAPERS,
  SHOWS,
  SMALLEST,
  STEP,
  TURNS,
} from '../../paper/options.ts';
import { rulesInOrder } from '../../plan/ladder.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Catalogue } from '../../types.ts';
import { pencilChips } from '../parts/case.ts';
import { chips } from '../parts/chips.ts';
import { pencilPanel } from '../parts/pencils.ts';
import { tick } from '../parts/tick.ts';
import { bookletFields } from './booklet/form.ts';
import { better } from './note.ts';
import { change } from './printing.ts';
import { sizeField } from './size.ts';
import { where } from './where.ts';

export function form(s: State, o: Options) {
  const child = state.learner(s)?.name;
  return html`
    <form class="card print-form" @submit=${(e: Event) => e.preventDefault()}>
      ${pick(o, 'kind', KINDS, (x) => `print.kind.${x}`)}
      ${hasLines(o) ? linesFields(s, o) : nothing}
      ${o.kind === 'booklet' ? bookletFields(s, o) : nothing}
      ${pick(o, 'paper', PAPERS, (x) => `print.paper.${x}`)}
      ${o.kind === 'booklet' ? nothing : pick(o, 'turn', TURNS, (x) => `print.turn.${x}`)}
      ${child ? nameField(o, child) : nothing}
      <details class="opens" data-t="print-pencils">
        <summary>${t('pencils.title')}</summary>
        ${pencilPanel(s)}
      </details>
    </form>
  `;
}

/** One of a few for an option. */
const pick = <K extends 'kind' | 'show' | 'paper' | 'turn'>(
  o: Options,
  key: K,
  list: readonly Options[K][],
  label: (x: Options[K]) => Key,
) =>
  chips(
    t(`print.${key}`),
    key,
    list,
    o[key],
    (x) => t(label(x)),
    (x) => change({ [key]: x }),
  );

/** What only sheets with lines of the text have. */
const linesFields = (s: State, o: Options) => html`
  ${where(s.catalogue, o)} ${ruleField(s.catalogue, o)} ${better(s.catalogue, s.printing!)}
  ${caseField(s, o)}
  ${
    o.kind === 'practice'
      ? nothing
      : pick(o, 'show', hasPencils(o) ? SHOWS : SHOWS.slice(1), (x) =>
          x === 'focus' && o.also.length ? 'print.show.these' : `print.show.${x}`,
        )
  }
  ${sizeField(o.size, SMALLEST, LARGEST, STEP, (size) => change({ size }))}
`;

/** Finds others; where there is nothing to find, the answers show what was learnt. */
const find = (o: Options, x: Pick<Options, 'rule' | 'also'>) =>
  change({ ...x, show: hasPencils({ ...o, ...x }) ? o.show : 'learnt' });

function ruleField(c: Catalogue, o: Options) {
  const choose = (e: Event) => {
    const rule = (e.target as HTMLSelectElement).value;
    find(o, { rule, also: o.also.filter((id) => id !== rule) });
  };
  return html`<div>
    <label for="print-rule">${t('print.rule-to-find')}</label>
    <select id="print-rule" data-t="print-rule" @change=${choose}>
      <option value="" .selected=${!o.rule}>${t('choose.no-rule')}</option>
      ${rulesInOrder(c).map(
        (r) => html`<option value=${r.id} .selected=${r.id === o.rule}>${r.name}</option>`,
      )}
    </select>
  </div>`;
}

/** What to find besides: of the rules learnt, or of all where there is no learner. */
function caseField(s: State, o: Options) {
  const l = state.learner(s);
  const known = l ? state.taughtOf(l.id).map((x) => x.rule) : s.catalogue.rules.map((r) => r.id);
  const { rule, also } = o;
  return html`<details class="opens" data-t="print-case">
    <summary>${t('case.title')}</summary>
    <div class="case" role="group" aria-label=${t('case.title')}>
      ${pencilChips(s.catalogue, {
        rule,
        also,
        name: 'print-with',
        rules: new Set([...known, rule, ...also]),
        choose: (list) => find(o, { rule, also: list }),
      })}
    </div>
  </details>`;
}

const nameField = (o: Options, child: string) =>
  tick('print-name', t('print.with-name', { child }), o.name, (name) => change({ name }));

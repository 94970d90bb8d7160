// The form for a session: one that is corrected, or one that is added.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { today } from '../../record/week.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { LONGEST_NOTE } from '../../store/checks.ts';
import { linesName } from '../../text/names.ts';
import { type Outcome, OUTCOMES } from '../../types.ts';
import { chips } from '../parts/chips.ts';
import { tick } from '../parts/tick.ts';
import { called } from '../parts/words.ts';
import { change, formOf, leave, save } from './edit.ts';
import { field, hasDates, noteField, problemOf } from './fields.ts';
import type { Form } from './kept.ts';
import { entryOf, unknown } from './opened.ts';
import { placeField } from './place.ts';
import { rulesField } from './rules.ts';

export function form(s: State, id: string | undefined) {
  const x = formOf(s, id);
  if (id !== undefined && !x && !entryOf(s, id)) return unknown();
  const l = x ? s.learners.find((y) => y.id === x.learner) : state.learner(s);
  return html`
    <h1 tabindex="-1">
      ${id === undefined ? t('edit.add-title', { child: called(l) }) : t('edit.title')}
    </h1>
    ${id === undefined ? html`<p class="quiet">${t('edit.add-what')}</p>` : nothing}
    ${x ? fields(s, id, x) : html`<p class="quiet" aria-busy="true">${t('session.loading')}</p>`}
  `;
}

function fields(s: State, id: string | undefined, x: Form) {
  const submit = (e: Event) => {
    e.preventDefault();
    void save(id);
  };
  const set = (patch: Partial<Form['typed']>) => change(id, patch);
  return html`
    <form class="card edit" novalidate data-t="edit" @submit=${submit}>
      <p
        class="problem"
        role="alert"
        data-t="problem"
        .textContent=${x.problems.length ? t('edit.look') : ''}
      ></p>
      ${field(x, 'day', t('edit.day'), {
        type: 'date',
        most: today(),
        how: hasDates ? '' : t('edit.day-how', { day: today() }),
        value: x.typed.day,
        choose: (day) => set({ day }),
      })}
      ${x.was && (x.was.marks.length || x.was.stops.length) ? lines(s, x.was) : places(s, x, set)}
      ${rulesField(s, x, (rules) => set({ rules }))}
      <div aria-describedby="bad-outcome">
        ${chips(
          t('edit.outcome'),
          'went',
          OUTCOMES,
          x.typed.outcome as Outcome,
          (o) => t(`outcome.${o}`),
          (outcome) => set({ outcome }),
        )}
        ${problemOf(x, 'outcome')}
      </div>
      ${tick('edit-paper', t('edit.paper'), x.typed.paper, (paper) => set({ paper }))}
      ${field(x, 'minutes', t('edit.minutes'), {
        numeric: true,
        value: x.typed.minutes,
        choose: (minutes) => set({ minutes }),
      })}
      ${noteField(x, LONGEST_NOTE, (note) => set({ note }))}
      <button class="main" data-t="save-session">${t('edit.save')}</button>
      <button type="button" class="plain" data-t="discard" @click=${() => leave(id)}>
        ${t(x.touched ? 'edit.discard' : 'edit.cancel')}
      </button>
    </form>
  `;
}

/** Lines with marks stay what they are. */
const lines = ({ catalogue }: State, { from, to }: Form['was'] & object) => html`
  <p><b>${linesName(catalogue.surahs, from, to)}</b></p>
  <p class="quiet">${t('edit.lines-stay')}</p>
`;

const places = (s: State, x: Form, set: (patch: Partial<Form['typed']>) => void) => [
  placeField(s.catalogue, x, 'from', (from) => {
    // The end goes along to another surah.
    const along = x.typed.to.s === x.typed.from.s && from.s !== x.typed.from.s;
    set({ from, ...(along && { to: { ...x.typed.to, s: from.s } }) });
  }),
  placeField(s.catalogue, x, 'to', (to) => set({ to })),
];

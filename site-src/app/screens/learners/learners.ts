// Everyone: what each learner read last and what is next, with one press to begin; and the same
// lines for several. A table where there is room for one, else a list.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { t } from '../../i18n.ts';
import { loadCourse } from '../../planner.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Entry } from '../../types.ts';
import { adder } from '../parts/adder.ts';
import { closed } from '../parts/closed.ts';
import { listed } from '../parts/switch.ts';
import type { Screen } from '../screen.ts';
import { due, inPractice, lastRead, nextLines, type Row, startButton, who } from './cells.ts';
import { goOn, outlookOf, stop } from './compute.ts';
import { together } from './together.ts';

const wide = matchMedia('(min-width: 900px)');
const resized = () => state.set({});

function rowsOf(s: State): Row[] {
  const last = new Map<string, Entry>();
  for (const x of s.sessions) if (!last.has(x.learner)) last.set(x.learner, x);
  return listed(s).map((learner) => ({
    learner,
    last: last.get(learner.id),
    next: outlookOf(s, learner.id),
  }));
}

function view(s: State) {
  if (s.closed) return html`<main class="learners">${closed(s.closed)}</main>`;
  const rows = rowsOf(s);
  return html`
    <main class="learners">
      <h1 tabindex="-1">${t('nav.learners')}</h1>
      ${rows.length ? [progress(s, rows), wide.matches ? table(s, rows) : list(s, rows)] : nothing}
      ${rows.length > 1 ? together(s, rows) : nothing} ${adder(s)}
    </main>
  `;
}

/** How far the computing is; afterwards, how many there are. */
function progress(s: State, rows: Row[]) {
  const n = rows.filter((r) => r.next).length;
  const of = rows.length;
  const words =
    s.course === 'failed'
      ? t('today.no-lines')
      : n < of
        ? t('everyone.so-far', { n, of })
        : t('everyone.count', { n });
  return html`<p class="quiet" role="status" data-t="everyone-said">${words}</p>`;
}

const COLUMNS = ['who', 'last', 'rule', 'due', 'lines'] as const;

const table = (s: State, rows: Row[]) => html`
  <table data-t="everyone">
    <thead>
      <tr>
        ${COLUMNS.map((x) => html`<th scope="col">${t(`everyone.${x}`)}</th>`)}
        <td></td>
      </tr>
    </thead>
    <tbody>
      ${repeat(
        rows,
        (r) => r.learner.id,
        (r) =>
          html`<tr data-t="row">
            <th scope="row">${who(s, r)}</th>
            <td>${lastRead(r)}</td>
            <td>${inPractice(s, r)}</td>
            <td>${due(s, r)}</td>
            <td>${nextLines(s, r)}</td>
            <td>${startButton(s, r)}</td>
          </tr>`,
      )}
    </tbody>
  </table>
`;

const list = (s: State, rows: Row[]) => html`
  <ul class="everyone" data-t="everyone">
    ${repeat(
      rows,
      (r) => r.learner.id,
      (r) =>
        html`<li class="card" data-t="row">
          <div class="row">${who(s, r)}${startButton(s, r)}</div>
          <dl>
            ${term('last', lastRead(r))} ${term('rule', inPractice(s, r))} ${term('due', due(s, r))}
            ${term('lines', nextLines(s, r))}
          </dl>
        </li>`,
    )}
  </ul>
`;

const term = (name: (typeof COLUMNS)[number], of: unknown) => html`
  <div>
    <dt>${t(`everyone.${name}`)}</dt>
    <dd>${of}</dd>
  </div>
`;

export const learners: Screen = {
  title: () => t('nav.learners'),
  view,
  enter() {
    wide.addEventListener('change', resized);
    state.set({ together: [], adding: false });
    void loadCourse().catch(() => undefined);
  },
  drawn: goOn,
  leave() {
    wide.removeEventListener('change', resized);
    stop();
    state.set({ ticked: [] });
  },
};

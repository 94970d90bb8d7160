// The ladder: what comes next and why; every lesson in order with how far the learner is; what
// makes a rule known.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { repeat } from 'lit-html/directives/repeat.js';
import { t } from '../../i18n.ts';
import type { Child } from '../../plan/child.ts';
import { loadCourse, reader } from '../../planner.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Screen } from '../screen.ts';
import { criterion } from './criterion.ts';
import { nextRule } from './next.ts';
import { rung } from './rung.ts';

function view(s: State) {
  const c = reader();
  return html`
    <main class="rules">
      <h1 tabindex="-1">${t('nav.rules')}</h1>
      ${
        c
          ? ladder(c, !!state.learner(s))
          : html`<p role="status">
              ${t(s.course === 'failed' ? 'today.no-lines' : 'rules.looking')}
            </p>`
      }
    </main>
  `;
}

function ladder(c: Child, learns: boolean) {
  const standings = c.reader.order.map((u) => c.standing(u));
  const known = standings.filter((s) => s.known >= 0).length;
  const next = c.reader.order.find((u) => !c.taught[u]);
  return html`
    <p class="quiet" data-t="count">${t('rules.known', { n: known, of: standings.length })}</p>
    ${learns ? nextRule(c) : nothing}
    <ol class="ladder">
      ${repeat(
        standings,
        (s) => s.unit,
        (s, i) => rung(c, s, i, s.unit === next),
      )}
    </ol>
    ${learns ? criterion(c) : nothing}
  `;
}

export const rules: Screen = {
  title: () => t('nav.rules'),
  view,
  enter: () => void loadCourse().catch(() => undefined),
};

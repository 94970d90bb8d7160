// Who reads these lines: one learner, with a way to another; or several who read them together.
import { html, nothing } from 'lit-html';
import { join, t } from '../../i18n.ts';
import { others } from '../../practice/others.ts';
import * as practice from '../../practice/practice.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Learner } from '../../types.ts';
import { leave } from '../parts/box.ts';
import { disc } from '../parts/disc.ts';
import { escape, everyone, switcher } from '../parts/switch.ts';
import { called } from '../parts/words.ts';
import { openFor } from './open.ts';

/** The learner of these lines, if there is one yet. */
export function whose(s: State) {
  const p = s.practice;
  const l = p ? practice.learner(p) : state.learner(s);
  if (!l) return nothing;
  const more = p ? others(p) : [];
  return more.length ? several(s, [l, ...more]) : switcher(s, l, (id) => void openFor(id));
}

/** All their names, and how to go on with the first of them alone. */
const several = (s: State, all: Learner[]) => html`
  <details class="menu who several" data-t="switch" @focusout=${leave} @keydown=${escape}>
    <summary class="button plain">
      ${all.map(disc)}<bdi data-t="whose">${join(all.map((l) => called(l)))}</bdi>
    </summary>
    <div class="menu-list">
      <button class="plain" data-t="alone" @click=${() => practice.change({ together: undefined })}>
        ${t('together.alone', { child: called(all[0]) })}
      </button>
      ${everyone(s)}
    </div>
  </details>
`;

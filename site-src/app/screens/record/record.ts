// The record: progress by rule, every session, newest first, and the backup.
import '../../later.ts';
import { html, nothing } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { repeat } from 'lit-html/directives/repeat.js';
import { dayName, t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Entry } from '../../types.ts';
import { closed } from '../parts/closed.ts';
import { called } from '../parts/words.ts';
import type { Screen } from '../screen.ts';
import { backup } from './backup.ts';
import { row } from './row.ts';
import { byRule } from './totals.ts';

/** Sessions shown before the rest is asked for. */
const PAGE = 50;

const view = (s: State) => html`
  <main class="record">${s.closed ? closed(s.closed) : content(s)}</main>
`;

function content(s: State) {
  const l = state.learner(s);
  const all = l ? state.sessionsOf(l.id) : [];
  return html`
    <h1 tabindex="-1">${t('record.title', { child: called(l) })}</h1>
    ${all.length ? nothing : html`<p class="empty" data-t="empty">${t('record.empty')}</p>`}
    ${guard([all], () => byRule(all))} ${guard([all, s.listed], () => list(all, s.listed))}
    ${all.length > s.listed ? more(all.length - s.listed) : nothing} ${backup(s)}
  `;
}

const list = (all: Entry[], n: number) => repeat(byDay(all.slice(0, n)), ([day]) => day, dayOf);

function byDay(sessions: Entry[]): [string, Entry[]][] {
  const days = new Map<string, Entry[]>();
  for (const s of sessions) {
    const list = days.get(s.day);
    if (list) list.push(s);
    else days.set(s.day, [s]);
  }
  return [...days];
}

const dayOf = ([day, list]: [string, Entry[]]) => html`
  <section>
    <h2>${dayName(day)}</h2>
    <ul class="sessions">
      ${repeat(list, (s) => s.id, row)}
    </ul>
  </section>
`;

const more = (n: number) => html`
  <button
    class="plain"
    data-t="more"
    @click=${() => state.set({ listed: state.get().listed + PAGE })}
  >
    ${t('record.more', { n })}
  </button>
`;

export const record: Screen = {
  title: () => t('nav.record'),
  view,
  enter: () => state.set({ listed: PAGE }),
};

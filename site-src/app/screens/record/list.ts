// All of a learner's record: the weeks, progress by rule, every session, newest first, those that
// were removed, and what can be done with it.
import { html, nothing } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { repeat } from 'lit-html/directives/repeat.js';
import { groupBy } from '../../group.ts';
import { dayName, t } from '../../i18n.ts';
import { today } from '../../record/week.ts';
import { editHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Entry } from '../../types.ts';
import { called } from '../parts/words.ts';
import { backup } from './backup.ts';
import { charts } from './charts.ts';
import { unfinished } from './edit.ts';
import { output } from './print.ts';
import { removed } from './removed.ts';
import { row } from './row.ts';
import { byRule } from './totals.ts';

/** Sessions shown before the rest is asked for. */
export const PAGE = 50;

export function list(s: State) {
  const l = state.learner(s);
  const all = l ? state.sessionsOf(l.id) : [];
  const day = today();
  return html`
    <h1 tabindex="-1">${t('record.title', { child: called(l) })}</h1>
    <p class="print-only quiet">${t('record.printed-on', { day: dayName(day) })}</p>
    ${all.length ? nothing : html`<p class="empty" data-t="empty">${t('record.empty')}</p>`}
    ${unfinished(s)} ${l ? add() : nothing} ${guard([all, day], () => charts(all, day))}
    ${guard([all], () => byRule(all))}
    ${guard([all, s.listed], () => repeat(byDay(all.slice(0, s.listed)), ([x]) => x, dayOf))}
    ${all.length > s.listed ? more(all.length, s.listed) : nothing} ${removed(s, l)}
    ${l ? output(all.length) : nothing} ${backup(s)}
  `;
}

const add = () => html`
  <p class="no-print">
    <a class="button big" href=${editHash()} data-t="add-session">${t('record.add')}</a>
  </p>
`;

const byDay = (sessions: Entry[]) => [...groupBy(sessions, (s) => s.day)];

const dayOf = ([day, list]: [string, Entry[]]) => html`
  <section class="day">
    <h2>${dayName(day)}</h2>
    <ul class="sessions">
      ${repeat(list, (s) => s.id, row)}
    </ul>
  </section>
`;

/** The rest of a long list: on screen by a button, on paper in words. */
const more = (of: number, n: number) => html`
  <button class="plain no-print" data-t="more" @click=${() => state.set({ listed: n + PAGE })}>
    ${t('record.more', { n: of - n })}
  </button>
  <p class="print-only">${t('record.printed', { n, of })}</p>
`;

// What is said of a learner in the view of everyone, in a table and in a list alike.
import { html } from 'lit-html';
import { dateName, join, t } from '../../i18n.ts';
import { Settle, Teach } from '../../plan/day.ts';
import type { Outlook } from '../../plan/outlook.ts';
import type { Course } from '../../plan/course.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { linesName } from '../../text/names.ts';
import type { Entry, Learner } from '../../types.ts';
import { disc } from '../parts/disc.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { tick } from '../parts/tick.ts';
import { called } from '../parts/words.ts';
import { start } from './start.ts';

/** Rules named of those that are due. */
const NAMED = 2;

/** A learner, what was read last, and what is next where it has been computed. */
export interface Row {
  learner: Learner;
  last: Entry | undefined;
  next: Outlook | undefined;
}

/** The name, with a box to tick for the same lines. */
export function who(s: State, { learner: l }: Row) {
  const turn = (on: boolean) => {
    const others = state.get().ticked.filter((id) => id !== l.id);
    state.set({ ticked: on ? [...others, l.id] : others });
  };
  const name = html`<span class="who">${disc(l)}<bdi>${called(l)}</bdi></span>`;
  return tick(`tick-${l.id}`, name, s.ticked.includes(l.id), turn);
}

export const lastRead = ({ last }: Row) =>
  last
    ? html`${dateName(last.day)}<span class="quiet"> · ${t(`outcome.${last.outcome}`)}</span>`
    : html`<span class="quiet">${t('everyone.nothing-yet')}</span>`;

/** What is computed, or a dash in its place. */
function once(s: State, { next }: Row, words: (o: Outlook, c: Course) => unknown) {
  if (next && s.course && s.course !== 'failed') return words(next, s.course);
  return html`<span class="quiet" aria-hidden="true">…</span>`;
}

/** The rule in practice; where there is none, what stands for it. */
export const inPractice = (s: State, row: Row) =>
  once(s, row, ({ learning, plan }, { units }) => {
    const unit = units[learning];
    if (unit)
      return html`<span class="inked" .style=${pencil(unit.family)}
        >${swatch(unit.family)}${unit.name}</span
      >`;
    const words = plan.do === Settle ? 'today.card.settle' : 'everyone.no-rule';
    return html`<span class="quiet">${t(words)}</span>`;
  });

export const due = (s: State, row: Row) =>
  once(s, row, ({ due }, { c }) => {
    if (!due.length) return html`<span class="quiet">${t('everyone.nothing-due')}</span>`;
    const names = due.slice(0, NAMED).map((r) => c.rules[r]!.name);
    const more = due.length - names.length;
    return join([...names, ...(more ? [t('everyone.more', { n: more })] : [])]);
  });

export const nextLines = (s: State, row: Row) =>
  once(s, row, ({ lines, rules, places, plan }, { c, units }) => {
    if (!lines) return html`<span class="quiet">${t('plan.nowhere')}</span>`;
    const rule =
      plan.do === Teach
        ? t('today.card.teach', { rule: units[plan.unit]!.name })
        : join(rules.map((r) => r.name));
    const of = rule ? `${rule} · ${t('today.places', { n: places })}` : t('today.card.read');
    return html`<span class="nowrap">${linesName(c.surahs, lines.from, lines.to)}</span><br /><span
        class="quiet"
        >${of}</span
      >`;
  });

/** One press: the learner is chosen, and the lines open. */
export function startButton(s: State, { learner: l, next }: Row) {
  const ready = next || s.course === 'failed';
  const lines = next?.lines;
  return html`<button
    class="big"
    data-t="start-${l.id}"
    ?disabled=${!ready}
    @click=${() => void start(l, lines)}
  >
    ${t(lines || !ready ? 'everyone.start' : 'today.choose')}<span class="hidden"
      >: ${called(l)}</span
    >
  </button>`;
}

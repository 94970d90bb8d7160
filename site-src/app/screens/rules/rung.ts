// One lesson of the ladder: how far it is, since when; inside, what it needs, the lesson, lines,
// history, and its place.
import { html, nothing } from 'lit-html';
import { dateName, dayName, join, t } from '../../i18n.ts';
import type { Child } from '../../plan/child.ts';
import type { Standing } from '../../plan/standing.ts';
import { dateOf } from '../../record/week.ts';
import { missing, type Unit } from '../../plan/units.ts';
import { reason } from '../../plan/words.ts';
import { shareOf, tallies } from '../../record/totals.ts';
import * as state from '../../state.ts';
import { linesName } from '../../text/names.ts';
import type { Catalogue, Entry, Rule, Tally } from '../../types.ts';
import { entryHash } from '../parts/entry.ts';
import { lessonPath } from '../parts/lesson.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { withTerm } from '../parts/term.ts';
import { arabic } from '../parts/words.ts';
import { move, moves, setState, STATES } from './change.ts';
import { progress } from './criterion.ts';

/** Sessions shown in the history. */
const LAST = 6;

export function rung(c: Child, s: Standing, at: number, next: boolean) {
  const unit = c.course.units[s.unit]!;
  return html`<li class=${s.state} .style=${pencil(unit.family)}>
    <details data-t="rung-${unit.id}" name="rung">
      <summary>
        <span class="rung-name"
          ><span class="inked">${swatch(unit.family)}${unit.name}</span> ${
            unit.ar ? arabic(unit.ar, 'ar small') : nothing
          }</span
        ><span class="state">${standing(s)}${next ? ` · ${t('step.next')}` : nothing}</span>
      </summary>
      ${inside(c, s, unit, at)}
    </details>
  </li>`;
}

/** The state in words, with its date. */
function standing(s: Standing): string {
  if (s.state === 'not-yet') return t('step.not-yet');
  const learning = s.state === 'learning';
  const day = dateName(dateOf(learning ? s.since : s.known));
  const since = t(learning ? 'rules.since' : 'rules.known-since', { day });
  return `${t(`step.${s.state}`)} · ${since}`;
}

function inside(c: Child, s: Standing, unit: Unit, at: number) {
  const rules = unit.rules.map((r) => c.course.c.rules[r]!);
  const several = rules.length > 1;
  return html`
    ${rules.map((r) => html`<p>${several ? html`<b>${r.name}. </b>` : nothing}${r.short}</p>`)}
    ${needs(c, s, unit)}
    <p class="quiet">
      ${t('rules.place', { n: at + 1 })}
      ${withTerm(c.learner.order ? t('plan.your-order') : reason(c.course.c, s.unit))}
    </p>
    ${s.state === 'learning' ? progress(c, s) : nothing} ${due(s)}
    <div class="row">
      <a class="button plain" href=${lessonPath(unit.id)}>${t('rules.lesson')}</a>
      ${rules.map((r) => linesLink(r, several))}
    </div>
    ${state.learner() ? own(c, s, unit, at) : nothing}
  `;
}

function needs(c: Child, s: Standing, unit: Unit) {
  const { units } = c.course;
  if (!unit.needs.length) return nothing;
  const lack = state.learner() ? missing(units, c.taught, s.unit) : [];
  const rules = join((lack.length ? lack : unit.needs).map((n) => units[n]!.name));
  return html`<p class="quiet">
    ${t(lack.length ? 'rules.needs-first' : 'rules.needs', { rules })}
  </p>`;
}

function due(s: Standing) {
  if (s.due < 0) return nothing;
  const day = dayName(dateOf(s.due));
  return html`<p class="quiet" data-t="due">
    ${t(s.state === 'due' ? 'rules.is-due' : 'rules.due', { day })}
  </p>`;
}

const linesLink = (r: Rule, several: boolean) => html`
  <a class="button plain" href="#/lines?rule=${r.id}" data-t="lines-${r.id}"
    >${several ? t('rules.lines-of', { rule: r.name }) : t('rules.lines')}</a
  >
`;

/** What there is for a learner alone: sessions so far, the state to set, the place to change. */
function own(c: Child, s: Standing, unit: Unit, at: number) {
  const can = moves(c, s.unit, at);
  return html`
    ${history(c, unit.rules)}
    <div class="row choice" role="group" aria-label=${t('rules.state')}>
      ${STATES.map((x) => stateButton(s, unit, x))}
    </div>
    <div class="row">
      ${moveButton(s, unit, 'earlier', can.earlier)} ${moveButton(s, unit, 'later', can.later)}
    </div>
  `;
}

const stateButton = (s: Standing, unit: Unit, x: (typeof STATES)[number]) => html`
  <button
    class="chip"
    data-t="${unit.id}-${x}"
    aria-pressed=${x === s.state || (x === 'known' && s.state === 'due')}
    @click=${() => void setState(s.unit, x)}
  >
    ${t(`step.${x}`)}
  </button>
`;

const moveButton = (s: Standing, unit: Unit, name: 'earlier' | 'later', to: number) => html`
  <button
    class="plain"
    data-t="${unit.id}-${name}"
    ?disabled=${to < 0}
    @click=${() => void move(s.unit, to)}
  >
    ${t(`rules.${name}`)}
  </button>
`;

function history(c: Child, rules: number[]) {
  const { c: cat } = c.course;
  const ids = rules.map((r) => cat.rules[r]!.id);
  const all = c.sessions.filter((s) => of(s, ids).length);
  if (!all.length) return nothing;
  const last = all.slice(-LAST).reverse();
  return html`<details class="plan-history opens">
    <summary>${t('rules.history', { n: all.length })}</summary>
    <ul>
      ${last.map((s) => session(cat, s, of(s, ids)))}
    </ul>
  </details>`;
}

/** What a session marked of some rules. */
const of = (s: Entry, ids: string[]) => tallies(s).filter((x) => ids.includes(x.rule));

function session(c: Catalogue, s: Entry, mine: Tally[]) {
  const { found: n, of } = shareOf(mine);
  const found = of > 0 ? ` · ${t('record.found', { n, of })}` : '';
  return html`<li>
    ${dateName(s.day)}: <a href=${entryHash(c, s)}>${linesName(c.surahs, s.from, s.to)}</a>${found}
    · ${t(`outcome.${s.outcome}`)}
  </li>`;
}

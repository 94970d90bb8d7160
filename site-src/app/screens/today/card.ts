// The card of today: what to do, why in one line, one large button, and on asking why these lines.
// The ranking behind it is expensive: all is made once for what is known of the learner.
import { html, nothing } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { keyed } from 'lit-html/directives/keyed.js';
import { keep } from '../../actions/keep.ts';
import { whenIdle } from '../../idle.ts';
import { join, t } from '../../i18n.ts';
import { sameItems } from '../../memo.ts';
import type { Child } from '../../plan/child.ts';
import { Practise, ReadOn, Review, Settle, Teach } from '../../plan/day.ts';
import { type Proposal, proposal, rulesOf } from '../../plan/proposal.ts';
import { explain, reach } from '../../plan/words.ts';
import { child, loadCourse } from '../../planner.ts';
import { linesHash, printHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import { changeLearner } from '../../store/store.ts';
import { linesName } from '../../text/names.ts';
import type { Lines } from '../../types.ts';
import { lessonPath } from '../parts/lesson.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { term, withTerm } from '../parts/term.ts';
import { called } from '../parts/words.ts';
import { switcher } from '../parts/switch.ts';
import type { Screen } from '../screen.ts';
import { ahead } from '../screens.ts';
import { why } from './why.ts';

export { loadCourse, switcher };

const KINDS = {
  [Settle]: 'settle',
  [Teach]: 'teach',
  [Practise]: 'practise',
  [Review]: 'review',
  [ReadOn]: 'read',
} as Record<number, 'settle' | 'teach' | 'practise' | 'review' | 'read'>;

let last: Proposal | undefined;

function nextFor(c: Child): Proposal {
  if (last?.of !== c) last = proposal(c);
  return last;
}

let ready: (Lines | undefined)[] = [];

/** The card; nothing without a learner. Lines to begin or go on with are made ready beforehand. */
export const card: Pick<Screen, 'view' | 'drawn'> = {
  view() {
    const c = child();
    return html`${guard([c], () => (c ? cardOf(c, nextFor(c)) : nothing))}`;
  },
  drawn(s) {
    const c = child();
    const next = [c && nextFor(c).lines, s.unfinished[0]?.lines];
    if (sameItems(next, ready)) return;
    ready = next;
    for (const lines of next) if (lines) whenIdle(() => void ahead({ name: 'lines', lines }));
  },
};

function cardOf(c: Child, next: Proposal) {
  const { rule, lines } = next;
  const { units } = c.course;
  const { do: todo, unit } = c.today;
  const kind = KINDS[todo]!;
  const names = {
    rule: todo === Teach ? units[unit]!.name : named(next),
    child: called(c.learner),
  };
  const to = lines ? linesHash(lines) : '#/lines';
  // The lesson leads back to the lines of today.
  const lesson = todo === Teach ? lessonPath(units[unit]!.id, lines ? to : '') : undefined;
  // Another thing to do is another card, with its reasons folded away.
  return keyed(
    kind + to,
    html`<section class="card" data-t="next-${kind}">
      <h2 tabindex="-1" class=${rule ? 'inked' : nothing} .style=${rule ? pencil(rule.family) : ''}>
        ${familiesOf(next).map((f) => swatch(f))}${t(`today.card.${kind}`, names)}
      </h2>
      <p data-t="why">${withTerm(why(c))}</p>
      ${todo === Teach && rule ? html`<p>${term(rule.name, t('today.meaning'))}</p>` : nothing}
      <a class="button main" href=${lesson ?? to} data-t="start">${t(`today.button.${kind}`)}</a>
      ${lesson ? html`<p><a href=${to} data-t="start-lines">${t('today.after-lesson')}</a></p>` : nothing}
      <p class="quiet" data-t="where">${where(c, next)}</p>
      ${lines ? html`<p><a href=${printHash(lines)} data-t="print-today">${t('today.print')}</a></p>` : nothing}
      ${because(c, next)} ${other(todo)}
    </section>`,
  );
}

const named = (next: Proposal) => join(rulesOf(next).map((r) => r.name));

const familiesOf = (next: Proposal) => [...new Set(rulesOf(next).map((r) => r.family))];

function where(c: Child, { rule, lines, places }: Proposal): string {
  if (!lines) return t('plan.nowhere');
  const name = linesName(c.course.c.surahs, lines.from, lines.to);
  return rule ? `${name} · ${t('today.places', { n: places })}` : name;
}

/** Why these lines, and a way to others. */
function because(c: Child, { rule, found }: Proposal) {
  const best = found.passages[0];
  if (!best) return nothing;
  const reasons = [reach(found), ...explain(c, best, c.today.rule, called(c.learner))];
  return html`
    <details class="plan-why opens" data-t="because">
      <summary>${t('plan.because')}</summary>
      <ul>
        ${reasons.filter(Boolean).map((x) => html`<li>${withTerm(x)}</li>`)}
      </ul>
      <p>
        <a href="#/lines${rule ? `?rule=${rule.id}` : ''}" data-t="other-lines"
          >${t('plan.other-lines')}</a
        >
      </p>
    </details>
  `;
}

/** What else may be done: end the first weeks, or begin with another rule. */
function other(todo: number) {
  if (todo === Settle)
    return html`<p>
      <button class="link" data-t="settled" data-next=".card h2" @click=${() => void settle()}>
        ${t('today.settled')}
      </button>
    </p>`;
  return todo === Teach
    ? html`<p><a href="#/rules" data-t="other-rule">${t('today.other-rule')}</a></p>`
    : nothing;
}

async function settle() {
  const l = state.learner();
  if (l) await keep(() => changeLearner(l.id, { settled: true }));
}

// The card of today: what to do, why in one line, one large button, and on asking why these lines.
// The ranking behind it is expensive: all is made once for what is known of the learner.
import { html, nothing } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { keyed } from 'lit-html/directives/keyed.js';
import { keep } from '../../actions/keep.ts';
import { join, t } from '../../i18n.ts';
import type { Child } from '../../plan/child.ts';
import { Practise, ReadOn, Review, Settle, Teach } from '../../plan/day.ts';
import type { Ranking } from '../../plan/rank.ts';
import { explain, reach } from '../../plan/words.ts';
import { child, loadCourse } from '../../planner.ts';
import { linesHash } from '../../share/link.ts';
import * as state from '../../state.ts';
import { changeLearner } from '../../store/store.ts';
import { prefetch } from '../../text/data.ts';
import { linesName } from '../../text/names.ts';
import type { Lines, Rule } from '../../types.ts';
import { lessonPath } from '../parts/lesson.ts';
import { pencil, swatch } from '../parts/pencil.ts';
import { term, withTerm } from '../parts/term.ts';
import { called } from '../parts/words.ts';
import type { Screen } from '../screen.ts';
import { why } from './why.ts';

export { loadCourse };

const KINDS = {
  [Settle]: 'settle',
  [Teach]: 'teach',
  [Practise]: 'practise',
  [Review]: 'review',
  [ReadOn]: 'read',
} as Record<number, 'settle' | 'teach' | 'practise' | 'review' | 'read'>;

/**
 * What is next for a learner: the rule, if there is one, and lines for it, if there are any; with
 * the rules that are marked there, and their places together.
 */
interface Next {
  of: Child;
  rule: Rule | undefined;
  found: Ranking;
  lines: Lines | undefined;
  marks: Rule[];
  places: number;
}

let last: Next | undefined;

function nextFor(c: Child): Next {
  if (last?.of === c) return last;
  const { x, c: cat } = c.course;
  const found = c.lines();
  const best = found.passages[0];
  const marks = best ? c.marks(best) : [];
  last = {
    of: c,
    rule: cat.rules[c.today.rule],
    found,
    lines: best && c.proposed(best),
    marks: marks.map((r) => cat.rules[r]!),
    places: best ? marks.reduce((n, r) => n + x.count(r, best.a, best.b), 0) : 0,
  };
  return last;
}

let ready: Child | undefined;

/** The card; nothing without a learner. Its lines are fetched before they are asked for. */
export const card: Pick<Screen, 'view' | 'drawn'> = {
  view() {
    const c = child();
    return html`${guard([c], () => (c ? cardOf(c, nextFor(c)) : nothing))}`;
  },
  drawn() {
    const c = child();
    if (!c || c === ready) return;
    ready = c;
    const { lines } = nextFor(c);
    if (lines) prefetch(c.course.c, lines);
  },
};

function cardOf(c: Child, next: Next) {
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
  const lesson = todo === Teach ? lessonPath(units[unit]!.id) + (lines ? to : '') : undefined;
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
      ${because(c, next)} ${other(todo)}
    </section>`,
  );
}

/** The rules that are marked; that of the plan where there are no lines. */
const rulesOf = ({ rule, marks }: Next) => (marks.length || !rule ? marks : [rule]);

const named = (next: Next) => join(rulesOf(next).map((r) => r.name));

const familiesOf = (next: Next) => [...new Set(rulesOf(next).map((r) => r.family))];

function where(c: Child, { rule, lines, places }: Next): string {
  if (!lines) return t('plan.nowhere');
  const name = linesName(c.course.c.surahs, lines.from, lines.to);
  return rule ? `${name} · ${t('today.places', { n: places })}` : name;
}

/** Why these lines, and a way to others. */
function because(c: Child, { rule, found }: Next) {
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

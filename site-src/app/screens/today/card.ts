// The card of today: what to do, why in one line, one large button, and on asking why these lines.
import * as state from '../../state.ts';
import { pencil, swatch } from '../../colour/ink.ts';
import { h } from '../../dom.ts';
import { join, t } from '../../i18n.ts';
import { keep } from '../../actions/keep.ts';
import type { Child } from '../../plan/child.ts';
import { child as held, loadCourse as load } from '../../planner.ts';
import { Practise, ReadOn, Review, Settle, Teach } from '../../plan/day.ts';
import type { Readiness } from '../../plan/ready.ts';
import { explain, reach, reason } from '../../plan/words.ts';
import { linesHash } from '../../share/link.ts';
import { changeLearner } from '../../store/store.ts';
import { prefetch } from '../../text/data.ts';
import { linesName } from '../../text/names.ts';
import { lessonPath } from '../parts/lesson.ts';

const KIND = {
  [Settle]: 'settle',
  [Teach]: 'teach',
  [Practise]: 'practise',
  [Review]: 'review',
  [ReadOn]: 'read',
} as Record<number, 'settle' | 'teach' | 'practise' | 'review' | 'read'>;

export { load };

/** The card; undefined without a learner. */
export function card(): HTMLElement | undefined {
  const c = held();
  return c && draw(c);
}

function draw(c: Child): HTMLElement {
  const { c: cat, units } = c.course,
    p = c.today,
    kind = KIND[p.do]!,
    child = c.learner.name || t('child');
  const rule = p.rule < 0 ? undefined : cat.rules[p.rule]!,
    name = p.do === Teach ? units[p.unit]!.name : (rule?.name ?? '');
  const found = c.lines(),
    best = found.passages[0],
    lines = best && c.toLines(best, rule?.id ?? '');
  const to = lines ? linesHash(lines) : '#/lines',
    lesson = p.do === Teach && units[p.unit]!.id;
  if (lines) prefetch(cat, lines);
  return h(
    'section',
    { class: 'card', 'data-t': `next-${kind}` },
    h(
      'h2',
      rule ? { style: pencil(rule.family), class: 'inked' } : {},
      rule && swatch(rule.family),
      t(`today.card.${kind}`, { rule: name, child }),
    ),
    h('p', { 'data-t': 'why' }, why(c, child)),
    h(
      'a',
      { class: 'button main', href: lesson ? lessonPath(lesson) : to, 'data-t': 'start' },
      t(`today.button.${kind}`),
    ),
    lesson && h('p', {}, h('a', { href: to, 'data-t': 'start-lines' }, t('today.after-lesson'))),
    h(
      'p',
      { class: 'quiet', 'data-t': 'where' },
      best && lines
        ? linesName(cat.surahs, lines.from, lines.to) +
            (rule ? ` · ${t('today.places', { n: best.focus })}` : '')
        : t('plan.nowhere'),
    ),
    best &&
      h(
        'details',
        { class: 'plan-why opens', 'data-t': 'because' },
        h('summary', {}, t('plan.because')),
        h(
          'ul',
          {},
          [reach(found), ...explain(c, best, p.rule, child)]
            .filter(Boolean)
            .map((x) => h('li', {}, x)),
        ),
        h(
          'p',
          {},
          h(
            'a',
            { href: `#/lines${rule ? `?rule=${rule.id}` : ''}`, 'data-t': 'other-lines' },
            t('plan.other-lines'),
          ),
        ),
      ),
    p.do === Settle &&
      h(
        'p',
        {},
        h(
          'button',
          { class: 'link', 'data-t': 'settled', onclick: () => void settle() },
          t('today.settled'),
        ),
      ),
    p.do === Teach &&
      h('p', {}, h('a', { href: '#/rules', 'data-t': 'other-rule' }, t('today.other-rule'))),
  );
}

async function settle() {
  const l = state.learner();
  if (l) await keep(() => changeLearner(l.id, { settled: true }));
}

function why(c: Child, child: string): string {
  const p = c.today,
    cat = c.course.c;
  switch (p.do) {
    case Settle:
      return t('today.why.settle', { n: p.left, child });
    case Practise:
      return lacking(c, p.readiness!, child);
    case Review:
      return t('today.why.review', {
        n: p.due.length,
        rules: join(p.due.slice(0, 3).map((r) => cat.rules[r]!.name)),
      });
    case Teach: {
      const n = c.ahead()[p.unit]!;
      return n ? t('today.why.teach', { n, child }) : reason(cat, p.unit);
    }
    default:
      return t('today.why.read', { child });
  }
}

/** The first thing that the criterion still lacks. */
function lacking(c: Child, r: Readiness, child: string): string {
  const want = c.criterion;
  if (!r.sessions) return t('today.why.practise-first', { child });
  if (r.muchHelp) return t('today.why.help');
  if (r.percent >= 0 && r.percent < want.percent)
    return t('today.why.found', { n: r.percent, want: want.percent });
  if (r.practised < r.wanted)
    return t('today.why.rule', {
      n: r.practised,
      of: r.wanted,
      rule: c.course.c.rules[r.rule]!.name,
    });
  return t('today.why.practise', { n: r.days, of: want.days });
}

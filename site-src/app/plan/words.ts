// Puts what the planner found into plain words.
import { join, t } from '../i18n.ts';
import type { Catalogue } from '../types.ts';
import type { Child } from './child.ts';
import { Again, Fewer, Nowhere, type Passage, type Ranking } from './rank.ts';
import { wentBack } from './place.ts';
import { ENOUGH } from './score.ts';

/** Names of rules not yet taught before the rest is summed up. */
const NAMED = 4;

/**
 * Why a passage is a good one, a sentence each: places of the new rule, of known ones, what is
 * readable, what comes later.
 */
export function explain(c: Child, p: Passage, rule: number, name: string): string[] {
  const rules = c.course.c.rules;
  const out: string[] = [];
  if (rule >= 0) out.push(t('plan.focus', { n: p.focus, rule: rules[rule]!.name }));
  const { fewest, most } = c.load(rule);
  if (rule >= 0 && p.focus > most) out.push(t('plan.over', { fewest, most }));
  if (rule >= 0 && p.focus < fewest && p.focus >= ENOUGH)
    out.push(t('plan.under', { fewest, most }));
  if (p.known) out.push(t('plan.known', { n: p.known }));
  if (c.today.level || rule >= 0) out.push(t('plan.share', { n: p.share, child: name }));
  const due = p.due.filter((r) => c.today.due.includes(r));
  if (due.length) out.push(t('plan.meets', { rules: join(due.map((r) => rules[r]!.name)) }));
  const named = p.byRule
    .slice(0, NAMED)
    .map(([r, n]) => t('plan.rule-places', { rule: rules[r]!.name, n }));
  if (p.byRule.length > NAMED)
    named.push(t('plan.others', { n: p.byRule.slice(NAMED).reduce((n, r) => n + r[1], 0) }));
  if (named.length) out.push(t('plan.later', { n: p.later, rules: join(named) }));
  if (wentBack(c)) out.push(t('plan.juz-before'));
  out.push(
    t(p.distance === 0 ? 'plan.here' : p.distance > 0 ? 'plan.ahead' : 'plan.back', {
      n: Math.abs(p.distance),
    }),
  );
  return out;
}

/** What to say when the lines are not as wanted; empty when they are. */
export function reach(r: Ranking): string {
  if (r.how === Nowhere) return t('plan.nowhere');
  const said = r.beyond ? [t('plan.beyond')] : [];
  if (r.how === Fewer) said.unshift(t('plan.fewer', { n: r.least, want: ENOUGH }));
  if (r.how === Again) said.unshift(t('plan.again'));
  return said.join(' ');
}

/** Why a lesson comes where it does in the computed order. */
export function reason(c: Pick<Catalogue, 'lessons'>, unit: number): string {
  const { why, on, places: n, look, sign } = c.lessons[unit]!;
  if (why === 'rare') return t('plan.rare', { n });
  if (why !== 'begins') return t(`plan.${why}`, { n, rule: c.lessons[on]!.name });
  return t(sign ? 'plan.sign' : look ? `plan.look-${look}` : 'plan.letter', { n });
}

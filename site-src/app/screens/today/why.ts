// Why it is this that comes today, in one line.
import { join, t } from '../../i18n.ts';
import type { Child } from '../../plan/child.ts';
import { Practise, Review, Settle, Teach } from '../../plan/day.ts';
import type { Readiness } from '../../plan/ready.ts';
import { reason } from '../../plan/words.ts';
import { called } from '../parts/words.ts';

/** Rules named of those that are due. */
const NAMED = 3;

export function why(c: Child): string {
  const p = c.today;
  const { rules } = c.course.c;
  const child = called(c.learner);
  switch (p.do) {
    case Settle:
      return t('today.why.settle', { n: p.left, child });
    case Practise:
      return lacking(c, p.readiness!, child);
    case Review: {
      const names = p.due.slice(0, NAMED).map((r) => rules[r]!.name);
      return t('today.why.review', { n: p.due.length, rules: join(names) });
    }
    case Teach: {
      const n = c.ahead()[p.unit]!;
      return n ? t('today.why.teach', { n, child }) : reason(c.course.c, p.unit);
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
  if (r.practised >= r.wanted) return t('today.why.practise', { n: r.days, of: want.days });
  const rule = c.course.c.rules[r.rule]!.name;
  return t('today.why.rule', { n: r.practised, of: r.wanted, rule });
}

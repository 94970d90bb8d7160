// What the adult may change: how far a lesson is, and its place in the order. Nothing is forbidden
// that can be done; what is unusual is said, with a way back.
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { join, t } from '../../i18n.ts';
import { keep } from '../../actions/keep.ts';
import { offerUndo } from '../../actions/undo.ts';
import { today } from '../../record/week.ts';
import type { Child } from '../../plan/child.ts';
import { child } from '../../planner.ts';
import { mayMove } from '../../plan/next.ts';
import { missing } from '../../plan/units.ts';

export const STATES = ['not-yet', 'learning', 'known'] as const;

/** Keeps what the adult says of a lesson, all its rules at once, with today's date. */
export async function setState(unit: number, to: (typeof STATES)[number]) {
  const c = child();
  if (!c) return;
  const s = c.standing(unit);
  const { units, c: cat } = c.course;
  const l = c.learner.id;
  const ids = units[s.unit]!.rules.map((r) => cat.rules[r]!.id);
  const was = state.taughtOf(l).filter((x) => ids.includes(x.rule));
  // To learn once more what was known begins anew: the sessions from today on count.
  const again = to === 'learning' && s.known >= 0;
  const now =
    to === 'not-yet'
      ? []
      : ids.map((rule) => ({
          learner: l,
          rule,
          since: (!again && was.find((x) => x.rule === rule)?.since) || today(),
          known: to === 'known' ? today() : '',
        }));
  const odd = to === 'learning' && s.state === 'not-yet' ? warning(c, s.unit) : '';
  if (!(await keep(() => store.replaceTaught(l, ids, now))) || !odd) return;
  const back = () => keep(() => store.replaceTaught(l, ids, was));
  offerUndo(odd, back, { hold: true, name: 'odd' });
}

/** What is unusual about beginning a lesson now; empty when nothing is. */
export function warning(c: Child, unit: number): string {
  const { units } = c.course;
  const lack = missing(units, c.taught, unit);
  const open = c.reader.taught
    .filter((b) => c.standing(b.unit).state === 'learning')
    .map((b) => units[b.unit]!.name);
  if (lack.length)
    return t('rules.odd-needs', {
      rule: units[unit]!.name,
      rules: join(lack.map((n) => units[n]!.name)),
    });
  return open.length ? t('rules.odd-ready', { rules: join(open) }) : '';
}

/**
 * Where a lesson can move by one step, -1 where it would come before what it needs or after what
 * needs it.
 */
export function moves(c: Child, unit: number, at: number): { earlier: number; later: number } {
  const { units } = c.course;
  const now = c.reader.order;
  const ok = (to: number) =>
    to >= 0 && to < now.length && mayMove(units, now, unit, to) ? to : -1;
  return { earlier: ok(at - 1), later: ok(at + 1) };
}

export async function move(unit: number, to: number) {
  const c = child();
  if (!c) return;
  const order = c.reader.order.filter((u) => u !== unit);
  order.splice(to, 0, unit);
  const { id, order: was } = c.learner;
  if (
    !(await keep(() => store.changeLearner(id, { order: order.map((u) => c.course.units[u]!.id) })))
  )
    return;
  const back = () => keep(() => store.changeLearner(id, { order: was }));
  offerUndo(t('rules.moved', { rule: c.course.units[unit]!.name, n: to + 1 }), back);
}

/** Back to the computed order. */
export async function resetOrder() {
  const c = child();
  if (!c) return;
  await keep(() => store.changeLearner(c.learner.id, { order: undefined }));
}

// What to do on a day.
import type { Query } from './score.ts';
import { type Criterion, knownDay, type Practice, type Readiness, ready } from './ready.ts';
import { due, review, type Schedule } from './review.ts';
import type { Unit } from './units.ts';

/**
 * Read without a new rule; begin a lesson; find and mark the one begun last; find and mark a rule
 * known for some time, in lines where others are due too; and when all is taught and nothing due,
 * read on.
 */
export const Settle = 0;
export const Teach = 1;
export const Practise = 2;
export const Review = 3;
export const ReadOn = 4;

/**
 * Days of reading before the first rule; rules that must be due before a session is given to review
 * alone; one session in how many at most is.
 */
const SETTLE_DAYS = 2;
const REVIEW_RULES = 3;
const REVIEW_EVERY = 4;

/** A unit that was begun: on which day, and on which the adult called it known, -1 for not yet. */
export interface Begun {
  unit: number;
  since: number;
  known: number;
}

/**
 * All that the plan for a day depends on: settled says that the child reads well already; the log
 * is in order of time.
 */
export interface Reader {
  day: number;
  settled: boolean;
  taught: Begun[];
  log: Practice[];
  order: number[];
}

/**
 * unit and rule are those to work on, -1 for none; left are days of settling in; due the longest
 * overdue first.
 */
export interface Plan {
  do: number;
  unit: number;
  rule: number;
  left: number;
  readiness: Readiness | undefined;
  due: number[];
  known: number[];
  level: number;
}

export function plan(us: Unit[], few: boolean[], l: Reader, c: Criterion): Plan {
  const known = l.taught.map((t) =>
    t.known >= 0 ? t.known : knownDay(us[t.unit]!, few, t.since, l.log, c),
  );
  const schedules: Schedule[] = [];
  const since = new Map<number, number>();
  let learning = -1;
  l.taught.forEach((t, i) => {
    if (known[i]! < 0) {
      if (learning < 0 || t.since >= l.taught[learning]!.since) learning = i;
      return;
    }
    for (const r of us[t.unit]!.rules) {
      schedules.push(review(r, known[i]!, l.log));
      since.set(r, known[i]!);
    }
  });
  const p: Plan = {
    do: ReadOn,
    unit: -1,
    rule: -1,
    left: 0,
    readiness: undefined,
    due: due(schedules, l.day),
    known: l.taught.flatMap((t) => us[t.unit]!.rules),
    level: l.taught.length,
  };
  const left = SETTLE_DAYS - new Set(l.log.map((s) => s.day)).size;
  if (!l.settled && !l.taught.length && left > 0) return { ...p, do: Settle, left };
  const nextUnit = l.order.find((u) => !l.taught.some((t) => t.unit === u)) ?? -1;
  // A session that marked only rules known before it is a review; one in so many is enough.
  const before = (rule: number, day: number) => (since.get(rule) ?? Infinity) < day;
  const reviewed = l.log
    .slice(-(REVIEW_EVERY - 1))
    .some((s) => s.marked.length && s.marked.every((m) => before(m.rule, s.day)));
  if (
    (p.due.length >= REVIEW_RULES && !reviewed) ||
    (learning < 0 && nextUnit < 0 && p.due.length)
  ) {
    return { ...p, do: Review, rule: p.due[0]! };
  }
  if (learning >= 0) {
    const t = l.taught[learning]!;
    const readiness = ready(us[t.unit]!, few, t.since, l.log, c);
    return { ...p, do: Practise, unit: t.unit, rule: readiness.rule, readiness };
  }
  return nextUnit >= 0 ? { ...p, do: Teach, unit: nextUnit, rule: us[nextUnit]!.rules[0]! } : p;
}

/** Asks for the lines of a plan. A rule of the same unit counts like a due one. */
export function query(us: Unit[], p: Plan, place: number, used: [number, number][]): Query {
  const focus = p.rule < 0 ? [] : [p.rule];
  const mine = p.unit < 0 ? [] : us[p.unit]!.rules;
  const asked = [...new Set([...mine, ...p.due])].filter((r) => !focus.includes(r));
  return {
    focus,
    known: [...new Set([...p.known, ...mine])],
    due: asked,
    place,
    used,
    level: p.level,
  };
}

// What a teacher sees of a learner at a glance: the rule in practice, what is due, the next lines.
// The ranking behind it is expensive, so it is computed once for a state of the record.
import { groupBy } from '../group.ts';
import type { Entry, Learner, Lines, Rule, Taught } from '../types.ts';
import type { Child } from './child.ts';
import type { Plan } from './day.ts';
import { proposal, rulesOf } from './proposal.ts';

/**
 * of: the state of the record that it was computed for. learning is the lesson begun last of those
 * that are not known yet, -1 for none; due are rules by index. rules are those of the next lines,
 * with places places.
 */
export interface Outlook {
  of: string;
  plan: Plan;
  learning: number;
  due: readonly number[];
  rules: readonly Rule[];
  lines: Lines | undefined;
  places: number;
}

export function outlook(c: Child, of: string): Outlook {
  const next = proposal(c);
  const open = c.reader.taught.filter((t) => c.standing(t.unit).state === 'learning');
  const { lines, places } = next;
  return {
    of,
    plan: c.today,
    learning: open.at(-1)?.unit ?? -1,
    due: c.today.due,
    rules: rulesOf(next),
    lines,
    places,
  };
}

/** A text for each learner that is another one when anything the planner asks for has changed. */
export function states(
  learners: readonly Learner[],
  sessions: readonly Entry[],
  taught: readonly Taught[],
  day: number,
): Map<string, string> {
  const read = groupBy([...sessions], (s) => s.learner);
  const known = groupBy([...taught], (x) => x.learner);
  return new Map(
    learners.map((l) => {
      const mine = read.get(l.id) ?? [];
      const of = [day, l, mine.map((s) => [s.id, s.updated ?? '']), known.get(l.id) ?? []];
      return [l.id, JSON.stringify(of)];
    }),
  );
}

// What is next for a learner: the rule, and the lines for it. The ranking behind it is expensive.
import type { Lines, Rule } from '../types.ts';
import type { Child } from './child.ts';
import type { Ranking } from './rank.ts';

/**
 * The rule, if there is one, and lines for it, if there are any; with the rules that are marked
 * there, and their places together.
 */
export interface Proposal {
  of: Child;
  rule: Rule | undefined;
  found: Ranking;
  lines: Lines | undefined;
  marks: Rule[];
  places: number;
}

export function proposal(c: Child): Proposal {
  const { x, c: cat } = c.course;
  const found = c.lines();
  const best = found.passages[0];
  const marks = best ? c.marks(best) : [];
  return {
    of: c,
    rule: cat.rules[c.today.rule],
    found,
    lines: best && c.proposed(best),
    marks: marks.map((r) => cat.rules[r]!),
    places: best ? marks.reduce((n, r) => n + x.count(r, best.a, best.b), 0) : 0,
  };
}

/** The rules that are marked; that of the plan where there are no lines. */
export const rulesOf = ({ rule, marks }: Proposal) => (marks.length || !rule ? marks : [rule]);

// Which known rules are due again.
//
// Each wait is about twice the one before: recall that still succeeds after a longer and longer
// wait lasts best (T. K. Landauer and R. A. Bjork, "Optimum rehearsal patterns and name learning",
// in Practical Aspects of Memory, 1978), and practice spread over days is kept longer than the same
// practice at once (N. J. Cepeda, H. Pashler, E. Vul, J. T. Wixted, D. Rohrer, "Distributed
// practice in verbal recall tasks", Psychological Bulletin 132(3), 2006). The figures are ours.
import { MuchHelp, type Practice } from './ready.ts';

/** Days from one review that went well to the next. */
const INTERVALS = [3, 7, 14, 30, 60, 120];

/** The least share of places found, in percent, with which a review counts as gone well. */
const REVIEW_FOUND = 75;

/**
 * Other rules at most that a review marks. Each pencil is a look at the same lines, and more than
 * six looks are no short session. The figure is ours.
 */
export const MOST_OTHERS = 5;

/** Where a known rule stands: reviews gone well, and the day from which it is due again. */
export interface Schedule {
  rule: number;
  well: number;
  due: number;
}

/**
 * Follows a rule that is known since a day through the log. A session reviews it when the rule is
 * due and has a place in the lines, whether it was marked or only read; reading before it is due
 * changes nothing. A review that went badly (much help, or too little found of the rule itself)
 * shortens the wait by one interval.
 */
export function review(rule: number, known: number, log: Practice[]): Schedule {
  const s = { rule, well: 0, due: known + INTERVALS[0]! };
  for (const l of log) {
    if (l.day < s.due || !l.places[rule]) continue;
    s.well = well(l, rule) ? s.well + 1 : Math.max(0, s.well - 1);
    s.due = l.day + INTERVALS[Math.min(s.well, INTERVALS.length - 1)]!;
  }
  return s;
}

function well(l: Practice, rule: number): boolean {
  const { found = 0, missed = 0 } = l.marked.find((m) => m.rule === rule) ?? {};
  const all = found + missed;
  return l.help !== MuchHelp && (!all || 100 * found >= REVIEW_FOUND * all);
}

/** The rules due on a day, the longest overdue first. */
export const due = (list: Schedule[], day: number): number[] =>
  list
    .filter((s) => s.due <= day)
    .sort((a, b) => a.due - b.due || a.rule - b.rule)
    .map((s) => s.rule);

// Which known rules are due again: the same as generator/internal/plan/review.go, with its sources (Landauer and Bjork
// 1978; Cepeda and others 2006).
import { MuchHelp, type Practice } from './ready.ts';

/** Days from one review that went well to the next. */
export const INTERVALS = [3, 7, 14, 30, 60, 120];
export const REVIEW_FOUND = 75;

export interface Schedule { rule: number; well: number; due: number }

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
  const all = l.rule === rule ? l.found + l.missed : 0;
  return l.help !== MuchHelp && (!all || 100 * l.found >= REVIEW_FOUND * all);
}

/** The rules due on a day, the longest overdue first. */
export const due = (list: Schedule[], day: number): number[] =>
  list.filter((s) => s.due <= day).sort((a, b) => a.due - b.due || a.rule - b.rule).map((s) => s.rule);

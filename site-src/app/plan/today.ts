// What to do today, as one pure function: settle in, practise the rule being learnt, or begin the next one.
import type { Catalogue, Learner, Rule, Session, Taught } from '../types.ts';
import { DAYS, days, missing, order, step } from './ladder.ts';

export type Next =
  | { do: 'settle'; left: number }
  | { do: 'practise'; rule: Rule; days: number; of: number }
  | { do: 'teach'; rule: Rule; after: Rule | undefined }
  | { do: 'read' };

/** Days of reading without a new rule before the first one. */
const SETTLE = 2;

export function next(c: Catalogue, l: Learner, sessions: Session[], taught: Taught[]): Next {
  const own = sessions.filter((s) => s.learner === l.id), mine = taught.filter((x) => x.learner === l.id);
  const read = new Set(own.map((s) => s.day)).size;
  if (!l.settled && mine.length === 0 && read < SETTLE) return { do: 'settle', left: SETTLE - read };
  const rules = order(c), learning = rules.filter((r) => step(r.id, mine, own) === 'learning');
  // Of several, the one begun last: the others are nearly known.
  const at = learning.sort((a, b) => since(a, mine).localeCompare(since(b, mine))).pop();
  if (at) return { do: 'practise', rule: at, days: days(at.id, own), of: DAYS };
  const to = rules.find((r) => !mine.some((x) => x.rule === r.id) && missing(r, mine).length === 0);
  if (!to) return { do: 'read' };
  return { do: 'teach', rule: to, after: rules.filter((r) => to.needs.includes(r.id)).pop() };
}

const since = (r: Rule, taught: Taught[]) => taught.find((x) => x.rule === r.id)?.since ?? '';

// A learner's sessions as the planner sees them.
import type { Entry } from '../types.ts';
import { tallies } from '../record/totals.ts';
import { dayNumber } from '../record/week.ts';
import type { Course } from './course.ts';
import { phrasesOf } from './lines.ts';
import { Alone, type Marked, MuchHelp, type Practice, SomeHelp } from './ready.ts';

const HELP = { alone: Alone, some: SomeHelp, much: MuchHelp };

/** Sessions in order of time. Places are counted of the given rules: no others are asked for. */
export function logOf({ x, c }: Course, sessions: Entry[], rules: number[]): Practice[] {
  const numbers = new Map(c.rules.map((r, i) => [r.id, i]));
  const places = new Map<number, number[]>();
  let day = '';
  let number = 0; // of the session before: many have the same
  return sessions.map((s) => {
    const [a, b] = phrasesOf(x, s);
    const at = a * x.n + b;
    if (s.day !== day) number = dayNumber((day = s.day));
    let counts = places.get(at);
    if (!counts) {
      places.set(at, (counts = []));
      for (const r of rules) counts[r] = x.count(r, a, b);
    }
    return { day: number, marked: markedIn(s, numbers), help: HELP[s.outcome], places: counts };
  });
}

/** The rules that were marked, that of the lines first. */
const markedIn = (s: Entry, numbers: Map<string, number>) =>
  tallies(s).flatMap((m): Marked[] => {
    const rule = numbers.get(m.rule);
    return rule === undefined ? [] : [{ ...m, rule }];
  });

// Whether a unit is in hand. It advises; the adult decides.
//
// To go on only when the present step is mastered, by a standard set beforehand, is mastery learning: B. S. Bloom,
// "Learning for Mastery", Evaluation Comment 1(2), 1968. Practice on different days instead of one: Cepeda and others 2006
// (review.ts). The figures themselves are common practice, with no source.
import { ENOUGH } from './score.ts';
import type { Unit } from './units.ts';

export const Alone = 0, SomeHelp = 1, MuchHelp = 2;

/** What the log has of one session; rule is -1 for reading only. Days are numbered; places are those of every rule in the lines read. */
export interface Practice { day: number; rule: number; found: number; missed: number; help: number; places: number[] }

/** Sessions, on so many days, with so many percent of the places found in the last ones. */
export interface Criterion { sessions: number; days: number; percent: number; last: number }
export const CRITERION: Criterion = { sessions: 3, days: 3, percent: 90, last: 2 };

/**
 * How far a unit is. percent is -1 while nothing was marked. rule is the one that most wants practice, to be marked next:
 * practised are the sessions in whose lines it came, wanted how many it takes.
 */
export interface Readiness {
  sessions: number; days: number; percent: number; muchHelp: boolean; rule: number; practised: number; wanted: number; ready: boolean;
}

/**
 * Rules with fewer places than enough in the whole text. One of several rules of a unit, such a rule is practised once: it
 * cannot be practised often without reading the same lines again and again.
 */
export const rare = (places: number[]) => places.map((n) => n < ENOUGH);

/** Weighs the sessions since the day on which the unit was begun. */
export function ready(u: Unit, few: boolean[], since: number, log: Practice[], c: Criterion): Readiness {
  const mine = log.filter((s) => s.day >= since), own = mine.filter((s) => u.rules.includes(s.rule)), last = own.slice(-c.last);
  const found = last.reduce((n, s) => n + s.found, 0), all = last.reduce((n, s) => n + s.found + s.missed, 0);
  const r: Readiness = {
    sessions: own.length, days: new Set(own.map((s) => s.day)).size, percent: all ? Math.floor(100 * found / all) : -1,
    muchHelp: last.some((s) => s.help === MuchHelp), rule: -1, practised: 0, wanted: 0, ready: false,
  };
  let lack = -Infinity;
  for (const rule of u.rules) {
    const practised = mine.filter((s) => s.places[rule]! > 0).length, marked = mine.filter((s) => s.rule === rule).length;
    const wanted = few[rule] && u.rules.length > 1 ? Math.min(1, c.sessions) : c.sessions, l = (wanted - practised) * 1000 - marked;
    if (l <= lack) continue;
    lack = l; // the greater lack first; of equal ones the rule marked less
    Object.assign(r, { rule, practised, wanted });
  }
  r.ready = r.sessions >= c.sessions && r.days >= c.days && (r.percent < 0 || r.percent >= c.percent) && !r.muchHelp && r.practised >= r.wanted;
  return r;
}

/** The day on which the unit first met the criterion, or -1. */
export function knownDay(u: Unit, few: boolean[], since: number, log: Practice[], c: Criterion): number {
  for (let i = 0; i < log.length; i++) if (log[i]!.day >= since && ready(u, few, since, log.slice(0, i + 1), c).ready) return log[i]!.day;
  return -1;
}

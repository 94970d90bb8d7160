// Whether a unit is in hand. It advises; the adult decides.
//
// To go on only when the present step is mastered, by a standard set beforehand, is mastery
// learning: B. S. Bloom, "Learning for Mastery", Evaluation Comment 1(2), 1968. Practice on
// different days instead of one: Cepeda and others 2006 (review.ts). The figures themselves are
// common practice, with no source.
import { shareOf } from '../record/totals.ts';
import { ENOUGH } from './score.ts';
import type { Unit } from './units.ts';

export const Alone = 0;
export const SomeHelp = 1;
export const MuchHelp = 2;

/** Places of a rule that were found and missed in a session; none where nobody said how many. */
export interface Marked {
  rule: number;
  found: number;
  missed: number;
}

/**
 * What the log has of one session: the rules that were marked, none for reading only. Days are
 * numbered; places are those in the lines read of every rule that was begun.
 */
export interface Practice {
  day: number;
  marked: Marked[];
  help: number;
  places: number[];
}

/** Sessions, on so many days, with so many percent of the places found in the last ones. */
export interface Criterion {
  sessions: number;
  days: number;
  percent: number;
  last: number;
}
export const CRITERION: Criterion = { sessions: 3, days: 3, percent: 90, last: 2 };

/**
 * How far a unit is. percent is that of the last sessions that say how many places were found, -1
 * while none does. rule is the one that most wants
 * practice, to be marked next: practised are the sessions in whose lines it came, wanted how many
 * it takes.
 */
export interface Readiness {
  sessions: number;
  days: number;
  percent: number;
  muchHelp: boolean;
  rule: number;
  practised: number;
  wanted: number;
  ready: boolean;
}

/**
 * Rules with fewer places than enough in the whole text. One of several rules of a unit, such a
 * rule is practised once: it cannot be practised often without reading the same lines again and
 * again.
 */
export const rare = (places: number[]) => places.map((n) => n < ENOUGH);

/** Weighs sessions as they come, in order of time. */
class Tally {
  private readonly days = new Set<number>();
  private sessions = 0;
  private help: number[] = [];
  private shares: Marked[][] = [];
  private readonly practised: number[];
  private readonly marked: number[];

  constructor(
    private readonly u: Unit,
    private readonly few: boolean[],
    private readonly c: Criterion,
  ) {
    this.practised = u.rules.map(() => 0);
    this.marked = u.rules.map(() => 0);
  }

  add(s: Practice) {
    const mine = s.marked.filter((m) => this.u.rules.includes(m.rule));
    this.u.rules.forEach((rule, k) => {
      if (s.places[rule]! > 0) this.practised[k]!++;
      if (mine.some((m) => m.rule === rule)) this.marked[k]!++;
    });
    if (!mine.length) return;
    this.sessions++;
    this.days.add(s.day);
    this.help = [...this.help, s.help].slice(-this.c.last);
    if (shareOf(mine).of) this.shares = [...this.shares, mine].slice(-this.c.last);
  }

  get(): Readiness {
    const { u, c } = this;
    const { found, of } = shareOf(this.shares.flat());
    const r: Readiness = {
      sessions: this.sessions,
      days: this.days.size,
      percent: of ? Math.floor((100 * found) / of) : -1,
      muchHelp: this.help.includes(MuchHelp),
      rule: -1,
      practised: 0,
      wanted: 0,
      ready: false,
    };
    let lack = -Infinity;
    u.rules.forEach((rule, k) => {
      const practised = this.practised[k]!;
      const wanted = this.few[rule] && u.rules.length > 1 ? Math.min(1, c.sessions) : c.sessions;
      const l = (wanted - practised) * 1000 - this.marked[k]!;
      if (l <= lack) return;
      lack = l; // the greater lack first; of equal ones the rule marked less
      Object.assign(r, { rule, practised, wanted });
    });
    r.ready =
      r.sessions >= c.sessions &&
      r.days >= c.days &&
      (r.percent < 0 || r.percent >= c.percent) &&
      !r.muchHelp &&
      r.practised >= r.wanted;
    return r;
  }
}

/** Weighs the sessions since the day on which the unit was begun. */
export function ready(
  u: Unit,
  few: boolean[],
  since: number,
  log: Practice[],
  c: Criterion,
): Readiness {
  const t = new Tally(u, few, c);
  for (const s of log) if (s.day >= since) t.add(s);
  return t.get();
}

/** The day on which the unit first met the criterion, or -1. */
export function knownDay(
  u: Unit,
  few: boolean[],
  since: number,
  log: Practice[],
  c: Criterion,
): number {
  const t = new Tally(u, few, c);
  for (const s of log) {
    if (s.day < since) continue;
    t.add(s);
    if (t.get().ready) return s.day;
  }
  return -1;
}

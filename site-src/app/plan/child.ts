// Joins what is kept of a learner with the passage index: what the planner's pure functions ask
// for.
import { dayNumber } from '../record/week.ts';
import type { Entry, Learner, Lines, Taught } from '../types.ts';
import type { Course } from './course.ts';
import { type Begun, type Plan, plan, query, type Reader, Review } from './day.ts';
import { linesOf, phrasesOf } from './lines.ts';
import { loadOf } from './load.ts';
import { logOf } from './log.ts';
import { ahead, placesIn, verseOf } from './places.ts';
import { nearest } from './near.ts';
import { order } from './next.ts';
import { choose, type Passage, type Ranking } from './rank.ts';
import { type Criterion, CRITERION, knownDay, ready } from './ready.ts';
import { MOST_OTHERS, review, type Schedule } from './review.ts';
import { type Query, REST_DAYS } from './score.ts';
import type { Standing } from './standing.ts';
import { unitPlaces } from './units.ts';

/** Pages that count as what the child is about to read. */
export const PAGES = 5;

export class Child {
  readonly reader: Reader;
  readonly criterion: Criterion;
  readonly today: Plan;
  readonly sessions: Entry[]; // in order of time

  constructor(
    readonly course: Course,
    readonly learner: Learner,
    sessions: Entry[],
    taught: Taught[],
    readonly day: number,
  ) {
    this.criterion = { ...CRITERION, ...learner.ready };
    this.sessions = sessions
      .filter((s) => s.learner === learner.id)
      .sort((a, b) => (a.at < b.at ? -1 : 1));
    const begun = this.begun(taught.filter((t) => t.learner === learner.id));
    const rules = begun.flatMap((b) => course.units[b.unit]!.rules);
    this.reader = {
      day,
      settled: learner.settled,
      taught: begun,
      log: logOf(course, this.sessions, rules),
      order: order(course.units, learner.order ?? []),
    };
    this.today = plan(course.units, course.rare, this.reader, this.criterion);
  }

  /** A unit is taught when one of its rules is, and called known when all of them are. */
  private begun(taught: Taught[]): Begun[] {
    const { units: us, c } = this.course;
    const out: Begun[] = [];
    us.forEach((u, unit) => {
      const mine = u.rules
        .map((r) => taught.find((t) => t.rule === c.rules[r]!.id))
        .filter((t) => t !== undefined);
      if (!mine.length) return;
      const all = mine.length === u.rules.length && mine.every((t) => t.known);
      out.push({
        unit,
        since: Math.min(...mine.map((t) => dayNumber(t.since))),
        known: all ? Math.max(...mine.map((t) => dayNumber(t.known))) : -1,
      });
    });
    return out.sort((a, b) => a.since - b.since);
  }

  /** First and last phrase of lines. */
  phrases(l: Pick<Lines, 'from' | 'to'>): [number, number] {
    return phrasesOf(this.course.x, l);
  }

  get taught(): boolean[] {
    return this.course.units.map((_, i) => this.reader.taught.some((t) => t.unit === i));
  }
  get backwards(): boolean {
    return this.learner.direction === 'backwards';
  }
  get place(): number {
    return verseOf(this.course.x, this.learner.place);
  }

  /** Phrases of the lines read in the last days, each lines once. */
  used(): [number, number][] {
    const lately = this.sessions
      .filter((_, i) => this.day - this.reader.log[i]!.day <= REST_DAYS)
      .map((s) => this.phrases(s));
    return [...new Map(lately.map((p) => [p.join(), p])).values()];
  }

  /** Places aimed at in the next session of a rule. */
  load(rule: number) {
    const marked = this.reader.log.filter((s) => s.marked.some((m) => m.rule === rule));
    return loadOf(this.learner, marked.length);
  }

  /**
   * The best lines for what the plan says, or for a rule of one's choice; more narrows the search.
   * Lines for a rule are sought near the child first.
   */
  lines(p: Plan = this.today, more: Partial<Query> = {}): Ranking {
    const q = {
      ...query(this.course.units, p, this.place, this.used()),
      back: this.backwards,
      ...(p.rule >= 0 && this.load(p.rule)),
      ...more,
    };
    const whole = p.rule < 0 || q.from !== undefined;
    return whole ? choose(this.course.x, q) : nearest(this.course, this.learner.place, q);
  }

  /** The plan of practising one rule, whatever is on today. */
  practise(rule: number): Plan {
    const unit = this.course.units.findIndex((u) => u.rules.includes(rule));
    return { ...this.today, unit, rule };
  }

  /** Places of each unit in some verses; by default in what the child is about to read. */
  ahead(verses = this.next()): number[] {
    return unitPlaces(this.course.units, placesIn(this.course.x, verses));
  }
  private next() {
    return ahead(this.course.x, this.course.c, this.learner.place, PAGES, this.backwards);
  }

  standing(unit: number): Standing {
    const { units: us, rare: few } = this.course;
    const u = us[unit]!;
    const t = this.reader.taught.find((b) => b.unit === unit);
    const log = this.reader.log;
    if (!t) return { unit, state: 'not-yet', since: -1, known: -1, readiness: undefined, due: -1 };
    const known = t.known >= 0 ? t.known : knownDay(u, few, t.since, log, this.criterion);
    const readiness = ready(u, few, t.since, log, this.criterion);
    if (known < 0) return { unit, state: 'learning', since: t.since, known, readiness, due: -1 };
    const due = Math.min(...u.rules.map((r): Schedule => review(r, known, log)).map((s) => s.due));
    return {
      unit,
      state: due <= this.day ? 'due' : 'known',
      since: t.since,
      known,
      readiness,
      due,
    };
  }

  /** Lines of a passage for a rule, or for none (''). */
  toLines(p: Pick<Passage, 'a' | 'b'>, rule: string): Lines {
    return linesOf(this.course.x, p, rule);
  }

  /** The rules that lines proposed for today mark: that of the plan, in a review with others due. */
  marks(p: Pick<Passage, 'a' | 'b'>): number[] {
    const { do: todo, rule, due } = this.today;
    if (rule < 0) return [];
    const there = due.filter((r) => r !== rule && this.course.x.count(r, p.a, p.b) > 0);
    return [rule, ...(todo === Review ? there.slice(0, MOST_OTHERS) : [])];
  }

  /** The lines proposed for today. */
  proposed(p: Pick<Passage, 'a' | 'b'>): Lines {
    const [rule = '', ...also] = this.marks(p).map((r) => this.course.c.rules[r]!.id);
    const { from, to } = this.toLines(p, rule);
    return { rule, ...(also.length && { also }), from, to };
  }
}

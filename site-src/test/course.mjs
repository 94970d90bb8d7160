// Plays a child's way through all lessons, as the app would lead it.
import { Child } from '../node_modules/.out/app/plan/child.js';
import { dateOf, dayNumber } from '../node_modules/.out/app/plan/course.js';
import { ReadOn, Review, Teach } from '../node_modules/.out/app/plan/day.js';
import { moved } from '../node_modules/.out/app/plan/place.js';
import { juzOf } from '../node_modules/.out/app/plan/places.js';
import { explain, reach } from '../node_modules/.out/app/plan/words.js';

const FIRST = dayNumber('2026-01-05');

/** Days of the week, from its first, on which there are sessions. */
export const FOUR = [0, 1, 3, 5];
export const FIVE = [0, 1, 2, 4, 5];

/**
 * A child who begins with the last juz and no rules, and has sessions on days
 * of the week (four, if none are given): every
 * session does what the plan says on the best lines there are. The child finds seven in ten places
 * in the first session with a rule and all of them from the second on, but every seventh session
 * three in four. It reads the first session of a rule with some help and the others alone. The
 * course ends when every lesson is known and nothing is due; most is a limit of sessions.
 */
export function play(course, { most = 400, days = FOUR, load, direction } = {}) {
  const { c } = course;
  const [s, a] = direction === 'backwards' ? [114, 1] : c.juz[29];
  const sessions = [];
  const taught = [];
  const out = [];
  const met = new Map();
  const learner = {
    id: 'x',
    name: '',
    place: { s, a },
    settled: false,
    made: '',
    updated: '',
    load,
    direction,
  };
  for (let n = 0; n < most; n++) {
    const day = FIRST + Math.floor(n / days.length) * 7 + days[n % days.length];
    const child = new Child(course, learner, sessions, taught, day);
    const p = child.today;
    const known = child.taught.every((done, unit) => done && child.standing(unit).known >= 0);
    if (p.do === ReadOn || (p.do === Review && known)) break;
    const ranking = child.lines(p, { best: 1 });
    const best = ranking.passages[0];
    const rule = c.rules[p.rule]?.id ?? '';
    const lines = child.toLines(best, rule);
    if (p.do === Teach)
      taught.push(
        ...course.units[p.unit].rules.map((r) => ({
          learner: 'x',
          rule: c.rules[r].id,
          since: dateOf(day),
          known: '',
        })),
      );
    let found = best.focus;
    let outcome = 'alone';
    if (rule) {
      met.set(rule, (met.get(rule) ?? 0) + 1);
      if (met.get(rule) === 1) [found, outcome] = [Math.ceil(0.7 * best.focus), 'some'];
      else if (n % 7 === 6) found = Math.ceil(0.75 * best.focus);
    }
    const place = moved(child, lines);
    sessions.push({
      learner: 'x',
      id: String(n),
      day: dateOf(day),
      at: `${dateOf(day)}T10:00:00Z`,
      rule,
      from: lines.from,
      to: lines.to,
      marks: [],
      stops: [],
      found,
      missed: best.focus - found,
      extra: 0,
      helped: false,
      outcome,
    });
    out.push({
      day,
      plan: p,
      how: ranking.how,
      said: [reach(ranking), ...explain(child, best, p.rule, 'Nur')],
      aim: child.load(p.rule),
      juz: juzOf(c, lines.from) + 1,
      from: juzOf(c, learner.place) + 1,
      ...best,
      places: course.x.counts.map((_, r) => course.x.count(r, best.a, best.b)),
      was: learner.place,
    });
    learner.place = place;
  }
  return out;
}

/** Weeks that a course takes. */
export const weeks = (days) => Math.floor((days.at(-1).day - days[0].day) / 7) + 1;

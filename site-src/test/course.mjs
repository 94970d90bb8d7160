// Plays a child's way through all lessons, as the app would lead it.
import { Child } from '../node_modules/.out/app/plan/child.js';
import { dateOf, dayNumber } from '../node_modules/.out/app/record/week.js';
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
 * three in four. A review marks all that the app proposes. It reads the first session of a rule with some help and the others alone. The
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
    const lines = child.proposed(best);
    if (p.do === Teach)
      taught.push(
        ...course.units[p.unit].rules.map((r) => ({
          learner: 'x',
          rule: c.rules[r].id,
          since: dateOf(day),
          known: '',
        })),
      );
    if (rule) met.set(rule, (met.get(rule) ?? 0) + 1);
    const first = met.get(rule) === 1;
    const outcome = first ? 'some' : 'alone';
    const share = first ? 0.7 : n % 7 === 6 ? 0.75 : 1;
    const tally = (r) => {
      const places = course.x.count(r, best.a, best.b);
      const found = Math.ceil(share * places);
      return { rule: c.rules[r].id, found, missed: places - found };
    };
    const [own, ...also] = child.marks(best).map(tally);
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
      found: own?.found ?? 0,
      missed: own?.missed ?? 0,
      ...(also.length && { also }),
      extra: 0,
      helped: false,
      outcome,
    });
    out.push({
      day,
      plan: p,
      how: ranking.how,
      also: also.map((x) => x.rule),
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

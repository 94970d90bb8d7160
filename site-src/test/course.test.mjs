// A child's whole way through the lessons: the proof that the parts of the planner fit together.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Review, Settle, Teach } from '../node_modules/.out/app/plan/day.js';
import { Again, AsWanted } from '../node_modules/.out/app/plan/rank.js';
import { ENOUGH, REST_DAYS } from '../node_modules/.out/app/plan/score.js';
import { FIVE, play, weeks } from './course.mjs';
import { catalogue, courseOf } from './site.mjs';
import { lesson } from './small.mjs';

const apart = catalogue.lessons.flatMap((l) => l.rules.map((r) => lesson(r, [r])));
const together = [
  ['sun-lam', 'moon-lam'],
  ['heavy-lam', 'light-lam'],
  ['heavy-ra', 'light-ra'],
  ['heavy-ra-sakinah', 'light-ra-sakinah'],
  ['idgham-mithlayn', 'idgham-mutajanisayn', 'idgham-mutaqaribayn'],
  ['imalah', 'ishmam', 'tas-hil', 'sad-as-seen'],
  ['madd-lazim', 'madd-lazim-letter'],
];
const grouped = apart.flatMap((l) => {
  const group = together.find((g) => g.includes(l.id));
  return !group
    ? l
    : apart.find((x) => group.includes(x.id)) === l
      ? lesson(group.join('+'), group)
      : [];
});

for (const [name, lessons] of [
  ['the lessons', catalogue.lessons],
  ['a rule a lesson', apart],
  ['several rules a lesson', grouped],
]) {
  const course = courseOf(lessons);
  const { units, rare, c } = course;
  const days = play(course);
  const ruleName = (r) => c.rules[r].id;

  test(`${name}: every one is begun, after its needs`, () => {
    const begun = days.filter((d) => d.plan.do === Teach).map((d) => d.plan.unit);
    assert.ok(days.length < 400, 'the course does not end');
    assert.deepEqual(
      [...begun].sort((a, b) => a - b),
      [...units.keys()],
    );
    begun.forEach((u, i) =>
      assert.ok(
        units[u].needs.every((n) => begun.indexOf(n) < i),
        units[u].id,
      ),
    );
    assert.equal(
      days.findIndex((d) => d.plan.do !== Settle),
      2,
    ); // days of settling in
  });

  test(`${name}: each is marked, and read, in three sessions before the next`, () => {
    const starts = days.flatMap((d, i) => (d.plan.do === Teach ? i : []));
    starts.forEach((at, k) => {
      const u = units[days[at].plan.unit];
      const mine = days.slice(at, starts[k + 1]);
      assert.ok(mine.filter((d) => u.rules.includes(d.plan.rule)).length >= 3, u.id);
      for (const r of u.rules) {
        const read = mine.filter((d) => d.places[r]).length;
        assert.ok(
          read >= 3 || (rare[r] && read && u.rules.length > 1),
          `${ruleName(r)} was read in ${read} sessions`,
        );
      }
    });
  });

  test(`${name}: no lines come twice in a fortnight, or overlap but where a rule comes nowhere else`, () => {
    days.forEach((d, i) => {
      for (const e of days.slice(0, i).filter((x) => d.day - x.day <= REST_DAYS)) {
        assert.ok(d.a !== e.a || d.b !== e.b, `session ${i} repeats the lines of day ${e.day}`);
        assert.ok(
          d.b < e.a || e.b < d.a || d.how === Again,
          `session ${i} overlaps the lines of day ${e.day}`,
        );
      }
    });
  });

  test(`${name}: what is marked has places, enough where there are`, () => {
    days.forEach((d, i) => {
      assert.ok(d.plan.rule < 0 || d.focus > 0, `session ${i} has no place of ${d.plan.rule}`);
      assert.ok(
        d.how !== AsWanted || d.plan.rule < 0 || d.focus >= ENOUGH,
        `session ${i} has ${d.focus} places`,
      );
    });
  });

  test(`${name}: there are reviews, and at most one session in four is one`, (t) => {
    const reviews = days.flatMap((d, i) => (d.plan.do === Review ? i : []));
    const last = days.at(-1);
    const open = days.findLastIndex((d) => d.plan.do !== Review); // after it only reviews are left
    assert.ok(reviews.length > 0);
    reviews
      .filter((i) => i < open)
      .forEach((i, k) =>
        assert.ok(!k || i - reviews[k - 1] >= 4, `reviews in sessions ${reviews[k - 1]} and ${i}`),
      );
    t.diagnostic(
      `${days.length} sessions in ${weeks(days)} weeks, ${reviews.length} reviews, ${days.filter((d) => d.how === Again).length} with places that came again; the last has ${last.share}% readable`,
    );
  });
}

const real = courseOf();
const ruleAt = (d) => real.c.rules[d.plan.rule].id;
const marked = (days) => days.filter((d) => d.plan.rule >= 0);

test('the whole course takes as many weeks as DEVELOPERS.md says', (t) => {
  for (const [load, days, want] of [
    ['few', undefined, 39],
    ['few', FIVE, 30],
    ['usual', undefined, 40],
    ['usual', FIVE, 31],
    ['many', undefined, 39],
    ['many', FIVE, 31],
  ]) {
    const all = play(real, { load, days });
    const n = marked(all).reduce((n, d) => n + d.focus, 0);
    t.diagnostic(
      `${load}, ${days?.length ?? 4} sessions a week: ${all.length} sessions in ${weeks(all)} weeks, ${(n / marked(all).length).toFixed(1)} places a session`,
    );
    assert.equal(weeks(all), want, `${load}, ${days?.length ?? 4} a week`);
  }
});

test('no more places than aimed at, or it is said; nothing leaps to another juz without saying why', (t) => {
  for (const load of ['few', 'usual', 'many']) {
    const days = marked(play(real, { load }));
    const over = days.filter((d) => d.focus > d.aim.most);
    const leaps = days.filter((d) => d.juz !== d.from);
    t.diagnostic(
      `${load}: of ${days.length} sessions ${over.length} with more places than aimed at, ${leaps.length} in another juz`,
    );
    for (const d of over)
      assert.ok(
        d.said.some((s) => /more than the/.test(s)),
        ruleAt(d),
      );
    for (const d of leaps)
      assert.ok(d.said[0], `${ruleAt(d)} in juz ${d.juz} instead of ${d.from}`);
    assert.ok(over.length <= 3, `${over.length} with too many`);
    days.slice(1).forEach((d, i) => {
      if (d.from < days[i].from)
        assert.ok(
          d.said.some((x) => /goes on with one before it/.test(x)),
          `the place went to juz ${d.from}`,
        );
    });
  }
});

test('the first twelve proposals have the places of the first sessions, then of the later ones', (t) => {
  const met = new Map();
  for (const d of marked(play(real, { most: 30 })).slice(0, 12)) {
    const n = (met.get(d.plan.rule) ?? 0) + 1;
    met.set(d.plan.rule, n);
    t.diagnostic(`${ruleAt(d)}, session ${n}: ${d.focus} places in ${d.words} words`);
    assert.deepEqual([d.aim.fewest, d.aim.most], n <= 3 ? [4, 7] : [8, 12]);
    assert.ok(d.focus <= d.aim.most);
  }
});

test('backwards: surah after surah, each forwards, and nothing leaps without a reason', (t) => {
  const days = play(real, { direction: 'backwards' });
  const leaps = marked(days).filter((d) => d.juz !== d.from);
  for (const d of leaps) assert.ok(d.said[0], `${ruleAt(d)} in juz ${d.juz} instead of ${d.from}`);
  assert.deepEqual(days[0].was, { s: 114, a: 1 });
  days.slice(1).forEach((d, i) => {
    const { s, a } = days[i].was;
    const { s: s2, a: a2 } = d.was;
    assert.ok(s2 < s || (s2 === s && a2 >= a), `from ${s}:${a} to ${s2}:${a2}`);
  });
  const last = days.at(-1).was.s;
  assert.equal(weeks(days), 40);
  assert.ok(last < 112, `the place is still in surah ${last}`);
  t.diagnostic(
    `${days.length} sessions in ${weeks(days)} weeks; the place went back to surah ${last}, ${leaps.length} of ${marked(days).length} in another juz`,
  );
});

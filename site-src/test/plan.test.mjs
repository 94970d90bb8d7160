// The planner on a text of two short surahs: orders, readiness, what is joined to a learner.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { week } from '../node_modules/.out/app/record/week.js';
import { Child } from '../node_modules/.out/app/plan/child.js';
import { dayNumber } from '../node_modules/.out/app/record/week.js';
import { Practise, ReadOn, Review } from '../node_modules/.out/app/plan/day.js';
import { rulesInOrder } from '../node_modules/.out/app/plan/ladder.js';
import { mayMove, order } from '../node_modules/.out/app/plan/next.js';
import { Phrases } from '../node_modules/.out/app/plan/phrases.js';
import { units } from '../node_modules/.out/app/plan/units.js';
import { reason } from '../node_modules/.out/app/plan/words.js';
import { rule, rules, lesson, c, x, k, learner, session, all, end } from './small.mjs';

test('a damaged index is refused', () => {
  for (const b of [
    new Uint8Array(3),
    new Uint8Array(40),
    Uint8Array.from([0x53, 0x50, 0x49, 0x32, 9, 0, 0, 0, 1, 0]),
  ])
    assert.throws(() => new Phrases(b));
});
test('a lesson is a unit, and needs are those of units', () => {
  assert.deepEqual(
    units(c).map((u) => [u.id, u.rules, u.needs]),
    [
      ['ac', [1, 2], []],
      ['b', [0], [0]],
      ['d', [3], [1]],
    ],
  );
  assert.deepEqual(
    rulesInOrder(c).map((r) => r.id),
    ['a', 'c', 'b', 'd'],
  );
});
test('an order of one’s own is kept as far as needs allow, and made whole', () => {
  assert.deepEqual(order(k.units, ['d', 'nothing', 'b']), [0, 1, 2]);
  assert.deepEqual(
    [
      mayMove(k.units, [0, 1, 2], 0, 1),
      mayMove(k.units, [0, 1, 2], 2, 1),
      mayMove(k.units, [0, 1, 2], 2, 2),
    ],
    [false, false, true],
  );
});
test('two sessions on one day are one day of settling in', () => {
  const one = new Child(
    k,
    learner({ settled: false }),
    [session('2026-01-01', '', all, end), session('2026-01-01', '', all, end)],
    [],
    dayNumber('2026-01-02'),
  );
  assert.deepEqual([one.today.do, one.today.left], [0, 1]);
});
test('another learner’s sessions and rules do not count', () => {
  const c2 = new Child(
    k,
    learner({ settled: false }),
    [{ ...session('2026-01-01', '', all, end), learner: 'y' }],
    [{ learner: 'y', rule: 'a', since: '2026-01-01', known: '' }],
    dayNumber('2026-01-02'),
  );
  assert.deepEqual([c2.today.left, c2.taught], [2, [false, false, false]]);
});
test('a lesson is known by the criterion, by the adult, and not before', () => {
  const taught = ['a', 'c'].map((r) => ({ learner: 'x', rule: r, since: '2026-01-01', known: '' }));
  const log = ['2026-01-01', '2026-01-03', '2026-01-05'].map((d) => session(d, 'a', all, end));
  const state = (l, t, ready) =>
    new Child(k, learner(ready ? { ready } : {}), l, t, dayNumber('2026-01-06')).standing(0).state;
  assert.equal(state(log, taught), 'known');
  assert.equal(state(log.slice(1), taught), 'learning');
  assert.equal(state(log.slice(1), taught, { sessions: 2, days: 2, percent: 90 }), 'known');
  assert.equal(
    state(
      log.map((s) => ({ ...s, missed: 3 })),
      taught,
    ),
    'learning',
  );
  assert.equal(
    state(
      log.map((s) => ({ ...s, outcome: 'much' })),
      taught,
    ),
    'learning',
  );
  assert.equal(
    state(
      [],
      taught.map((t) => ({ ...t, known: '2026-01-05' })),
    ),
    'known',
  );
  assert.equal(
    state(
      [],
      taught.map((t) => ({ ...t, known: '2026-01-02' })),
    ),
    'due',
  );
});
test('a session counts for every rule that it marked', () => {
  const also = [{ rule: 'a', found: 4, missed: 0 }];
  const taught = ['a', 'c'].map((r) => ({ learner: 'x', rule: r, since: '2026-01-01', known: '' }));
  const log = (more) =>
    ['2026-01-01', '2026-01-03', '2026-01-05'].map((d) => session(d, 'b', all, end, more));
  const of = (list) => new Child(k, learner(), list, taught, dayNumber('2026-01-06')).standing(0);
  assert.equal(of(log({ also })).state, 'known');
  assert.equal(of(log({})).state, 'learning');
  assert.equal(of(log({ also: [{ rule: 'a', found: 1, missed: 3 }] })).readiness.percent, 25);
  const odd = of(log({ rule: '', also: [{ rule: 'gone', found: 1, missed: 3 }] })); // of no rule known here
  assert.equal(odd.readiness.sessions, 0);
});
test('a review marks the other rules that are due there, the longest overdue first, five at most', () => {
  const known = (list) =>
    list.map(([r, day]) => ({ learner: 'x', rule: r, since: day, known: day }));
  const taught = known([
    ['a', '2026-01-03'],
    ['c', '2026-01-03'],
    ['b', '2026-01-01'],
    ['d', '2026-01-02'],
  ]);
  const at = (day, list = taught) => new Child(k, learner(), [], list, dayNumber(day));
  const one = at('2026-02-01');
  const { a, b } = one.lines().passages[0];
  assert.equal(one.today.do, Review);
  const { rule, also } = one.proposed({ a, b });
  assert.deepEqual([rule, also], ['b', ['d', 'a', 'c']]);
  // Due on that day alone.
  assert.deepEqual(at('2026-01-05').proposed({ a, b }).also, ['d']);
  const many = { ...one.today, due: Array.from({ length: 9 }, (_, i) => i) };
  const course = { x: { count: (r) => (r === 2 ? 0 : 1) } };
  const marks = (today) => Child.prototype.marks.call({ today, course }, { a, b });
  assert.deepEqual(marks({ ...many, rule: 3 }), [3, 0, 1, 4, 5, 6]); // of 2 there is no place
  assert.deepEqual(marks({ ...many, rule: 3, do: Practise }), [3]);
  assert.deepEqual(marks({ ...many, rule: -1, do: ReadOn }), []);
});
test('the week ends today and counts each day', () => {
  const s = (day, at = `${day}T10:00:00Z`) => ({ day, at });
  const east = s('2026-02-24', '2026-02-23T15:00:00Z'); // it is tomorrow there
  const w = week([s('2026-03-01'), s('2026-03-01'), east, s('2026-02-20')], '2026-03-02');
  assert.deepEqual(
    [w.length, w[0], w[5], w[6].n],
    [7, { day: '2026-02-24', n: 1 }, { day: '2026-03-01', n: 2 }, 0],
  );
});
test('why a lesson stands where it does is said for each kind of reason', () => {
  const why = (more) =>
    reason({ lessons: [lesson('first', []), { ...lesson('x', []), places: 7, ...more }] }, 1);
  for (const [more, want] of [
    [{ look: 0 }, /^The letter itself shows it\. It occurs 7 times/],
    [{ look: 2, sign: true }, /^The text shows it by a sign\./],
    [{ look: 1 }, /only one thing to look at/],
    [{ look: 2 }, /two things to look at/],
    [{ look: 3, places: 1 }, /three things to look at.* occurs once/],
    [{ why: 'builds' }, /^It builds on first and occurs 7 times/],
    [{ why: 'row', sign: true }, /^It belongs with first and occurs 7 times/],
    [{ why: 'rare', places: 0 }, /^It does not occur in the last juz, so/],
    [{ why: 'rare', places: 2 }, /^It occurs only 2 times/],
  ])
    assert.match(why(more), want);
});

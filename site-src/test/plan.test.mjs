// The planner on a text of two short surahs: orders, places, what is joined to a learner.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { week } from '../node_modules/.out/app/record/week.js';
import { Child } from '../node_modules/.out/app/plan/child.js';
import { course, dayNumber } from '../node_modules/.out/app/plan/course.js';
import { rulesInOrder } from '../node_modules/.out/app/plan/ladder.js';
import { mayMove, order } from '../node_modules/.out/app/plan/next.js';
import { Phrases } from '../node_modules/.out/app/plan/phrases.js';
import { after, moved, wentBack } from '../node_modules/.out/app/plan/place.js';
import { ahead } from '../node_modules/.out/app/plan/places.js';
import { units } from '../node_modules/.out/app/plan/units.js';
import { reason } from '../node_modules/.out/app/plan/words.js';

const rule = (id, needs = []) => ({ id, name: id, ar: '', family: 'f', needs, counts: [] });
const rules = [rule('b', ['a']), rule('a'), rule('c'), rule('d', ['b'])];
const lesson = (id, rules) => ({
  id,
  name: id,
  ar: '',
  rules,
  why: 'begins',
  on: 0,
  places: 0,
  look: 0,
  sign: false,
});
const c = {
  rules,
  lessons: [lesson('ac', ['a', 'c']), lesson('b', ['b']), lesson('d', ['d'])],
  surahs: [{ count: 4 }, { count: 4 }],
  juz: Array.from({ length: 30 }, (_, i) => [i < 29 ? 1 : 2, 1]),
  pages: [
    [1, 1],
    [2, 1],
  ],
};

/**
 * Two surahs of four verses of ten words; the second verse of each has a pause after its fourth
 * word.
 */
function phrases() {
  const words = [];
  const end = [];
  for (let s = 0; s < 2; s++)
    for (let a = 0; a < 4; a++) {
      if (a === 1) {
        words.push(4);
        end.push(1);
      }
      words.push(a === 1 ? 6 : 10);
      end.push(a === 3 ? 3 : 2);
    }
  const n = words.length;
  const b = new Uint8Array(10 + 3 * n + 4 * (n + 1));
  b.set([0x53, 0x50, 0x49, 0x32, n, 0, 2, 0, 4, 0]);
  b.set([...words, ...words.map((w) => 4 * w), ...end], 10);
  b.fill(1, 14 + 3 * n); // every rule once in every phrase
  return new Phrases(b);
}
const x = phrases();
const k = course(x, c);
const learner = (more = {}) => ({
  id: 'x',
  name: '',
  place: { s: 2, a: 1 },
  settled: true,
  made: '',
  updated: '',
  ...more,
});
const session = (day, r, from, to, more = {}) => ({
  learner: 'x',
  id: day + r,
  day,
  at: `${day}T10:00:00Z`,
  rule: r,
  from,
  to,
  found: 9,
  missed: 0,
  outcome: 'alone',
  marks: [],
  stops: [],
  extra: 0,
  helped: false,
  ...more,
});
const all = { s: 1, a: 1 };
const end = { s: 1, a: 4 };

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
test('lines are joined to phrases and back, also within a verse', () => {
  const one = new Child(k, learner(), [], [], 0);
  for (const [from, to, want] of [
    [{ s: 1, a: 1 }, { s: 1, a: 2 }, [0, 2]],
    [{ s: 1, a: 2, w: 4 }, { s: 1, a: 3 }, [2, 3]],
    [{ s: 2, a: 1 }, { s: 2, a: 2, w: 3 }, [5, 6]],
  ]) {
    const [a, b] = one.phrases({ from, to });
    assert.deepEqual([a, b], want);
    assert.deepEqual(one.toLines({ a, b }, 'a'), { rule: 'a', from, to });
  }
});
test('the place moves on over a surah’s end and stays for lines elsewhere', () => {
  assert.deepEqual(after(c, { s: 1, a: 4 }), { s: 2, a: 1 });
  assert.deepEqual(after(c, { s: 1, a: 2, w: 3 }), { s: 1, a: 2 });
  assert.equal(after(c, { s: 2, a: 4 }), undefined);
  const at = (place, from, to, log = []) =>
    moved(new Child(k, learner({ place }), log, [], 0), { from, to });
  assert.deepEqual(at({ s: 2, a: 1 }, { s: 2, a: 1 }, { s: 2, a: 2 }), { s: 2, a: 3 });
  assert.deepEqual(at({ s: 2, a: 3 }, { s: 2, a: 1 }, { s: 2, a: 2 }), { s: 2, a: 3 });
  // back a juz at the end
  assert.deepEqual(at({ s: 2, a: 1 }, { s: 2, a: 3 }, { s: 2, a: 4 }), { s: 1, a: 1 });
});
test('backwards, the place moves on within a surah and then to the surah before', () => {
  assert.deepEqual(after(c, { s: 2, a: 3 }, 'backwards'), { s: 2, a: 4 });
  assert.deepEqual(after(c, { s: 2, a: 4 }, 'backwards'), { s: 1, a: 1 });
  assert.deepEqual(after(c, { s: 2, a: 4, w: 3 }, 'backwards'), { s: 2, a: 4 });
  assert.equal(after(c, { s: 1, a: 4 }, 'backwards'), undefined);
  const at = (place, from, to) =>
    moved(new Child(k, learner({ place, direction: 'backwards' }), [], [], 0), { from, to });
  for (const [name, place, from, to, want] of [
    ['within a surah', [2, 1], [2, 1], [2, 2], [2, 3]],
    ['to the surah before', [2, 3], [2, 3], [2, 4], [1, 1]],
    ['lines of the surah before, on the way', [2, 3], [1, 1], [1, 2], [1, 3]],
    ['lines already behind', [1, 2], [2, 1], [2, 4], [1, 2]],
    ['behind in the surah', [1, 3], [1, 1], [1, 2], [1, 3]],
    ['at the end, from the last surah again', [1, 3], [1, 3], [1, 4], [2, 1]],
  ]) {
    const ref = ([s, a]) => ({ s, a });
    assert.deepEqual(at(ref(place), ref(from), ref(to)), ref(want), name);
  }
});
test('what comes ahead follows the direction', () => {
  const at = (place, pages, back) => ahead(x, c, place, pages, back);
  assert.deepEqual(at({ s: 1, a: 3 }, 1), [[2, 3]]);
  assert.deepEqual(at({ s: 1, a: 3 }, 2), [[2, 7]]);
  assert.deepEqual(at({ s: 2, a: 2 }, 2), [[0, 7]]); // near the end the last two pages
  assert.deepEqual(at({ s: 2, a: 2 }, 1, true), [[5, 7]]);
  assert.deepEqual(at({ s: 2, a: 2 }, 2, true), [
    [5, 7],
    [0, 3],
  ]);
  assert.deepEqual(at({ s: 1, a: 3 }, 2, true), [[2, 3]]); // nothing is before the first surah
});
test('going back a juz is said, and nothing else', () => {
  const log = [session('2026-01-01', '', { s: 2, a: 1 }, { s: 2, a: 4 })];
  const at = (place, sessions, more) =>
    wentBack(new Child(k, learner({ place, ...more }), sessions, [], 0));
  assert.equal(at({ s: 1, a: 1 }, log), true);
  assert.equal(at({ s: 1, a: 1 }, log, { direction: 'backwards' }), false);
  assert.equal(at({ s: 1, a: 2 }, log), false);
  assert.equal(at({ s: 1, a: 1 }, []), false);
  assert.equal(at({ s: 2, a: 1 }, log), false);
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

import assert from 'node:assert/strict';
import { test } from 'node:test';
import { order, step } from '../node_modules/.out/app/plan/ladder.js';
import { after, best } from '../node_modules/.out/app/plan/lines.js';
import { next } from '../node_modules/.out/app/plan/today.js';
import { week } from '../node_modules/.out/app/log/week.js';

const rule = (id, family, needs = []) => ({ id, name: id, family, needs, counts: [] });
const c = {
  families: [{ id: 'a' }, { id: 'b' }], juz: Array.from({ length: 30 }, () => [78, 1]), surahs: Array.from({ length: 114 }, () => ({ count: 5 })),
  rules: [rule('b1', 'b'), rule('a1', 'a'), rule('a2', 'a', ['b1']), rule('b2', 'b', ['a2'])],
};
const l = { id: 'x', settled: false };
const s = (day, r = '', outcome = 'alone') => ({ learner: 'x', day, rule: r, outcome });
const taught = (r, since = '2026-01-01', known = '') => ({ learner: 'x', rule: r, since, known });

test('order: families first, but never before what is needed', () => assert.deepEqual(order(c).map((r) => r.id), ['a1', 'b1', 'a2', 'b2']));
test('order: a circle of needs loses nothing', () => {
  const d = { ...c, rules: [rule('p', 'a', ['q']), rule('q', 'a', ['p'])] };
  assert.deepEqual(order(d).map((r) => r.id).sort(), ['p', 'q']);
});
test('first, settle in', () => assert.deepEqual(next(c, l, [], []), { do: 'settle', left: 2 }));
test('two sessions on one day are one day', () => assert.equal(next(c, l, [s('2026-01-01'), s('2026-01-01')], []).left, 1));
test('settled by reading on two days', () => assert.equal(next(c, l, [s('2026-01-01'), s('2026-01-02')], []).rule.id, 'a1'));
test('settled by the adult', () => assert.equal(next(c, { ...l, settled: true }, [], []).rule.id, 'a1'));
test('another learner’s sessions do not count', () => assert.equal(next(c, l, [{ ...s('2026-01-01'), learner: 'y' }], []).left, 2));
test('a rule being learnt is practised', () => assert.equal(next(c, l, [s('2026-01-02', 'a1')], [taught('a1')]).do, 'practise'));
test('three days alone, then the next rule', () => {
  const days = ['2026-01-02', '2026-01-03', '2026-01-04'].map((d) => s(d, 'a1'));
  assert.deepEqual([next(c, l, days, [taught('a1')]).do, next(c, l, days, [taught('a1')]).rule.id], ['teach', 'b1']);
});
test('days with help are not days alone', () => {
  const days = ['2026-01-02', '2026-01-03', '2026-01-04'].map((d) => s(d, 'a1', 'some'));
  assert.equal(next(c, l, days, [taught('a1')]).do, 'practise');
});
test('known by the adult', () => assert.equal(step('a1', [taught('a1', '2026-01-01', '2026-01-02')], []), 'known'));
test('the rule begun last is practised', () => {
  assert.equal(next(c, l, [], [taught('b1', '2026-02-01'), taught('a1', '2026-01-01')]).rule.id, 'b1');
});
test('when everything is known, read', () => assert.equal(next(c, l, [], c.rules.map((r) => taught(r.id, '2026-01-01', '2026-01-02'))).do, 'read'));

test('the place moves on, over a surah’s end, and back to the last juz', () => {
  assert.deepEqual(after(c, { s: 78, a: 2 }), { s: 78, a: 3 });
  assert.deepEqual(after(c, { s: 78, a: 5 }), { s: 79, a: 1 });
  assert.deepEqual(after(c, { s: 114, a: 5 }), { s: 78, a: 1 });
});

const verse = (n, events) => ({ s: 1, words: Array.from({ length: n }, () => ({ text: '', pause: 0, letters: [] })), events: Array.from({ length: events }, (_, w) => ({ w, f: 0, n: 1, rule: 0, when: 0 })) });
test('lines are about three lines of a sheet', () => {
  const b = best(Array.from({ length: 10 }, () => verse(4, 0)), -1, 3);
  assert.deepEqual([b.first, b.last], [3, 5]);
});
test('a long verse stands alone', () => {
  const b = best([verse(60, 1), verse(60, 1)], 0, 0);
  assert.deepEqual([b.first, b.last], [0, 0]);
});
test('the place is left for more places of the rule, but not for a few', () => {
  assert.equal(best([verse(12, 0), verse(12, 0), verse(12, 6)], 0, 0).first, 2);
  assert.equal(best([verse(12, 5), verse(12, 5), verse(12, 6)], 0, 0).first, 0);
});
test('the week ends today and counts each day', () => {
  const w = week([s('2026-03-01'), s('2026-03-01'), s('2026-02-20')], '2026-03-02');
  assert.deepEqual([w.length, w[0].day, w[5], w[6].n], [7, '2026-02-24', { day: '2026-03-01', n: 2 }, 0]);
});

// Lines that several learners read together: the session of each counts, and says of no rule how many
// places were found, as one on paper where nobody said so.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Child } from '../node_modules/.out/app/plan/child.js';
import { dayNumber } from '../node_modules/.out/app/record/week.js';
import { states } from '../node_modules/.out/app/plan/outlook.js';
import { countsOf, togetherOf } from '../node_modules/.out/app/record/entry.js';
import { totals } from '../node_modules/.out/app/record/totals.js';
import { isValid } from '../node_modules/.out/app/store/validate.js';
import { records } from './records.mjs';
import { all, end, k, learner, session } from './small.mjs';

const lines = { rule: 'a', also: ['b', 'stops'], from: { s: 1, a: 1 }, to: { s: 1, a: 2 } };
const draft = { lines, marks: [], looked: 1, told: 'all' };
const outcomes = [
  { pencil: 'a', found: ['a', 'a'], missed: ['a'], extra: 2 },
  { pencil: 'b', found: ['b'], missed: [], extra: 0 },
];

test('no place is anybody’s, and every rule that was marked is named', () => {
  const got = togetherOf(draft, outcomes);
  assert.deepEqual(got, {
    found: 0,
    missed: 0,
    extra: 0,
    also: [{ rule: 'b', found: 0, missed: 0 }],
    pencils: ['b', 'stops'],
    together: true,
  });
  const { paper, ...onPaper } = countsOf({ ...draft, paper: {} }, outcomes);
  assert.equal(paper, true);
  assert.deepEqual({ ...onPaper, together: true }, got);
  assert.equal(countsOf(draft, outcomes).found, 2, 'alone, the places count');
});

test('numbers said on paper are nobody’s either', () => {
  const got = togetherOf({ ...draft, paper: { a: 3 } }, outcomes);
  assert.equal(got.found, 0);
  assert.equal(got.paper, undefined);
});

test('such a session is a valid record', () => {
  const [one] = records.sessions;
  assert.ok(isValid('sessions', { ...one, ...togetherOf(draft, outcomes), marks: [] }, true));
});

const days = ['2026-01-01', '2026-01-02', '2026-01-03'];
const child = (more, outcome = 'alone') =>
  new Child(
    k,
    learner(),
    days.map((d) => session(d, 'a', all, end, { found: 0, outcome, ...more })),
    ['a', 'c'].map((rule) => ({ learner: 'x', rule, since: days[0], known: '' })),
    dayNumber('2026-01-20'),
  );

test('the planner takes it as one on paper without numbers', () => {
  for (const outcome of ['alone', 'much']) {
    const together = child({ together: true }, outcome);
    const paper = child({ paper: true }, outcome);
    assert.deepEqual(together.reader, paper.reader);
    assert.deepEqual(together.today, paper.today);
    assert.deepEqual(together.standing(0), paper.standing(0));
  }
  const r = child({ together: true }).standing(0).readiness;
  assert.deepEqual([r.sessions, r.days, r.percent], [3, 3, -1]);
});

test('the totals count the session and leave the share as it was', () => {
  const alone = session('2026-01-01', 'a', all, end, { found: 3, missed: 1 });
  const together = session('2026-01-02', 'a', all, end, { found: 0, together: true });
  const [got] = totals([together, alone]);
  assert.deepEqual([got.sessions, got.found, got.of, got.lastOf], [2, 3, 4, 4]);
});

test('what is next is computed anew for who has changed, and for nobody else', () => {
  const people = [learner(), learner({ id: 'y' })];
  const sessions = [session('2026-01-01', 'a', all, end)];
  const was = states(people, sessions, [], 1);
  const same = (now) => ['x', 'y'].map((id) => now.get(id) === was.get(id));
  assert.deepEqual(same(states([...people], [...sessions], [], 1)), [true, true]);
  const more = [session('2026-01-02', 'a', all, end, { learner: 'y' }), ...sessions];
  assert.deepEqual(same(states(people, more, [], 1)), [true, false]);
  const fixed = [{ ...sessions[0], updated: '2026-01-05T10:00:00Z' }];
  assert.deepEqual(same(states(people, fixed, [], 1)), [false, true]);
  const taught = [{ learner: 'y', rule: 'a', since: '2026-01-01', known: '' }];
  assert.deepEqual(same(states(people, sessions, taught, 1)), [true, false]);
  assert.deepEqual(same(states(people, sessions, [], 2)), [false, false]);
});

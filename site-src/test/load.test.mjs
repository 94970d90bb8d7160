// How many places a session is to have, and what is said where the lines have others.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Child } from '../node_modules/.out/app/plan/child.js';
import { loadOf } from '../node_modules/.out/app/plan/load.js';
import { AsWanted, Fewer } from '../node_modules/.out/app/plan/rank.js';
import { explain, reach } from '../node_modules/.out/app/plan/words.js';
import { isValid, validFields } from '../node_modules/.out/app/store/validate.js';
import { courseOf } from './site.mjs';

const course = courseOf();
const t = '2026-03-01T10:00:00.000Z';
const learner = (more = {}) => ({
  id: 'x',
  name: '',
  place: { s: 78, a: 1 },
  settled: true,
  made: t,
  updated: t,
  ...more,
});
const indexOf = (id) => course.c.rules.findIndex((r) => r.id === id);
const session = (day, rule, a) => ({
  learner: 'x',
  id: `${day}`,
  day: `2026-03-0${day}`,
  at: `2026-03-0${day}T10:00:00.000Z`,
  rule,
  from: { s: 78, a },
  to: { s: 78, a: a + 1 },
  found: 4,
  missed: 0,
  extra: 0,
  helped: false,
  outcome: 'alone',
});

test('places of a session by the choice and by how many the rule has had', () => {
  const places = (load, n) => {
    const { fewest, most } = loadOf(load ? { load } : {}, n);
    return [fewest, most];
  };
  for (const [load, n, want] of [
    [undefined, 0, [4, 7]],
    [undefined, 2, [4, 7]],
    [undefined, 3, [8, 12]],
    ['few', 0, [4, 7]],
    ['few', 9, [8, 12]],
    ['usual', 2, [6, 10]],
    ['usual', 3, [12, 18]],
    ['many', 0, [8, 14]],
    ['many', 3, [16, 24]],
  ])
    assert.deepEqual(places(load, n), want, `${load} after ${n}`);
});

test('sessions of other rules do not count', () => {
  const log = [1, 2, 3].map((d) => session(d, 'madd-tabii', 2 * d));
  const child = new Child(course, learner(), log, [], 20600);
  assert.equal(child.load(indexOf('madd-tabii')).most, 12);
  assert.equal(child.load(indexOf('heavy-letter')).most, 7);
});

test('a frequent rule gets short lines at the place, and more of them later and by choice', () => {
  const rule = indexOf('madd-tabii');
  const best = (log, more) => {
    const child = new Child(course, learner(more), log, [], 20600);
    return child.lines(child.practise(rule)).passages[0];
  };
  const log = [1, 2, 3].map((d) => session(d, 'madd-tabii', 30 + 2 * d));
  const few = best([], {});
  assert.ok(few.focus >= 4 && few.focus <= 7 && few.words < 15, JSON.stringify(few));
  const later = best(log, {});
  assert.ok(later.focus >= 8 && later.focus <= 12, JSON.stringify(later));
  const many = best(log, { load: 'many' });
  assert.ok(many.focus >= 16 && many.focus <= 24, JSON.stringify(many));
  for (const p of [few, later, many]) assert.ok(p.distance < 600, `${p.distance} words away`);
});

test('lines with other places than aimed at say so', () => {
  const child = new Child(course, learner(), [], [], 20600);
  const rule = indexOf('madd-tabii');
  const said = (focus, log = []) =>
    explain(
      new Child(course, learner(), log, [], 20600),
      { ...child.lines(child.practise(rule)).passages[0], focus },
      rule,
      'Nur',
    ).join(' ');
  const log = [1, 2, 3].map((d) => session(d, 'madd-tabii', 2 * d));
  assert.doesNotMatch(said(7), /aimed at/);
  assert.match(said(8), /more than the 4 to 7 aimed at/);
  assert.match(said(7, log), /fewer than the 8 to 12 aimed at/);
  assert.doesNotMatch(said(12, log), /aimed at/);
  assert.match(said(13, log), /more than the 8 to 12 aimed at/);
});

test('lines come from the juz in which the child reads while it has any, and else it is said', () => {
  const child = new Child(course, learner(), [], [], 20600);
  const { x, c } = course;
  const first = x.of[x.surahs[c.juz[29][0] - 1]];
  let beyond = 0;
  c.rules.forEach((r, i) => {
    const found = child.lines(child.practise(i));
    if (!found.passages.length) return;
    const inside = found.passages[0].a >= first;
    assert.equal(!!found.beyond, !inside, r.id);
    if (inside) return;
    beyond++;
    assert.ok(reach(found), r.id);
    if (found.how === AsWanted) assert.match(reach(found), /come from another juz/, r.id);
  });
  assert.ok(beyond > 0, 'no rule has to be sought elsewhere: this check misses it');
  assert.match(
    reach({ seen: 1, least: 2, how: Fewer, passages: [], beyond: true }),
    /the most is 2/,
  );
});

test('the choice is kept where it is one, and begins anew where it is damaged', () => {
  for (const load of [undefined, 'few', 'usual', 'many'])
    assert.ok(isValid('learners', learner(load && { load }), true), load);
  for (const direction of ['forwards', 'backwards'])
    assert.ok(isValid('learners', learner({ direction }), true), direction);
  for (const direction of ['', 'up', true, null])
    assert.ok(!isValid('learners', learner({ direction })), JSON.stringify(direction));
  for (const load of ['none', '', 4, null, ['few']]) {
    assert.ok(!isValid('learners', learner({ load })), JSON.stringify(load));
    assert.deepEqual(validFields('learners', learner({ load })), learner());
  }
});

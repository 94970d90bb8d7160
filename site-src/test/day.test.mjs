// What to do on a day: cases worked out by hand from what plan/*.ts promise.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  plan,
  Practise,
  query,
  ReadOn,
  Review,
  Settle,
  Teach,
} from '../node_modules/.out/app/plan/day.js';
import { CRITERION } from '../node_modules/.out/app/plan/ready.js';
import { due } from '../node_modules/.out/app/plan/review.js';
import { unit, units, FEW, session, read } from './unit.mjs';

const begun = (u, since, known = -1) => ({ unit: u, since, known });
const today = (more) =>
  plan(
    units,
    FEW,
    { day: 0, settled: true, taught: [], log: [], order: [0, 1, 2], ...more },
    CRITERION,
  );

test('the plan of a day', () => {
  const good = (rule, ...list) => list.map((d) => session(d, rule, { found: 9 }));
  const all = [begun(0, 0, 0), begun(1, 0, 0), begun(2, 0, 0)];
  for (const [name, more, want] of [
    ['two days of settling in', { settled: false }, { do: Settle, left: 2, rule: -1 }],
    ['one still to come', { settled: false, log: [read(0), read(0)] }, { do: Settle, left: 1 }],
    [
      'then the first lesson',
      { settled: false, log: [read(0), read(1)] },
      { do: Teach, unit: 0, rule: 0, left: 0 },
    ],
    ['at once for one who reads well', {}, { do: Teach, unit: 0 }],
    ['the adult’s order', { order: [2, 0, 1] }, { do: Teach, unit: 2, rule: 3 }],
    [
      'a lesson begun is practised',
      { taught: [begun(1, 0)], log: good(1, 0) },
      { do: Practise, unit: 1, rule: 2, level: 1, known: [1, 2] },
    ],
    [
      'of two the one begun last',
      { taught: [begun(0, 0), begun(2, 1)] },
      { do: Practise, unit: 2 },
    ],
    [
      'known by the criterion',
      { day: 5, taught: [begun(0, 0)], log: good(0, 0, 1, 2) },
      { do: Teach, unit: 1, rule: 1, due: [0] },
    ],
    [
      'known because the adult says so',
      { day: 5, taught: [begun(0, 0, 5)] },
      { do: Teach, unit: 1, due: [] },
    ],
    [
      'two due do not stop what is begun',
      { day: 9, taught: [begun(1, 0, 0), begun(0, 1)] },
      { do: Practise, unit: 0, due: [1, 2] },
    ],
    [
      'three due do',
      { day: 9, taught: [begun(1, 0, 0), begun(2, 0, 1), begun(0, 2)] },
      { do: Review, unit: -1, rule: 1, due: [1, 2, 3] },
    ],
    [
      'not two reviews in four sessions',
      {
        day: 9,
        taught: [begun(1, 0, 0), begun(2, 0, 1), begun(0, 2)],
        log: [session(2, 3), read(8), read(8)],
      },
      { do: Practise, unit: 0 },
    ],
    [
      'one that marked several known rules is one',
      {
        day: 9,
        taught: [begun(1, 0, 0), begun(2, 0, 1), begun(0, 2)],
        log: [session(2, 3, { also: [[1, 1, 0]] }), read(8), read(8)],
      },
      { do: Practise, unit: 0 },
    ],
    [
      'one that marked the rule being learnt with known ones is none',
      {
        day: 9,
        taught: [begun(1, 0, 0), begun(2, 0, 1), begun(0, 2)],
        log: [session(2, 3, { also: [[0, 1, 0]] }), read(8), read(8)],
      },
      { do: Review },
    ],
    [
      'the fourth may be one',
      {
        day: 9,
        taught: [begun(1, 0, 0), begun(2, 0, 1), begun(0, 2)],
        log: [session(2, 3), read(8), read(8), read(8)],
      },
      { do: Review },
    ],
    [
      'all known and one due',
      { day: 3, taught: all, log: [read(3, 1, 2, 3)] },
      { do: Review, rule: 0 },
    ],
    ['all known and nothing due', { day: 2, taught: all }, { do: ReadOn, rule: -1, level: 3 }],
  ]) {
    const got = today(more);
    for (const [k, v] of Object.entries(want)) assert.deepEqual(got[k], v, `${name}: ${k}`);
  }
});

test('lines are asked for with the rest of the lesson before what is due', () => {
  const q = query(
    units,
    { ...today({}), unit: 1, rule: 1, known: [0], due: [3, 1, 2], level: 2 },
    7,
    [[1, 2]],
  );
  assert.deepEqual(q, {
    focus: [1],
    known: [0, 1, 2],
    due: [2, 3],
    place: 7,
    used: [[1, 2]],
    level: 2,
  });
  assert.deepEqual(
    query(units, { ...today({}), unit: -1, rule: -1, known: [0], due: [0] }, 0, []).focus,
    [],
  );
});

// Readiness and reviews: cases worked out by hand from what plan/*.ts promise.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { plan } from '../node_modules/.out/app/plan/day.js';
import {
  CRITERION,
  knownDay,
  MuchHelp,
  rare,
  ready,
  SomeHelp,
} from '../node_modules/.out/app/plan/ready.js';
import { due, review } from '../node_modules/.out/app/plan/review.js';
import { units, FEW, session, read } from './unit.mjs';

test('a review that goes well doubles the wait, one that goes badly halves it', () => {
  for (const [name, log, well, next] of [
    ['not met again: 3 days', [], 0, 3],
    ['read before it is due', [read(2, 0)], 0, 3],
    ['other rules read', [read(3, 1, 2)], 0, 3],
    ['read when due: 7 days', [read(3, 0)], 1, 10],
    ['read late: from that day on', [read(9, 0)], 1, 16],
    ['twice: 14 days', [read(3, 0), read(12, 0)], 2, 26],
    [
      'six times on the day: 3 7 14 30 60 120, and no longer wait',
      [3, 10, 24, 54, 114, 234].map((d) => read(d, 0)),
      6,
      354,
    ],
    ['much help: again in 3', [session(3, 0, { help: MuchHelp })], 0, 6],
    ['some help is well', [session(3, 0, { help: SomeHelp })], 1, 10],
    ['3 of 4 found are well', [session(3, 0, { found: 3, missed: 1 })], 1, 10],
    ['2 of 3 are not', [session(3, 0, { found: 2, missed: 1 })], 0, 6],
    [
      '2 of 3 of another rule say nothing',
      [session(3, 1, { found: 2, missed: 1, read: [0, 1] })],
      1,
      10,
    ],
    [
      'marked beside another, 3 of 4 found',
      [session(3, 1, { also: [[0, 3, 1]], read: [0, 1] })],
      1,
      10,
    ],
    ['marked beside another, 2 of 3', [session(3, 1, { also: [[0, 2, 1]], read: [0, 1] })], 0, 6],
    [
      'well, beside another that went badly',
      [session(3, 0, { found: 4, also: [[1, 0, 4]], read: [0, 1] })],
      1,
      10,
    ],
    ['on paper, and nobody said', [session(3, 1, { also: [[0, 0, 0]], read: [0, 1] })], 1, 10],
    [
      'badly after two that went well: back to 7',
      [read(3, 0), read(10, 0), session(24, 0, { found: 1, missed: 1 })],
      1,
      31,
    ],
  ])
    assert.deepEqual(review(0, 0, log), { rule: 0, well, due: next }, name);
});

test('the longest overdue is first, of equals the one that stands first', () => {
  const at = (rule, day) => ({ rule, well: 0, due: day });
  assert.deepEqual(due([at(5, 3), at(2, 3), at(1, 1), at(0, 4)], 3), [1, 2, 5]);
});

test('a lesson is in hand after three sessions on three days with nine in ten found', () => {
  const three = (...more) =>
    [1, 2, 3].map((d, i) => session(d, 0, { found: 9, missed: 1, ...more[i] }));
  for (const [name, log, want] of [
    ['nothing yet', [], { sessions: 0, days: 0, percent: -1, ready: false }],
    ['18 of 20', three(), { sessions: 3, days: 3, percent: 90, ready: true }],
    ['17 of 19, which is 89', three({}, { found: 8 }), { percent: 89, ready: false }],
    [
      'the first does not count any more',
      three({ found: 1, missed: 9 }),
      { percent: 90, ready: true },
    ],
    [
      'two on one day',
      three({}, {}, {}).map((s, i) => ({ ...s, day: [1, 2, 2][i] })),
      { sessions: 3, days: 2, ready: false },
    ],
    [
      'much help in one of the last two',
      three({}, { help: MuchHelp }),
      { muchHelp: true, ready: false },
    ],
    ['much help before', three({ help: MuchHelp }), { muchHelp: false, ready: true }],
    [
      'before it was begun',
      [session(0, 0, { found: 9 }), ...three().slice(1)],
      { sessions: 2, ready: false },
    ],
    [
      'nobody said how many in the last two: the share stays as it was',
      three({}, { found: 0, missed: 0 }, { found: 0, missed: 0 }),
      { sessions: 3, percent: 90, ready: true },
    ],
    [
      'nobody said how many after a bad one',
      three({ found: 5, missed: 5 }, { found: 0, missed: 0 }, { found: 0, missed: 0 }),
      { percent: 50, ready: false },
    ],
    [
      'nobody ever said how many',
      three(...Array(3).fill({ found: 0, missed: 0 })),
      { sessions: 3, days: 3, percent: -1, ready: true },
    ],
    [
      'marked beside another rule, with its own places',
      [1, 2, 3].map((d) => session(d, 1, { found: 1, missed: 9, also: [[0, 9, 1]], read: [0, 1] })),
      { sessions: 3, days: 3, percent: 90, practised: 3, ready: true },
    ],
    [
      'beside another rule, too little of its own',
      [1, 2, 3].map((d) => session(d, 1, { found: 9, also: [[0, 8, 2]], read: [0, 1] })),
      { percent: 80, ready: false },
    ],
    [
      'much help is for all that was marked',
      [1, 2, 3].map((d) => session(d, 1, { help: MuchHelp, also: [[0, 9, 0]], read: [0, 1] })),
      { percent: 100, muchHelp: true, ready: false },
    ],
    [
      'sessions with other rules',
      [1, 2, 3].map((d) => session(d, 1, { found: 9, read: [0, 1] })),
      { sessions: 0, practised: 3, ready: false },
    ],
  ]) {
    const got = ready(units[0], FEW, 1, log, CRITERION);
    for (const [k, v] of Object.entries(want)) assert.equal(got[k], v, `${name}: ${k}`);
  }
  assert.equal(
    knownDay(units[0], FEW, 1, [...three(), session(9, 0, { found: 1, missed: 9 })], CRITERION),
    3,
  );
  assert.equal(knownDay(units[0], FEW, 1, three().slice(1), CRITERION), -1);
});

test('of several rules each is practised, the one that lacks most next', () => {
  const one = [1, 2, 3].map((d) => session(d, 1, { found: 4 }));
  const part = (log, few = FEW) =>
    (({ rule, practised, wanted, ready: is }) => ({ rule, practised, wanted, is }))(
      ready(units[1], few, 1, log, CRITERION),
    );
  assert.deepEqual(part(one), { rule: 2, practised: 0, wanted: 3, is: false });
  assert.deepEqual(part(one.map((s) => ({ ...s, places: [0, 1, 1, 0] }))), {
    rule: 2,
    practised: 3,
    wanted: 3,
    is: true,
  }); // both alike: the one marked less
  const both = [1, 2, 3].map((d) => session(d, 1, { found: 8, also: [[2, 1, 1]], read: [1, 2] }));
  assert.deepEqual(part(both), { rule: 1, practised: 3, wanted: 3, is: true }); // one session each day
  assert.equal(ready(units[1], FEW, 1, both, CRITERION).sessions, 3);
  assert.equal(ready(units[1], FEW, 1, both, CRITERION).percent, 90); // of both together
  assert.deepEqual(part([...one, read(4, 2)], [false, false, true, false]), {
    rule: 2,
    practised: 1,
    wanted: 1,
    is: true,
  }); // once is enough of a rare one
  assert.deepEqual(rare([0, 3, 4]), [true, true, false]);
});

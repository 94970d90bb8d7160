// What to do on a day, readiness and reviews: cases worked out by hand from what plan/*.ts promise.
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
import {
  Alone,
  CRITERION,
  knownDay,
  MuchHelp,
  rare,
  ready,
  SomeHelp,
} from '../node_modules/.out/app/plan/ready.js';
import { due, review } from '../node_modules/.out/app/plan/review.js';

const unit = (rules, needs = []) => ({ id: '', name: '', ar: '', family: '', rules, needs });
const units = [unit([0]), unit([1, 2]), unit([3])];
const FEW = [false, false, false, false];
/** A session in whose lines the given rules have a place; rule is the one that is marked. */
const session = (day, rule, { found = 0, missed = 0, help = Alone, read = [rule] } = {}) => ({
  day,
  rule,
  found,
  missed,
  help,
  places: FEW.map((_, r) => Number(read.includes(r))),
});
const read = (day, ...rules) => session(day, -1, { read: rules });

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
      'no place was there to find',
      three({}, { found: 0, missed: 0 }, { found: 0, missed: 0 }),
      { percent: -1, ready: true },
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
  assert.deepEqual(part([...one, read(4, 2)], [false, false, true, false]), {
    rule: 2,
    practised: 1,
    wanted: 1,
    is: true,
  }); // once is enough of a rare one
  assert.deepEqual(rare([0, 3, 4]), [true, true, false]);
});

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

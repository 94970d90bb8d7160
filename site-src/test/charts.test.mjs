// The figures of the record's charts.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { barsOf, monday, percent, weeks, WEEKS } from '../node_modules/.out/app/record/charts.js';

const session = (day, found = 0, missed = 0, more = {}) => ({
  day,
  rule: 'a',
  found,
  missed,
  ...more,
});

test('a week begins on Monday, as in ISO 8601', () => {
  // 2026-03-02 is a Monday: 2026-01-01 is a Thursday, as in the calendar of ISO week 2026-W01.
  for (const [day, want] of [
    ['2026-03-02', '2026-03-02'],
    ['2026-03-01', '2026-02-23'],
    ['2026-03-08', '2026-03-02'],
    ['2026-01-01', '2025-12-29'],
    ['2024-02-29', '2024-02-26'],
  ])
    assert.equal(monday(day), want, day);
});

test('twelve weeks, the last that of today, with sessions and places', () => {
  const also = [{ rule: 'b', found: 1, missed: 3 }];
  const got = weeks(
    [
      session('2026-03-04', 5, 1),
      session('2026-03-02', 2, 0, { also }),
      session('2026-03-01', 9, 1),
      session('2026-02-23', 0, 0, { paper: true }),
      session('2025-12-15', 1, 1),
      session('2025-12-14', 7, 7), // the week before the first
      session('2026-03-05', 7, 7), // to come
      { ...session('2026-03-03'), rule: '' }, // reading alone
    ],
    '2026-03-04',
  );
  assert.equal(got.length, WEEKS);
  assert.deepEqual(got.at(-1), { from: '2026-03-02', sessions: 3, found: 8, of: 12 });
  assert.deepEqual(got.at(-2), { from: '2026-02-23', sessions: 2, found: 9, of: 10 });
  assert.deepEqual(got[0], { from: '2025-12-15', sessions: 1, found: 1, of: 2 });
  const rest = got.slice(1, -2);
  assert.ok(rest.every((w) => !w.sessions && !w.found && !w.of));
});

test('over a change of the clock a week has its seven days', () => {
  const days = Array.from({ length: 84 }, (_, i) =>
    new Date(Date.UTC(2026, 2, 2) + i * 864e5).toISOString().slice(0, 10),
  );
  const got = weeks(
    days.map((d) => session(d)),
    days.at(-1),
  );
  assert.deepEqual(
    got.map((w) => w.sessions),
    Array(12).fill(7),
  );
});

test('the order of the sessions does not matter', () => {
  const list = [
    session('2026-03-04', 5, 1),
    session('2026-02-01', 2, 0),
    session('2026-02-20', 1, 1),
  ];
  assert.deepEqual(weeks(list, '2026-03-04'), weeks([...list].reverse(), '2026-03-04'));
});

test('percent are full only where all was found, and nothing where nobody knows', () => {
  assert.equal(percent({ found: 199, of: 200 }), 99);
  assert.equal(percent({ found: 3, of: 3 }), 100);
  assert.equal(percent({ found: 0, of: 3 }), 0);
  assert.equal(percent({ found: 0, of: 0 }), undefined);
});

test('bars stand on the base, and the most reaches the top', () => {
  const room = { wide: 40, top: 10, base: 50 };
  assert.deepEqual(barsOf([0, 2, 4, 1], { most: 4, ...room }), [
    { x: 0, y: 50, wide: 7, high: 0 },
    { x: 10, y: 30, wide: 7, high: 20 },
    { x: 20, y: 10, wide: 7, high: 40 },
    { x: 30, y: 40, wide: 7, high: 10 },
  ]);
  assert.ok(barsOf([0, 0], { most: 0, ...room }).every((b) => b.high === 0 && b.y === 50));
});

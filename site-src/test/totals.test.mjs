import assert from 'node:assert/strict';
import { test } from 'node:test';
import { shareOf, tallies, totals } from '../node_modules/.out/app/record/totals.js';

const session = (day, hour, rule, found, missed) => ({
  day,
  at: `${day}T${hour}:00:00Z`,
  rule,
  found,
  missed,
});

test('sessions, days and places add up by rule, the last met first; plain reading is left out', () => {
  const got = totals([
    session('2026-01-03', '11', 'b', 0, 0),
    session('2026-01-03', '10', '', 0, 0),
    session('2026-01-02', '18', 'c', 2, 0),
    session('2026-01-02', '17', 'a', 5, 0),
    session('2026-01-02', '10', 'a', 3, 1),
    session('2026-01-01', '10', 'a', 1, 4),
  ]);
  assert.deepEqual(got, [
    {
      rule: 'b',
      sessions: 1,
      days: 1,
      found: 0,
      of: 0,
      lastFound: 0,
      lastOf: 0,
      day: '2026-01-03',
    },
    {
      rule: 'c',
      sessions: 1,
      days: 1,
      found: 2,
      of: 2,
      lastFound: 2,
      lastOf: 2,
      day: '2026-01-02',
    },
    {
      rule: 'a',
      sessions: 3,
      days: 2,
      found: 9,
      of: 14,
      lastFound: 8,
      lastOf: 9,
      day: '2026-01-02',
    },
  ]);
});
test('a session counts for every rule that it marked, each with its own places', () => {
  const x = (rule, found, missed) => ({ rule, found, missed });
  const both = { ...session('2026-01-02', '10', 'a', 2, 1), also: [x('b', 1, 3)] };
  const reading = { ...session('2026-01-01', '10', '', 0, 0), also: [x('b', 2, 0)] };
  const paper = { ...session('2026-01-03', '10', 'a', 0, 0), also: [x('b', 0, 0)], paper: true };
  const got = totals([paper, both, reading]);
  assert.deepEqual(
    got.map((r) => [r.rule, r.sessions, r.days, r.found, r.of, r.lastFound, r.lastOf, r.day]),
    [
      ['a', 2, 2, 2, 3, 2, 3, '2026-01-03'],
      ['b', 3, 3, 3, 6, 3, 6, '2026-01-03'],
    ],
  );
  assert.deepEqual(tallies(reading), [x('b', 2, 0)]);
  assert.deepEqual(shareOf(tallies(both)), { found: 3, of: 7 });
});
test('no sessions, no totals', () => assert.deepEqual(totals([]), []));

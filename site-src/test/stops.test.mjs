// Which events hold under which stops: the table that the engine wrote, in the middle of a verse
// and at both its ends.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { Stops } from '../node_modules/.out/app/text/stops.js';

const table = JSON.parse(
  readFileSync(
    new URL('../../generator/internal/recite/testdata/holds.json', import.meta.url),
    'utf8',
  ),
);
const verse = (a, words) => ({
  s: 2,
  a,
  text: '',
  page: 1,
  juz: 1,
  words: Array.from({ length: words }, () => ({ text: '', letters: [], pause: 0x6da })),
  events: [],
});

test('events hold as the engine says', () => {
  assert.equal(table.length, 4 * 2 * 2 * 2);
  // The word in question, the one before it and the one after it: within a verse, then over its
  // ends.
  for (const [v, w, before, after] of [
    [1, 1, [1, 0], [1, 1]],
    [1, 0, [0, 2], [1, 0]],
    [1, 2, [1, 1], [1, 2]],
  ]) {
    for (const { when, before: speaksOfBefore, stopBefore, stopAfter, holds } of table) {
      const stops = new Stops(
        [verse(1, 3), verse(2, 3), verse(3, 3)],
        [
          [...before, stopBefore],
          [...after, stopAfter],
        ],
      );
      assert.equal(
        stops.holds(v, { w, when, before: speaksOfBefore }),
        holds,
        JSON.stringify({ v, w, when, speaksOfBefore, stopBefore, stopAfter }),
      );
    }
  }
});
test('the lines begin and end with a stop, and verses do unless the reader goes on', () => {
  const stops = new Stops([verse(1, 2), verse(2, 2)]);
  assert.deepEqual(
    [
      stops.startsAt(0, 0),
      stops.after(0, 0),
      stops.after(0, 1),
      stops.startsAt(1, 0),
      stops.after(1, 1),
    ],
    [true, false, true, true, true],
  );
  stops.set(0, 1, false);
  stops.set(1, 1, false); // the end of the lines: nothing to choose
  assert.deepEqual(
    [stops.after(0, 1), stops.startsAt(1, 0), stops.after(1, 1), stops.moved()],
    [false, false, true, [[0, 1, false]]],
  );
});

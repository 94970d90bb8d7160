// The pace of a count, from taps along with a child's short vowel.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  LONGEST,
  paceOf,
  readPace,
  SHORTEST,
  starts,
  tapped,
  USUAL,
} from '../node_modules/.out/app/beat/pace.js';

const after = (...times) => times.reduce((taps, t) => tapped(taps, t), []);

for (const [name, times, want] of [
  ['no tap', [], undefined],
  ['one tap', [1000], undefined],
  ['two taps', [0, 500], 500],
  ['one tap that came late counts little', [0, 500, 1000, 2200, 2700], 500],
  ['the middle of two', [0, 400, 1000], 500],
  ['too fast to be read', [0, 150, 300], SHORTEST],
  ['too slow to be read', [0, 2000, 4000], LONGEST],
  ['a finger that trembles', [0, 30, 600, 650, 1200], 600],
  ['a pause begins anew', [0, 300, 600, 4000, 4700], 700],
  ['one tap after a pause', [0, 300, 600, 4000], undefined],
  ['a clock set back', [5000, 5500, 100], undefined],
  ['parts of a millisecond', [0.25, 500.5], 500],
])
  test(name, () => assert.equal(paceOf(after(...times)), want));

test('only the last taps count', () => {
  const slow = Array.from({ length: 9 }, (_, i) => i * 900);
  const fast = Array.from({ length: 9 }, (_, i) => 8 * 900 + (i + 1) * 400);
  assert.equal(paceOf(after(...slow, ...fast)), 400);
});

test('what has been tapped is not changed', () => {
  const taps = Object.freeze([0, 500]);
  assert.deepEqual(tapped(taps, 1000), [0, 500, 1000]);
  assert.deepEqual(tapped(taps, 550), [0, 500]);
});

for (const [kept, want] of [
  [null, USUAL],
  ['', USUAL],
  [' ', USUAL],
  ['soon', USUAL],
  ['NaN', USUAL],
  ['Infinity', USUAL],
  ['700', 700],
  ['1', SHORTEST],
  ['-5', SHORTEST],
  ['99999', LONGEST],
])
  test(`kept as ${JSON.stringify(kept)}`, () => assert.equal(readPace(kept), want));

test('dots begin one count apart', () => {
  assert.deepEqual(starts(4, 600), [0, 600, 1200, 1800]);
  assert.deepEqual(starts(0, 600), []);
});

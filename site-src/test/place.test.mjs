// Places in a text of two short surahs: lines and phrases, where reading goes on.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Child } from '../node_modules/.out/app/plan/child.js';
import { after, moved, wentBack } from '../node_modules/.out/app/plan/place.js';
import { ahead } from '../node_modules/.out/app/plan/places.js';
import { rule, c, phrases, x, k, learner, session, end } from './small.mjs';

test('lines are joined to phrases and back, also within a verse', () => {
  const one = new Child(k, learner(), [], [], 0);
  for (const [from, to, want] of [
    [{ s: 1, a: 1 }, { s: 1, a: 2 }, [0, 2]],
    [{ s: 1, a: 2, w: 4 }, { s: 1, a: 3 }, [2, 3]],
    [{ s: 2, a: 1 }, { s: 2, a: 2, w: 3 }, [5, 6]],
  ]) {
    const [a, b] = one.phrases({ from, to });
    assert.deepEqual([a, b], want);
    assert.deepEqual(one.toLines({ a, b }, 'a'), { rule: 'a', from, to });
  }
});
test('the place moves on over a surah’s end and stays for lines elsewhere', () => {
  assert.deepEqual(after(c, { s: 1, a: 4 }), { s: 2, a: 1 });
  assert.deepEqual(after(c, { s: 1, a: 2, w: 3 }), { s: 1, a: 2 });
  assert.equal(after(c, { s: 2, a: 4 }), undefined);
  const at = (place, from, to, log = []) =>
    moved(new Child(k, learner({ place }), log, [], 0), { from, to });
  assert.deepEqual(at({ s: 2, a: 1 }, { s: 2, a: 1 }, { s: 2, a: 2 }), { s: 2, a: 3 });
  assert.deepEqual(at({ s: 2, a: 3 }, { s: 2, a: 1 }, { s: 2, a: 2 }), { s: 2, a: 3 });
  // back a juz at the end
  assert.deepEqual(at({ s: 2, a: 1 }, { s: 2, a: 3 }, { s: 2, a: 4 }), { s: 1, a: 1 });
});
test('backwards, the place moves on within a surah and then to the surah before', () => {
  assert.deepEqual(after(c, { s: 2, a: 3 }, 'backwards'), { s: 2, a: 4 });
  assert.deepEqual(after(c, { s: 2, a: 4 }, 'backwards'), { s: 1, a: 1 });
  assert.deepEqual(after(c, { s: 2, a: 4, w: 3 }, 'backwards'), { s: 2, a: 4 });
  assert.equal(after(c, { s: 1, a: 4 }, 'backwards'), undefined);
  const at = (place, from, to) =>
    moved(new Child(k, learner({ place, direction: 'backwards' }), [], [], 0), { from, to });
  for (const [name, place, from, to, want] of [
    ['within a surah', [2, 1], [2, 1], [2, 2], [2, 3]],
    ['to the surah before', [2, 3], [2, 3], [2, 4], [1, 1]],
    ['lines of the surah before, on the way', [2, 3], [1, 1], [1, 2], [1, 3]],
    ['lines already behind', [1, 2], [2, 1], [2, 4], [1, 2]],
    ['behind in the surah', [1, 3], [1, 1], [1, 2], [1, 3]],
    ['at the end, from the last surah again', [1, 3], [1, 3], [1, 4], [2, 1]],
  ]) {
    const ref = ([s, a]) => ({ s, a });
    assert.deepEqual(at(ref(place), ref(from), ref(to)), ref(want), name);
  }
});
test('what comes ahead follows the direction', () => {
  const at = (place, pages, back) => ahead(x, c, place, pages, back);
  assert.deepEqual(at({ s: 1, a: 3 }, 1), [[2, 3]]);
  assert.deepEqual(at({ s: 1, a: 3 }, 2), [[2, 7]]);
  assert.deepEqual(at({ s: 2, a: 2 }, 2), [[0, 7]]); // near the end the last two pages
  assert.deepEqual(at({ s: 2, a: 2 }, 1, true), [[5, 7]]);
  assert.deepEqual(at({ s: 2, a: 2 }, 2, true), [
    [5, 7],
    [0, 3],
  ]);
  assert.deepEqual(at({ s: 1, a: 3 }, 2, true), [[2, 3]]); // nothing is before the first surah
});
test('going back a juz is said, and nothing else', () => {
  const log = [session('2026-01-01', '', { s: 2, a: 1 }, { s: 2, a: 4 })];
  const at = (place, sessions, more) =>
    wentBack(new Child(k, learner({ place, ...more }), sessions, [], 0));
  assert.equal(at({ s: 1, a: 1 }, log), true);
  assert.equal(at({ s: 1, a: 1 }, log, { direction: 'backwards' }), false);
  assert.equal(at({ s: 1, a: 2 }, log), false);
  assert.equal(at({ s: 1, a: 1 }, []), false);
  assert.equal(at({ s: 2, a: 1 }, log), false);
});

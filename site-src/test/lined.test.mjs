// The classes that draw the line over the words of a prostration.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lined } from '../node_modules/.out/app/text/lined.js';

const word = (lined, text = 'x') => ({ text, letters: [], pause: 0, ...(lined && { lined }) });

test('from the first word of a run to the last, but not over the sign', () => {
  const words = [word(false), word(true), word(true), word(false), word(true, 'x\u06e9')];
  assert.deepEqual(
    words.map((_, i) => lined(words, i)),
    ['', ' lined on', ' lined', '', ' lined signed'],
  );
});

test('it ends with the words that are shown', () =>
  assert.equal(lined([word(true), undefined], 0), ' lined'));

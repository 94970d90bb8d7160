// Turning over long lines by the keyboard: whole lines of text.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { PAD, rowsOf, turned } from '../node_modules/.out/app/screens/shared/page.js';

const rows = [100, 300, 500, 700, 900].map((top) => ({ top, bottom: top + 200 }));

test('lines of text by the boxes of words', () => {
  const boxes = rows.flatMap((r) => [r, { top: r.top + 3, bottom: r.bottom + 3 }]);
  assert.deepEqual(rowsOf(boxes), rows);
});

// A window of 500 pixels: two lines and a half.
for (const [key, from, want] of [
  ['PageDown', 0, 500],
  ['PageDown', 500 - PAD, 900],
  ['PageDown', 900 - PAD, 900],
  ['PageUp', 900 - PAD, 500],
  ['PageUp', 500 - PAD, 100],
  ['PageUp', 100 - PAD, 0],
  ['ArrowDown', 100 - PAD, 300],
  ['ArrowUp', 500 - PAD, 300],
  ['ArrowUp', 0, 0],
  ['Home', 500, undefined],
])
  test(`${key} at ${from} leads to ${want}`, () =>
    assert.equal(turned(rows, from, 500, key), want));

test('no text, no page to turn', () => assert.equal(turned([], 0, 500, 'PageDown'), undefined));

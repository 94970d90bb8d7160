// The QR picture of a link, as an outside decoder reads it.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { picture } from '../node_modules/.out/app/share/picture.js';
import { hashOf, maker } from './linking.mjs';
import { drawn, readQR } from './qr.mjs';

test('an outside decoder reads the link from its picture', () => {
  const make = maker(5);
  const sizes = new Set();
  for (let i = 0; i < 60; i++) {
    const link = `https://example.org/${'a/'.repeat(i % 20)}${hashOf(i % 2 ? make.work() : make.result())}`;
    const p = picture(link);
    const { rgba, side } = drawn(p);
    assert.equal(readQR(rgba, side, side), link);
    sizes.add(p.size);
  }
  assert.ok(sizes.size > 3, `sizes: ${[...sizes]}`);
});

test('the decoder sees what is drawn: a picture with a corner painted over is not read', () => {
  const p = picture('https://example.org/#/work');
  const { rgba, side } = drawn(p);
  for (let y = 0; y < side / 3; y++) rgba.fill(255, y * side * 4, (y * side + side / 3) * 4);
  assert.equal(readQR(rgba, side, side), undefined);
});

test('what is too long for a picture has none', () => {
  assert.equal(picture('x'.repeat(4000)), undefined);
});

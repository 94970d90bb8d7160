// The shapes under marked letters: that each stays with its letter and differs from the others
// under the narrowest.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { DEEP, path, THICK } from '../node_modules/.out/app/marking/signs.js';

const SIGNS = Object.keys(THICK);
const NARROW = 19;
const WIDE = 90;

/** The points a path goes through; every command here is M, h, v, l or z. */
function points(d) {
  const out = [];
  let x = 0;
  let y = 0;
  for (const [, c, rest] of d.matchAll(/([Mhvlz])([^Mhvlz]*)/g)) {
    const n = rest.trim() ? rest.trim().split(/[ ,]+/).map(Number) : [];
    if (c === 'M') [x, y] = n;
    if (c === 'h') x += n[0];
    if (c === 'v') y += n[0];
    if (c === 'l') {
      x += n[0];
      y += n[1];
    }
    out.push([x, y]);
  }
  return out;
}

/**
 * The shape as cells of a grid of 2 hundredths: what a phone shows of it at 36 px letters, more or
 * less.
 */
function cells(sign, wide) {
  const set = new Set();
  const half = THICK[sign] / 2;
  let from;
  for (const [, c, rest] of path(sign, 0, 0, wide).matchAll(/([Mhvlz])([^Mhvlz]*)/g)) {
    const [to] = points(`M${(from ?? [0, 0]).join(' ')}${c === 'M' ? '' : c + rest}`).slice(-1);
    const at = c === 'M' ? points(c + rest)[0] : to;
    if (c !== 'M' && c !== 'z') {
      const n = Math.max(1, Math.ceil(Math.hypot(at[0] - from[0], at[1] - from[1])));
      for (let i = 0; i <= n; i++) {
        const px = from[0] + ((at[0] - from[0]) * i) / n;
        const py = from[1] + ((at[1] - from[1]) * i) / n;
        for (let dx = -half; dx <= half; dx += 1)
          for (let dy = -half; dy <= half; dy += 1)
            set.add(`${Math.round((px + dx) / 2)} ${Math.round((py + dy) / 2)}`);
      }
    }
    from = at;
  }
  return set;
}

for (const sign of SIGNS) {
  for (const wide of [NARROW, 45, WIDE]) {
    test(`${sign} under a letter of ${wide}`, () => {
      const all = points(path(sign, 100, 50, wide));
      const half = THICK[sign] / 2;
      assert.ok(all.length > 1 && all.flat().every(Number.isFinite));
      for (const [x, y] of all) {
        assert.ok(x >= 100 - 5 && x <= 100 + wide + 5, `x ${x}`);
        assert.ok(y - half >= 50 - 1 && y + half <= 50 + DEEP + 1, `y ${y}`);
      }
      if (wide > NARROW)
        assert.ok(Math.max(...all.map((p) => p[0])) > 100 + wide / 2, 'reaches over the middle');
    });
  }
}

test('any two shapes under the narrowest letter differ in a third of what either covers', () => {
  for (const a of SIGNS) {
    for (const b of SIGNS.slice(SIGNS.indexOf(a) + 1)) {
      const one = cells(a, NARROW);
      const two = cells(b, NARROW);
      const both = [...one].filter((c) => two.has(c)).length;
      const differ = one.size + two.size - 2 * both;
      assert.ok(
        differ * 3 > one.size + two.size - both,
        `${a} and ${b}: ${differ} of ${one.size + two.size - both}`,
      );
    }
  }
});

test('no shape is a dot', () => {
  for (const sign of SIGNS) {
    const all = points(path(sign, 0, 0, NARROW));
    const xs = all.map((p) => p[0]);
    assert.ok(Math.max(...xs) - Math.min(...xs) >= NARROW / 3, sign);
  }
});

// What is drawn on the shared screen: rings, lines under words, strokes, undoing and clearing.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import * as d from '../node_modules/.out/app/marking/drawing.js';
import {
  bind,
  distance,
  pathOf,
  pieces,
  runs,
  underlined,
} from '../node_modules/.out/app/marking/snap.js';

const at = (v, w, l) => ({ v, w, l });
const rings = (x) => x.drawn.map((r) => [r.at.l, r.n]);

test('a ring comes and goes, and has a number', () => {
  let x = d.ring(d.ring(d.BLANK, at(0, 0, 1)), at(0, 0, 2));
  assert.deepEqual(rings(x), [
    [1, undefined],
    [2, undefined],
  ]);
  x = d.number(x, 4);
  assert.deepEqual(rings(x)[1], [2, 4], 'above the ring made last');
  x = d.number(x, 6, at(0, 0, 1));
  assert.deepEqual(rings(x)[0], [1, 6], 'above the ring that is named');
  x = d.number(x, 4);
  assert.deepEqual(rings(x)[1], [2, undefined], 'the same number again takes it away');
  assert.deepEqual(rings(d.ring(x, at(0, 0, 1))), [[2, undefined]]);
  assert.equal(d.number(d.BLANK, 4), d.BLANK, 'no ring, no number');
  assert.equal(d.number(x, 4, at(3, 0, 0)), x);
});

test('every change can be undone, clearing too', () => {
  const words = [
    { v: 0, w: 1 },
    { v: 0, w: 2 },
  ];
  const states = [d.BLANK];
  for (const next of [
    (x) => d.ring(x, at(0, 0, 1)),
    (x) => d.under(x, words),
    (x) => d.number(x, 5),
    (x) => d.add(x, { kind: 'stroke', dots: [] }),
    (x) => d.under(x, words),
    (x) => d.remove(x, x.drawn[0]),
    d.clear,
  ])
    states.push(next(states.at(-1)));
  assert.deepEqual(
    states.map((x) => x.drawn.length),
    [0, 1, 2, 2, 3, 2, 1, 0],
  );
  let x = states.at(-1);
  for (const want of states.slice(0, -1).reverse()) {
    x = d.undo(x);
    assert.equal(x.drawn, want.drawn);
  }
  assert.equal(d.undo(x), x);
  assert.equal(d.clear(x), x, 'clearing nothing is no change');
});

// Two lines of three words, letters of 100 px, read from the right.
const word = (w, right, wide, base) => ({ v: 0, w, left: right - wide, right, base, em: 100 });
const spots = [
  word(0, 900, 200, 100),
  word(1, 660, 160, 100),
  word(2, 460, 60, 100),
  word(3, 900, 300, 340),
  word(4, 560, 160, 340),
];
const spot = ({ w }) => spots[w];
const line = (x0, x1, y, { n = 20, rise = 0, shake = 0 } = {}) =>
  Array.from({ length: n + 1 }, (_, i) => ({
    x: x0 + ((x1 - x0) * i) / n,
    y: y + (rise * i) / n + (i % 2 ? shake : -shake),
  }));
const round = (cx, cy, rx, ry, n = 40) =>
  Array.from({ length: n + 1 }, (_, i) => ({
    x: cx + rx * Math.cos((2 * Math.PI * i) / n),
    y: cy + ry * Math.sin((2 * Math.PI * i) / n),
  }));
const numbers = (points) => underlined(points, spots).map((x) => x.w);

for (const [what, points, want] of [
  ['under two words', line(900, 500, 150), [0, 1]],
  ['from the left, by a hand that shakes', line(490, 905, 160, { shake: 6 }), [0, 1]],
  ['a little short of a word, and well into the next', line(880, 560, 150), [0, 1]],
  ['not half of the next word', line(900, 600, 150), [0]],
  ['close below the letters', line(890, 710, 95), [0]],
  ['well below them', line(890, 710, 195), [0]],
  ['rising by less than a third of a letter', line(900, 400, 130, { rise: 40 }), [0, 1, 2]],
  ['of the second line', line(900, 400, 380), [3, 4]],
  ['under a few letters alone', line(890, 830, 150), []],
  ['too short', line(452, 412, 150), []],
  ['through the letters', line(900, 500, 70), []],
  ['steep', line(900, 700, 110, { rise: 80 }), []],
  ['there and back', [...line(900, 700, 150), ...line(700, 900, 155)], []],
  ['a ring', round(800, 70, 120, 90), []],
  ['a flat ring', round(800, 150, 110, 12), []],
  ['one point', [{ x: 800, y: 150 }], []],
])
  test(`a stroke ${what} underlines ${want.length ? `words ${want}` : 'nothing'}`, () =>
    assert.deepEqual(numbers(points), want));

test('without words there is nothing to be bound to', () => {
  assert.deepEqual(underlined(line(900, 500, 150), []), []);
  assert.deepEqual(bind(line(900, 500, 150), []), []);
});

const about = (a, b) =>
  a.forEach((p, i) => assert.ok(Math.hypot(p.x - b[i].x, p.y - b[i].y) < 0.01, `${i}`));

test('a stroke stays where it was drawn, and goes with its word in another size', () => {
  const drawn = round(580, 70, 100, 110);
  const dots = bind(drawn, spots);
  assert.deepEqual(new Set(dots.map((x) => x.w)), new Set([1]), 'to the word it is around');
  const [run, ...more] = runs(dots, spot);
  assert.equal(more.length, 0);
  about(run, drawn);
  const half = { v: 0, w: 1, left: 20, right: 100, base: 400, em: 50 };
  const [small] = runs(dots, () => half);
  about(
    small,
    drawn.map((p) => ({ x: 100 - (660 - p.x) / 2, y: 400 + (p.y - 100) / 2 })),
  );
});

test('a ring about one line is bound to that line alone, one over two lines to both', () => {
  const wide = bind(round(700, 75, 240, 125), spots);
  assert.deepEqual([...new Set(wide.map((x) => x.w))].sort(), [0, 1]);
  const high = bind(line(800, 800, 60, { n: 40, rise: 320 }), spots);
  assert.deepEqual([...new Set(high.map((x) => x.w))].sort(), [0, 3]);
});

test('a stroke tears where its words come to stand on different lines', () => {
  const dots = bind(line(890, 510, 70), spots);
  const turned = runs(dots, ({ w }) =>
    w ? { ...spots[w], base: 340, left: 740, right: 900 } : spots[0],
  );
  assert.equal(turned.length, 2);
  assert.ok(turned[0].every((p) => p.y < 120) && turned[1].every((p) => p.y > 280));
  assert.equal(runs(dots, ({ w }) => (w ? spots[w] : undefined)).length, 1, 'what is not shown');
  assert.deepEqual(
    runs(dots, () => undefined),
    [],
  );
});

test('a line under words has a piece for each line of text', () => {
  const words = [1, 2, 3].map((w) => ({ v: 0, w }));
  assert.deepEqual(
    pieces(words, spot).map((x) => [x.left, x.right, x.base]),
    [
      [400, 660, 100],
      [600, 900, 340],
    ],
  );
  assert.deepEqual(
    pieces(words, () => undefined),
    [],
  );
});

test('how near a press is', () => {
  const run = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
  ];
  assert.equal(distance(run, { x: 50, y: 7 }), 7);
  assert.equal(distance(run, { x: 103, y: 4 }), 5);
  assert.equal(distance([{ x: 3, y: 4 }], { x: 0, y: 0 }), 5);
  assert.equal(distance([], { x: 0, y: 0 }), Infinity);
});

test('a path', () => {
  assert.equal(
    pathOf([
      { x: 1, y: 2.04 },
      { x: 3.16, y: 4 },
    ]),
    'M1 2L3.2 4',
  );
  assert.equal(pathOf([{ x: 1, y: 2 }]), 'M1 2h0');
});

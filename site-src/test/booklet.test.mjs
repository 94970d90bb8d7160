// The pages of a booklet: their order, how they stand on paper, and its tables.
import assert from 'node:assert/strict';
import test from 'node:test';
import { filled, sides } from '../node_modules/.out/app/paper/impose.js';
import { added, leavesOf } from '../node_modules/.out/app/paper/leaves.js';
import { countIn, ranges, tables } from '../node_modules/.out/app/paper/ranges.js';
import { part } from '../node_modules/.out/app/paper/passage.js';
import { catalogue } from './site.mjs';

const upTo = (n) => Array.from({ length: n }, (_, i) => i + 1);

/**
 * Folds the sides of sheets as hands do: each sheet has its two sides, the second seen by turning it
 * over like a page, so that left and right change places; all lie in each other, the first
 * outermost, and the fold is at the right of the front. Returns the pages as they are then read.
 */
function folded(all) {
  const sheets = [];
  for (let i = 0; i < all.length; i += 2) {
    const [left, right] = all[i];
    const [backLeft, backRight] = all[i + 1];
    sheets.push([
      { front: left, back: backRight },
      { front: right, back: backLeft },
    ]);
  }
  const before = sheets.flatMap(([half]) => [half.front, half.back]);
  const after = sheets.reverse().flatMap(([, half]) => [half.back, half.front]);
  return [...before, ...after];
}

test('folded sheets have their pages in order', () => {
  for (const n of [4, 8, 12, 68, 108]) assert.deepEqual(folded(sides(n, 'fold')), upTo(n));
  assert.deepEqual(sides(4, 'fold'), [
    [1, 4],
    [3, 2],
  ]);
});

test('pages in twos are read from the right, and alone one after the other', () => {
  assert.deepEqual(sides(4, 'two'), [
    [2, 1],
    [4, 3],
  ]);
  assert.deepEqual(sides(3, 'one'), [[1], [2], [3]]);
  assert.deepEqual(
    [1, 2, 5, 8].map((n) => [filled(n, 'one'), filled(n, 'two'), filled(n, 'fold')]),
    [
      [1, 2, 4],
      [2, 2, 4],
      [5, 6, 8],
      [8, 8, 8],
    ],
  );
});

test('every part is there once and in order, and the last sheet is full', () => {
  for (const lay of ['one', 'two', 'fold'])
    for (const answers of ['end', 'only', 'none'])
      for (let practice = 1; practice < 9; practice++) {
        const parts = { pencils: 2, practice, counts: 1, answer: 3 };
        const list = leavesOf(parts, { lay, answers });
        const name = `${lay} ${answers} ${practice}`;
        assert.equal(filled(list.length, lay), list.length, name);
        const kinds = [...new Set(list.map((x) => x.is))].filter((x) => x !== 'blank');
        const want = {
          end: ['cover', 'pencils', 'practice', 'counts', 'answer', 'days'],
          only: ['pencils', 'counts', 'answer'],
          none: ['cover', 'pencils', 'practice', 'days'],
        }[answers];
        assert.deepEqual(kinds, want, name);
        for (const is of want.filter((x) => parts[x])) {
          const mine = list.filter((x) => x.is === is);
          assert.deepEqual(
            mine.map((x) => x.n + 1),
            upTo(parts[is]),
            name,
          );
        }
        const days = list.filter((x) => x.is === 'days').length;
        const blank = list.filter((x) => x.is === 'blank').length;
        assert.equal(added(list), answers === 'only' ? blank : days - 2, name);
      }
});

/** The verses of a juz, each with a word. */
function versesOf(n) {
  const { from, to } = part(catalogue, 'juz', n);
  const list = [];
  for (let s = from.s; s <= to.s; s++)
    for (
      let a = s === from.s ? from.a : 1;
      a <= (s === to.s ? to.a : catalogue.surahs[s - 1].count);
      a++
    )
      list.push({ s, a });
  return list;
}

test('ranges have every verse of every juz once, none over the end of a surah', () => {
  for (let n = 1; n <= catalogue.juz.length; n++) {
    const verses = versesOf(n);
    let next = 0;
    for (const { s, a, b, from, to } of ranges(verses)) {
      assert.equal(from, next);
      assert.deepEqual(
        [verses[from], verses[to]],
        [
          { s, a },
          { s, a: b },
        ],
      );
      assert.ok(b - a < 13, `${s}:${a}-${b}`);
      next = to + 1;
    }
    assert.equal(next, verses.length);
  }
});

test('ranges count every place once', () => {
  const verses = versesOf(30);
  const hits = verses.map((_, v) => [[{ v, e: { rule: v % 3 } }], []]);
  const counts = countIn(ranges(verses), hits, [0, 1]);
  const sum = (k) => counts.reduce((n, row) => n + row[k], 0);
  const of = (rule) => verses.filter((_, v) => v % 3 === rule).length;
  assert.deepEqual([sum(0), sum(1)], [of(0), of(1)]);
});

test('tables have every row of every rule once, and fit the page', () => {
  for (const room of [
    { width: 128.5, height: 150, name: 41, column: 7.5, row: 5.5, gap: 6 },
    { width: 184, height: 231, name: 41, column: 7.5, row: 5.5, gap: 6 },
  ])
    for (const [rows, rules] of [
      [1, 1],
      [80, 5],
      [80, 50],
      [20, 12],
      [37, 0],
    ]) {
      const seen = new Set();
      for (const page of tables(rows, rules, room)) {
        let wide = -room.gap;
        for (const { rows: r, rules: k } of page) {
          wide += room.gap + room.name + (k[1] - k[0]) * room.column;
          assert.ok((r[1] - r[0] + 2) * room.row <= room.height);
          for (let i = r[0]; i < r[1]; i++)
            for (let j = k[0]; j < k[1]; j++) {
              assert.ok(!seen.has(`${i} ${j}`));
              seen.add(`${i} ${j}`);
            }
        }
        assert.ok(wide <= room.width, `${wide} of ${room.width}`);
      }
      assert.equal(seen.size, rows * rules);
    }
});

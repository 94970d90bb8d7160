// Pencils for some lines: which rules each stands for, what an address says of them, and what is kept.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { set } from './checking.mjs';
import { groups, rules } from './rules.mjs';
import { lengthsOf, pencils, STOPS } from '../node_modules/.out/app/marking/pencils.js';
import { countsOf } from '../node_modules/.out/app/record/entry.js';
import { linesHash, linesKey, parseHash } from '../node_modules/.out/app/share/link.js';

const surahs = Array.from({ length: 114 }, () => ({ la: '', count: 50 }));
const book = { rules: rules.map((r) => ({ ...r })), groups, surahs };
const ids = (list, taught = 'all') =>
  pencils(book, list, taught).map((x) => [x.id, x.rules.map((r) => rules[r].id)]);

test('a rule, the stops, and what is unknown', () => {
  assert.deepEqual(ids(['ghunnah', STOPS, 'nothing']), [
    ['ghunnah', ['ghunnah']],
    [STOPS, []],
  ]);
});

test('a pencil for a family stands for what was taught and has no pencil of its own', () => {
  const taught = new Set(['madd-tabii', 'madd-badal', 'madd-muttasil', 'ghunnah']);
  const [[, own], [, of]] = ids(['madd-badal', 'all-long'], taught);
  assert.deepEqual(own, ['madd-badal']);
  assert.deepEqual([...of].sort(), ['madd-muttasil', 'madd-tabii']);
  assert.deepEqual(ids(['all-meem'], taught), ids(['all-meem']));
});

test('pencils of one colour and shape have keys, others have none', () => {
  const keys = (list) => pencils(book, list, 'all').map((x) => x.key ?? '');
  const family = (id) => rules.find((r) => r.id === id).family;
  assert.equal(family('noon-ikhfa'), family('noon-izhar'));
  assert.deepEqual(keys(['noon-ikhfa', 'qalqalah', STOPS]), ['', '', '']);
  assert.deepEqual(keys(['noon-ikhfa', 'qalqalah', 'noon-izhar']), ['a', '', 'b']);
  const stops = pencils(book, [STOPS], 'all')[0].family;
  const ending = rules.find((r) => r.family === stops).id;
  assert.deepEqual(keys([ending, STOPS]), ['', ''], 'the pencil of stops marks no letters');
});

test('only lengths that can be, as the family holds them', () => {
  const of = (id, s) => lengthsOf(rules, pencils(book, [id], 'all')[0], s);
  assert.deepEqual(of('ghunnah', set), [2]);
  assert.deepEqual(of('madd-munfasil', { ...set, munfasil: 5 }), [5]);
  assert.deepEqual(of('madd-lazim-letter', { ...set, muttasil: 5 }), [4, 6]);
  assert.deepEqual(of('all-long', { ...set, muttasil: 5 }), [2, 4, 5, 6]);
  assert.deepEqual(of('all-long', { ...set, arid: 2, lin: 2 }), [2, 4, 6]);
  assert.deepEqual(of('qalqalah', set), []);
});

const there = { from: { s: 78, a: 1 }, to: { s: 78, a: 3 } };
for (const [name, lines] of [
  ['one pencil', { rule: 'ghunnah', ...there }],
  ['several', { rule: 'ghunnah', also: ['qalqalah', 'all-long', STOPS], ...there }],
  ['none of a new rule', { rule: '', also: [STOPS], ...there }],
])
  test(`an address there and back: ${name}`, () => {
    assert.deepEqual(parseHash(book, linesHash(lines)), { name: 'lines', lines });
    assert.equal(linesKey(lines), linesHash({ ...lines, also: undefined }));
  });

test('an address with a pencil that nobody knows is refused, and names it', () => {
  const got = parseHash(book, '#/lines?rule=ghunnah&also=qalqalah,x1&from=78:1&to=78:3');
  assert.deepEqual([got.name, got.reason, got.vars], ['bad', 'rule', { found: 'x1' }]);
});

const draft = (more, also) => ({
  lines: { rule: 'ghunnah', ...(also && { also }), ...there },
  ...more,
});
const out = (pencil, found, missed, extra = 0) => ({ pencil, found, missed, extra });
const g = (n) => Array(n).fill('ghunnah');
for (const [name, d, all, want] of [
  [
    'one pencil, and what was found before looking again',
    draft({ looked: 1 }),
    [out('ghunnah', g(3), g(1), 2)],
    { found: 3, missed: 1, extra: 2, looked: 1 },
  ],
  [
    'others by rule, and the pencils as they were',
    draft({}, ['all-long', STOPS]),
    [out('ghunnah', g(2), []), out('all-long', ['madd-tabii', 'madd-badal'], ['madd-tabii'], 1)],
    {
      found: 2,
      missed: 0,
      extra: 1,
      also: [
        { rule: 'madd-tabii', found: 1, missed: 1 },
        { rule: 'madd-badal', found: 1, missed: 0 },
      ],
      pencils: ['all-long', STOPS],
    },
  ],
  [
    'on paper, as was said',
    draft({ paper: { ghunnah: 3 } }),
    [out('ghunnah', [], g(4))],
    { found: 3, missed: 1, extra: 0, paper: true },
  ],
  [
    'on paper, and nobody said',
    draft({ paper: {} }),
    [out('ghunnah', [], g(4))],
    { found: 0, missed: 0, extra: 0, paper: true },
  ],
  [
    'on paper, a family of which some were found: nobody knows which',
    draft({ paper: { 'all-long': 1 } }),
    [out('all-long', [], ['madd-tabii', 'madd-badal'])],
    {
      found: 0,
      missed: 0,
      extra: 0,
      also: [
        { rule: 'madd-tabii', found: 0, missed: 0 },
        { rule: 'madd-badal', found: 0, missed: 0 },
      ],
      paper: true,
    },
  ],
  [
    'on paper, the whole family',
    draft({ paper: { 'all-long': 2 } }),
    [out('all-long', [], ['madd-tabii', 'madd-badal'])],
    {
      found: 0,
      missed: 0,
      extra: 0,
      also: [
        { rule: 'madd-tabii', found: 1, missed: 0 },
        { rule: 'madd-badal', found: 1, missed: 0 },
      ],
      paper: true,
    },
  ],
])
  test(`what is kept: ${name}`, () => assert.deepEqual(countsOf(d, all), want));

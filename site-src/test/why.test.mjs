// The sentences that say why: events that differ from the common case of their rule get their own.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { opening, why } from '../node_modules/.out/app/text/explain.js';
import { words } from '../node_modules/.out/app/text/letters.js';
import { detail, details, read, rules } from './rules.mjs';

const text = new Map(
  read('rules-content/text/quran.txt')
    .trimEnd()
    .split('\n')
    .map((l) => l.split('\t')),
);

// Twenty-nine surahs open with letters, 42 with two words of them: RULES.md, known counts.
test('the words of the opening letters, and no others, have no vowel sign', () => {
  const found = [...text].flatMap(([ref, t]) =>
    words(t)
      .filter(opening)
      .map(() => ref),
  );
  assert.equal(found.length, 30);
  assert.equal(new Set(found.map((r) => r.split(':')[0])).size, 29);
});

const S = { muttasil: 4, munfasil: 4, arid: 4, lin: 4 };
const WHEN = { always: 0, join: 1, stop: 2, start: 3 };
for (const [name, ref, w, l, rule, when, more, want] of [
  [
    'the article before a joining hamza',
    '49:11',
    30,
    2,
    'moon-lam',
    'always',
    { cl: 2 },
    /takes a kasra/,
  ],
  [
    'a moon letter',
    '105:1',
    7,
    2,
    'moon-lam',
    'always',
    { cl: 2 },
    /^The letter fa is a moon letter/,
  ],
  [
    'the long vowel of the Name',
    '1:1',
    2,
    3,
    'madd-tabii',
    'join',
    { unwritten: true, count: 2 },
    /not written.*2 counts/,
  ],
  [
    'the Name at a stop',
    '112:1',
    3,
    3,
    'madd-arid',
    'stop',
    { unwritten: true, count: 4 },
    /ha of the name Allah.*4 counts/,
  ],
  [
    'the name of an opening letter',
    '20:1',
    1,
    1,
    'madd-tabii',
    'always',
    { count: 2 },
    /^The name of this letter/,
  ],
  [
    'a long vowel',
    '113:2',
    3,
    2,
    'madd-tabii',
    'always',
    { count: 2 },
    /^This alif is a long vowel/,
  ],
  [
    'meem of the letter lam',
    '2:1',
    1,
    2,
    'meem-idgham',
    'always',
    { unwritten: true, cl: 2, count: 2 },
    /ends in meem/,
  ],
  [
    'noon before waw, open',
    '36:1',
    1,
    2,
    'noon-izhar',
    'join',
    { unwritten: true, cw: 1, cl: 0 },
    /stays clear/,
  ],
  ['noon before a silence', '75:27', 2, 2, 'noon-izhar', 'join', { cw: 1, cl: 0 }, /short silence/],
  ['noon before ha', '111:2', 3, 2, 'noon-izhar', 'always', { cl: 2 }, /clearly before ha\.$/],
  [
    'dal of the letter sad',
    '38:1',
    1,
    1,
    'qalqalah',
    'always',
    { unwritten: true, detail: 'inside' },
    /ends in dal/,
  ],
  ['the calling ya', '109:1', 2, 2, 'madd-munfasil', 'always', { cl: 2, count: 4 }, /calling ya/],
  [
    'a joining hamza after a letter',
    '108:2',
    3,
    2,
    'hamzat-wasl',
    'always',
    {},
    /in the same word/,
  ],
  [
    'a joining hamza read',
    '1:2',
    1,
    1,
    'hamzat-wasl',
    'start',
    { before: true, detail: 'start-fatha' },
    /is read/,
  ],
  [
    'a tanween without alif',
    '56:35',
    3,
    5,
    'madd-iwad',
    'stop',
    { unwritten: true, count: 2 },
    /No alif is written/,
  ],
  [
    'a ra before a raised letter',
    '89:14',
    3,
    6,
    'heavy-ra-sakinah',
    'always',
    { detail: 'raised-after', cl: 6 },
    /but sad, one of the seven heavy letters/,
  ],
]) {
  test(`why: ${name}`, () => {
    const [s, a] = ref.split(':').map(Number);
    const t = text.get(ref);
    const next = text.get(`${s}:${a + 1}`);
    const verses = [t, next]
      .filter(Boolean)
      .map((x, i) => ({ s, a: a + i, text: x, words: words(x), events: [] }));
    const e = {
      w: w - 1,
      l: l - 1,
      rule: rules.findIndex((r) => r.id === rule),
      count: 0,
      when: WHEN[when],
      before: false,
      unwritten: false,
      cw: 0,
      cl: -1,
      ...more,
      detail: detail(more.detail ?? ''),
    };
    assert.match(why({ rules, details, settings: S }, verses, 0, e), want);
  });
}

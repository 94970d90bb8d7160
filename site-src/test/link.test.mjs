import assert from 'node:assert/strict';
import { test } from 'node:test';
import { page } from '../node_modules/.out/app/edition/files.one.js';
import { linesHash, parseHash, parseRef } from '../node_modules/.out/app/share/link.js';

const surahs = Array.from({ length: 114 }, (_, i) => ({
  n: i + 1,
  la: `S${i + 1}`,
  count: i === 77 ? 40 : i === 1 ? 286 : 7,
}));
const c = { surahs, rules: [{ id: 'noon-ikhfa' }, { id: 'ghunnah' }] };
const lines = (rule, s, a, s2, a2) => ({
  name: 'lines',
  lines: { rule, from: { s, a }, to: { s: s2, a: a2 } },
});
const bad = (reason) => reason;

for (const [hash, want] of [
  ['', { name: 'today' }],
  ['#', { name: 'today' }],
  ['#/rules', { name: 'rules' }],
  ['#/rules/', { name: 'rules' }],
  ['#/lines', { name: 'choose', pick: '' }],
  ['#/lines?pick=ghunnah', { name: 'choose', pick: 'ghunnah' }],
  ['#/lines?rule=noon-ikhfa&from=78:1&to=78:5', lines('noon-ikhfa', 78, 1, 78, 5)],
  ['#/lines?rule=NOON-IKHFA&from=78:1&to=78:5', lines('noon-ikhfa', 78, 1, 78, 5)],
  ['#/lines?from=78:1', lines('', 78, 1, 78, 1)],
  ['#/shared?rule=ghunnah&from=78:1', { ...lines('ghunnah', 78, 1, 78, 1), name: 'shared' }],
  ['#/shared?rule=ghunnah', { name: 'choose', pick: 'ghunnah' }],
  ['#/shared?from=78:41', bad('verse')],
  ['#/lines?from=78.1&to=78.5', lines('', 78, 1, 78, 5)],
  ['#/lines?from=78:1-5', lines('', 78, 1, 78, 5)],
  [
    '#/lines?from=2:255:8&to=2:255:24',
    {
      name: 'lines',
      lines: { rule: '', from: { s: 2, a: 255, w: 7 }, to: { s: 2, a: 255, w: 23 } },
    },
  ],
  ['#/lines?from=2:255:8&to=2:255:7', bad('order')],
  ['#/lines?from=2:255:0', bad('from')],
  ['#/lines?from=78:1&to=5', lines('', 78, 1, 78, 5)],
  ['#/lines?from=112', lines('', 112, 1, 112, 7)],
  ['#/lines?from=%D9%A7%D9%A8:%D9%A1&to=%D9%A7%D9%A8:%D9%A3', lines('', 78, 1, 78, 3)],
  ['#/lines?from=112:1&to=114:6', lines('', 112, 1, 114, 6)],
  ['#/lines?from=78%3A1&to=78%3A5&name=x', lines('', 78, 1, 78, 5)],
  ['#/lines?rule=nothing&from=78:1', bad('rule')],
  ['#/lines?rule=noon-ikhfa', { name: 'choose', pick: 'noon-ikhfa' }],
  ['#/lines?to=78:5', bad('from')],
  ['#/lines?from=abc', bad('from')],
  ['#/lines?from=78:1&to=xyz:1', bad('to')],
  ['#/lines?from=115:1', bad('surah')],
  ['#/lines?from=0:1', bad('surah')],
  ['#/lines?from=78:41', bad('verse')],
  ['#/lines?from=78:0&to=78:3', bad('verse')],
  ['#/lines?from=78:5&to=78:1', bad('order')],
  ['#/lines?from=113:1&to=76:3', bad('order')],
  ['#/lines?from=2:1&to=2:286', bad('many')],
  ['#/record', { name: 'record' }],
  ['#/record?session=a1', { name: 'record', session: 'a1' }],
  ['#/record?session=a1&edit=1', { name: 'record', session: 'a1', edit: true }],
  ['#/record?session=%3Cb%3E', { name: 'record', session: '<b>' }],
  ['#/record?session=', { name: 'record' }],
  ['#/record?add=1', { name: 'record', edit: true }],
  ['#/record/?other=1', { name: 'record' }],
  ['#/nowhere', bad('screen')],
  ['#/__proto__', bad('screen')],
  ['#/lines?from=%E0%A4%A', bad('from')],
])
  test(hash || '(empty)', () => {
    const got = parseHash(c, hash);
    if (typeof want === 'string') assert.deepEqual([got.name, got.reason], ['bad', want]);
    else assert.deepEqual(got, want);
  });

test('what is written is read back', () => {
  const l = { rule: 'ghunnah', from: { s: 78, a: 2 }, to: { s: 78, a: 9 } };
  assert.deepEqual(parseHash(c, linesHash(l)), { name: 'lines', lines: l });
  const words = { rule: '', from: { s: 2, a: 255, w: 7 }, to: { s: 2, a: 256 } };
  assert.deepEqual(parseHash(c, linesHash(words)), { name: 'lines', lines: words });
});

test('anything at all is answered and never throws', () => {
  const parts = [
    '#',
    '/',
    'lines',
    '?',
    'from=',
    'to=',
    'rule=',
    '78',
    ':',
    '-',
    '.',
    '&',
    '%',
    '\u0660',
    'ghunnah',
    ' ',
    '\0',
    '999',
  ];
  let seed = 7;
  const pick = () => parts[(seed = (seed * 1103515245 + 12345) % 2147483648) % parts.length];
  for (let i = 0; i < 20000; i++) {
    const hash = Array.from({ length: 1 + (i % 12) }, pick).join('');
    const got = parseHash(c, hash);
    if (got.name === 'lines') assert.ok(got.lines.from.a >= 1 && got.lines.to.a >= 1, hash);
  }
});

test('pages of the one file are screens, with the place in them', () => {
  for (const [path, name, at] of [
    ['about.html', 'about.html', ''],
    ['about.html#cautions', 'about.html', 'cautions'],
    ['lessons/glossary.html#t-sakin', 'lessons/glossary.html', 't-sakin'],
    [
      'lessons/ra.html#/lines?rule=ra&from=78:1&to=78:2',
      'lessons/ra.html',
      '/lines?rule=ra&from=78:1&to=78:2',
    ],
    ['licences/CC-BY-SA-4.0.txt', 'licences/CC-BY-SA-4.0.txt', ''],
  ])
    assert.deepEqual(parseHash(c, page(path)), { name: 'read', page: name, at }, path);
  for (const odd of [
    '',
    '//host/x.html',
    'https://host/x.html',
    '../x.html',
    'a/b.html',
    'sw.js',
    '/about.html',
  ])
    assert.equal(parseHash(c, page(odd)).name, 'bad', odd);
});

test('places', () => {
  assert.deepEqual(parseRef('78:1'), { s: 78, a: 1 });
  assert.deepEqual(parseRef(' 78 : 1 '), { s: 78, a: 1 });
  assert.deepEqual(parseRef('78:1:2'), { s: 78, a: 1, w: 1 });
  for (const x of ['', '78:', ':1', '78:1:0', '78:1:1:1', '1234:1', '-1:1', '1e2:1'])
    assert.equal(parseRef(x), undefined, x);
});

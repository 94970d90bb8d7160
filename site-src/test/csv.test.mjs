// The table for spreadsheets, read back by a parser of RFC 4180 written for tests.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { cellOf, csv } from '../node_modules/.out/app/record/csv.js';
import { c, note, rows, session } from './csv.mjs';
import { random as numbers } from './random.mjs';

test('it begins with the byte order mark of UTF-8', () => {
  const bytes = new TextEncoder().encode(csv(c, []));
  assert.deepEqual([...bytes.slice(0, 3)], [0xef, 0xbb, 0xbf]);
});

test('a row for each session below the names', () => {
  const got = rows(
    {},
    {
      rule: '',
      found: 0,
      missed: 0,
      to: { s: 79, a: 2, w: 3 },
      outcome: 'much',
      helped: true,
      paper: true,
      together: true,
      minutes: 0,
    },
    {
      also: [
        { rule: 'b', found: 2, missed: 2 },
        { rule: 'gone', found: 0, missed: 0 },
      ],
      looked: 2,
      minutes: 12,
      to: { s: 78, a: 12 },
      note: 'two\nlines, "quoted"',
    },
  );
  assert.deepEqual(got, [
    [
      'Day',
      'Surah',
      'Verses',
      'Rules',
      'Found',
      'Of',
      'Found before looking again',
      'How it went',
      'Answer shown',
      'On paper',
      'Read together',
      'Minutes',
      'Note',
    ],
    [
      '2026-03-01',
      'S78',
      '12–16',
      'Rule, with a comma',
      '3',
      '4',
      '',
      'Read alone',
      '',
      '',
      '',
      '',
      '',
    ],
    [
      '2026-03-01',
      'S78 – S79',
      '12–2 (word 4)',
      '',
      '',
      '',
      '',
      'With a lot of help',
      'yes',
      'yes',
      'yes',
      '0',
      '',
    ],
    [
      '2026-03-01',
      'S78',
      '12',
      'Rule, with a comma, B, and gone',
      '5',
      '8',
      '2',
      'Read alone',
      '',
      '',
      '',
      '12',
      'two\nlines, "quoted"',
    ],
  ]);
});

test('hostile notes come back as they were', () => {
  for (const text of [
    'a,b',
    'a"b',
    '"',
    '""',
    'a\r\nb',
    'a\nb',
    'a\rb',
    ',',
    ' blanks ',
    'نون',
    '😀',
    'a;b',
    '\u202eback',
    "'",
    'x=1',
    'a\tb',
    '0042',
  ])
    assert.equal(note(text), text, JSON.stringify(text));
});

test('no cell counts as a formula', () => {
  for (const text of [
    '=1+1',
    '+1',
    '-1',
    '@SUM(A1)',
    '\t=1',
    '\r=1',
    '\n=1',
    ' =1',
    '＝1',
    '＋1',
    '－1',
    '＠x',
    '=HYPERLINK("http://x","y")',
    '-',
  ])
    assert.equal(note(text), `'${text}`, JSON.stringify(text));
  assert.equal(cellOf(-3), '-3'); // a number of ours, not somebody's words
});

test('what UTF-8 or a program cannot hold is replaced', () => {
  assert.equal(note('a\0b'), 'ab');
  assert.equal(note('\ud800x'), '\ufffdx');
  assert.equal(note('\0=1'), "'=1");
});

test('no name of a child is in it', () =>
  assert.ok(!csv(c, [{ ...session, learner: 'Amina' }]).includes('Amina')));

test('many random notes come back', () => {
  const { below: random } = numbers(1);
  const signs = ['"', ',', '\r', '\n', ';', 'a', ' ', '=', '-', "'", 'ن', '\t'];
  for (let i = 0; i < 3000; i++) {
    const text = Array.from({ length: random(8) }, () => signs[random(signs.length)]).join('');
    const got = note(text);
    assert.ok(got === text || got === `'${text}`, JSON.stringify([text, got]));
    assert.doesNotMatch(got, /^\s*[=\-]/, JSON.stringify(text));
  }
});

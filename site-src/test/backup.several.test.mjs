// Backup files of sessions that marked several rules, looked again, or marked on paper.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { BackupError, parse, write } from '../node_modules/.out/app/record/backup.js';

import { t, session, records, file } from './records.mjs';

const several = {
  ...session,
  marks: [...session.marks, { v: 1, w: 0, l: 2, count: 0, pencil: 'all-long' }],
  also: [{ rule: 'madd-tabii', found: 3, missed: 1 }],
  pencils: ['all-long', 'stops'],
  looked: 2,
  paper: true,
};
test('a session that marked several rules is read back whole', () => {
  const all = { ...records, sessions: [several] };
  assert.deepEqual(parse(write(all, t)), all);
});

const tally = { rule: 'ra', found: 1, missed: 0 };
for (const [name, more] of [
  ['rules that are no list', { also: 'ra' }],
  ['a rule that is none', { also: [null] }],
  ['markup for a rule', { also: [{ ...tally, rule: '<b>' }] }],
  ['no rule', { also: [{ ...tally, rule: '' }] }],
  ['a rule without places', { also: [{ rule: 'ra' }] }],
  ['a negative number of places', { also: [{ ...tally, found: -1 }] }],
  ['half a place', { also: [{ ...tally, missed: 0.5 }] }],
  ['places without end', { also: [{ ...tally, found: 1e9 }] }],
  ['a rule with more than that', { also: [{ ...tally, more: 1 }] }],
  ['rules without end', { also: Array(100).fill(tally) }],
  ['pencils that are no list', { pencils: 'stops' }],
  ['a pencil that is no name', { pencils: [7] }],
  ['markup for a pencil', { pencils: ['<img>'] }],
  ['pencils without end', { pencils: Array(100).fill('ra') }],
  ['a negative first look', { looked: -1 }],
  ['a first look in words', { looked: '3' }],
  ['a first look without end', { looked: 5001 }],
  ['paper that is neither', { paper: 'yes' }],
  ['paper with numbers', { paper: { ghunnah: 3 } }],
  ['markup for the pencil of a mark', { marks: [{ v: 0, w: 0, l: 1, count: 0, pencil: '<b>' }] }],
  ['no pencil of a mark', { marks: [{ v: 0, w: 0, l: 1, count: 0, pencil: null }] }],
])
  test(`refuses a session with ${name}`, () =>
    assert.throws(
      () => parse(file({ sessions: [{ ...several, ...more }] })),
      (e) => e instanceof BackupError && e.code === 'damaged' && e.where === 'sessions, 1',
    ));

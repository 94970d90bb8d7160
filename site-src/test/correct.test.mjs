// What a correction changes, and a session that is added.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { added, changes, timeOn, undone } from '../node_modules/.out/app/record/correct.js';
import { noteIn, read } from '../node_modules/.out/app/record/typed.js';
import { patched } from '../node_modules/.out/app/store/patch.js';
import { isValid } from '../node_modules/.out/app/store/validate.js';
import { c, say, several, TODAY } from './form.mjs';

test('a correction changes what was said and nothing else', () => {
  assert.deepEqual(changes(several, say({ outcome: 'much' })), { outcome: 'much' });
  assert.deepEqual(changes(several, say({ minutes: '', note: ' ' })), {
    minutes: undefined,
    note: undefined,
  });
  assert.deepEqual(changes(several, say({ minutes: '٤٥' })), { minutes: 45 });
  const more = [
    { rule: 'ghunnah', found: '4', of: '4' },
    { rule: 'qalqalah', found: '', of: '' },
  ];
  assert.deepEqual(changes(several, say({ rules: more })), {
    found: 4,
    missed: 0,
    also: [{ rule: 'qalqalah', found: 0, missed: 0 }],
  });
  const fewer = [{ rule: 'ghunnah', found: '1', of: '4' }];
  assert.deepEqual(changes(several, say({ rules: fewer })), {
    found: 1,
    missed: 3,
    also: undefined,
    pencils: ['stops', 'all-long'],
    looked: undefined, // more than were found at all
  });
  assert.deepEqual(changes(several, say({ paper: true })), { paper: true, looked: undefined });
});

test('another rule of the lines leaves each mark with its pencil', () => {
  const now = say({ rules: [{ rule: 'qalqalah', found: '2', of: '2' }] });
  const after = patched(several, changes(several, now));
  assert.equal(after.rule, 'qalqalah');
  assert.deepEqual(after.pencils, ['stops', 'all-long']);
  assert.deepEqual(after.marks, [
    { v: 0, w: 0, l: 1, count: 2, pencil: 'ghunnah' },
    { v: 1, w: 0, l: 1, count: 0 },
  ]);
  assert.ok(isValid('sessions', after, true));
});

test('undo brings back what was there before', () => {
  for (const patch of [
    { outcome: 'much' },
    { rules: [] },
    { rules: [{ rule: 'sakt', found: '1', of: '2' }] },
    { day: '2026-01-31', note: 'x', minutes: '1', paper: true },
    { note: '', minutes: '' },
  ]) {
    const change = changes(several, say(patch));
    const after = patched(several, change);
    assert.ok(isValid('sessions', after, true), JSON.stringify(after));
    assert.notDeepEqual(after, several);
    assert.deepEqual(patched(after, undone(several, change)), several);
  }
});

test('another day takes the time along, never past now', () => {
  const now = new Date('2026-03-05T12:00:00Z');
  const at = timeOn('2026-01-31', '2026-03-01T10:30:00.000Z', now);
  assert.equal(new Date(at).getDate(), 31);
  assert.equal(new Date(at).getHours(), new Date('2026-03-01T10:30:00.000Z').getHours());
  assert.equal(timeOn('2026-03-05', '2026-03-01T23:30:00.000Z', now) <= now.toISOString(), true);
});

test('a session that is added is a valid one', () => {
  const typed = {
    day: '2026-03-01',
    from: { s: 114, a: '١' },
    to: { s: 114, a: '۶' },
    rules: [
      { rule: 'ghunnah', found: '', of: '' },
      { rule: 'qalqalah', found: '3', of: '4' },
    ],
    outcome: 'some',
    paper: true,
    minutes: '',
    note: 'at\tgrandmother’s\r\nhouse\u0007',
  };
  const got = added('n1', 'a1', read(c, typed, undefined, TODAY), new Date('2026-03-05T12:00:00Z'));
  assert.ok(isValid('sessions', got, true), JSON.stringify(got));
  assert.deepEqual(
    { ...got, at: '' },
    {
      id: 'n1',
      learner: 'a1',
      day: '2026-03-01',
      at: '',
      rule: 'ghunnah',
      from: { s: 114, a: 1 },
      to: { s: 114, a: 6 },
      found: 0,
      missed: 0,
      also: [{ rule: 'qalqalah', found: 3, missed: 1 }],
      pencils: ['qalqalah'],
      marks: [],
      stops: [],
      extra: 0,
      helped: false,
      outcome: 'some',
      paper: true,
      note: 'at grandmother’s\nhouse',
    },
  );
  assert.equal(noteIn('\u0000'), '');
});

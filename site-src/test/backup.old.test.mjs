// Backup files of earlier versions and those saved without the app, and what reading back adds.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { BackupError, parse, write } from '../node_modules/.out/app/record/backup.js';
import { LARGEST } from '../node_modules/.out/app/record/largest.js';
import { change, merge } from '../node_modules/.out/app/record/merge.js';

import { t, learner, session, taught, records, none, file } from './records.mjs';

// The file was saved by the first release, with two sessions on words whose letters are now counted
// otherwise.
test('a file of version 1 keeps the meaning of its marks', () => {
  const old = readFileSync(new URL('data/backup-1.json', import.meta.url), 'utf8');
  const was = JSON.parse(old);
  const now = parse(old);
  assert.deepEqual(now.learners, was.learners);
  assert.deepEqual(now.taught, was.taught);
  const marks = (list, rule) => list.find((s) => s.rule === rule).marks;
  assert.deepEqual(marks(was.sessions, 'madd-badal'), [
    { v: 0, w: 0, l: 3, count: 2 },
    { v: 0, w: 0, l: 5, count: 0 },
  ]);
  assert.deepEqual(marks(now.sessions, 'madd-badal'), [
    { v: 0, w: 0, l: 4, count: 2 },
    { v: 0, w: 0, l: 6, count: 0 },
  ]); // the alif, the ra
  assert.deepEqual(marks(was.sessions, 'heavy-letter'), [
    { v: 0, w: 1, l: 5, count: 0 },
    { v: 0, w: 1, l: 4, count: 0 },
  ]);
  assert.deepEqual(marks(now.sessions, 'heavy-letter'), [
    { v: 0, w: 1, l: 6, count: 0 },
    { v: 0, w: 1, l: 4, count: 0 },
  ]); // the kha, the hamza
  const again = parse(write(now, t));
  assert.deepEqual(again, now); // saved anew, it is of the latest version and is not moved twice
});

/** What reading a file writes. */
const written = (mine, file) => {
  const { removed, ...add } = change(mine, merge(mine, file));
  assert.deepEqual(removed, []);
  return add;
};

/** A file as offline/rescue.ts writes it. */
const rescued = (patch) =>
  JSON.stringify({
    format: 'sutur-backup',
    v: 4,
    saved: t,
    unchecked: true,
    ...none,
    ...records,
    ...patch,
  });
const long = '1970-01-01T00:00:00.000Z';

test('a file saved unchecked: what is damaged is set aside, the rest is read', () => {
  const bad = { ...session, id: 's2', from: { s: 78, a: 99 } };
  const worse = { ...taught, rule: 'x y' };
  const got = parse(rescued({ sessions: [bad, session, null], taught: [worse, taught] }));
  assert.deepEqual(got, {
    ...records,
    damaged: [
      { table: 'sessions', record: bad },
      { table: 'sessions', record: null },
      { table: 'taught', record: worse },
    ],
  });
  assert.deepEqual(written(none, got), got);
  assert.deepEqual(written(got, got), none); // what is set aside already is not set aside again
});

test('a file saved unchecked: unknown fields go, as when a backup is saved', () => {
  assert.deepEqual(parse(rescued({ sessions: [{ ...session, later: 1 }] })), records);
});

test('a file saved unchecked: of a damaged learner goes on what is whole, and never over that of the device', () => {
  const bad = { ...learner, place: { s: 115, a: 1 }, updated: '2027-01-01T00:00:00.000Z' };
  const got = parse(rescued({ learners: [bad] }));
  assert.deepEqual(got.learners, [{ ...learner, place: { s: 78, a: 1 }, updated: long }]);
  assert.deepEqual(got.damaged, [{ table: 'learners', record: bad }]);
  assert.deepEqual(written(records, got), { ...none, damaged: got.damaged });
});

test('a file saved unchecked: what belongs to a lost learner leads to one without a name', () => {
  for (const learners of [[], [null], [{ ...learner, id: 7 }]]) {
    const got = parse(rescued({ learners }));
    assert.deepEqual(
      got.learners.map((l) => [l.id, l.name, l.updated]),
      [['a1', '', long]],
    );
    assert.deepEqual([got.sessions, got.taught], [[session], [taught]]);
    assert.equal(got.damaged.length, learners.length);
  }
});

for (const [name, text, code] of [
  ['cut off', rescued().slice(0, -9), 'not-json'],
  ['without a table', rescued({ taught: undefined }), 'damaged'],
  ['with a table that is no list', rescued({ sessions: {} }), 'damaged'],
  ['of a later version', rescued({ v: 7 }), 'newer'],
  ['that only seems to be one', rescued({ unchecked: 'true', sessions: [null] }), 'damaged'],
])
  test(`refuses a file saved unchecked ${name}`, () =>
    assert.throws(
      () => parse(text),
      (e) => e instanceof BackupError && e.code === code,
    ));

test('a file saved unchecked by version 1 keeps the meaning of its marks', () => {
  const old = JSON.parse(readFileSync(new URL('data/backup-1.json', import.meta.url), 'utf8'));
  const got = parse(
    JSON.stringify({
      ...old,
      unchecked: true,
      sessions: [...old.sessions, { ...old.sessions[0], id: '' }],
    }),
  );
  assert.deepEqual([got.sessions, got.damaged.length], [parse(JSON.stringify(old)).sessions, 1]);
});

test('files of earlier versions are read', () => {
  for (const v of [2, 3, 4, 5]) assert.deepEqual(parse(file({ v })), records);
});

test('a record of twenty years can be read back', () => {
  const marks = Array.from({ length: 40 }, (_, i) => ({ v: 3, w: i, l: 2, count: 2 }));
  const text = write({ ...records, sessions: Array(20_000).fill({ ...session, marks }) }, t);
  assert.ok(Buffer.byteLength(text) < LARGEST);
});

// Backup files: what is saved is read back, and what is no backup is refused.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { BackupError, parse, write } from '../node_modules/.out/app/record/backup.js';

import { t, learner, session, taught, records, none, file } from './records.mjs';

test('what is saved is read back', () => assert.deepEqual(parse(write(records, t)), records));

test('what is chosen for a learner is read back, and what is no choice is refused', () => {
  const chosen = {
    ...records,
    learners: [
      {
        ...learner,
        load: 'many',
        direction: 'backwards',
        order: ['ra'],
        ready: { sessions: 2, days: 2, percent: 80 },
      },
    ],
  };
  assert.deepEqual(parse(write(chosen, t)), chosen);
  assert.throws(
    () => parse(file({ learners: [{ ...learner, load: 'most' }] })),
    (e) => e instanceof BackupError && e.code === 'damaged' && e.where === 'learners, 1',
  );
});

for (const [name, text, code] of [
  ['empty', '', 'not-json'],
  ['cut off', write(records, t).slice(0, -40), 'not-json'],
  ['null', 'null', 'foreign'],
  ['a list', '[]', 'foreign'],
  ['another program', '{"format":"other","v":1}', 'foreign'],
  ['a later version', file({ v: 7 }), 'newer'],
  ['a version that never was', file({ v: 0 }), 'damaged'],
  ['no version', file({ v: undefined }), 'damaged'],
  ['no sessions', file({ sessions: undefined }), 'damaged'],
  ['a session without an id', file({ sessions: [{ ...session, id: undefined }] }), 'damaged'],
  ['an outcome unknown', file({ sessions: [{ ...session, outcome: 'best' }] }), 'damaged'],
  [
    'a surah past the last',
    file({ sessions: [{ ...session, from: { s: 115, a: 1 } }] }),
    'damaged',
  ],
  [
    'a mark that is no number',
    file({ sessions: [{ ...session, marks: [{ v: 0, w: 0, l: 'x', count: 0 }] }] }),
    'damaged',
  ],
  ['a day that is none', file({ sessions: [{ ...session, day: '2026-13-99' }] }), 'damaged'],
  [
    'a verse past the last of its surah',
    file({ sessions: [{ ...session, from: { s: 108, a: 286 }, to: { s: 108, a: 286 } }] }),
    'damaged',
  ],
  [
    'a day that is not in the calendar',
    file({ sessions: [{ ...session, day: '2026-02-30' }] }),
    'damaged',
  ],
  [
    'a leap day of another year',
    file({ sessions: [{ ...session, day: '2026-02-29' }] }),
    'damaged',
  ],
  [
    'an hour that is none',
    file({ sessions: [{ ...session, at: '2026-03-01T24:00:00.000Z' }] }),
    'damaged',
  ],
  [
    'from after to',
    file({ sessions: [{ ...session, from: { s: 78, a: 5 }, to: { s: 78, a: 1 } }] }),
    'damaged',
  ],
  [
    'from after to within a verse',
    file({ sessions: [{ ...session, from: { s: 78, a: 5, w: 3 }, to: { s: 78, a: 5, w: 2 } }] }),
    'damaged',
  ],
  [
    'a place past the last verse',
    file({ learners: [{ ...learner, place: { s: 1, a: 8 } }] }),
    'damaged',
  ],
  [
    'an unknown field of megabytes',
    file({ sessions: [{ ...session, more: 'x'.repeat(3 << 20) }] }),
    'damaged',
  ],
  [
    'an unknown field of a mark',
    file({ sessions: [{ ...session, marks: [{ v: 0, w: 0, l: 0, count: 0, x: 1 }] }] }),
    'damaged',
  ],
  ['an unknown table', file({ more: [] }), 'damaged'],
  ['a list for a place', file({ learners: [{ ...learner, place: [78, 1] }] }), 'damaged'],
  ['a session of nobody', file({ sessions: [{ ...session, learner: 'zz' }] }), 'damaged'],
  ['a rule of nobody', file({ taught: [{ ...taught, learner: 'zz' }] }), 'damaged'],
  ['a name too long', file({ learners: [{ ...learner, name: 'x'.repeat(1000) }] }), 'damaged'],
  ['markup for an id', file({ learners: [{ ...learner, id: '<b>' }] }), 'damaged'],
])
  test(`refuses ${name}`, () =>
    assert.throws(
      () => parse(text),
      (e) => e instanceof BackupError && e.code === code,
    ));

test('what was set aside goes into the file and is not read back', () => {
  const cyclic = {};
  cyclic.self = cyclic;
  const text = write(
    {
      ...records,
      damaged: [
        { table: 'sessions', record: { id: 's9', from: 'x' } },
        { table: 'taught', record: 10n },
        { table: 'drafts', record: cyclic },
      ],
    },
    t,
  );
  assert.deepEqual(JSON.parse(text).damaged, [
    { table: 'sessions', record: { id: 's9', from: 'x' } },
    { table: 'taught', record: '10' },
    { table: 'drafts', record: '[object Object]' },
  ]);
  assert.deepEqual(parse(text), records);
});

test('a file that is saved is always accepted: what belongs to nobody is set aside, unknown fields go', () => {
  const text = write(
    {
      ...records,
      sessions: [session, { ...session, id: 's2', learner: 'zz' }],
      taught: [{ ...taught, later: 1 }],
    },
    t,
  );
  assert.deepEqual(parse(text), records);
  assert.equal(JSON.parse(text).damaged.length, 1);
});

test('a leap day is in the calendar', () =>
  assert.equal(parse(file({ sessions: [{ ...session, day: '2028-02-29' }] })).sessions.length, 1));

test('a damaged record is named', () => {
  assert.throws(
    () => parse(file({ sessions: [session, { ...session, found: -1 }] })),
    (e) => e.where === 'sessions, 2',
  );
});

test('every single byte changed is refused or is still whole records', () => {
  const whole = write(records, t);
  for (let i = 0; i < whole.length; i++) {
    try {
      const got = parse(whole.slice(0, i) + '\u0001' + whole.slice(i + 1));
      assert.equal(got.sessions.length, 1);
    } catch (e) {
      assert.ok(e instanceof BackupError, String(e));
    }
  }
});

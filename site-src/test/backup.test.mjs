import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import {
  additions,
  BackupError,
  LARGEST,
  parse,
  write,
} from '../node_modules/.out/app/record/backup.js';

const t = '2026-03-01T10:00:00.000Z';
const learner = {
  id: 'a1',
  name: 'Demo',
  place: { s: 78, a: 1 },
  settled: true,
  made: t,
  updated: t,
};
const session = {
  id: 's1',
  learner: 'a1',
  day: '2026-03-01',
  at: t,
  rule: 'ghunnah',
  from: { s: 78, a: 1 },
  to: { s: 78, a: 5 },
  marks: [{ v: 0, w: 0, l: 1, count: 2 }],
  stops: [[0, 1, false]],
  found: 1,
  missed: 0,
  extra: 0,
  helped: false,
  outcome: 'alone',
};
const taught = { learner: 'a1', rule: 'ghunnah', since: '2026-03-01', known: '' };
const records = { learners: [learner], sessions: [session], taught: [taught], damaged: [] };
const none = { learners: [], sessions: [], taught: [], damaged: [] };
const file = (patch) => JSON.stringify({ ...JSON.parse(write(records, t)), ...patch });

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
  ['a later version', file({ v: 5 }), 'newer'],
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
  assert.deepEqual(additions(none, got), got);
  assert.deepEqual(additions(got, got), none); // what is set aside already is not set aside again
});

test('a file saved unchecked: unknown fields go, as when a backup is saved', () => {
  assert.deepEqual(parse(rescued({ sessions: [{ ...session, later: 1 }] })), records);
});

test('a file saved unchecked: of a damaged learner goes on what is whole, and never over that of the device', () => {
  const bad = { ...learner, place: { s: 115, a: 1 }, updated: '2027-01-01T00:00:00.000Z' };
  const got = parse(rescued({ learners: [bad] }));
  assert.deepEqual(got.learners, [{ ...learner, place: { s: 78, a: 1 }, updated: long }]);
  assert.deepEqual(got.damaged, [{ table: 'learners', record: bad }]);
  assert.deepEqual(additions(records, got), { ...none, damaged: got.damaged });
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
  ['of a later version', rescued({ v: 5 }), 'newer'],
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
  for (const v of [2, 3]) assert.deepEqual(parse(file({ v })), records);
});

test('a record of twenty years can be read back', () => {
  const marks = Array.from({ length: 40 }, (_, i) => ({ v: 3, w: i, l: 2, count: 2 }));
  const text = write({ ...records, sessions: Array(20_000).fill({ ...session, marks }) }, t);
  assert.ok(Buffer.byteLength(text) < LARGEST);
});

test('reading back adds everything once', () => {
  assert.deepEqual(additions(none, records), records);
  assert.deepEqual(additions(records, records), none);
});

test('the later learner stays', () => {
  const later = { ...learner, name: 'Demo two', updated: '2026-04-01T10:00:00.000Z' };
  assert.deepEqual(additions(records, { ...records, learners: [later] }).learners, [later]);
  assert.deepEqual(additions({ ...records, learners: [later] }, records).learners, []);
});

test('the earlier date of a rule stays, and known is not lost', () => {
  const early = { ...taught, since: '2026-01-05', known: '' };
  const known = { ...taught, known: '2026-03-09' };
  assert.deepEqual(
    additions({ ...records, taught: [known] }, { ...records, taught: [early] }).taught,
    [{ ...taught, since: '2026-01-05', known: '2026-03-09' }],
  );
  assert.deepEqual(
    additions({ ...records, taught: [early] }, { ...records, taught: [known] }).taught,
    [{ ...taught, since: '2026-01-05', known: '2026-03-09' }],
  );
});

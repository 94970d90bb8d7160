// Ten thousand files that a hand, a disk or a stranger may have changed: each is read as whole records
// or refused with a reason, and what is read can be saved and read once more.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { BackupError, parse, write } from '../node_modules/.out/app/record/backup.js';
import { change, merge } from '../node_modules/.out/app/record/merge.js';
import { preview } from '../node_modules/.out/app/record/preview.js';
import { isValid } from '../node_modules/.out/app/store/validate.js';

import { file, learner, none, records, session, t, taught } from './records.mjs';
import { random } from './random.mjs';

const full = {
  ...records,
  learners: [
    {
      ...learner,
      colour: 3,
      archived: t,
      own: { size: 1.4, muttasil: 5, lin: 2, counting: 'never', large: true },
      work: {
        lines: { rule: 'ghunnah', also: ['stops'], from: { s: 78, a: 1 }, to: { s: 78, a: 5 } },
        since: '2026-03-01',
        times: 3,
        say: 'Slowly, please.',
      },
    },
    { ...learner, id: 'a2', name: '' },
  ],
  sessions: [
    { ...session, updated: t, minutes: 12, note: 'At home.', together: true },
    { ...session, id: 's2', learner: 'a2', paper: true, marks: [], stops: [] },
  ],
  taught: [
    { ...taught, updated: t },
    { ...taught, learner: 'a2', since: '', updated: t },
  ],
  gone: [{ id: 's3', learner: 'a1', at: t }],
};

test('everything that can be kept is read back', () => {
  const got = parse(write(full, t));
  assert.deepEqual(got, full);
  assert.deepEqual(change(full, merge(full, got)), { ...none, removed: [] });
});

const ODD = [
  null,
  true,
  -1,
  0.5,
  1e308,
  '',
  'x',
  '<img src=x onerror=alert(1)>',
  '\u202e',
  '2026-02-30',
  'constructor',
  [],
  {},
  [[]],
  { s: 1, a: 1 },
  'x'.repeat(3000),
];

/** The file with one of its values, fields or list items changed, doubled, or taken away. */
function mutated(r, value) {
  const places = [];
  (function walk(x) {
    if (typeof x !== 'object' || x === null) return;
    for (const key of Object.keys(x)) {
      places.push([x, key]);
      walk(x[key]);
    }
  })(value);
  const [x, key] = r.of(places);
  const how = r.below(5);
  if (how === 0) delete x[key];
  else if (how === 1) x[r.of(['__proto__', 'toString', 'also', 'more', 'id'])] = r.of(ODD);
  else if (how === 2) [x[key], x[r.of(Object.keys(x))]] = [x[r.of(Object.keys(x))], x[key]];
  else if (how === 3 && Array.isArray(x)) x.push(structuredClone(r.of(x)));
  else x[key] = r.of(ODD);
  return value;
}

function damagedText(r, text) {
  const at = r.below(text.length);
  const how = r.below(3);
  if (how === 0) return text.slice(0, at);
  if (how === 1) return text.slice(0, at) + text.slice(at + 1 + r.below(20));
  return text.slice(0, at) + String.fromCharCode(r.below(0x3000)) + text.slice(at + 1);
}

function read(text) {
  try {
    return parse(text);
  } catch (e) {
    assert.ok(e instanceof BackupError, `${e}\n${text.slice(0, 400)}`);
    return undefined;
  }
}

test('ten thousand changed files', () => {
  const r = random(5);
  const whole = write(full, t);
  const before = JSON.stringify(full);
  let taken = 0;
  for (let i = 0; i < 10_000; i++) {
    let text = whole;
    if (r.below(3)) {
      let value = JSON.parse(whole);
      if (!r.below(4)) value.unchecked = true;
      for (let n = r.below(3); n >= 0; n--) value = mutated(r, value);
      text = JSON.stringify(value) ?? '';
    } else text = damagedText(r, whole);
    const got = read(text);
    if (!got) continue;
    taken++;
    const known = new Set(got.learners.map((x) => x.id));
    for (const name of ['learners', 'sessions', 'taught', 'gone'])
      for (const x of got[name]) {
        assert.ok(isValid(name, x, true), `${name}\n${text}`);
        assert.ok(name === 'learners' || known.has(x.learner), text);
      }
    preview(full, got);
    const both = merge(full, got);
    const again = parse(write({ ...both, damaged: [] }, t));
    assert.equal(again.sessions.length, both.sessions.length, text);
  }
  assert.equal(JSON.stringify(full), before);
  assert.equal({}.more, undefined);
  assert.ok(taken > 500 && taken < 9500, `${taken} were read`);
});

const deep = `${'['.repeat(1e4)}${']'.repeat(1e4)}`;

for (const [name, text] of [
  ['nested a million times', '['.repeat(1e6)],
  ['nested and closed', `${'['.repeat(1e5)}${']'.repeat(1e5)}`],
  ['lists nested in a name', write(records, t).replace('"Demo"', deep)],
  ['a prototype', '{"__proto__":{"format":"sutur-backup","v":6,"learners":[],"sessions":[]}}'],
  ['a name that is code', file({ learners: [{ ...learner, place: 'javascript:alert(1)' }] })],
  ['a colour that is none', file({ learners: [{ ...learner, colour: 8 }] })],
  ['a setting that is none', file({ learners: [{ ...learner, own: { muttasil: 3 } }] })],
  ['another setting', file({ learners: [{ ...learner, own: { theme: 'dark' } }] })],
  ['work without lines', file({ learners: [{ ...learner, work: { times: 3 } }] })],
  ['minutes without end', file({ sessions: [{ ...session, minutes: 601 }] })],
  ['a note without end', file({ sessions: [{ ...session, note: 'x'.repeat(501) }] })],
  ['removed sessions of nobody', file({ gone: [{ id: 's9', learner: 'zz', at: t }] })],
  ['removed sessions that are no list', file({ gone: {} })],
])
  test(`refuses ${name}`, () => assert.equal(read(text), undefined));

// The form for a session: what is typed, and what is refused.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { added, changes } from '../node_modules/.out/app/record/correct.js';
import { dayIn, numberIn, read, typedOf } from '../node_modules/.out/app/record/typed.js';
import { patched } from '../node_modules/.out/app/store/patch.js';
import { isValid } from '../node_modules/.out/app/store/validate.js';
import { c, say, several, TODAY } from './form.mjs';
import { session } from './records.mjs';
import { random as numbers } from './random.mjs';

const bad = (patch, was) => {
  const got = say(patch, was);
  assert.ok(Array.isArray(got), JSON.stringify(got));
  return got.map((p) => `${p.field}: ${p.key}`);
};

test('figures of three scripts are numbers, and nothing else is', () => {
  for (const [typed, want] of [
    ['12', 12],
    [' 12 ', 12],
    ['٤٢', 42],
    ['۴۲', 42],
    ['\u200f٤٢\u200e', 42],
    ['007', 7],
    ['1e3', undefined],
    ['-1', undefined],
    ['1.5', undefined],
    ['٫5', undefined],
    ['１２', undefined],
    ['', undefined],
    ['9'.repeat(400), undefined],
    ['0x10', undefined],
  ])
    assert.equal(numberIn(typed), want, JSON.stringify(typed.slice(0, 20)));
});

test('days', () => {
  for (const [typed, want] of [
    ['2026-03-01', '2026-03-01'],
    ['2026/3/1', '2026-03-01'],
    ['2026.03.1', '2026-03-01'],
    ['٢٠٢٦-٠٣-٠١', '2026-03-01'],
    ['۲۰۲۶/۳/۱', '2026-03-01'],
    ['2024-02-29', '2024-02-29'],
    ['2026-02-29', undefined],
    ['2026-13-01', undefined],
    ['1-3-2026', undefined],
    ['0000-01-01', undefined],
    ['', undefined],
    ['2026-03-01T10:00', undefined],
  ])
    assert.equal(dayIn(typed), want, typed);
});

const { looked: _, ...first } = several;
const onPaper = { ...first, paper: true };

test('what a session says comes back from the form unchanged', () => {
  for (const s of [
    session,
    several,
    onPaper,
    { ...several, rule: '', found: 0, missed: 0 },
    { ...session, found: 0, missed: 0, paper: true },
  ])
    assert.deepEqual(changes(s, say({}, s)), {});
});

test('what is refused, each in its place', () => {
  assert.deepEqual(bad({ day: '2026-03-06' }), ['day: future']);
  assert.deepEqual(bad({ day: '' }), ['day: no-day']);
  assert.deepEqual(bad({ day: 'yesterday' }), ['day: day']);
  assert.deepEqual(bad({ outcome: '' }), ['outcome: outcome']);
  assert.deepEqual(bad({ minutes: '601' }), ['minutes: most']);
  assert.deepEqual(bad({ minutes: 'ten' }), ['minutes: number']);
  assert.deepEqual(bad({ note: 'x'.repeat(501) }), ['note: note']);
  assert.deepEqual(bad({ from: { s: 78, a: '41' } }), ['from: verse']);
  assert.deepEqual(bad({ from: { s: 115, a: '1' } }), ['from: surah']);
  assert.deepEqual(bad({ from: { s: 78, a: '20' } }), ['to: order']);
  assert.deepEqual(bad({ from: { s: 2, a: '1' }, to: { s: 2, a: '61' } }), ['to: many']);
  const rule = (found, of) => bad({ rules: [{ rule: 'ghunnah', found, of }] });
  assert.deepEqual(rule('3', ''), ['rule-ghunnah: both']);
  assert.deepEqual(rule('', '3'), ['rule-ghunnah: both']);
  assert.deepEqual(rule('4', '3'), ['rule-ghunnah: more']);
  assert.deepEqual(rule('x', '3'), ['rule-ghunnah: number']);
  assert.deepEqual(rule('3', '5001'), ['rule-ghunnah: most']);
  assert.equal(bad({ day: '', outcome: '', minutes: '-' }).length, 3);
});

test('whatever is typed, what is read is valid or refused', () => {
  const { below: random } = numbers(7);
  const junk = [
    '',
    '0',
    '1',
    '12',
    '٣',
    '-1',
    '1e9',
    '99999',
    '5000',
    '600',
    '601',
    'NaN',
    '\u202e1',
    '{}',
    '2026-03-01',
    '2026-03-09',
    '1970-01-01',
    '<b>',
    '\ud800',
  ];
  const any = () => junk[random(junk.length)];
  let valid = 0;
  for (let i = 0; i < 20000; i++) {
    const typed = {
      day: random(2) ? '2026-03-01' : any(),
      from: { s: random(120), a: any() },
      to: { s: random(120), a: any() },
      rules: [{ rule: 'ghunnah', found: any(), of: any() }].slice(0, random(2)),
      outcome: ['alone', 'some', 'much', ''][random(4)],
      paper: !random(2),
      minutes: any(),
      note: any().repeat(random(60)),
    };
    const was = random(2) ? several : undefined;
    if (was && random(3)) Object.assign(typed, { from: typedOf(was).from, to: typedOf(was).to });
    const got = read(c, typed, was, TODAY);
    if (Array.isArray(got)) {
      assert.ok(got.length, JSON.stringify(typed));
      continue;
    }
    valid++;
    const s = was ? patched(was, changes(was, got)) : added('n1', 'a1', got);
    assert.ok(isValid('sessions', s, true), JSON.stringify([typed, s]));
  }
  assert.ok(valid > 100, `${valid} valid`);
});

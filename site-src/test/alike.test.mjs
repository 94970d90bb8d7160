// What is right for another reason, and pencils of several rules.
import { test } from 'node:test';
import { all, mark, part, run, set, verse } from './checking.mjs';
import { event as ev } from './event.mjs';

for (const [name, events, own, want] of [
  ['a rule heard alike', [ev(0, 1, { rule: 1 })], [0], { extra: 0, alike: [1] }],
  ['one that is not', [ev(0, 1, { rule: 2 })], [0], { extra: 1, alike: [] }],
  ['one heard like another of the pencil', [ev(0, 1, { rule: 2 })], [0, 3], { alike: [2] }],
  [
    'a silent letter that is read, because one starts on it',
    [ev(0, 1, { rule: 2, when: 3, before: true })],
    [3],
    { extra: 1, alike: [] },
  ],
  [
    'the letter on which its own rule is heard',
    [ev(1, 1, { rule: 0, cw: -1, cl: 1 })],
    [0],
    { missed: [false], extra: 0, alike: [0] },
  ],
  [
    'the letter on which one alike is heard',
    [ev(1, 1, { rule: 1, cw: -1, cl: 1 })],
    [0],
    { missed: [], extra: 0, alike: [1] },
  ],
  [
    'both a place of its own and one alike',
    [ev(0, 1), ev(0, 1, { rule: 1 })],
    [0],
    { found: 1, alike: [] },
  ],
])
  test(`right for another reason: ${name}`, () =>
    part(run([verse(1, events)], [mark(0, 0, 1)], [], all, set, own), want));

test('a mark right for another reason beside a missed place leaves it missed', () =>
  part(run([verse(1, [ev(0, 1), ev(0, 2, { rule: 1 })])], [mark(0, 0, 2)]), {
    missed: [true],
    beside: 0,
    alike: [1],
  }));
test('a pencil of several rules', () =>
  part(
    run(
      [verse(1, [ev(0, 0), ev(0, 2, { rule: 3, count: 6 })])],
      [mark(0, 0, 0, 2), mark(0, 0, 2, 6)],
      [],
      all,
      set,
      [0, 3],
    ),
    { found: 2, missed: [], counts: ['none', 'right'] },
  ));

test('rules whose lengths a family holds apart are told apart by the ear', () => {
  const [rule, like, ...others] = all;
  const rules = [{ ...rule, setting: 'arid' }, { ...like, setting: 'lin' }, ...others];
  const marked = (lengths) =>
    run([verse(1, [ev(0, 1, { rule: 1 })])], [mark(0, 0, 1)], [], rules, lengths);
  part(marked(set), { alike: [1], extra: 0 });
  part(marked({ ...set, lin: 2 }), { alike: [], extra: 1 });
});

// Events are made up here: what is tested is the comparing, not any rule. Lengths are those of the
// project's rules.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { event as ev } from './event.mjs';
import { detail, rule as known } from './rules.mjs';
import { mark, part, run, set, verse } from './checking.mjs';

for (const [name, verses, marks, want] of [
  ['found', [verse(1, [ev(0, 1)])], [mark(0, 0, 1)], { found: 1, missed: [], extra: 0 }],
  ['missed', [verse(1, [ev(0, 1)])], [], { found: 0, missed: [false], extra: 0 }],
  ['near before', [verse(1, [ev(0, 1)])], [mark(0, 0, 0)], { found: 0, missed: [true], extra: 0 }],
  ['near after', [verse(1, [ev(0, 1)])], [mark(0, 0, 2)], { found: 0, missed: [true], extra: 0 }],
  [
    'two away is another letter',
    [verse(1, [ev(0, 1)])],
    [mark(0, 0, 3)],
    { found: 0, missed: [false], extra: 1 },
  ],
  [
    'the letter beside, in the next word, is another letter',
    [verse(1, [ev(0, 4)])],
    [mark(0, 1, 0)],
    { missed: [false], extra: 1 },
  ],
  [
    'found and beside',
    [verse(1, [ev(0, 1)])],
    [mark(0, 0, 1), mark(0, 0, 2)],
    { found: 1, missed: [], extra: 1 },
  ],
  [
    'beside one place but on another',
    [verse(1, [ev(0, 1), ev(0, 2)])],
    [mark(0, 0, 2)],
    { found: 1, missed: [false], extra: 0 },
  ],
  [
    'unwritten is not asked',
    [verse(1, [ev(0, 1, { unwritten: true })])],
    [],
    { found: 0, missed: [], extra: 0 },
  ],
  [
    'unwritten marked is no fault',
    [verse(1, [ev(0, 1, { unwritten: true })])],
    [mark(0, 0, 1)],
    { found: 1, missed: [], extra: 0 },
  ],
  [
    'another rule does not count',
    [verse(1, [ev(0, 1, { rule: 3 })])],
    [mark(0, 0, 1)],
    { found: 0, missed: [], extra: 1 },
  ],
])
  test(name, () => part(run(verses, marks), want));

const stop = ev(2, 0, { when: 2 });
const join = ev(2, 0, { when: 1 });
test('a place at a stop counts at the end of the verse', () =>
  part(run([verse(1, [stop]), verse(2, [])], []), { missed: [false] }));
test('and not when the verses are joined', () =>
  part(run([verse(1, [stop]), verse(2, [])], [mark(0, 2, 0)], [[0, 2, false]]), {
    missed: [],
    extra: 1,
    other: [true],
  }));
test('a place of reading on counts when the verses are joined', () =>
  part(run([verse(1, [join]), verse(2, [])], [], [[0, 2, false]]), { missed: [false] }));
test('and not at a stop', () => part(run([verse(1, [join]), verse(2, [])], []), { missed: [] }));
test('the end of the lines is always a stop', () =>
  part(run([verse(1, [stop])], [], [[0, 2, false]]), { missed: [false] }));
test('a pause sign may be stopped at', () => {
  const vs = [
    verse(1, [
      ev(1, 0, { when: 2 }),
      ev(1, 1, { when: 1 }),
      ev(2, 0, { when: 3, before: true }),
      ev(2, 1, { when: 1, before: true }),
    ]),
  ];
  part(run(vs, [mark(0, 1, 1), mark(0, 2, 1)]), { found: 2, missed: [], extra: 0 });
  part(run(vs, [mark(0, 1, 0), mark(0, 2, 0)], [[0, 1, true]]), { found: 2, missed: [], extra: 0 });
});
test('no stop where no sign stands', () =>
  part(run([verse(1, [ev(0, 0, { when: 2 })])], [], [[0, 0, true]]), { missed: [] }));

const count = (id, c, n, s = set) =>
  run([verse(1, [ev(0, 1, { count: c })])], [mark(0, 0, 1, n)], [], known(id), s).counts;
for (const [name, got, want] of [
  ['none written', count('ghunnah', 2, 0), 'none'],
  ['right', count('ghunnah', 2, 2), 'right'],
  ['another', count('ghunnah', 2, 4), 'other'],
  ['four where four is set', count('madd-munfasil', 4, 4), 'right'],
  ['five where four is set', count('madd-munfasil', 4, 5), 'also'],
  ['five where five is set', count('madd-munfasil', 4, 5, { ...set, munfasil: 5 }), 'right'],
  ['six is neither', count('madd-munfasil', 4, 6), 'other'],
  ['arid by its own setting', count('madd-arid', 4, 6, { ...set, arid: 6, lin: 2 }), 'right'],
  ['lazim is six whatever is set', count('madd-lazim', 6, 4), 'other'],
])
  test(`count: ${name}`, () => assert.deepEqual(got, [want]));

const atEnd =
  (id, count) =>
  (more, n, joined = false) =>
    run(
      [verse(1, [ev(2, 1, { count, detail: detail(more) })]), verse(2, [])],
      [mark(0, 2, 1, n)],
      joined ? [[0, 2, false]] : [],
      known(id),
    ).counts;
const opening = atEnd('madd-lazim-letter', 6);
const muttasil = atEnd('madd-muttasil', 4);
for (const [name, got, want] of [
  ['six', opening('', 6), 'right'],
  ['four', opening('', 4), 'other'],
  ['four where four or six', opening('four-or-six', 4), 'also'],
  ['two where four or six', opening('four-or-six', 2), 'other'],
  ['two where two or six, read on', opening('two-or-six', 2, true), 'also'],
  ['two where two or six, stopped on', opening('two-or-six', 2), 'other'],
  ['four where two or six, read on', opening('two-or-six', 4, true), 'other'],
  ['six where two or six, read on', opening('two-or-six', 6, true), 'right'],
  ['muttasil six, stopped on its hamza', muttasil('six-at-stop', 6), 'also'],
  ['muttasil six, read on', muttasil('six-at-stop', 6, true), 'other'],
  ['muttasil six inside a word', muttasil('', 6), 'other'],
  ['muttasil five, stopped on its hamza', muttasil('six-at-stop', 5), 'also'],
])
  test(`count where there are two ways: ${name}`, () => assert.deepEqual(got, [want]));

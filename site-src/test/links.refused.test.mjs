// Links to work and to results that are refused, each with its reason.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { written } from '../node_modules/.out/app/share/query.js';
import { meaning } from './linking.mjs';

/** A link whose check is right, whatever it says. */
const hash = (screen, list) => `#/${screen}?${written(list)}`;
const LINES = [
  ['rule', 'ghunnah'],
  ['from', '78:1'],
  ['to', '78:5'],
];
const DONE = [['id', 'r-1'], ...LINES, ['day', '2026-11-26'], ['went', 'alone']];
const but = (at, pair) => DONE.map((x, i) => (i === at ? pair : x));
for (const [name, link, bad] of [
  ['nothing at all', '#/work?', 'foreign'],
  ['no version', '#/work?rule=ghunnah&from=78:1&to=78:5', 'foreign'],
  ['version 0', '#/work?v=0&from=78:1&to=78:5', 'foreign'],
  ['a later version', '#/result?v=2&x=1', 'newer'],
  ['no check', '#/work?v=1&rule=ghunnah&from=78:1&to=78:5&times=3', 'cut'],
  ['an unknown rule', hash('work', [['rule', 'x'], ...LINES.slice(1), ['times', '3']]), 'rule'],
  ['an unknown pencil', hash('work', [LINES[0], ['also', 'y'], ...LINES.slice(1)]), 'rule'],
  [
    'no such verse',
    hash('work', [
      ['from', '78:41'],
      ['to', '78:41'],
      ['times', '3'],
    ]),
    'lines',
  ],
  [
    'no end',
    hash('work', [
      ['from', '78:1'],
      ['times', '3'],
    ]),
    'field',
  ],
  [
    'too many verses',
    hash('work', [
      ['from', '2:1'],
      ['to', '2:99'],
      ['times', '3'],
    ]),
    'lines',
  ],
  ['eight times', hash('work', [...LINES, ['times', '8']]), 'field'],
  ['lengths that are not', hash('work', [...LINES, ['hold', '4443'], ['times', '1']]), 'field'],
  ['bits that are none', hash('work', [...LINES, ['known', 'A'], ['times', '1']]), 'field'],
  ['a turning say', hash('work', [...LINES, ['times', '1'], ['say', '4oCu']]), 'field'],
  ['a say of no UTF-8', hash('work', [...LINES, ['times', '1'], ['say', '_w']]), 'field'],
  ['a long say', hash('work', [...LINES, ['times', '1'], ['say', 'YWFh'.repeat(41)]]), 'field'],
  ['a day to come', hash('result', but(4, ['day', '2026-11-28'])), 'day'],
  ['30 February', hash('result', but(4, ['day', '2026-02-30'])), 'field'],
  ['an id of this device', hash('result', but(0, ['id', '0123'])), 'field'],
  ['more found than there are', hash('result', [...DONE, ['found', '3'], ['of', '2']]), 'field'],
  ['an unknown tally', hash('result', [...DONE, ['more', 'x.1.2']]), 'rule'],
  ['a broken tally', hash('result', [...DONE, ['more', 'ghunnah.3.2']]), 'field'],
  ['no outcome', hash('result', DONE.slice(0, -1)), 'field'],
])
  test(`a link with ${name} is refused: ${bad}`, () => assert.equal(meaning(link).bad, bad));

test('a day that has begun in the east is no day to come', () => {
  const link = hash('result', but(4, ['day', '2026-11-27']));
  assert.ok('given' in meaning(link));
});

// Lists of learners: order, colour, letter; the dates of what they were taught.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { corrected } from '../node_modules/.out/app/record/dates.js';
import {
  COLOURS,
  colourOf,
  freeColour,
  initial,
  inOrder,
} from '../node_modules/.out/app/record/people.js';

const made = (id, day, more = {}) => ({ id, made: `2026-01-${day}T10:00:00.000Z`, ...more });
const three = [made('c', '03'), made('a', '01'), made('b', '02')];
const read = (learner, day) => ({ learner, at: `2026-02-${day}T10:00:00.000Z` });
const ids = (list) => list.map((l) => l.id).join('');

test('learners are listed as they were made, or the one who read last first', () => {
  const sessions = [read('b', '09'), read('a', '05'), read('b', '01')];
  assert.equal(ids(inOrder(three, sessions, 'made')), 'abc');
  assert.equal(ids(inOrder(three, sessions, 'read')), 'bac');
  assert.equal(ids(inOrder(three, [], 'read')), 'abc');
  assert.equal(ids(three), 'cab', 'the list itself stays as it is');
});

test('who was made at the same moment has a fixed place', () => {
  const same = [made('y', '01'), made('x', '01')];
  assert.equal(ids(inOrder(same, [], 'made')), 'xy');
  assert.equal(ids(inOrder([...same].reverse(), [], 'made')), 'xy');
});

test('a colour is the one chosen, or follows the order made; a new learner has a free one', () => {
  assert.deepEqual(
    three.map((l) => colourOf(l, three)),
    [2, 0, 1],
  );
  assert.equal(freeColour([]), 0);
  assert.equal(freeColour(three), 3);
  const chosen = [made('a', '01', { colour: 5 }), made('b', '02', { colour: 0 })];
  assert.equal(colourOf(chosen[0], chosen), 5);
  assert.equal(freeColour(chosen), 1);
  const all = Array.from({ length: COLOURS }, (_, colour) => made(`x${colour}`, '01', { colour }));
  assert.equal(freeColour(all), 0, 'after all of them the first again');
  assert.equal(freeColour([...all, made('y', '02', { colour: 0 })]), 1);
});

for (const [name, letter] of [
  ['maryam', 'M'],
  ['  yusuf', 'Y'],
  ['éa', 'É'],
  ['e\u0301a', 'E\u0301'],
  ['\u2067Ali', 'A'],
  ['\u200fAli', 'A'],
  ['7', '7'],
  ['', ''],
  ['\u2068\u2069 ', ''],
])
  test(`the letter of ${JSON.stringify(name)}`, () => assert.equal(initial(name), letter));

const taught = (since, known = '') => ({ learner: 'a', rule: 'r', since, known });
const TODAY = '2026-03-10';

for (const [what, was, field, date, want] of [
  ['begun earlier', taught('2026-03-01'), 'since', '2026-02-01', taught('2026-02-01')],
  ['begun today', taught('2026-03-01'), 'since', TODAY, taught(TODAY)],
  ['begun tomorrow', taught('2026-03-01'), 'since', '2026-03-11', 'future'],
  ['no date', taught('2026-03-01'), 'since', '', 'no-date'],
  ['no day of the calendar', taught('2026-03-01'), 'since', '2026-13-01', 'no-date'],
  ['a year half typed', taught('2026-03-01'), 'since', '0202-03-01', 'no-date'],
  ['known later', taught('2026-03-01', '2026-03-05'), 'known', TODAY, taught('2026-03-01', TODAY)],
  ['known before it began', taught('2026-03-01', '2026-03-05'), 'known', '2026-02-28', 'order'],
  ['begun after it was known', taught('2026-03-01', '2026-03-05'), 'since', '2026-03-06', 'order'],
  ['known where nobody said so', taught('2026-03-01'), 'known', '2026-03-05', taught('2026-03-01')],
])
  test(`dates: ${what}`, () =>
    assert.deepEqual(
      corrected([was], field, date, TODAY),
      typeof want === 'string' ? want : [want],
    ));

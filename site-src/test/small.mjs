// A text of two short surahs, its lessons, and a learner of them.
import { course } from '../node_modules/.out/app/plan/course.js';
import { Phrases } from '../node_modules/.out/app/plan/phrases.js';
import { after } from '../node_modules/.out/app/plan/place.js';

export const rule = (id, needs = []) => ({ id, name: id, ar: '', family: 'f', needs, counts: [] });
export const rules = [rule('b', ['a']), rule('a'), rule('c'), rule('d', ['b'])];
export const lesson = (id, rules) => ({
  id,
  name: id,
  ar: '',
  rules,
  why: 'begins',
  on: 0,
  places: 0,
  look: 0,
  sign: false,
});
export const c = {
  rules,
  lessons: [lesson('ac', ['a', 'c']), lesson('b', ['b']), lesson('d', ['d'])],
  surahs: [{ count: 4 }, { count: 4 }],
  juz: Array.from({ length: 30 }, (_, i) => [i < 29 ? 1 : 2, 1]),
  pages: [
    [1, 1],
    [2, 1],
  ],
};

/**
 * Two surahs of four verses of ten words; the second verse of each has a pause after its fourth
 * word.
 */
export function phrases() {
  const words = [];
  const end = [];
  for (let s = 0; s < 2; s++)
    for (let a = 0; a < 4; a++) {
      if (a === 1) {
        words.push(4);
        end.push(1);
      }
      words.push(a === 1 ? 6 : 10);
      end.push(a === 3 ? 3 : 2);
    }
  const n = words.length;
  const b = new Uint8Array(10 + 3 * n + 4 * (n + 1));
  b.set([0x53, 0x50, 0x49, 0x32, n, 0, 2, 0, 4, 0]);
  b.set([...words, ...words.map((w) => 4 * w), ...end], 10);
  b.fill(1, 14 + 3 * n); // every rule once in every phrase
  return new Phrases(b);
}
export const x = phrases();
export const k = course(x, c);
export const learner = (more = {}) => ({
  id: 'x',
  name: '',
  place: { s: 2, a: 1 },
  settled: true,
  made: '',
  updated: '',
  ...more,
});
export const session = (day, r, from, to, more = {}) => ({
  learner: 'x',
  id: day + r,
  day,
  at: `${day}T10:00:00Z`,
  rule: r,
  from,
  to,
  found: 9,
  missed: 0,
  outcome: 'alone',
  marks: [],
  stops: [],
  extra: 0,
  helped: false,
  ...more,
});
export const all = { s: 1, a: 1 };
export const end = { s: 1, a: 4 };

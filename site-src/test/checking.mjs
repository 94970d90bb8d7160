// Made-up lines for tests of the check: what is tested is the comparing, not any rule.
import assert from 'node:assert/strict';
import { details } from './rules.mjs';
import { check } from '../node_modules/.out/app/marking/check.js';
import { Stops } from '../node_modules/.out/app/text/stops.js';

export const word = (n, pause = 0) => ({
  text: 'x'.repeat(n),
  pause,
  letters: Array.from({ length: n }, (_, i) => ({ rune: 0, from: i, to: i + 1, marks: [] })),
});
export const verse = (a, events, words = [word(5), word(5, 0x6da), word(5)]) => ({
  s: 1,
  a,
  text: '',
  words,
  events,
});
export const mark = (v, w, l, count = 0) => ({ v, w, l, count });
// Places of the rules 0 and 3; 1 and 2 are heard like them.
const rule = { id: 'r', counts: [2], alike: ['like'], onCause: 'It is heard there.' };
const like = { id: 'like', counts: [2], onCause: 'There too.' };
const silent = { id: 'silent', counts: [], role: 'silent' };
const other = { id: 'other', counts: [4, 6], alike: ['silent'] };
export const all = [rule, like, silent, other];
export const set = { muttasil: 4, munfasil: 4, arid: 4, lin: 4 };
export const run = (verses, marks, moved = [], r = all, s = set, own = [0]) => {
  const book = { rules: [r].flat(), details, settings: s };
  const x = check(verses, own, marks, new Stops(verses, moved), book);
  return {
    found: x.found.length,
    missed: x.missed.map((m) => m.near),
    extra: x.extra.length,
    counts: x.found.map((f) => f.count),
    other: x.extra.map((e) => !!e.other),
    beside: x.beside.length,
    alike: x.alike.map((a) => a.e.rule),
  };
};
export const part = (got, want) => {
  for (const [k, v] of Object.entries(want)) assert.deepEqual(got[k], v, k);
};

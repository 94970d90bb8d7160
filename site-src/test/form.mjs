// A session with several rules, and the form for it.
import '../node_modules/.out/app/later.js';
import { read, typedOf } from '../node_modules/.out/app/record/typed.js';
import { session } from './records.mjs';

export const c = {
  surahs: Array.from({ length: 114 }, (_, i) => ({
    la: `S${i + 1}`,
    count: i === 77 ? 40 : i === 1 ? 286 : 7,
  })),
};
export const TODAY = '2026-03-05';
export const several = {
  ...session,
  from: { s: 78, a: 12, w: 2 },
  to: { s: 78, a: 16 },
  found: 3,
  missed: 1,
  also: [{ rule: 'qalqalah', found: 2, missed: 0 }],
  pencils: ['qalqalah', 'stops', 'all-long'],
  marks: [
    { v: 0, w: 0, l: 1, count: 2 },
    { v: 1, w: 0, l: 1, count: 0, pencil: 'qalqalah' },
  ],
  looked: 4,
  minutes: 12,
  note: 'calm',
};
export const say = (patch, was = several) => read(c, { ...typedOf(was), ...patch }, was, TODAY);

// A learner with one session and one rule, and the backup file of them.
import { write } from '../node_modules/.out/app/record/backup.js';

export const t = '2026-03-01T10:00:00.000Z';
export const learner = {
  id: 'a1',
  name: 'Demo',
  place: { s: 78, a: 1 },
  settled: true,
  made: t,
  updated: t,
};
export const session = {
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
export const taught = { learner: 'a1', rule: 'ghunnah', since: '2026-03-01', known: '' };
export const records = {
  learners: [learner],
  sessions: [session],
  taught: [taught],
  gone: [],
  damaged: [],
};
export const none = { learners: [], sessions: [], taught: [], gone: [], damaged: [] };
export const file = (patch) => JSON.stringify({ ...JSON.parse(write(records, t)), ...patch });

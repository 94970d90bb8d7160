// Random work and results, and what happens to a link on its way.
import { parseHash } from '../node_modules/.out/app/share/link.js';
import { readResult, resultHash } from '../node_modules/.out/app/share/result.js';
import { readWork, workHash } from '../node_modules/.out/app/share/work.js';
import { LESSONS } from '../node_modules/.out/app/share/lessons.js';
import { catalogue } from './site.mjs';
import { random } from './random.mjs';

const SAY = [
  'Read it twice, slowly.',
  '',
  'سطر بالعربية',
  '<b onclick=x>&amp;',
  '😀 50% + 2=3?',
  '%41',
];

export function maker(seed) {
  const { below: upTo, of: one } = random(seed);
  const some = (list, n) => [...new Set(Array.from({ length: upTo(n + 1) }, () => one(list)))];
  const lines = () => {
    const s = 1 + upTo(114);
    const count = catalogue.surahs[s - 1].count;
    const a = 1 + upTo(count);
    const rule = upTo(4) ? one(catalogue.rules).id : '';
    const also = some([...catalogue.groups, ...catalogue.rules, { id: 'stops' }], 3)
      .map((x) => x.id)
      .filter((id) => id !== rule);
    const to = { s, a: Math.min(count, a + upTo(20)) };
    const from = upTo(5) ? { s, a } : { s, a, w: upTo(9) };
    return { rule, ...(also.length && { also }), from, to };
  };
  const work = () => {
    const lessons = new Set(some(LESSONS, LESSONS.length));
    return {
      lines: lines(),
      times: 1 + upTo(7),
      lessons: LESSONS.filter((x) => lessons.has(x)),
      ...(upTo(2) && {
        held: {
          munfasil: one([4, 5]),
          muttasil: one([4, 5]),
          arid: one([2, 4, 6]),
          lin: one([2, 4, 6]),
        },
      }),
      say: one(SAY),
    };
  };
  const result = () => {
    const { rule, also: pencils, from, to } = lines();
    const found = rule ? upTo(30) : 0;
    const rules = some(catalogue.rules, 3).filter((r) => r.id !== rule);
    const more = rules.map((r) => ({ rule: r.id, found: upTo(9), missed: upTo(9) }));
    return {
      id: `r-${upTo(1e9).toString(16)}`,
      day: new Date(1.79e12 - upTo(900) * 864e5).toISOString().slice(0, 10),
      rule,
      from,
      to,
      found,
      missed: rule ? upTo(9) : 0,
      extra: upTo(3),
      helped: !upTo(3),
      outcome: one(['alone', 'some', 'much']),
      ...(more.length && { also: more }),
      ...(pencils && { pencils }),
      ...(upTo(2) && { looked: upTo(9) }),
      ...(!upTo(4) && { paper: true }),
      ...(!upTo(4) && { together: true }),
      ...(upTo(3) && { minutes: 1 + upTo(600) }),
      say: one(SAY),
    };
  };
  return { upTo, one, work, result };
}

/** The link of work or of a result. */
export const hashOf = (x) =>
  'times' in x ? workHash(x) : resultHash(catalogue, { ...x, learner: 'a', at: '' }, x.say);

const SIGNS = [
  '%',
  '&',
  '=',
  '#',
  '?',
  '\0',
  '\u202e',
  '-',
  '_',
  'A',
  '0',
  '<',
  'é',
  '\ud800',
  ' ',
];

/** A link with a few characters cut, doubled, put in or changed. */
export function mutated(hash, { upTo, one }) {
  let s = hash;
  for (let n = 1 + upTo(4); n > 0; n--) {
    const at = upTo(s.length + 1);
    const cut = upTo(6) ? 1 : upTo(s.length);
    const put = [one(SIGNS), '', s.slice(at, at + 5), one(SIGNS) + one(SIGNS)][upTo(4)];
    s = s.slice(0, at) + put + s.slice(at + cut);
  }
  return s;
}

/** Anything at all. */
export const garbage = ({ upTo }) =>
  ['#/work?', '#/result?', '#/', ''][upTo(4)] +
  Array.from({ length: upTo(80) }, () => String.fromCharCode(upTo(upTo(2) ? 128 : 65536))).join('');

/** When the links of these tests are opened. */
const NOW = Date.parse('2026-11-26T10:00:00Z');

/** What a link to work or a result means; undefined for another address. */
export function meaning(hash) {
  const route = parseHash(catalogue, hash);
  if (route.name === 'work') return readWork(catalogue, route.query);
  return route.name === 'result' ? readResult(catalogue, route.query, NOW) : undefined;
}

// The ranking of lines against the results of package plan, which are held there against brute
// force and sums by hand.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { choose } from '../node_modules/.out/app/plan/rank.js';
import { phrases } from './site.mjs';

const vectors = JSON.parse(
  readFileSync(
    new URL('../../generator/internal/plan/testdata/vectors.json', import.meta.url),
    'utf8',
  ),
);

// Go writes lists of rules, which are bytes, in base64, an empty list as null, and 0 for what is
// left at its default.
const list = (a) => (typeof a === 'string' ? [...Buffer.from(a, 'base64')] : (a ?? []));
const given = (o) => Object.fromEntries(Object.entries(o).filter(([, n]) => n));
const query = (q) => ({
  focus: list(q.Focus),
  known: list(q.Known),
  due: list(q.Due),
  place: q.Place,
  back: q.Back,
  used: list(q.Used),
  level: q.Level,
  from: q.From,
  ...given({ to: q.To, min: q.Min, max: q.Max, short: q.Short, best: q.Best }),
  ...given({ fewest: q.Fewest, most: q.Most }),
});
const passage = (p) => ({
  a: p.A,
  b: p.B,
  words: p.Words,
  letters: p.Letters,
  focus: p.Focus,
  known: p.Known,
  later: p.Later,
  byRule: list(p.ByRule).map((r) => [r.Rule, r.Places]),
  due: list(p.Due),
  share: p.Share,
  distance: p.Distance,
  score: p.Score,
});

test('lines are ranked as package plan ranks them', () => {
  assert.ok(vectors.length >= 200, `${vectors.length} rankings`);
  vectors.forEach(({ Query, Want }, i) => {
    const want = {
      seen: Want.Seen,
      least: Want.Least,
      how: Want.How,
      passages: list(Want.Passages).map(passage),
    };
    assert.deepEqual(choose(phrases, query(Query)), want, `ranking ${i}`);
  });
});

// The rules that the sessions of a whole course mark together.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Review } from '../node_modules/.out/app/plan/day.js';
import { play } from './course.mjs';
import { courseOf } from './site.mjs';

test('only reviews mark several rules: those due that have places there, five others at most', (t) => {
  const course = courseOf();
  const days = play(course);
  const reviews = days.filter((d) => d.plan.do === Review);
  const index = (id) => course.c.rules.findIndex((r) => r.id === id);
  for (const d of days.filter((d) => d.plan.do !== Review)) assert.deepEqual(d.also, []);
  for (const d of reviews) {
    const there = d.plan.due.filter((r) => r !== d.plan.rule && d.places[r]);
    assert.deepEqual(d.also.map(index), there.slice(0, 5));
  }
  const n = reviews.reduce((n, d) => n + 1 + d.also.length, 0);
  assert.ok(n > reviews.length, 'no review marks several: this check sees nothing');
  t.diagnostic(
    `${reviews.length} reviews mark ${(n / reviews.length).toFixed(1)} rules on average`,
  );
});

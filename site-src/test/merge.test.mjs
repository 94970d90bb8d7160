// Two records come together in one way, whichever device reads whose file, how often, in which order.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parse, write } from '../node_modules/.out/app/record/backup.js';
import { change, merge } from '../node_modules/.out/app/record/merge.js';
import { canonical } from '../node_modules/.out/app/record/plain.js';

import { learner, none, records, session, t, taught } from './records.mjs';
import { random } from './random.mjs';

/** A record as a set: the order of its lists says nothing. */
const setOf = (k) =>
  canonical(Object.entries(k).map(([name, list]) => [name, list.map(canonical).sort()]));

/**
 * Small worlds, so that ids, times and contents meet often: records as several devices may have
 * made them.
 */
function world(r) {
  const times = ['2026-03-01T10:00:00.000Z', '2026-03-02T10:00:00Z', '2026-03-02T10:00:00.5Z'];
  const dates = ['2026-01-01', '2026-02-02', ''];
  const some = (n, make) => Array.from({ length: r.below(n + 1) }, make);
  const once = (list, key) => [...new Map(list.map((x) => [key(x), x])).values()];
  const who = () => r.of(['a1', 'a2']);
  const maybe = (field, value) => (r.below(2) ? { [field]: value } : {});
  const aSession = () => ({
    ...session,
    id: r.of(['s1', 's2', 's3', 's4']),
    learner: who(),
    at: r.of(times),
    found: r.below(2),
    ...maybe('updated', r.of(times)),
    ...maybe('note', r.of(['', 'one', 'two'])),
  });
  const sessions = once(some(4, aSession), (x) => x.id);
  const gone = once(
    some(3, () => {
      const was = aSession();
      return { id: was.id, learner: was.learner, at: r.of(times), ...maybe('session', was) };
    }),
    (x) => x.id,
  ).filter((x) => !sessions.some((s) => s.id === x.id));
  return {
    learners: once(
      some(3, () => ({
        ...learner,
        id: who(),
        name: r.of(['Demo', 'Other']),
        updated: r.of(times),
        ...maybe('archived', r.of(times)),
        ...maybe('own', { size: r.of([1, 1.5]) }),
      })),
      (x) => x.id,
    ),
    sessions,
    gone,
    taught: once(
      some(4, () => ({
        ...taught,
        learner: who(),
        rule: r.of(['ra', 'ghunnah']),
        since: r.of(dates),
        known: r.of(dates),
        ...maybe('updated', r.of(times)),
      })),
      (x) => `${x.learner} ${x.rule}`,
    ),
    damaged: once(
      some(2, () => ({ table: r.of(['sessions', 'taught']), record: r.of([null, { id: 7 }]) })),
      canonical,
    ),
  };
}

test('ten thousand records come together the same in every order, and once is enough', () => {
  const r = random(16);
  for (let i = 0; i < 10_000; i++) {
    const [a, b, c] = [world(r), world(r), world(r)];
    const before = canonical([a, b, c]);
    const ab = merge(a, b);
    const bc = merge(b, c);
    assert.equal(setOf(merge(a, a)), setOf(a), `idempotent, ${i}`);
    assert.equal(setOf(ab), setOf(merge(b, a)), `commutative, ${i}`);
    assert.equal(setOf(merge(ab, c)), setOf(merge(a, bc)), `associative, ${i}`);
    assert.equal(setOf(merge(ab, b)), setOf(ab), `nothing twice, ${i}`);
    const ids = [...ab.sessions, ...ab.gone].map((x) => x.id);
    assert.equal(new Set(ids).size, ids.length, `either there or removed, ${i}`);
    assert.equal(canonical([a, b, c]), before, `the records themselves stay, ${i}`);
  }
});

/** What a device holds after the change was written. */
function applied(a, to) {
  const key = { taught: (x) => `${x.learner} ${x.rule}`, damaged: canonical };
  const put = (name) => {
    const of = key[name] ?? ((x) => x.id);
    return [...new Map([...a[name], ...to[name]].map((x) => [of(x), x])).values()];
  };
  const gone = new Set(to.removed.map((x) => x.id));
  const back = new Set(to.sessions.map((x) => x.id));
  return {
    learners: put('learners'),
    sessions: put('sessions').filter((x) => !gone.has(x.id)),
    gone: put('gone').filter((x) => !back.has(x.id)),
    taught: put('taught'),
    damaged: put('damaged'),
  };
}

test('what is written makes the device hold what both hold together', () => {
  const r = random(17);
  for (let i = 0; i < 3000; i++) {
    const [a, b] = [world(r), world(r)];
    assert.equal(setOf(applied(a, change(a, merge(a, b)))), setOf(merge(a, b)), String(i));
    const nothing = change(a, merge(a, a));
    for (const list of Object.values(nothing)) assert.deepEqual(list, [], String(i));
  }
});

test('reading the own file changes nothing, and sessions that can be brought back stay so', () => {
  const gone = { id: 's9', learner: 'a1', at: t, session: { ...session, id: 's9' } };
  const mine = { ...records, gone: [gone] };
  const file = parse(write(mine, t));
  assert.deepEqual(file.gone, [{ id: 's9', learner: 'a1', at: t }]);
  assert.deepEqual(change(mine, merge(mine, file)), { ...none, removed: [] });
});

const later = '2026-04-01T10:00:00.000Z';
const muchLater = '2026-05-01T10:00:00.000Z';
const gone = { id: session.id, learner: 'a1', at: later };
const with_ = (patch) => ({ ...records, ...patch });

for (const [name, mine, file, field, want] of [
  [
    'the later learner stays',
    records,
    with_({ learners: [{ ...learner, name: 'Two', updated: later }] }),
    'learners',
    [{ ...learner, name: 'Two', updated: later }],
  ],
  [
    'a correction stays',
    with_({ sessions: [{ ...session, found: 0, updated: later }] }),
    records,
    'sessions',
    [{ ...session, found: 0, updated: later }],
  ],
  [
    'a removed session stays removed',
    with_({ sessions: [], gone: [gone] }),
    records,
    'sessions',
    [],
  ],
  [
    'a session that was removed there goes',
    records,
    with_({ sessions: [], gone: [gone] }),
    'sessions',
    [],
  ],
  [
    'a session that was corrected after it was removed elsewhere stays',
    with_({ sessions: [{ ...session, updated: muchLater }] }),
    with_({ sessions: [], gone: [gone] }),
    'sessions',
    [{ ...session, updated: muchLater }],
  ],
  [
    'of dates that nobody changed, the earlier ones stay, and known is not lost',
    with_({ taught: [{ ...taught, known: '2026-03-09' }] }),
    with_({ taught: [{ ...taught, since: '2026-01-05' }] }),
    'taught',
    [{ ...taught, since: '2026-01-05', known: '2026-03-09' }],
  ],
  [
    'a rule that is no longer taught stays so',
    with_({ taught: [{ ...taught, since: '', known: '', updated: later }] }),
    records,
    'taught',
    [{ ...taught, since: '', known: '', updated: later }],
  ],
])
  test(name, () => {
    assert.deepEqual(merge(mine, file)[field], want);
    assert.deepEqual(merge(file, mine)[field], want);
  });

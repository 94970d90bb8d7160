// How letters get their colours, over the whole text: every letter that has a look is coloured, no
// other is, and none is lost.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { event } from './event.mjs';
import { places, written } from '../node_modules/.out/app/marking/check.js';
import { familyLook, inked, spanOf } from '../node_modules/.out/app/marking/spans.js';
import { marks, notes } from '../node_modules/.out/app/paper/marks.js';
import { lamAlif, standsOver, words } from '../node_modules/.out/app/text/letters.js';
import { Stops } from '../node_modules/.out/app/text/stops.js';

const all = readFileSync(new URL('../../rules-content/text/quran.txt', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n')
  .flatMap((l) => words(l.split('\t')[1]));
const A = familyLook('a', 'solid');
const B = familyLook('b', 'wavy');
const span = (l, look) => ({ v: 0, w: 0, l, ...look });
const among = (test) => all.find((w) => w.letters.some((_, l) => test(w, l)));
const at = (w, test) => w.letters.findIndex((_, l) => test(w, l));

test('every marked letter is in one range of its own name or is drawn again; nothing else is', () => {
  for (const w of new Map(all.map((w) => [w.text, w])).values()) {
    for (let i = 0; i < w.letters.length; i++) {
      for (const every of [false, true]) {
        const x = inked(
          w,
          [span(i, A), ...(i % 2 ? w.letters.map((_, l) => span(l, B)) : [])],
          every,
        );
        const drawn = new Map(x.again.map((c) => [c.l, c.colour]));
        assert.equal(drawn.size, x.again.length, `${w.text}: a letter is drawn twice`);
        w.letters.forEach((letter, l) => {
          const want = l === i ? A : i % 2 ? B : undefined;
          const over = x.ranges.filter((r) => letter.from >= r.from && letter.to <= r.to);
          assert.ok(over.length < 2, `${w.text}: two ranges on letter ${l}`);
          const colour = drawn.has(l)
            ? drawn.get(l)
            : over[0] && `var(--c-${over[0].name.slice(2)})`;
          assert.equal(colour, want?.colour, `${w.text}: letter ${l} with ${i} marked`);
          if (over[0]?.name === 'hollow')
            assert.ok(drawn.has(l), `${w.text}: letter ${l} is hollow and not drawn`);
          if (every && want && !standsOver(w, l))
            assert.ok(drawn.has(l), `${w.text}: letter ${l} is in a range alone`);
        });
        assert.deepEqual(
          x.shapes.map((s) => s.l),
          w.letters.map((_, l) => l).filter((l) => l === i || i % 2),
        );
      }
    }
  }
});

test('lam and alif of one colour are one range, and of two are drawn apart', () => {
  const w = among(lamAlif);
  const l = at(w, lamAlif);
  const one = inked(w, [span(l, A), span(l + 1, A)]);
  assert.deepEqual([one.again, one.ranges.length], [[], 1]);
  const x = inked(w, [span(l, A), span(l + 1, B)]);
  assert.deepEqual(
    [x.ranges.map((r) => r.name), x.again],
    [
      ['hollow'],
      [
        { l, colour: A.colour },
        { l: l + 1, colour: B.colour },
      ],
    ],
  );
});

test('where spans meet, the first is shown', () => {
  const w = all.find(
    (x) => x.letters.length === 3 && x.letters.every((_, l) => !standsOver(x, l) && !lamAlif(x, l)),
  );
  assert.deepEqual(
    inked(w, [span(1, B), span(0, A), span(1, A)]).shapes.map((s) => s.look.name),
    ['f-a', 'f-b'],
  );
  assert.deepEqual(inked(w, []), { ranges: [], again: [], shapes: [] });
});

/** An event of a rule at a letter of the first word. */
const ruled = (l, rule, more = {}) => event(0, l, { rule, ...more });

test('places come in the order of the rules, the screen and the sheet from one list', () => {
  const w = among((x, l) => l > 1);
  const verses = [
    {
      s: 1,
      a: 1,
      words: [w],
      events: [
        ruled(0, 7),
        ruled(1, 3),
        ruled(1, 7),
        ruled(2, 3, { unwritten: true }),
        ruled(0, 5),
      ],
    },
  ];
  const stops = new Stops(verses);
  const at = (hits) => hits.map((h) => [h.e.rule, h.e.l]);
  assert.deepEqual(at(places(verses, [3, 7], stops)), [
    [3, 1],
    [3, 2],
    [7, 0],
    [7, 1],
  ]);
  assert.deepEqual(at(written(verses, [3, 7], stops)), [
    [3, 1],
    [7, 0],
    [7, 1],
  ]);
  const m = marks(verses, [3, 7, 9]);
  assert.deepEqual(
    [...m.totals],
    [
      [3, 1],
      [7, 2],
      [9, 0],
    ],
  );
  assert.deepEqual(
    m.hits[0][0].map((h) => spanOf(h, A).l),
    [1, 0, 1],
  );
  const keys = new Map([
    [3, 'c'],
    [7, 'g'],
  ]);
  assert.deepEqual(
    notes(w, m.hits[0][0], (e) => e.rule, keys),
    [
      { l: 0, counts: [7], keys: ['g'] },
      { l: 1, counts: [3], keys: ['c', 'g'] },
    ],
  );
});

test('a small letter shares the note of the one it stands over', () => {
  const over = (x, l) => l > 0 && standsOver(x, l) && !standsOver(x, l - 1);
  const w = among(over);
  const l = at(w, over);
  const hits = [ruled(l, 1), ruled(l - 1, 2)].map((e) => ({ v: 0, e }));
  assert.deepEqual(
    notes(w, hits, (e) => e.rule, new Map()),
    [{ l: l - 1, counts: [2, 1], keys: [] }],
  );
});

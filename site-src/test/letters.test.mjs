// The whole text from the project's own file: words joined again are the verse, and no letter is
// lost.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { lamAlif, SMALL_ALIF, standsOver, words } from '../node_modules/.out/app/text/letters.js';

const verses = readFileSync(new URL('../../rules-content/text/quran.txt', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n')
  .map((l) => l.split('\t'));

test('every verse is its words again', () => {
  let n = 0;
  for (const [ref, text] of verses) {
    const ws = words(text);
    n += ws.length;
    assert.equal(ws.map((w) => w.text).join(' '), text, ref);
    for (const w of ws) assert.ok(w.letters.length > 0, ref);
  }
  assert.equal(verses.length, 6236);
  assert.equal(n, 77433); // words of the second text, as the import found
});

test('letters lie one after another, and what is between them is a sign of no letter', () => {
  for (const [ref, text] of verses) {
    for (const w of words(text)) {
      let at = 0;
      for (const l of w.letters) {
        for (const c of w.text.slice(at, l.from)) assert.match(c, /[\u06d6-\u06dc\u06de]/u, ref);
        assert.ok(l.to > l.from, ref);
        at = l.to;
      }
      for (const c of w.text.slice(at)) assert.match(c, /[\u06d6-\u06dc\u06e9]/u, ref);
    }
  }
});

// What stands over the letter before it and cannot be coloured by a range of its own. The figures
// are those of the generator's `verify` (spelling): 5,923 small alifs on a stretch, 1,377 after a
// letter that does not join, 2,426 carried.
test('few letters stand over another; a small alif on a stretch does not', () => {
  const n = { stretch: 0, apart: 0, carried: 0, other: 0, under: 0 };
  for (const [ref, text] of verses) {
    for (const w of words(text)) {
      w.letters.forEach((x, l) => {
        const over = standsOver(w, l);
        const before = w.letters[l - 1];
        if (over && before && w.text.charCodeAt(x.from - 1) === 0x640) n.under++;
        if (x.rune !== SMALL_ALIF) {
          if (over) n.other++;
          return;
        }
        if (!over) {
          n.stretch++;
          assert.equal(w.text.charCodeAt(x.from), 0x640, ref);
          return;
        }
        if (before.marks.length === 0) n.carried++;
        else n.apart++;
        assert.ok(!lamAlif(w, l - 1), ref);
      });
    }
  }
  assert.deepEqual(n, { stretch: 5923, apart: 1377, carried: 2426, other: 0, under: 0 });
});

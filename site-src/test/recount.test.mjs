// Marks of version 1, against the text as it is now: every word of the table has a hamza on a
// stretch and its alif at the letter that was both, and a mark on any letter of it is moved to the
// letter it was made on.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { recount } from '../node_modules/.out/app/store/recount.js';
import { words } from '../node_modules/.out/app/text/letters.js';

const verses = readFileSync(new URL('../../rules-content/text/quran.txt', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n')
  .map((l) => {
    const [ref, text] = l.split('\t');
    const [s, a] = ref.split(':').map(Number);
    return { s, a, words: words(text) };
  });
const mark = (v, w, l) => ({ v, w, l, count: 2 });
const TATWEEL = 0x640;
const HAMZA = 0x654;
const FATHA = 0x64e;
const ALIF = 0x627;

test('277 words, each with its hamza and alif, and no letter but theirs and the later ones moves', () => {
  let found = 0;
  for (const { s, a, words: ws } of verses) {
    ws.forEach((w, i) => {
      const was = w.letters.map((_, l) => mark(0, i, l));
      const now = recount('heavy-ra', { s, a }, was).map((m) => m.l);
      const first = now.findIndex((l, k) => l !== k);
      if (first < 0) return;
      found++;
      const at = first - 1;
      const [hamza, alif] = [w.letters[at], w.letters[at + 1]];
      assert.equal(hamza.rune, TATWEEL);
      assert.deepEqual(hamza.marks, [HAMZA, FATHA]);
      assert.equal(alif.rune, ALIF);
      assert.deepEqual(alif.marks, []);
      assert.deepEqual(
        now,
        w.letters.map((_, l) => (l > at ? l + 1 : l)),
      );
      assert.deepEqual(
        recount('madd-badal', { s, a }, was).map((m) => m.l),
        w.letters.map((_, l) => (l >= at ? l + 1 : l)),
      );
    });
  }
  assert.equal(found, 277);
});

test('lines that begin in another verse, within a verse, in another surah', () => {
  const is = (from, m, l) => assert.deepEqual(recount('heavy-ra', from, [m]), [{ ...m, l }]);
  is({ s: 93, a: 4 }, mark(0, 0, 5), 6);
  is({ s: 93, a: 1 }, mark(3, 0, 5), 6);
  is({ s: 92, a: 21 }, mark(4, 0, 5), 6);
  is({ s: 2, a: 4, w: 8 }, mark(0, 1, 5), 6);
  is({ s: 2, a: 3, w: 2 }, mark(1, 9, 5), 6);
  is({ s: 2, a: 4, w: 8 }, mark(0, 9, 5), 5); // another word
  is({ s: 93, a: 4 }, mark(0, 1, 5), 5);
  is({ s: 114, a: 6 }, mark(0, 0, 5), 5);
  assert.deepEqual(recount('', { s: 93, a: 4 }, []), []);
});

test('what was kept on a device by the first release', () => {
  const kept = JSON.parse(readFileSync(new URL('data/database-1.json', import.meta.url), 'utf8'));
  const [d] = kept.drafts;
  assert.equal(kept.version, 1);
  assert.deepEqual(
    d.marks.map((m) => m.l),
    [5, 5],
  );
  assert.deepEqual(
    recount(d.lines.rule, d.lines.from, d.marks).map((m) => m.l),
    [6, 6],
  ); // 92:13, and 93:4, the thirteenth verse of the lines
});

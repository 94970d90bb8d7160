// The whole text from the project's own file: words joined again are the verse, and no letter is lost.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { words } from '../node_modules/.out/app/text/letters.js';

const verses = readFileSync(new URL('../../rules-content/text/quran.txt', import.meta.url), 'utf8').trimEnd().split('\n').map((l) => l.split('\t'));

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

// The file of a surah, made up here: what is tested is the reading of bytes. That every surah of
// the text is read as the generator wrote it, with every event, is tested in a browser
// (generator/internal/e2e, TestSurahs).
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { test } from 'node:test';
import { TextError } from '../node_modules/.out/app/text/fetch.js';
import { unpack, verse, VERSION } from '../node_modules/.out/app/text/surah.js';
import { random as numbers } from './random.mjs';

// Two letters, a mark and a pause sign of the Arabic block: U+0628, U+062A, U+064E, U+06D6.
const code = {
  alphabet: '\n \u0628\u062a\u064e\u06d6',
  kinds: [
    [3, 2, 1 | 4 | 8 | (6 << 4)],
    [4, 0, 0, 0, 1],
    [5, 4, 2, 1, 0],
    [6, 0, 0, -1, 3],
  ],
};
const K = code.alphabet.length;
const LINE = K + code.kinds.length;
const TEXT = '\u0628\u064e\u062a\u06d6 \u0628\n\u062a\n';
const STREAM = [2, 4, K + 1, K + 2, 3, K, 5, LINE, 1, 2, K + 3, 0, 3, 0];
const file = (stream = STREAM, text = TEXT, version = VERSION) =>
  Uint8Array.from([
    0x53,
    0x55,
    0x52,
    version,
    ...createHash('sha256').update(text).digest(),
    ...stream,
  ]);
const read = async (b, n = 2, c = code) =>
  (await unpack(b, c, n, 'a file')).map((p, i) => verse(p, c, 1, i + 1));
const refused = (code) => (e) => e instanceof TextError && e.code === code;

test('text, words and events are read', async () => {
  const [one, two] = await read(file());
  assert.deepEqual(
    [one.s, one.a, one.text, two.a, two.text],
    [1, 1, TEXT.split('\n')[0], 2, '\u062a'],
  );
  assert.deepEqual(
    one.words.map((w) => [w.text, w.letters.length, w.pause, !!w.lined]),
    [
      ['\u0628\u064e\u062a\u06d6', 2, 0x6d6, true],
      ['\u0628', 1, 0, false],
    ],
  );
  assert.deepEqual(one.events, [
    {
      w: 0,
      l: 0,
      rule: 4,
      count: 0,
      when: 0,
      before: false,
      unwritten: false,
      detail: 0,
      cw: 0,
      cl: 1,
    },
    {
      w: 0,
      l: 0,
      rule: 5,
      count: 4,
      when: 2,
      before: false,
      unwritten: false,
      detail: 0,
      cw: 1,
      cl: 0,
    },
    {
      w: 0,
      l: 1,
      rule: 3,
      count: 2,
      when: 1,
      before: true,
      unwritten: true,
      detail: 6,
      cw: 0,
      cl: -1,
    },
    {
      w: 1,
      l: 0,
      rule: 6,
      count: 0,
      when: 0,
      before: false,
      unwritten: false,
      detail: 0,
      cw: -1,
      cl: 3,
    },
  ]);
  assert.deepEqual(two.events, []);
});

for (const [name, bytes, n, why] of [
  ['nothing', [], 2, 'damaged'],
  [
    'something else',
    new TextEncoder().encode('{"s":1,"v":[]} and so on, as long as a head'),
    2,
    'damaged',
  ],
  ['another version', file(STREAM, TEXT, VERSION + 1), 2, 'version'],
  ['another text', file(STREAM, `${TEXT} `), 2, 'damaged'],
  ['another number of verses', file(), 3, 'damaged'],
  ['a verse without an end', file(STREAM.slice(0, -1), TEXT.slice(0, -1)), 2, 'damaged'],
  ['an event after the end', file([...STREAM, K]), 2, 'damaged'],
  ['an event before the first letter', file([K, ...STREAM]), 2, 'damaged'],
  ['an event in the middle of a letter', file([2, K, 4, ...STREAM.slice(2)]), 2, 'damaged'],
  ['an event on a pause sign', file([...STREAM.slice(0, 7), K, ...STREAM.slice(7)]), 2, 'damaged'],
  ['an event on a space', file([...STREAM.slice(0, 9), K, ...STREAM.slice(9)]), 2, 'damaged'],
  ['a line over half a word', file([2, 4, LINE, ...STREAM.slice(2)]), 2, 'damaged'],
  ['an event of no kind', file([2, 4, LINE + 1, ...STREAM.slice(2)]), 2, 'damaged'],
])
  test(`refused: ${name}`, () => assert.rejects(read(Uint8Array.from(bytes), n), refused(why)));

test('whatever is harmed, it is refused, or the text is whole and events are on letters', async () => {
  let whole = 0;
  let no = 0;
  const { below: random } = numbers(1);
  for (let i = 0; i < 20_000; i++) {
    let b = [...file()];
    for (let k = random(3); k >= 0; k--) {
      const at = random(8) ? 36 + random(STREAM.length) : random(b.length + 1);
      const x = random(8) ? random(LINE + 2) : random(256);
      if (random(8) === 0) b = b.slice(0, at);
      else b.splice(at, random(2), x);
    }
    try {
      const vs = await read(Uint8Array.from(b));
      assert.equal(vs.map((v) => `${v.text}\n`).join(''), TEXT);
      for (const v of vs)
        for (const e of v.events)
          assert.ok(v.words[e.w].letters[e.l] && code.kinds.some((x) => x[0] === e.rule));
      whole++;
    } catch (e) {
      if (!(e instanceof TextError)) throw e;
      no++;
    }
  }
  assert.ok(whole > 100 && no > 1000, `${whole} read, ${no} refused`);
});

// Links to work and to results: whatever comes is understood or refused in words.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { LESSONS } from '../node_modules/.out/app/share/lessons.js';
import { hashIn } from '../node_modules/.out/app/share/query.js';
import { sessionOf } from '../node_modules/.out/app/share/result.js';
import { isValid } from '../node_modules/.out/app/store/validate.js';
import { garbage, hashOf, maker, meaning, mutated } from './linking.mjs';
import { catalogue } from './site.mjs';

const later = JSON.parse(readFileSync(new URL('../strings/later.json', import.meta.url), 'utf8'));
const vectors = JSON.parse(readFileSync(new URL('data/links-1.json', import.meta.url), 'utf8'));

/** The same, which must be an answer of one of the two kinds. */
function answer(hash) {
  const read = meaning(hash);
  if (!read) return undefined;
  if ('given' in read) {
    const { from, to } = read.given.lines ?? read.given;
    assert.ok(from.a > 0 && to.a > 0, hash);
    assert.doesNotMatch(read.given.say, /[\u0000-\u001f\u202a-\u202e\u2066-\u2069]/, hash);
    if ('id' in read.given) assert.ok(isValid('sessions', sessionOf(read.given, 'a'), true), hash);
  } else assert.ok(`unread.${read.bad}` in later, `${read.bad}: ${hash}`);
  return read;
}

test('10,000 random links: valid, mutated, garbage', () => {
  const make = maker(20261126);
  const n = { valid: 0, mutated: 0, garbage: 0, understood: 0, same: 0 };
  for (let i = 0; i < 10_000; i++) {
    const x = make.upTo(2) ? make.work() : make.result();
    const hash = hashOf(x);
    const kind = ['valid', 'mutated', 'garbage'][i % 3];
    n[kind]++;
    if (kind === 'valid') assert.deepEqual(answer(hash), { given: x }, hash);
    if (kind === 'garbage') assert.ok(!('given' in (answer(garbage(make)) ?? {})));
    if (kind !== 'mutated') continue;
    const read = answer(mutated(hash, make));
    if (!read || !('given' in read)) continue;
    // Understood means that it was only wrapped: nothing of it is another.
    n.understood++;
    assert.deepEqual(read.given, x);
  }
  assert.ok(n.valid > 3000 && n.mutated > 3000 && n.garbage > 3000);
  assert.ok(n.understood > 10 && n.understood < n.mutated / 4, JSON.stringify(n));
});

const WRAPPED = {
  'a full stop after it': (s) => `${s}.`,
  'brackets and a comma': (s) => `${s}>),`,
  'escaped once more': (s) => `#${encodeURIComponent(s.slice(1))}`,
  'escaped twice more': (s) => `#${encodeURIComponent(encodeURIComponent(s.slice(1)))}`,
  'its values escaped': (s) => s.replaceAll(':', '%3A').replaceAll(',', '%252C'),
  'written for HTML': (s) => s.replaceAll('&', '&amp;'),
  'a name of the screen in capitals': (s) => s.replace('work', 'WORK').replace('result', 'Result'),
  'the rule in capitals': (s) => s.replace(/rule=[^&]*/, (x) => `rule=${x.slice(5).toUpperCase()}`),
  'a tracker': (s) => `${s}&utm_source=chat`,
  'another tracker': (s) => `${s}?fbclid=IwAR0_-x`,
  'blanks in it': (s) => s.replace('&from', ' &from').replace('&to=', '&to= '),
  'emphasis of a chat': (s) => `${s}_*`,
  'no slash': (s) => s.replace('#/', '#'),
};
for (const [name, wrap] of Object.entries(WRAPPED))
  test(`a link with ${name} is understood`, () => {
    const make = maker(7);
    for (let i = 0; i < 200; i++) {
      const x = i % 2 ? make.work() : make.result();
      assert.deepEqual(answer(wrap(hashOf(x))), { given: x }, wrap(hashOf(x)));
    }
  });

const HOST = 'https://example.org/a/b/';
const PASTED = {
  'a link alone': (s) => HOST + s,
  'a capital scheme': (s) => `HTTPS://EXAMPLE.ORG/${s}`,
  'angle brackets': (s) => `<${HOST}${s}>`,
  'a message around it': (s) => `An-Naba 12–20 #1: 7 of 9.\n${HOST}${s}\nThank you. See you, s`,
  'lines broken by mail': (s) => HOST + s.replace(/(.{40})/g, '$1\r\n  '),
  'escapes in another link': (s) => `https://chat.example/?to=${encodeURIComponent(HOST + s)}`,
};
for (const [name, wrap] of Object.entries(PASTED))
  test(`pasted text with ${name} has the link found in it`, () => {
    const make = maker(11);
    for (let i = 0; i < 200; i++) {
      const x = i % 2 ? make.work() : make.result();
      const found = hashIn(wrap(hashOf(x)));
      assert.doesNotMatch(found ?? '', /\s/); // an address loses its line ends
      assert.ok(found, wrap(hashOf(x)));
      assert.deepEqual(answer(found), { given: x }, wrap(hashOf(x)));
    }
  });

test('pasted text without a link has none', () => {
  for (const s of ['', 'hello', HOST, `${HOST}#/lines?from=78:1`, '#/works?v=1', '%', '%23%2F'])
    assert.equal(hashIn(s), undefined, s);
});

test('a link cut off anywhere is refused', () => {
  const hash = hashOf(maker(3).work());
  for (let i = '#/work?'.length; i < hash.length; i++)
    assert.ok('bad' in answer(hash.slice(0, i)), hash.slice(0, i));
});

test('version 1: links mean what they always meant', () => {
  assert.ok(vectors.length >= 12);
  for (const { link, means } of vectors) assert.deepEqual(answer(link), means, link);
});

// The vectors may only grow: a change of one of the first would be a change of what links mean.
test('version 1: no vector was changed', () => {
  const [first, digest] = [12, 'f0a0673a97594b52c8cbf7fd858f5b43d2bf32bccf00cd3a3c6745a58d1c0165'];
  const kept = JSON.stringify(vectors.slice(0, first));
  assert.equal(createHash('sha256').update(kept).digest('hex'), digest);
});

test('every lesson has a number in links', () => {
  for (const { id } of catalogue.lessons) assert.ok(LESSONS.includes(id), id);
  assert.equal(new Set(LESSONS).size, LESSONS.length);
});

test('a usual link is short', () => {
  const x = {
    lines: {
      rule: 'noon-idgham-ghunnah',
      also: ['madd-muttasil', 'stops'],
      from: { s: 78, a: 12 },
      to: { s: 78, a: 20 },
    },
    times: 4,
    lessons: [...LESSONS],
    held: { munfasil: 4, muttasil: 4, arid: 4, lin: 4 },
    say: 'Read verse 14 twice, slowly, before you mark. See you Thursday.',
  };
  const n = 60 + hashOf(x).length;
  assert.ok(n < 300, `${n} characters`);
});

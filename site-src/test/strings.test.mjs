// Every key the code asks for is in the catalogue, and every key of the catalogue is asked for.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';

import { letterName, markNames } from '../node_modules/.out/app/text/names.js';
import { words } from '../node_modules/.out/app/text/letters.js';
import { read, rules } from './rules.mjs';

const root = new URL('../app/', import.meta.url);
const code = readdirSync(root, { recursive: true })
  .filter((f) => f.endsWith('.ts'))
  .map((f) => readFileSync(new URL(f, root), 'utf8'))
  .join('\n');
const file = (f) => JSON.parse(readFileSync(new URL(`../strings/${f}`, import.meta.url), 'utf8'));
const first = file('en.json');
const en = { ...first, ...file('later.json') };

const asked = [...code.matchAll(/\bt\(\s*(?:[^'"`(),]+\?\s*)?'([\w.-]+)'/g)].map((m) => m[1]);
const begun = [...code.matchAll(/`([a-z]+(?:\.[a-z-]+)*[.-])\$\{/g)].map((m) => m[1]);

test('keys asked for are there', () => {
  assert.ok(asked.length > 60, `${asked.length} keys seen`);
  for (const k of asked) assert.ok(k in en, k);
});

// A key that is put together is checked by its type (Key in i18n.ts), but for those that depend on
// the rules or the text.
test('no other key than these goes round the type check', () => {
  const round = code
    .split('\n')
    .filter((l) => /\bas (Key|any)\b|: any\b|<any>|@ts-/.test(l))
    .map((l) => /\bt\(`([a-z.]+)\.\$\{.*` as Key\)/.exec(l)?.[1] ?? l);
  assert.deepEqual(round.sort(), ['letter', 'pencils.family']);
});

test('every family of rules has a name', () => {
  const families = new Set(rules.map((r) => r.family));
  assert.ok(families.size > 5, `${families.size} families`);
  for (const f of families) assert.ok(`pencils.family.${f}` in en, f);
});

test('every letter of the text has a name, and every mark', () => {
  const letters = read('rules-content/text/quran.txt')
    .trimEnd()
    .split('\n')
    .flatMap((l) => words(l.split('\t')[1]))
    .flatMap((w) => w.letters);
  assert.ok(letters.length > 300_000, `${letters.length} letters`);
  const bad = new Set();
  for (const l of letters) {
    if (letterName(l).startsWith('letter.')) bad.add(letterName(l));
    for (const m of l.marks)
      if (!markNames({ rune: l.rune, marks: [m] }))
        bad.add(`${l.rune.toString(16)} with ${m.toString(16)}`);
  }
  // the letter's own name tells these hamzas
  assert.deepEqual([...bad].sort(), ['640 with 654', '649 with 655']);
});

test('keys there are asked for', () => {
  for (const k of Object.keys(en)) {
    assert.ok(code.includes(`'${k}'`) || begun.some((b) => k.startsWith(b)), `${k} is not used`);
  }
});

test('plural entries have the forms of the language', () => {
  const forms = new Set([...new Intl.PluralRules('en').resolvedOptions().pluralCategories, 'zero']);
  for (const [k, v] of Object.entries(en)) {
    if (typeof v === 'string') continue;
    assert.ok('other' in v && 'one' in v, k);
    for (const f of Object.keys(v)) assert.ok(forms.has(f), `${k}: ${f}`);
  }
});

test('no exclamation marks', () => {
  for (const v of Object.values(en)) assert.doesNotMatch(JSON.stringify(v), /!/);
});

test('what the one file says differently is said on the site, of the same things', () => {
  const own = Object.entries(file('one-file.json'));
  assert.ok(own.length > 10, `${own.length} keys`);
  const places = (text) => [...text.matchAll(/\{\w+\}/g)].map(String).sort();
  for (const [k, text] of own) {
    assert.ok(k in en, k);
    assert.notEqual(text, en[k], k);
    for (const p of places(text)) assert.ok(places(en[k]).includes(p), `${k}: ${p}`);
  }
});

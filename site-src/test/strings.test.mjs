// Every key the code asks for is in the catalogue, and every key of the catalogue is asked for.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';

const root = new URL('../app/', import.meta.url);
const code = readdirSync(root, { recursive: true }).filter((f) => f.endsWith('.ts')).map((f) => readFileSync(new URL(f, root), 'utf8')).join('\n');
const en = JSON.parse(readFileSync(new URL('../strings/en.json', import.meta.url), 'utf8'));

const asked = [...code.matchAll(/\bt\(\s*(?:[^'"`(),]+\?\s*)?'([\w.-]+)'/g)].map((m) => m[1]);
const begun = [...code.matchAll(/`([a-z]+(?:\.[a-z-]+)*[.-])\$\{/g)].map((m) => m[1]);

test('keys asked for are there', () => {
  assert.ok(asked.length > 60, `${asked.length} keys seen`);
  for (const k of asked) assert.ok(k in en, k);
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

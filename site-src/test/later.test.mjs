// The words that come later are there before anything asks for them: what the first screen needs asks
// for none of them, and every part that is fetched later and asks for some brings them along.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { test } from 'node:test';

const app = new URL('../app/', import.meta.url).pathname;
const later = Object.keys(
  JSON.parse(readFileSync(new URL('../strings/later.json', import.meta.url), 'utf8')),
);
const source = (f) => readFileSync(app + f, 'utf8');
const from = (f, all) =>
  [...source(f).matchAll(all)]
    .map(([, to]) => normalize(join(dirname(f), to)))
    .filter((to) => to.endsWith('.ts'));
const imports = (f) => from(f, /^(?:import|export)\s(?!type\s)(?:[^;']*?from\s)?'(\.[^']+)'/gm);

/** A module and everything that it brings along. */
function closure(f, seen = new Set()) {
  if (seen.has(f)) return seen;
  seen.add(f);
  for (const to of imports(f)) closure(to, seen);
  return seen;
}

/** Whether a module asks for a word that comes later, by its name or by how its name begins. */
function asks(f) {
  const named = [...source(f).matchAll(/'([\w.-]+\.[\w.-]+)'/g)].map((m) => m[1]);
  const begun = [...source(f).matchAll(/`([a-z]+(?:\.[a-z-]+)*[.-])\$\{/g)].map((m) => m[1]);
  return later.find((k) => named.includes(k) || begun.some((b) => k.startsWith(b)));
}

test('the first screen asks for no word that comes later', () => {
  const first = closure('screens/today/card.ts', closure('main.ts'));
  assert.ok(first.size > 50, `${first.size} modules`);
  for (const f of first) assert.equal(asks(f), undefined, f);
});

test('what is fetched later brings its words along', () => {
  const all = readdirSync(app, { recursive: true }).filter((f) => f.endsWith('.ts'));
  const entries = new Set(all.flatMap((f) => from(f, /import\('(\.[^']+)'\)/g)));
  const bring = [...entries].filter((f) => closure(f).has('later.ts'));
  assert.ok(bring.length > 5, `${bring.length} parts bring words`);
  for (const entry of entries) {
    if (bring.includes(entry)) continue;
    for (const f of closure(entry)) assert.equal(asks(f), undefined, `${entry} needs ${f}`);
  }
});

// The style sheets follow the writing direction: their properties are logical, except where a side
// of the screen is meant and a comment before it says why ("Physical: …").
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { test } from 'node:test';

const style = new URL('../style/', import.meta.url);
const names = readdirSync(style);
const read = (name) => readFileSync(new URL(name, style), 'utf8');

/** Every declaration: its property and value, the comment just before it, and its line. */
function declarations(css) {
  const all = [];
  let text = '';
  let note = '';
  for (const [part] of css.matchAll(/\/\*[^]*?\*\/|'[^']*'|"[^"]*"|[^]/g)) {
    if (part.startsWith('/*')) {
      assert.equal(text.trim(), '', `a comment within a declaration: ${part}`);
      note = part.slice(2, -2).trim();
    } else if (';{}'.includes(part)) {
      const [, property, value] = /^([\w-]+)\s*:\s*([^]*)$/.exec(text.trim()) ?? [];
      if (part !== '{' && property) all.push({ property, value, note });
      text = note = '';
    } else text += part;
  }
  return all;
}

const SIDE = '(left|right|top|bottom)';
const PROPERTY = new RegExp(
  `^(${SIDE}|(min-|max-|contain-intrinsic-)?(width|height)|(border|margin|padding|inset|scroll-margin|` +
    `scroll-padding)-${SIDE}.*|border-.*-radius|(overflow|overscroll-behavior)-[xy])$`,
);
const LOGICAL = /^border-(start|end)-(start|end)-radius$/;
const BY_VALUE = new RegExp(`^(text-align(-last)?|float|clear|caption-side|background.*|mask.*)$`);
const FOUR = /^((scroll-)?(margin|padding)|inset|border-(width|style|color|radius))$/;

/** The parts of a value between spaces that stand in no brackets. */
function parts(value) {
  let deep = 0;
  let out = '';
  for (const c of value.replace(/\s*!important$/, '')) {
    deep += (c === '(') - (c === ')');
    out += deep === 0 && /\s/.test(c) ? '\n' : c;
  }
  return out.split(/\n+/);
}

/** Whether a declaration names a side of the screen. */
function physical({ property, value }) {
  if (PROPERTY.test(property) && !LOGICAL.test(property)) return true;
  const [, right, , left] = parts(value);
  if (FOUR.test(property) && left !== undefined && left !== right) return true;
  return BY_VALUE.test(property) && new RegExp(`\\b${SIDE}\\b`).test(value);
}

test('what counts as physical', () => {
  const one = (css) => declarations(`a { ${css} }`).some(physical);
  for (const css of [
    'left: 0',
    'width: 1px',
    'max-height: 1px',
    'margin-left: 0',
    'border-top: 0',
    'border-top-left-radius: 0',
    'overflow-x: clip',
    'scroll-padding-bottom: 1px',
    'text-align: left',
    'float: right',
    'margin: 0 1px 0 2px',
    'inset: 0 calc(1px + 2px) 0 0 !important',
    'background: linear-gradient(to top, currentcolor, transparent)',
  ])
    assert.ok(one(css), css);
  for (const css of [
    'inset-inline-end: 0',
    'max-inline-size: 1px',
    'border-radius: 50%',
    'border-start-end-radius: 0',
    'margin: 0 1px 2px',
    'margin: 0 1px 2px 1px',
    'inset-block-end: env(safe-area-inset-bottom)',
    'text-align: start',
    'vertical-align: top',
    "content: 'left: 0'",
    '--left: 1px',
  ])
    assert.ok(!one(css), css);
});

test('properties are logical, or say why not', () => {
  let seen = 0;
  for (const name of names)
    for (const d of declarations(read(name))) {
      seen++;
      const excused = /^Physical: \S+( \S+){2,}/.test(d.note);
      assert.equal(excused, physical(d), `${name}: ${d.property}: ${d.value}`);
    }
  assert.ok(seen > 900, `${seen} declarations seen`);
});

test('every style file is imported once', () => {
  const roots = ['main.css', 'pages.css', 'paper.css', 'later.css', 'shared.css', 'one-file.css'];
  const imported = roots.flatMap((root) =>
    [...read(root).matchAll(/@import '\.\/(.*)';/g)].map((m) => m[1]),
  );
  assert.deepEqual(
    imported.filter((f) => roots.includes(f)),
    ['pages.css'], // those of the one file are pages too
  );
  assert.deepEqual([...imported.filter((f) => !roots.includes(f)), ...roots].sort(), names.sort());
});

test('every custom property is set, and every one set is used', () => {
  const code = readdirSync(new URL('../app/', import.meta.url), { recursive: true })
    .filter((f) => f.endsWith('.ts'))
    .map((f) => readFileSync(new URL(`../app/${f}`, import.meta.url), 'utf8'))
    .join('\n');
  const built = readdirSync(new URL('../node_modules/.site/assets/', import.meta.url))
    .filter((f) => f.endsWith('.css'))
    .map((f) => readFileSync(new URL(`../node_modules/.site/assets/${f}`, import.meta.url), 'utf8'))
    .join('\n');
  const own = names.map(read).join('\n');
  const set = new Set(
    [...`${built}\n${code}`.matchAll(/(--[\w-]+)(?:['"`]?\s*:|['"`]\s*,)/g)].map((m) => m[1]),
  );
  for (const [, name] of own.matchAll(/var\((--[\w-]+)/g)) assert.ok(set.has(name), name);
  const used = new Set(
    [...`${own}\n${code}`.matchAll(/(?:var\(|getPropertyValue\(['"`])(--[\w-]+)/g)].map(
      (m) => m[1],
    ),
  );
  for (const { property } of names.flatMap((n) => declarations(read(n))))
    if (property.startsWith('--')) assert.ok(used.has(property), property);
});

// Which modules may know of what. What computes stands apart from what draws: it knows neither the
// page nor the state, and nothing goes round in a circle.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import test from 'node:test';

const app = new URL('../app/', import.meta.url).pathname;
const files = readdirSync(app, { recursive: true }).filter((f) => f.endsWith('.ts'));

/** The code of a module, without comments and the words of its strings. */
const code = (f) =>
  readFileSync(app + f, 'utf8')
    .replace(/\/\*[^]*?\*\/|(^|\s)\/\/.*/g, '')
    .replace(/`[^`]*`|'[^'\n]*'/g, (s) => (/^'\.{0,2}\/?[\w@./-]+'$/.test(s) ? s : "''"));

/** What a module has from others when it starts; types are gone by then. */
function imports(f) {
  const found = code(f).matchAll(
    /^(?:import|export)\s([^;]*?)from\s'([^']+)'|^import\s'([^']+)'/gm,
  );
  return [...found]
    .filter(([, names]) => !names || !/^type\s/.test(names))
    .filter(([, names]) => !names || !/^{(\s*type [\w\s]+,?)+}\s*$/.test(names.trim()))
    .map(([, , a, b]) => a ?? b)
    .map((to) => (to.startsWith('.') ? normalize(join(dirname(f), to)) : to));
}

const graph = new Map(files.map((f) => [f, imports(f)]));

test('every module that is imported is there', () => {
  for (const [f, list] of graph)
    for (const to of list)
      if (to.endsWith('.ts')) assert.ok(graph.has(to), `${f} imports ${to}, which is not there`);
});

test('nothing goes round in a circle', () => {
  const done = new Set();
  const visit = (f, way) => {
    assert.ok(!way.includes(f), `a circle: ${[...way.slice(way.indexOf(f)), f].join(' > ')}`);
    if (done.has(f)) return;
    for (const to of graph.get(f) ?? []) visit(to, [...way, f]);
    done.add(f);
  };
  for (const f of files) visit(f, []);
});

/** Everything a module needs, by whatever way, with the way. */
function reach(f, way = [f], seen = new Map()) {
  for (const to of graph.get(f) ?? []) {
    if (seen.has(to)) continue;
    seen.set(to, [...way, to]);
    reach(to, [...way, to], seen);
  }
  return seen;
}

/** What computes, and knows neither the page nor the state. */
const PURE = [
  /^plan\//,
  /^text\//,
  /^record\//,
  /^marking\//,
  /^group\.ts$/,
  /^paper\//,
  /^beat\/pace\.ts$/,
  /^colour\/close\.ts$/,
  /^share\/(?!send\.ts)/,
  /^practice\/draft\.ts$/,
];

/** What draws, remembers or keeps. */
const IMPURE =
  /^(state|planner|draw|theme|looks)\.ts$|^(screens|actions)\/|^store\/(?!(id|validate|checks|surahs|repair|recount)\.ts)|^(lit-html|idb)/;

const pure = files.filter((f) => PURE.some((p) => p.test(f)));

for (const f of pure)
  test(`${f} computes: it knows neither the page nor the state`, () => {
    for (const [to, way] of reach(f)) assert.doesNotMatch(to, IMPURE, way.join(' > '));
    const said = /\b(document|window|localStorage|sessionStorage|HTML\w*Element)\b/.exec(code(f));
    assert.equal(said?.[0], undefined);
  });

test('the rules above are about something', () => {
  for (const p of PURE)
    assert.ok(
      pure.some((f) => p.test(f)),
      String(p),
    );
});

/** The functions and methods of a file with their lines: from a first line that opens them. */
function* functions(f) {
  const lines = readFileSync(app + f, 'utf8').split('\n');
  const opens =
    /^( *)(?:export |async |private |readonly |static |get )*(?:function\b|const \w+ = .*=>|\w+(?: = )?\(.*\).*\{$|\w+ = \(.*=>).*[{(`>]$/;
  for (const [i, line] of lines.entries()) {
    const indent = opens.exec(line)?.[1];
    if (indent === undefined || /^ *(?:if|for|while|switch|return|else)\b/.test(line)) continue;
    const closes = new RegExp('^' + indent + '[)}\\]`]');
    const end = lines.findIndex((x, j) => j > i && closes.test(x));
    yield [line.trim(), end - i + 1];
  }
}

test('no function needs scrolling', () => {
  let n = 0;
  for (const f of files)
    for (const [head, lines] of functions(f)) {
      n++;
      assert.ok(lines <= 50, `${f}: ${head} has ${lines} lines`);
    }
  assert.ok(n > 500, `${n} functions found`);
});

test('no file is longer than 200 lines', () => {
  const below = (dir, list) => list.map((f) => new URL(`../${dir}/${f}`, import.meta.url).pathname);
  const dirs = ['style', 'pages', 'test'].map((d) => [d, new URL(`../${d}/`, import.meta.url)]);
  const others = dirs.flatMap(([d, url]) =>
    below(
      d,
      readdirSync(url).filter((f) => /\.(css|html|mjs)$/.test(f)),
    ),
  );
  for (const f of [...below('app', files), ...others]) {
    const n = readFileSync(f, 'utf8').split('\n').length - 1;
    assert.ok(n <= 200, `${f} has ${n} lines`);
  }
});

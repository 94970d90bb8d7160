// Copies what the browser needs of npm packages into this folder, with their licences, and writes
// vendor.json. Run it, with Node, after a change of a version in package.json: npm run vendor.
import { createHash } from 'node:crypto';
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** The files of each package that are bundled; package.json and LICENSE come with them. */
const TAKEN = {
  'lit-html': [
    'lit-html.js',
    'directive.js',
    'directive-helpers.js',
    'async-directive.js',
    'directives/guard.js',
    'directives/if-defined.js',
    'directives/keyed.js',
    'directives/live.js',
    'directives/ref.js',
    'directives/repeat.js',
  ],
  idb: ['build/index.js'],
  'lean-qr': ['index.mjs', 'extras/svg.mjs'],
  '@noble/hashes': ['sha2.js', '_md.js', '_u64.js', 'utils.js'],
};

const site = new URL('..', import.meta.url).pathname;
const sha256 = (data) => createHash('sha256').update(data).digest('hex');

const packages = Object.entries(TAKEN).map(([name, files]) => {
  const from = `${site}node_modules/${name}/`;
  const to = `${site}vendor/${name}/`;
  rmSync(to, { recursive: true, force: true });
  const digests = {};
  for (const file of ['package.json', 'LICENSE', ...files]) {
    mkdirSync(dirname(to + file), { recursive: true });
    cpSync(from + file, to + file);
    digests[file] = sha256(readFileSync(to + file));
  }
  const { version, license } = JSON.parse(readFileSync(`${from}package.json`, 'utf8'));
  return { name, version, license, files: digests };
});

writeFileSync(`${site}vendor/vendor.json`, `${JSON.stringify(packages, null, 2)}\n`);

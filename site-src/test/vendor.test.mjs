// What is carried of npm packages is what the packages have, byte for byte, in the version that
// package.json names.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync } from 'node:fs';
import test from 'node:test';

const site = new URL('../', import.meta.url);
const read = (path) => readFileSync(new URL(path, site));
const json = (path) => JSON.parse(read(path));

const packages = json('vendor/vendor.json');

for (const { name, version, license, files } of packages) {
  test(`${name} ${version} is carried as its package has it`, () => {
    assert.equal(version, json('package.json').devDependencies[name]);
    assert.equal(version, json(`node_modules/${name}/package.json`).version);
    assert.equal(license, json(`node_modules/${name}/package.json`).license);
    for (const [file, digest] of Object.entries(files)) {
      const carried = read(`vendor/${name}/${file}`);
      assert.ok(carried.equals(read(`node_modules/${name}/${file}`)), file);
      assert.equal(createHash('sha256').update(carried).digest('hex'), digest, file);
    }
  });
}

test('their licences are carried too', () => {
  const whole = readdirSync(new URL('../LICENSES/', site)).map((f) => read(`../LICENSES/${f}`));
  for (const { name } of packages) {
    const licence = read(`vendor/${name}/LICENSE`);
    assert.ok(
      whole.some((x) => x.equals(licence)),
      name,
    );
  }
});

test('nothing else is carried', () => {
  const there = readdirSync(new URL('vendor/', site), { recursive: true, withFileTypes: true })
    .filter((x) => x.isFile())
    .map((x) => `${x.parentPath ?? x.path}/${x.name}`.split('/vendor/')[1].replace(/^\/+/, ''));
  const named = packages.flatMap((p) => Object.keys(p.files).map((file) => `${p.name}/${file}`));
  assert.deepEqual(there.sort(), [...named, 'take.mjs', 'vendor.json'].sort());
});

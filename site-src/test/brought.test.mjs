// What another app shares is a backup, a link of ours, or refused.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { broughtIn, linkIn } from '../node_modules/.out/app/share/brought.js';
import { catalogue } from './site.mjs';

const later = JSON.parse(readFileSync(new URL('../strings/later.json', import.meta.url), 'utf8'));
const [{ link: hash }] = JSON.parse(
  readFileSync(new URL('data/links-1.json', import.meta.url), 'utf8'),
);

/** A form of fields; a list stands for files of that many bytes. */
function form(fields) {
  const f = new FormData();
  for (const [name, value] of Object.entries(fields))
    if (Array.isArray(value))
      value.forEach((n, i) => f.append(name, new Blob(['x'.repeat(n)]), n ? `${i}.json` : ''));
    else f.append(name, value);
  return f;
}

const url = `https://example.org/a/${hash}`;

test('a file, whatever comes with it', () => {
  for (const f of [{ files: [3] }, { files: [3], text: url }, { title: 'a name', files: [3] }]) {
    const { file } = broughtIn(catalogue, form(f));
    assert.equal(file.name, '0.json');
    assert.equal(file.size, 3);
  }
});

test('a link in any field, and in the middle of a message', () => {
  for (const f of [
    { url },
    { text: url },
    { title: url },
    { text: `Please do this:\n${url}\nThank you` },
    { files: [0], text: url }, // a form without a file has an empty one
    { url: 'https://example.org/a/', text: url },
  ])
    assert.deepEqual(broughtIn(catalogue, form(f)), { hash }, JSON.stringify(f));
});

test('everything else is refused in words', () => {
  for (const [f, bad] of [
    [{}, 'nothing'],
    [{ text: ' ', title: '' }, 'nothing'],
    [{ files: [0] }, 'nothing'],
    [{ files: [1, 2] }, 'several'],
    [{ text: 'Hello' }, 'foreign'],
    [{ url: 'https://example.org/' }, 'foreign'],
    [{ url: 'https://example.org/#/learner' }, 'foreign'],
    [{ url: 'javascript:alert(1)' }, 'foreign'],
  ]) {
    assert.deepEqual(broughtIn(catalogue, form(f)), { bad });
    assert.ok(`brought.${bad}` in later, bad);
  }
});

test('what a message says around a link is left out, and a link in pieces stays as it is', () => {
  for (const after of ['', ' ', '.', '\nfor Maryam', ' Maryam', ')'])
    assert.equal(linkIn(catalogue, `Maryam: ${url}${after}`), hash);
  const broken = `${url.slice(0, -2)}\n${url.slice(-2)}`;
  assert.equal(linkIn(catalogue, broken), `${hash.slice(0, -2)}+${hash.slice(-2)}`);
});

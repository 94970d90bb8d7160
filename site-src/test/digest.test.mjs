// Vectors: FIPS 180-4 examples as published by NIST (abc; the two-block message), the empty
// message, and one million a.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { test } from 'node:test';
import { base64, hex, sha256 } from '../node_modules/.out/app/text/digest.js';

/** SHA-256 as where the browser lends its own code to nobody. */
async function fallback(data) {
  const own = Object.getOwnPropertyDescriptor(globalThis, 'crypto');
  Object.defineProperty(globalThis, 'crypto', { value: {}, configurable: true });
  try {
    return await sha256(data);
  } finally {
    if (own) Object.defineProperty(globalThis, 'crypto', own);
    else delete globalThis.crypto;
  }
}
const ways = { 'the own code': sha256, 'the library': fallback };

for (const [name, message, want] of [
  ['empty', '', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['abc', 'abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'two blocks',
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  [
    'a million',
    'a'.repeat(1e6),
    'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0',
  ],
])
  for (const [way, digest] of Object.entries(ways))
    test(`${name} by ${way}`, async () =>
      assert.equal(hex(await digest(new TextEncoder().encode(message))), want));

test('the library agrees with the system at every length around a block', async () => {
  for (let n = 0; n < 200; n++) {
    const b = new Uint8Array(n).map((_, i) => (i * 31 + n) & 255);
    assert.equal(
      hex(await fallback(b)),
      createHash('sha256').update(b).digest('hex'),
      `${n} bytes`,
    );
  }
});

test('base64', () => assert.equal(base64(Uint8Array.of(251, 255, 254, 1)), '+//+AQ=='));

// SHA-256 after FIPS 180-4, so that the text can be checked where crypto.subtle is absent (a page
// opened over plain HTTP on the family's own network). The constants are computed as the standard
// defines them: the fractional parts of the square and cube roots of the first primes.

const K = new Uint32Array(64);
const H = new Uint32Array(8);
for (let n = 2, i = 0; i < 64; n++) {
  let prime = true;
  for (let d = 2; d * d <= n && prime; d++) prime = n % d !== 0;
  if (!prime) continue;
  if (i < 8) H[i] = (Math.sqrt(n) % 1) * 2 ** 32;
  K[i++] = (Math.cbrt(n) % 1) * 2 ** 32;
}

const rot = (x: number, n: number) => (x >>> n) | (x << (32 - n));

/** The 32 bytes of the SHA-256 of data. */
export function sha256(data: Uint8Array): Uint8Array {
  const len = data.length;
  const padded = new Uint8Array(((len + 72) >> 6) << 6);
  const view = new DataView(padded.buffer);
  padded.set(data);
  padded[len] = 0x80;
  view.setUint32(padded.length - 8, Math.floor(len / 2 ** 29));
  view.setUint32(padded.length - 4, len << 3);
  const h = H.slice();
  const w = new Uint32Array(64);
  for (let at = 0; at < padded.length; at += 64) {
    for (let i = 0; i < 16; i++) w[i] = view.getUint32(at + 4 * i);
    for (let i = 16; i < 64; i++) {
      const x = w[i - 15]!;
      const y = w[i - 2]!;
      w[i] =
        w[i - 16]! +
        w[i - 7]! +
        (rot(x, 7) ^ rot(x, 18) ^ (x >>> 3)) +
        (rot(y, 17) ^ rot(y, 19) ^ (y >>> 10));
    }
    let [a, b, c, d, e, f, g, k] = h as unknown as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
    for (let i = 0; i < 64; i++) {
      const t =
        (k + (rot(e, 6) ^ rot(e, 11) ^ rot(e, 25)) + ((e & f) ^ (~e & g)) + K[i]! + w[i]!) | 0;
      const u = ((rot(a, 2) ^ rot(a, 13) ^ rot(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      k = g;
      g = f;
      f = e;
      e = (d + t) | 0;
      d = c;
      c = b;
      b = a;
      a = (t + u) | 0;
    }
    [a, b, c, d, e, f, g, k].forEach((x, i) => {
      h[i] = h[i]! + x;
    });
  }
  const out = new Uint8Array(32);
  const o = new DataView(out.buffer);
  h.forEach((x, i) => o.setUint32(4 * i, x));
  return out;
}

/** SHA-256 of many bytes, by the browser's own code where it has it. */
export const sha = async (b: Uint8Array<ArrayBuffer>): Promise<Uint8Array> =>
  globalThis.crypto?.subtle ? new Uint8Array(await crypto.subtle.digest('SHA-256', b)) : sha256(b);

/** Bytes as lower-case hexadecimal. */
export const hex = (b: Uint8Array) =>
  Array.from(b, (x) => x.toString(16).padStart(2, '0')).join('');

/** Bytes as base64 (RFC 4648, section 4). */
export const base64 = (b: Uint8Array) => btoa(String.fromCharCode(...b));

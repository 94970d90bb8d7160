// Digests, by which the text is checked before anybody sees it.

/**
 * The 32 bytes of the SHA-256 of data: by the browser's own code, or, on a page opened over plain
 * HTTP (from another machine on the family's own network), where browsers lend it to nobody, by a
 * library that is fetched then.
 */
export async function sha256(data: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  if (globalThis.crypto?.subtle) return new Uint8Array(await crypto.subtle.digest('SHA-256', data));
  const library = await import('./sha256.ts');
  return library.sha256(data);
}

/** Bytes as lower-case hexadecimal. */
export const hex = (b: Uint8Array) =>
  Array.from(b, (x) => x.toString(16).padStart(2, '0')).join('');

/** Bytes as base64 (RFC 4648, section 4). */
export const base64 = (b: Uint8Array) => btoa(String.fromCharCode(...b));

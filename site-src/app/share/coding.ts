// How values stand in a link: text and bits as base64url (RFC 4648), and a check at the end by
// which a link that was cut off or changed on its way is known.

const encoded = (bytes: Uint8Array) =>
  btoa(String.fromCharCode(...bytes))
    .replaceAll('+', '-')
    .replaceAll('/', '_')
    .replace(/=+$/, '');

/** The bytes; undefined for anything but what encoded writes. */
function decoded(s: string): Uint8Array | undefined {
  if (!/^[\w-]*$/.test(s) || s.length % 4 === 1) return undefined;
  const bytes = Uint8Array.from(atob(s.replaceAll('-', '+').replaceAll('_', '/')), (c) =>
    c.charCodeAt(0),
  );
  return encoded(bytes) === s ? bytes : undefined;
}

/** Characters (UTF-16) of a line of text in a link. */
export const LONGEST_SAY = 120;

// Control characters, ends of lines, and what turns the direction of the words after it.
const UNFIT = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069]/;

/** A line as it may stand in a link. */
export const fitSay = (typed: string) =>
  typed
    .split(new RegExp(UNFIT, 'g'))
    .join(' ')
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, LONGEST_SAY)
    .replace(/[\ud800-\udbff]$/, '');

export const writeText = (text: string) => encoded(new TextEncoder().encode(text));

/** A line of text; undefined where it cannot be read, is too long, or holds what is unfit. */
export function readText(s: string): string | undefined {
  const bytes = decoded(s);
  if (!bytes) return undefined;
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    return text.length <= LONGEST_SAY && !UNFIT.test(text) ? text : undefined;
  } catch {
    return undefined;
  }
}

/** Which of a list there are, a bit each, the first in the highest bit; without zeros at the end. */
export function writeBits(all: readonly string[], chosen: ReadonlySet<string>): string {
  const bytes = new Uint8Array(Math.ceil(all.length / 8));
  for (const [i, x] of all.entries()) if (chosen.has(x)) bytes[i >> 3]! |= 0x80 >> (i & 7);
  return encoded(bytes.subarray(0, bytes.findLastIndex((b) => b > 0) + 1));
}

/** Those of the list that there are; bits past its end are of a list that has grown since. */
export function readBits(all: readonly string[], s: string): string[] | undefined {
  const bytes = decoded(s);
  return bytes && all.filter((_, i) => (bytes[i >> 3] ?? 0) & (0x80 >> (i & 7)));
}

const MARK = 5;

/** Five signs that depend on every character of s: FNV-1a of 32 bits, in base 36. */
export function mark(s: string): string {
  let h = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(s)) h = Math.imul(h ^ byte, 0x01000193);
  return (h >>> 0).toString(36).padStart(MARK, '0').slice(-MARK);
}

// A file is right when its length and its digest are those of the list, whatever its status line,
// its type or its address say: sign-in pages of public networks answer with status 200.
import { type Entry, hashed, urlOf } from './scope.ts';

/** Longer than this (ms) no file takes on a line that works. */
const STALLED = 120_000;

/** Why a file cannot be had. */
export class Bad extends Error {
  constructor(
    readonly file: string,
    readonly why: 'network' | 'wrong',
  ) {
    super(`${file}: ${why}`);
  }
}

/**
 * A failure in one word: no network, wrong bytes, no room on the device, or no place at all to keep
 * anything (some private windows).
 */
export const why = (e: unknown) =>
  e instanceof Bad ? e.why : (e as Error)?.name === 'QuotaExceededError' ? 'full' : 'nowhere';

export async function right(b: ArrayBuffer, e: Entry): Promise<boolean> {
  if (b.byteLength !== e[1] && b.byteLength !== e[3]) return false;
  const sum = btoa(
    String.fromCharCode(...new Uint8Array(await crypto.subtle.digest('SHA-256', b))),
  );
  return (b.byteLength === e[1] && sum === e[2]) || (b.byteLength === e[3] && sum === e[4]);
}

async function fetched(e: Entry, cache: RequestCache): Promise<ArrayBuffer> {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), STALLED);
  try {
    const res = await fetch(urlOf(e[0]), { cache, signal: stop.signal });
    if (res.status !== 200) throw new Bad(e[0], 'network');
    return await res.arrayBuffer();
  } catch {
    throw new Bad(e[0], 'network');
  } finally {
    clearTimeout(timer);
  }
}

/** The right bytes from the network; what caches on the way hold is passed by if it is wrong. */
export async function fresh(e: Entry, again: boolean): Promise<ArrayBuffer> {
  if (!again) {
    const b = await fetched(e, hashed(e[0]) ? 'default' : 'no-cache').catch(() => undefined);
    if (b && (await right(b, e))) return b;
  }
  const b = await fetched(e, 'reload');
  if (!(await right(b, e))) throw new Bad(e[0], 'wrong');
  return b;
}

// What is kept in the browser's caches, one for each version, and answers made of it.
import { type Entry, hashed, LIST, NAME, nameOf, PREFIX, STATE, urlOf } from './scope.ts';
import { fresh, right } from './right.ts';

const TYPES: Record<string, string> = {
  html: 'text/html; charset=utf-8',
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  svg: 'image/svg+xml',
  png: 'image/png',
  woff2: 'font/woff2',
  gz: 'application/gzip',
  txt: 'text/plain; charset=utf-8',
  json: 'application/json',
  webmanifest: 'application/manifest+json',
};

/**
 * A response of our own: the type goes by the name, and nothing of a redirect or an encoding is
 * left.
 */
export const made = (name: string, b: BodyInit) =>
  new Response(b, {
    headers: {
      'Content-Type': TYPES[name.slice(name.lastIndexOf('.') + 1)] ?? 'application/octet-stream',
    },
  });

/** The right bytes from one of our caches. */
export async function had(e: Entry, cache: string): Promise<ArrayBuffer | undefined> {
  const res = await (await caches.open(cache)).match(urlOf(e[0])).catch(() => undefined);
  const b = await res?.arrayBuffer().catch(() => undefined);
  return b && (await right(b, e)) ? b : undefined;
}

export const put = async (name: string, b: ArrayBuffer) =>
  (await caches.open(NAME)).put(urlOf(name), made(name, b));

/** The caches of other versions. */
export const others = async () =>
  (await caches.keys()).filter((k) => k.startsWith(PREFIX) && k !== NAME && k !== STATE);

/**
 * Answers with a file of this version; what is kept is checked again, and repaired from the
 * network.
 */
export async function get(e: Entry, again = false): Promise<Response> {
  let b = again ? undefined : await had(e, NAME);
  if (!b) {
    b = await fresh(e, again);
    await put(e[0], b).catch(() => undefined); // it can be shown all the same
  }
  return made(e[0], b);
}

let reading: Promise<Map<string, Entry>> | undefined;

/** The list of all files, and the list itself. */
export function list(): Promise<Map<string, Entry>> {
  if (!reading) {
    reading = get(LIST).then(
      async (r) => new Map([...((await r.json()) as Entry[]), LIST].map((e) => [e[0], e])),
    );
    reading.catch(() => {
      reading = undefined;
    });
  }
  return reading;
}

/** What the list says of a file; nothing where the list cannot be had. */
export const listed = async (name: string) => (await list().catch(() => undefined))?.get(name);

/**
 * A file that only an older version has, for a page that was opened with it. Its name carries its
 * hash: it is no other.
 */
export async function older(url: string): Promise<Response | undefined> {
  for (const k of hashed(nameOf(url)) ? await others() : []) {
    const res = await (await caches.open(k)).match(url, { ignoreSearch: true, ignoreVary: true });
    if (res) return res;
  }
  return undefined;
}

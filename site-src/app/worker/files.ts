// What the worker keeps. A file counts as kept when its length and its digest are those of the list, whatever its status
// line, its type or its address say: sign-in pages of public networks answer with status 200.

/** Name, then length and SHA-256 in base64 of the file, then of what is in it if it is a .gz file. */
export type Entry = [string, number, string, number?, string?];
declare const __PRECACHE__: { version: string; list: Entry; lost: string };

export const sw = self as unknown as ServiceWorkerGlobalScope;
const { version, list: LIST, lost: LOST } = __PRECACHE__;
export { LOST };
export const scope = sw.registration.scope, PREFIX = `sutur:${scope}:`, NAME = PREFIX + version;

/** Longer than this (ms) no file takes on a line that works. */
const STALLED = 120_000;

const TYPES: Record<string, string> = {
  html: 'text/html; charset=utf-8', css: 'text/css; charset=utf-8', js: 'text/javascript; charset=utf-8', svg: 'image/svg+xml',
  png: 'image/png', woff2: 'font/woff2', gz: 'application/gzip', txt: 'text/plain; charset=utf-8',
  json: 'application/json', webmanifest: 'application/manifest+json',
};

/** Why a file cannot be had. */
export class Bad extends Error {
  constructor(readonly file: string, readonly why: 'network' | 'wrong') { super(`${file}: ${why}`); }
}

/** A failure in one word: no network, wrong bytes, no room on the device, or no place at all to keep anything (some private windows). */
export const why = (e: unknown) => (e instanceof Bad ? e.why : (e as Error)?.name === 'QuotaExceededError' ? 'full' : 'nowhere');

const urlOf = (name: string) => new URL(name, scope).href;

/** The file that an address means: its name below the scope, index.html for a folder. */
export function nameOf(url: string): string {
  const name = new URL(url).pathname.slice(new URL(scope).pathname.length);
  return name === '' || name.endsWith('/') ? `${name}index.html` : name;
}

export async function right(b: ArrayBuffer, e: Entry): Promise<boolean> {
  if (b.byteLength !== e[1] && b.byteLength !== e[3]) return false;
  const sum = btoa(String.fromCharCode(...new Uint8Array(await crypto.subtle.digest('SHA-256', b))));
  return (b.byteLength === e[1] && sum === e[2]) || (b.byteLength === e[3] && sum === e[4]);
}

/** A response of our own: the type goes by the name, and nothing of a redirect or an encoding is left. */
export const made = (name: string, b: BodyInit) =>
  new Response(b, { headers: { 'Content-Type': TYPES[name.slice(name.lastIndexOf('.') + 1)] ?? 'application/octet-stream' } });

async function fetched(e: Entry, cache: RequestCache): Promise<ArrayBuffer> {
  const stop = new AbortController(), timer = setTimeout(() => stop.abort(), STALLED);
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

const hashed = (name: string) => /\.[0-9A-Za-z_-]{8,}\.[a-z0-9.]+$/.test(name);

/** The right bytes from the network; what caches on the way hold is passed by if it is wrong. */
async function fresh(e: Entry, again: boolean): Promise<ArrayBuffer> {
  if (!again) {
    const b = await fetched(e, hashed(e[0]) ? 'default' : 'no-cache').catch(() => undefined);
    if (b && await right(b, e)) return b;
  }
  const b = await fetched(e, 'reload');
  if (!await right(b, e)) throw new Bad(e[0], 'wrong');
  return b;
}

/** The right bytes from one of our caches. */
async function had(e: Entry, cache: string): Promise<ArrayBuffer | undefined> {
  const res = await (await caches.open(cache)).match(urlOf(e[0])).catch(() => undefined), b = await res?.arrayBuffer().catch(() => undefined);
  return b && await right(b, e) ? b : undefined;
}

/** Answers with a file of this version; what is kept is checked again, and put right from the network. */
export async function get(e: Entry, again = false): Promise<Response> {
  let b = again ? undefined : await had(e, NAME);
  if (!b) {
    b = await fresh(e, again);
    await put(e[0], b).catch(() => undefined); // it can be shown all the same
  }
  return made(e[0], b);
}

const put = async (name: string, b: ArrayBuffer) => (await caches.open(NAME)).put(urlOf(name), made(name, b));

const ours = async () => (await caches.keys()).filter((k) => k.startsWith(PREFIX) && k !== NAME);

/** Keeps a file: from this cache, from an older one, else from the network. */
async function save(e: Entry) {
  if (await had(e, NAME)) return;
  for (const k of await ours()) {
    const b = await had(e, k);
    if (b) return put(e[0], b);
  }
  await put(e[0], await fresh(e, false));
}

let reading: Promise<Map<string, Entry>> | undefined;

/** The list of all files, and the list itself. */
export function list(): Promise<Map<string, Entry>> {
  if (!reading) {
    reading = get(LIST).then(async (r) => new Map([...await r.json() as Entry[], LIST].map((e) => [e[0], e])));
    reading.catch(() => { reading = undefined; });
  }
  return reading;
}

/** What the list says of a file; nothing where the list cannot be had. */
export const listed = async (name: string) => (await list().catch(() => undefined))?.get(name);

/** Does work for every file, four at a time; the first that cannot be had ends it. */
async function each(files: Entry[], work: (e: Entry) => Promise<void>) {
  const queue = [...files];
  let failed = false;
  const one = async () => {
    for (let e = queue.shift(); e && !failed; e = queue.shift()) await work(e).catch((x: unknown) => { failed = true; throw x; });
  };
  await Promise.all([one(), one(), one(), one()]);
}

/** Keeps every file. What was kept before the first that cannot be had counts at the next try. */
export async function fill(progress: (n: number, of: number) => void) {
  const all = await list();
  let n = 0;
  await each([...all.values()], async (e) => {
    await save(e);
    if (++n % 10 === 0) progress(n, all.size);
  });
  if (!(await missing()).length) return;
  // WebKit was seen to lose what a worker had kept that did not get to its end: it still gave it when asked, for a while,
  // and neither listed it nor took it anew. In a cache made afresh it is kept.
  await caches.delete(NAME);
  await each([...all.values()], save);
  if ((await missing()).length) throw new Bad('', 'network');
}

/** The files that are not in the cache: a browser may clear it and leave the worker. */
export async function missing(): Promise<Entry[]> {
  const there = new Set((await (await caches.open(NAME)).keys()).map((r) => r.url));
  return [...(await list()).values()].filter((e) => !there.has(urlOf(e[0])));
}

/** A file that only an older version has, for a page that was opened with it. Its name carries its hash: it is no other. */
export async function older(url: string): Promise<Response | undefined> {
  for (const k of hashed(nameOf(url)) ? await ours() : []) {
    const res = await (await caches.open(k)).match(url, { ignoreSearch: true, ignoreVary: true });
    if (res) return res;
  }
  return undefined;
}

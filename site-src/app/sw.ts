// The service worker: keeps every file of the site, answers from what is kept, and says when a newer version is ready.
// Files whose name carries a hash are taken over from the version before, so an update fetches only what changed.
export {};
declare const __PRECACHE__: { version: string; files: string[] };

const sw = self as unknown as ServiceWorkerGlobalScope;
const { version, files } = __PRECACHE__;
const PREFIX = `sutur:${sw.registration.scope}:`, NAME = PREFIX + version;
const hashed = (url: string) => /\.[0-9A-Za-z_-]{8,}\.[a-z0-9.]+$/.test(url);

async function tell(message: object) {
  for (const c of await sw.clients.matchAll({ includeUncontrolled: true })) c.postMessage(message);
}

async function fill() {
  const cache = await caches.open(NAME), queue = [...new Set(['./', ...files])];
  let n = 0;
  const one = async () => {
    for (let f = queue.shift(); f !== undefined; f = queue.shift()) {
      const url = new URL(f, sw.registration.scope).href;
      const old = await cache.match(url) ?? (hashed(url) ? await caches.match(url) : undefined);
      const res = old ?? await fetch(new Request(url, { cache: 'no-cache' }));
      if (!res.ok) throw new Error(`${f}: ${res.status}`);
      await cache.put(url, await plain(res));
      if (++n % 10 === 0) await tell({ kind: 'saving', n, of: files.length });
    }
  };
  await Promise.all([one(), one(), one(), one()]);
}

/** A response that came by a redirect cannot answer a navigation; its copy can. */
const plain = async (r: Response) => (r.redirected ? new Response(await r.blob(), { headers: r.headers }) : r);

sw.addEventListener('install', (e) => { e.waitUntil(fill()); });

sw.addEventListener('activate', (e) => {
  e.waitUntil((async () => {
    for (const k of await caches.keys()) if (k.startsWith(PREFIX) && k !== NAME) await caches.delete(k);
    await sw.clients.claim();
    await tell({ kind: 'ready' });
  })());
});

sw.addEventListener('message', (e) => { if (e.data === 'take over') void sw.skipWaiting(); });

sw.addEventListener('fetch', (e) => {
  const url = new URL(e.request.url);
  if (e.request.method !== 'GET' || !url.href.startsWith(sw.registration.scope)) return;
  e.respondWith((async () => {
    const cache = await caches.open(NAME), file = url.pathname.endsWith('/') ? new URL('index.html', url).href : '';
    const how = { ignoreSearch: true, ignoreVary: true };
    const kept = await cache.match(e.request, how) ?? (file ? await cache.match(file, how) : undefined);
    if (kept) return kept;
    try {
      return await fetch(e.request);
    } catch (err) {
      // A page that is not there offline: show the start rather than the browser's own error.
      const start = e.request.mode === 'navigate' ? await cache.match(new URL('./', sw.registration.scope).href) : undefined;
      if (start) return start;
      throw err;
    }
  })());
});

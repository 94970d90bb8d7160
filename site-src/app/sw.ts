// The service worker: keeps every file of the site, answers from what is kept, and says when a
// newer version is ready. worker/right.ts decides what counts as kept, worker/versions.ts which
// versions stay.
import { bring } from './worker/brought.ts';
import { fill, missing } from './worker/keep.ts';
import { get, listed, made, older } from './worker/kept.ts';
import { BROUGHT } from './worker/names.ts';
import { why } from './worker/right.ts';
import { isHandedOver, LOST, NAME, nameOf, pages, scope, sw } from './worker/scope.ts';
import { abandon, begin, isActive, settle, unverified } from './worker/versions.ts';

/** Tells every page of the site; update says that a page has a whole version already. */
async function tell(message: object, update = false) {
  for (const c of await pages()) c.postMessage({ ...message, update });
}

/** Fetches what is missing or wrong, and says how far it is and how it ended. */
async function keep(update: boolean) {
  try {
    await fill((n, of) => {
      void tell({ kind: 'saving', n, of }, update);
    });
  } catch (e) {
    // what is in use needs the room more
    if (why(e) === 'full' && !(await isActive())) await caches.delete(NAME).catch(() => undefined);
    await tell({ kind: why(e) === 'nowhere' ? 'cannot' : 'failed', why: why(e) }, update);
    throw e;
  }
}

sw.addEventListener('install', (e) => {
  e.waitUntil(
    (async () => {
      await keep(!!sw.registration.active);
      await abandon();
      // What a worker kept that checked nothing may be damaged: it is not waited for.
      if (await unverified()) await sw.skipWaiting();
    })(),
  );
});

sw.addEventListener('activate', (e) => {
  e.waitUntil(
    (async () => {
      await begin();
      await sw.clients.claim();
      await tell({ kind: 'ready' });
    })(),
  );
});

sw.addEventListener('message', (e) => {
  const page = e.source as WindowClient | null;
  e.waitUntil(
    (async () => {
      if (e.data === 'take over') {
        // Another page may have been quicker.
        if (await isActive()) await page?.navigate(page.url);
        else await sw.skipWaiting();
      }
      if (e.data === 'kept?' || e.data === 'repair') {
        await settle();
        if (e.data === 'repair' || (await missing()).length) await keep(false);
        await tell({ kind: 'ready' });
      }
    })().catch(() => undefined),
  ); // the page has been told
});

sw.addEventListener('fetch', (e) => {
  const { method, mode, url } = e.request;
  if (!url.startsWith(scope)) return;
  if (method === 'POST' && nameOf(url) === BROUGHT) return e.respondWith(bring(e.request));
  if (method !== 'GET' || isHandedOver(url)) return;
  e.respondWith(answer(e.request));
  if (mode === 'navigate') e.waitUntil(settle());
});

async function answer(r: Request): Promise<Response> {
  const entry = await listed(nameOf(r.url));
  try {
    if (entry) return await get(entry, r.cache === 'reload' && !r.destination);
    return (await older(r.url)) ?? (await fetch(r));
  } catch (e) {
    if (r.mode !== 'navigate') throw e;
    return start(r);
  }
}

/**
 * For a page that cannot be had from what is kept: what the network says, else the start rather
 * than the browser's own error.
 */
async function start(r: Request): Promise<Response> {
  const there = await fetch(r).catch(() => undefined);
  if (there && (there.ok || there.type === 'opaqueredirect')) return there;
  const page = await listed('index.html');
  return (page && (await get(page).catch(() => undefined))) ?? made('lost.html', LOST);
}

// Registers the service worker, reports what it does, and tries again what failed.
import { whenIdle } from '../idle.ts';
import { QUIET } from '../worker/names.ts';
import { trusted } from './trusted.ts';

/**
 * How far the site is kept on the device: not known yet; cannot be kept in this browser or at this
 * address; within the one file; being kept, n of so many files; all there; not all there, and why: no
 * network, other bytes than the site's, or no room.
 */
export interface Kept {
  kind: 'unknown' | 'cannot' | 'one-file' | 'saving' | 'ready' | 'failed';
  n?: number;
  of?: number;
  why?: 'network' | 'wrong' | 'full';
}
export interface Reports {
  kept: (k: Kept) => void;
  newer: (take: () => void) => void;
  noRoom: () => void;
}

type Message = (Kept & { update?: boolean }) | { kind: typeof QUIET };

/**
 * Waits (ms) before something is tried again by itself: the first, and the longest after doubling.
 */
const FIRST = 15_000;
const LONGEST = 600_000;

let on: Reports | undefined;
let script = '';
let wait = FIRST;
let timer = 0;
let asked = false;
let last: Kept['kind'] = 'unknown';

function report(k: Kept) {
  clearTimeout(timer);
  last = k.kind;
  if (k.kind === 'ready') wait = FIRST;
  if (k.kind === 'failed' && k.why !== 'full') {
    timer = window.setTimeout(() => void attempt(), wait);
    wait = Math.min(2 * wait, LONGEST);
  }
  on?.kept(k);
}

/** Says of a worker what becomes of it: it waits for a page to take it over, or it could not be. */
function follow(reg: ServiceWorkerRegistration, w: ServiceWorker | null) {
  const tell = () => {
    // It says itself why, unless it could not begin.
    if (w?.state === 'redundant' && !reg.active && last !== 'failed' && last !== 'cannot')
      report({ kind: 'failed', why: 'network' });
    if (w?.state !== 'installed' || !navigator.serviceWorker.controller) return;
    on?.newer(() => {
      asked = true;
      if (w.state === 'installed') w.postMessage('take over');
      else location.reload(); // another page was quicker
    });
  };
  w?.addEventListener('statechange', tell);
  tell();
}

const seen = new WeakSet<ServiceWorkerRegistration>();

/**
 * Registers, and looks for a newer version; called again after a failure. It fails where keep was
 * never reached.
 */
export async function attempt(): Promise<void> {
  if (!on) throw new Error('nothing is being kept');
  clearTimeout(timer);
  try {
    const reg = await navigator.serviceWorker.register(trusted(script), { updateViaCache: 'none' });
    if (!seen.has(reg)) {
      seen.add(reg);
      follow(reg, reg.waiting);
      follow(reg, reg.installing);
      reg.addEventListener('updatefound', () => follow(reg, reg.installing));
    }
    reg.active?.postMessage('kept?');
  } catch {
    const reg = await navigator.serviceWorker.getRegistration().catch(() => undefined);
    if (reg?.active) reg.active.postMessage('kept?');
    else report({ kind: 'failed', why: 'network' });
  }
}

/**
 * Starts keeping the site. The page has been shown before: the first open must not wait for two
 * megabytes.
 */
export function keep(worker: string, reports: Reports): void {
  const sw = navigator.serviceWorker;
  on = reports;
  script = worker;
  // a page opened from a file or over plain HTTP works without it
  if (!sw) return report({ kind: 'cannot' });
  sw.addEventListener('controllerchange', () => {
    if (asked) location.reload();
  });
  sw.addEventListener('message', (e: MessageEvent<Message>) => {
    const m = e.data;
    if (m.kind === QUIET) return void whenIdle(() => e.ports[0]?.postMessage(''));
    // An update is quiet: the version in use stays whole.
    if (!m.update && ['saving', 'ready', 'failed', 'cannot'].includes(m.kind)) report(m);
    if (m.update && m.why === 'full') on?.noRoom();
  });
  void attempt();
  addEventListener('online', () => {
    if (timer) void attempt();
  });
  // A phone keeps the page open for days: look again when it comes back to it.
  document.addEventListener('visibilitychange', () => {
    if (!document.hidden)
      void sw
        .getRegistration()
        .then((r) => r?.update())
        .catch(() => undefined);
  });
}

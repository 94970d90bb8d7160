// Registers the service worker, and reports what it does.

export interface Reports { saving: () => void; ready: () => void; newer: (take: () => void) => void }

/** Starts keeping the site. The page has been shown before: the first open must not wait for two megabytes. */
export async function keep(worker: string, on: Reports): Promise<void> {
  const sw = navigator.serviceWorker;
  if (!sw) return;
  let asked = false;
  sw.addEventListener('controllerchange', () => { if (asked) location.reload(); });
  sw.addEventListener('message', (e: MessageEvent<{ kind?: string }>) => {
    if (e.data?.kind === 'saving' && !sw.controller) on.saving();
    if (e.data?.kind === 'ready') on.ready();
  });
  if (sw.controller) on.ready();
  let reg: ServiceWorkerRegistration;
  try {
    reg = await sw.register(worker, { updateViaCache: 'none' });
  } catch {
    return; // a page opened from a file or over plain HTTP works without it
  }
  const waits = (w: ServiceWorker | null) => {
    if (w && sw.controller) on.newer(() => { asked = true; w.postMessage('take over'); });
  };
  waits(reg.waiting);
  reg.addEventListener('updatefound', () => {
    const w = reg.installing;
    w?.addEventListener('statechange', () => { if (w.state === 'installed') waits(reg.waiting); });
  });
  // A phone keeps the page open for days: look again when it comes back to it.
  document.addEventListener('visibilitychange', () => { if (!document.hidden) reg.update().catch(() => undefined); });
}

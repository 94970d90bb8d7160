// Repair: takes a newer version if there is one, else has the worker check all that it keeps. It
// takes a signal, so it is fetched when it is asked for.

/** Longest wait (ms) for the worker to fetch everything. */
const LONGEST = 300_000;

const until = (w: ServiceWorker, states: string[]) =>
  new Promise<void>((ok) => {
    const look = () => {
      if (states.includes(w.state) || w.state === 'redundant') ok();
    };
    w.addEventListener('statechange', look);
    setTimeout(ok, LONGEST);
    look();
  });

/** What the worker answers when it has checked everything. */
const checked = (w: ServiceWorker) =>
  new Promise<boolean>((ok) => {
    navigator.serviceWorker.addEventListener(
      'message',
      ({ data }: MessageEvent<{ kind: string; update?: boolean }>) => {
        if (!data.update && (data.kind === 'ready' || data.kind === 'failed'))
          ok(data.kind === 'ready');
      },
    );
    navigator.serviceWorker.startMessages();
    setTimeout(ok, LONGEST, false);
    w.postMessage('repair');
  });

/**
 * Takes a newer version if there is one, else fetches what is missing or wrong of this one. False
 * if not all of it came.
 */
export async function repair(refetch: () => Promise<void>): Promise<boolean> {
  const reg = await navigator.serviceWorker?.getRegistration().catch(() => undefined);
  await refetch();
  if (!reg)
    return (await fetch(location.href, { cache: 'no-store' }).catch(() => undefined))?.ok ?? false;
  const reached = await reg.update().then(
    () => true,
    () => false,
  );
  const newer = reg.installing ?? reg.waiting;
  if (newer) await until(newer, ['installed', 'activated']);
  if (newer && newer.state !== 'redundant') {
    newer.postMessage('take over');
    await until(newer, ['activated']);
    return newer.state === 'activated';
  }
  return reg.active ? (await checked(reg.active)) && reached : reached;
}

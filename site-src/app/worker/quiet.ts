// The worker makes way for the pages: before it takes the next files, it waits for a moment in which
// none that is in sight has anything to do.
import { QUIET } from './names.ts';
import { scope, sw } from './scope.ts';

/** Longest wait (ms): a page may be busy for long, or be of a version that does not answer. */
const PATIENCE = 400;

let waiting: Promise<void> | undefined;

/** Ends in the next quiet moment, for all who wait for it. */
export function quiet(): Promise<void> {
  waiting ??= all().finally(() => {
    waiting = undefined;
  });
  return waiting;
}

async function all() {
  const open = await sw.clients.matchAll({ includeUncontrolled: true, type: 'window' });
  const seen = open.filter((c) => c.url.startsWith(scope) && c.visibilityState === 'visible');
  const late = new Promise((done) => setTimeout(done, PATIENCE));
  await Promise.race([late, Promise.all(seen.map(quietIn))]);
}

const quietIn = (page: WindowClient) =>
  new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = done;
    page.postMessage({ kind: QUIET }, [port2]);
  });

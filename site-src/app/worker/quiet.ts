// The worker makes way for the pages: before it takes the next files, it waits for a moment in which
// none that is in sight has anything to do.
import { QUIET } from './names.ts';
import { pages } from './scope.ts';

/** Longest wait (ms) for an answer. An idle page answers at once, a busy one a little later. */
const PATIENCE = 1000;

/**
 * Pages that have not answered in time, by id, and are asked no more unless they still do: they are
 * of an earlier version, or their script does not run.
 */
const silent = new Set<string>();

let waiting: Promise<void> | undefined;

/** Ends in the next quiet moment, for all who wait for it. */
export function quiet(): Promise<void> {
  waiting ??= all().finally(() => {
    waiting = undefined;
  });
  return waiting;
}

async function all() {
  const asked = (c: WindowClient) => c.visibilityState === 'visible' && !silent.has(c.id);
  await Promise.all((await pages()).filter(asked).map(quietIn));
}

const quietIn = (page: WindowClient) =>
  new Promise<void>((done) => {
    const { port1, port2 } = new MessageChannel();
    const late = setTimeout(() => {
      silent.add(page.id);
      done();
    }, PATIENCE);
    port1.onmessage = () => {
      clearTimeout(late);
      silent.delete(page.id);
      done();
    };
    page.postMessage({ kind: QUIET }, [port2]);
  });

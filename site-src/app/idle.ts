// What can wait is done when the page has nothing else to do.

/** Longest wait (ms) for a moment in which nothing happens. */
const LONGEST = 400;

/** Pause (ms) where the browser does not tell of such moments. */
const PAUSE = 30;

/**
 * Runs with the frame after the next, so that the next is on screen first: what measures before lays
 * the page out twice.
 */
export const afterFrame = (run: () => void) =>
  void requestAnimationFrame(() => requestAnimationFrame(run));

export const nextIdle = () => new Promise<void>((run) => void whenIdle(run));

/** Runs once when the page is idle; returns what calls it off. */
export function whenIdle(run: () => void): () => void {
  if (!window.requestIdleCallback) {
    const timer = setTimeout(run, PAUSE);
    return () => clearTimeout(timer);
  }
  const id = requestIdleCallback(run, { timeout: LONGEST });
  return () => cancelIdleCallback(id);
}

// One tab at a time has the same lines in hand, so that none overwrites what the other marks. A
// second one shows them, follows, and may take over. Where the browser has no locks (on plain
// HTTP), tabs only follow each other.
import { linesKey } from '../share/link.ts';
import { get, set } from './core.ts';

let letGoNow: (() => void) | undefined;

/** Takes the lines in hand, or follows until the other tab lets go; with steal, takes them from it. */
export function claim(steal = false) {
  letGo();
  const p = get();
  if (!p || !navigator.locks) return;
  const left = new AbortController();
  letGoNow = () => left.abort();
  void hold(`${p.draft.learner} ${linesKey(p.draft.lines)}`, left.signal, steal);
}

/** The lines are left. */
export function letGo() {
  letGoNow?.();
  letGoNow = undefined;
}

/** Holds the lines until they are left; one whose lines were taken away waits for them again. */
async function hold(name: string, left: AbortSignal, steal: boolean) {
  const untilLeft = () => {
    tell(false);
    return new Promise<void>((done) => left.addEventListener('abort', () => done()));
  };
  let how: LockOptions = steal ? { steal } : { ifAvailable: true };
  while (!left.aborted) {
    await navigator.locks
      .request(name, how, (lock) => (lock ? untilLeft() : undefined))
      .catch(() => undefined); // taken away, or left
    if (!left.aborted) tell(true);
    how = { signal: left };
  }
}

function tell(elsewhere: boolean) {
  const p = get();
  if (p && p.elsewhere !== elsewhere) set({ elsewhere });
}

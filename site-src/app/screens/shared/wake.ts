// Keeps the device from darkening its screen while everybody looks at it.

let wanted = false;
let asking = false;
let lock: WakeLockSentinel | undefined;

/** Asks for the lock; browsers take it away whenever the page is hidden. */
async function take() {
  if (!wanted || asking || document.hidden || (lock && !lock.released)) return;
  asking = true;
  try {
    lock = await navigator.wakeLock.request('screen');
  } catch {
    /* an old browser, or one that saves power: the screen darkens as always */
  }
  asking = false;
  if (!wanted) release();
}

function release() {
  void lock?.release().catch(() => undefined);
  lock = undefined;
}

const again = () => void take();

export function keepAwake() {
  wanted = true;
  document.addEventListener('visibilitychange', again);
  again();
}

export function letSleep() {
  wanted = false;
  document.removeEventListener('visibilitychange', again);
  release();
}

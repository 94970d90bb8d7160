// Tabs tell each other which stores they have written.
import type { StoreName } from './schema.ts';

const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('sutur');

export const broadcast = (stores: StoreName[]) => channel?.postMessage(stores);

const watching: ((stores: StoreName[]) => void)[] = [];

/** Calls listener with the stores of each write, of this tab when it begins and of others. */
export const onWrite = (listener: (stores: StoreName[]) => void) => void watching.push(listener);

export const written = (stores: StoreName[]) => watching.forEach((listener) => listener(stores));

/**
 * Calls follow with the stores that another tab has written, and with all of them where that may
 * have been missed.
 */
export function onOtherTab(follow: (stores: StoreName[]) => void) {
  const listener = (stores: StoreName[]) => {
    written(stores);
    follow(stores);
  };
  const maybeAll = () => listener(['learners', 'sessions', 'taught', 'settings', 'drafts']);
  if (channel) channel.onmessage = (e: MessageEvent<StoreName[]>) => listener(e.data);
  else
    document.addEventListener('visibilitychange', () => {
      if (!document.hidden) maybeAll();
    });
  addEventListener('pageshow', (e) => {
    if (e.persisted) maybeAll(); // shown again as it was left
  });
}

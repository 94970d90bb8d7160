// Tabs tell each other which tables they have written.
import type { Table } from './db.ts';

const channel = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('sutur');

export const tell = (tables: Table[]) => channel?.postMessage(tables);

/**
 * Calls f with the tables that another tab has written, and with all of them where that may have
 * been missed.
 */
export function hear(f: (tables: Table[]) => void) {
  const all = () => f(['learners', 'sessions', 'taught', 'settings', 'drafts']);
  if (channel) channel.onmessage = (e: MessageEvent<Table[]>) => f(e.data);
  else
    document.addEventListener('visibilitychange', () => {
      if (!document.hidden) all();
    });
  addEventListener('pageshow', (e) => {
    if (e.persisted) all();
  }); // shown again as it was left
}

// Writes to the record, and follows what other tabs write.
import * as state from '../state.ts';
import type { StoreName } from '../store/schema.ts';
import { markRecord, readMark } from '../store/mark.ts';
import * as store from '../store/store.ts';

const RECORDS = ['learners', 'sessions', 'taught'] as const;

/**
 * Runs a write and reads anew what it changed, unless the state has it already and may have changed
 * once more meanwhile; says so plainly when the device did not keep it.
 */
export async function keep(write: () => Promise<StoreName[]>, anew = true): Promise<boolean> {
  try {
    const tables = await write();
    const changed = RECORDS.filter((t) => tables.includes(t));
    if (anew && changed.length) take(await store.all([...changed]));
    state.set({ kept: true });
    return true;
  } catch {
    state.set({ kept: false });
    return false;
  }
}

/** Reads anew what another tab has written. */
export async function follow(tables: StoreName[]): Promise<void> {
  if (state.get().closed) return;
  if (tables.includes('drafts')) state.set({ draftWrites: state.get().draftWrites + 1 });
  if (!tables.some((t) => t === 'settings' || RECORDS.some((r) => r === t))) return;
  take(await store.all(tables));
}

/**
 * Once everything is drawn: reads the sessions anew if there are others than those read at the
 * start; whether there were.
 */
export async function recheck(): Promise<boolean> {
  const s = state.get();
  if (s.closed || (await store.complete(s.sessions.length))) return false;
  await follow(['sessions']);
  return true;
}

/** Shows what was read. */
export function take({ settings: device, ...k }: Partial<store.Kept>) {
  state.set({ ...k, ...(device && { device }) });
  const { learners, sessions } = state.get();
  markRecord(learners, sessions);
  state.set({ was: learners.length ? undefined : readMark() });
}

// Keeps the lines on screen as a draft, so that a closed page loses nothing.
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import { fitted } from './draft.ts';

/**
 * Quiet (ms) after which a draft is written once more, so that a loss of power does not undo it
 * either. Not sooner: a mark that is made meanwhile would have to wait for it.
 */
const QUIET = 2000;

/** Writes on their way at a time: more would only queue before the one that matters. */
const MOST = 3;

let timer = 0;
let writing = 0;
let late = false;
let finished = '';

/** Keeps the draft at once, or as soon as one of those being written is. */
export function save() {
  if (writing >= MOST) late = true;
  else write();
  clearTimeout(timer);
  timer = window.setTimeout(flush, QUIET);
}

function write(safe = false) {
  late = false;
  const draft = state.get().practice?.draft;
  if (!draft || draft.id === finished) return;
  const { sessions, learners } = state.get();
  // What another tab has kept or removed meanwhile does not come back.
  if (sessions.some((s) => s.id === draft.id)) return;
  if (draft.learner ? !learners.some((x) => x.id === draft.learner) : learners.length) return;
  writing++;
  (safe ? store.saveDraft : store.updateDraft)(draft)
    .catch(() => state.set({ kept: false }))
    .finally(() => {
      writing--;
      if (late) write();
    });
}

/** Writes for good what is not written so yet, before the page may go. */
export const flush = () => finish(true);

/**
 * The same once the page goes, in a single request: in WebKit, a transaction with more to ask when
 * its page goes keeps the database from the next page for good.
 */
export const flushLast = () => finish(false);

function finish(safe: boolean) {
  if (!timer) return;
  clearTimeout(timer);
  timer = 0;
  write(safe);
}

/** Says that a session is being kept, so that its draft does not come back; '' that it was not. */
export const closing = (id: string) => {
  finished = id;
};

/** Takes over what another tab has made of the same lines. */
export async function adopt() {
  const was = state.get().practice?.draft;
  if (!was) return;
  const now = await store.draft(was.learner, was.at).catch(() => undefined);
  const p = state.get().practice;
  if (!now || !p || p.draft !== was || writing || JSON.stringify(now) === JSON.stringify(was))
    return;
  state.set({ practice: { ...p, draft: fitted(now, p.verses), history: [] } });
}

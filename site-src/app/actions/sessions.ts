// Corrects, adds and removes sessions of the record, each with a way back that waits until it is
// used.
import { t } from '../i18n.ts';
import { changes, undone } from '../record/correct.ts';
import type { Said } from '../record/typed.ts';
import * as state from '../state.ts';
import type { Patch } from '../store/patch.ts';
import * as store from '../store/store.ts';
import type { Session } from '../types.ts';
import { keep } from './keep.ts';
import { offerUndo } from './undo.ts';

const isThere = (id: string) => state.get().sessions.some((s) => s.id === id);

const tell = (text: string, undo: () => unknown) => offerUndo(text, undo, { name: 'undo' });

/** Reads anew which sessions of a learner can be brought back. */
export async function readRemoved(learner: string) {
  const list = await store.removed(learner).catch(() => undefined);
  if (!list) return;
  const { removed } = state.get();
  const same = removed?.learner === learner ? removed : undefined;
  state.set({ removed: { listed: 0, asked: undefined, ...same, learner, list } });
}

/** Removes a session; false if the device did not do it. */
export async function remove(id: string): Promise<boolean> {
  if (!(await keep(() => store.removeSession(id)))) return false;
  tell(t('record.removed'), () => bringBack(id));
  return true;
}

/** Brings a removed session back. */
export async function bringBack(id: string) {
  if (!(await keep(() => store.bringBack(id)))) return;
  const back = isThere(id);
  state.set({ notice: { text: t(back ? 'record.back' : 'record.not-back'), name: 'back' } });
}

/** Removes removed sessions for good. */
export async function forget(ids: string[], learner: string) {
  if (!(await keep(() => store.forget(ids)))) return;
  await readRemoved(learner);
  state.set({ notice: { text: t('removed.forgotten', { n: ids.length }), name: 'forgotten' } });
}

/** Corrects a session by what was said of it; false if it was not kept. */
export async function correct(was: Session, said: Said): Promise<boolean> {
  const patch = changes(was, said);
  if (!Object.keys(patch).length) return true;
  if (!(await keep(() => store.changeSession(was.id, patch)))) return false;
  if (isThere(was.id)) tell(t('record.corrected'), () => takeBack(was, patch));
  else sayGone();
  return isThere(was.id);
}

async function takeBack(was: Session, patch: Patch<Session>) {
  if (!(await keep(() => store.changeSession(was.id, undone(was, patch))))) return;
  if (!isThere(was.id)) sayGone();
}

/** Another tab has removed the session meanwhile. */
const sayGone = () => state.set({ notice: { text: t('record.gone'), hold: true } });

/** Adds a session; false if it was not kept. */
export async function add(session: Session): Promise<boolean> {
  if (!(await keep(() => store.addSession(session)))) return false;
  if (isThere(session.id)) tell(t('record.added'), () => remove(session.id));
  else state.set({ notice: { text: t('end.gone'), hold: true } });
  return isThere(session.id);
}

// Keeps a session and what follows from it, with a way back.
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import { t } from '../i18n.ts';
import { after } from '../plan/lines.ts';
import type { Result } from '../marking/check.ts';
import type { Live } from '../screens/lines/live.ts';
import type { Learner, Outcome, Session, Taught } from '../types.ts';
import { today } from './week.ts';

/** A name nothing else has, of 20 characters; also where crypto.randomUUID is absent. */
export const newId = () => Array.from(crypto.getRandomValues(new Uint8Array(10)), (b) => b.toString(16).padStart(2, '0')).join('');

/** Runs a write and reads everything again; says so plainly when the device did not keep it. */
export async function keep(write: () => Promise<void>): Promise<boolean> {
  try {
    await write();
    state.set({ ...await store.all().then(({ learners, sessions, taught }) => ({ learners, sessions, taught })), kept: true });
    return true;
  } catch {
    state.set({ kept: false });
    return false;
  }
}

export async function finish(l: Live, r: Result, outcome: Outcome): Promise<void> {
  const was = state.learner(), c = state.get().catalogue;
  if (!was) return;
  const at = new Date().toISOString(), { lines, marks, stops, helped } = l.draft;
  const session: Session = {
    id: newId(), learner: was.id, day: today(), at, rule: lines.rule, from: lines.from, to: lines.to, marks, stops,
    found: r.found.filter((f) => !f.e.unwritten).length, missed: r.missed.length, extra: r.extra.length, helped, outcome,
  };
  // The place moves on only where these were the lines the learner had come to.
  const here = lines.from.s === was.place.s && lines.from.a <= was.place.a + 40 && lines.to.a >= was.place.a;
  const now: Learner = { ...was, place: here ? after(c, lines.to) : was.place, updated: at };
  const old = state.taughtOf(was.id).find((x) => x.rule === lines.rule);
  const taught: Taught | undefined = lines.rule && !old ? { learner: was.id, rule: lines.rule, since: session.day, known: '' } : undefined;
  if (!await keep(() => store.saveSession(session, now, taught))) return;
  location.hash = '#/today';
  state.set({ notice: { text: t('end.saved'), action: { label: t('undo'), run: () => {
    void keep(() => store.unsaveSession(session.id, was, taught && { taught, was: old }));
  } } } });
}

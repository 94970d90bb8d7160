// Keeps a session and what follows from it, with a way back.
import * as state from '../state.ts';
import * as store from '../store/store.ts';
import { t } from '../i18n.ts';
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
  const [{ child }, { after, moved }] = await Promise.all([import('../plan/held.ts'), import('../plan/place.ts')]);
  const plan = child(), now: Learner = { ...was, place: plan ? moved(plan, lines) : after(c, lines.to) ?? was.place, updated: at };
  // A rule met for the first time is taught from today on, with the others of its lesson.
  const index = c.rules.findIndex((x) => x.id === lines.rule), unit = plan?.course.units.find((u) => u.rules.includes(index));
  const known = new Set(state.taughtOf(was.id).map((x) => x.rule));
  const added: Taught[] = !lines.rule || known.has(lines.rule) ? [] : (unit?.rules ?? [index]).map((r) => c.rules[r]!.id).filter((r) => !known.has(r))
    .map((rule) => ({ learner: was.id, rule, since: session.day, known: '' }));
  if (!await keep(() => store.saveSession(session, now, added))) return;
  location.hash = '#/today';
  state.set({ notice: { text: t('end.saved'), action: { label: t('undo'), run: () => {
    void keep(() => store.unsaveSession(session.id, was, added));
  } } } });
}

// Computes what is next for every learner, one of them each time the page is idle.
import { whenIdle } from '../../idle.ts';
import { memo } from '../../memo.ts';
import { type Outlook, outlook, states } from '../../plan/outlook.ts';
import { childOf } from '../../planner.ts';
import { dayNumber, today } from '../../record/week.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { listed } from '../parts/switch.ts';

const last = memo<Map<string, string>>();

function statesOf({ learners, sessions, taught }: State): Map<string, string> {
  const day = dayNumber(today());
  return last([learners, sessions, taught, day], () => states(learners, sessions, taught, day));
}

/** What is next for a learner, if it has been computed for the record as it is. */
export function outlookOf(s: State, id: string): Outlook | undefined {
  const there = s.outlooks.get(id);
  return there && there.of === statesOf(s).get(id) ? there : undefined;
}

let callOff: (() => void) | undefined;

/** Goes on with the first that is missing; each of them draws the screen, which asks again. */
export function goOn(s: State) {
  if (callOff || !s.course || s.course === 'failed') return;
  if (listed(s).every((l) => outlookOf(s, l.id))) return;
  callOff = whenIdle(() => {
    callOff = undefined;
    const now = state.get();
    const next = listed(now).find((l) => !outlookOf(now, l.id));
    const c = next && childOf(next);
    if (!c) return;
    const made = outlook(c, statesOf(now).get(next.id)!);
    state.set({ outlooks: new Map(now.outlooks).set(next.id, made) });
  });
}

/** The screen is left. */
export function stop() {
  callOff?.();
  callOff = undefined;
}

// Holds the course once it is loaded, and the learner in hand as the planner sees it, made anew
// when something changed.
import * as state from '../state.ts';
import { today } from '../log/week.ts';
import { Child, course, type Course, dayNumber } from './child.ts';
import { loadPhrases } from './load.ts';

let held: Course | undefined, waiting: Promise<Course> | undefined;

/** The course; fails where the index can be had neither from the network nor from the device. */
export function load(): Promise<Course> {
  const c = state.get().catalogue;
  waiting ??= loadPhrases(c).then((x) => (held = course(x, c)));
  waiting.catch(() => {
    waiting = undefined;
  });
  return waiting;
}

/** The learner in hand, or for a page without one somebody who begins with the last juz. */
export function look(): Child | undefined {
  if (!held || state.learner()) return child();
  const [s, a] = held.c.juz[29]!;
  return new Child(
    held,
    { id: '', name: '', place: { s, a }, settled: true, made: '', updated: '' },
    [],
    [],
    dayNumber(today()),
  );
}

let made: { of: unknown[]; child: Child } | undefined;

/** The learner in hand, once there is one and the course is loaded. */
export function child(): Child | undefined {
  const l = state.learner(),
    s = state.get(),
    day = dayNumber(today());
  if (!l || !held) return undefined;
  const of = [held, l, s.sessions, s.taught, day];
  if (!made || of.some((x, i) => x !== made!.of[i]))
    made = { of, child: new Child(held, l, s.sessions, s.taught, day) };
  return made.child;
}

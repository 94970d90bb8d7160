// The planner at work: fetches what it needs, and gives it the learner who is reading.
import { memo } from './memo.ts';
import { dayNumber, today } from './record/week.ts';
import { Child } from './plan/child.ts';
import { course, type Course } from './plan/course.ts';
import { Phrases } from './plan/phrases.ts';
import * as state from './state.ts';
import { dataFile } from './text/data.ts';
import { verified } from './text/fetch.ts';
import type { Learner } from './types.ts';

let waiting: Promise<Course> | undefined;

/**
 * Fetches the course, once, into the state; fails where the index can be had neither from the
 * network nor from the device.
 */
export function loadCourse(): Promise<Course> {
  const c = state.get().catalogue;
  if (state.get().course === 'failed') state.set({ course: undefined });
  waiting ??= verified(dataFile(c.passages), c.passagesSha).then((bytes) => {
    const made = course(new Phrases(bytes), c);
    state.set({ course: made });
    return made;
  });
  waiting.catch(() => {
    waiting = undefined;
    state.set({ course: 'failed' });
  });
  return waiting;
}

const courseOf = () => {
  const { course } = state.get();
  return course === 'failed' ? undefined : course;
};

/** The reader; for a page without a learner, somebody who begins with the last juz. */
export function reader(): Child | undefined {
  const there = courseOf();
  if (!there || state.learner()) return child();
  const [s, a] = there.c.juz[29]!;
  const nobody = { id: '', name: '', place: { s, a }, settled: true, made: '', updated: '' };
  return new Child(there, nobody, [], [], dayNumber(today()));
}

/** A learner as the planner sees them, once the course is there; made anew at each call. */
export function childOf(l: Learner): Child | undefined {
  const there = courseOf();
  const { sessions, taught } = state.get();
  return there && new Child(there, l, sessions, taught, dayNumber(today()));
}

const last = memo<Child | undefined>();

/** The learner as the planner sees it, once there is one and the course is there. */
export function child(): Child | undefined {
  const l = state.learner();
  const { course, sessions, taught } = state.get();
  return l && last([course, l, sessions, taught, today()], () => childOf(l));
}

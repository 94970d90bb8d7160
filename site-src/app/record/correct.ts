// What a correction changes, and a session that is added afterwards.
import type { Patch } from '../store/patch.ts';
import type { Session } from '../types.ts';
import { marksOf } from './rules.ts';
import type { Said } from './typed.ts';

/** The same time of another local day, but never later than now. */
export function timeOn(day: string, at: string, now = new Date()): string {
  const [year, month, date] = day.split('-').map(Number);
  const time = new Date(at);
  time.setFullYear(year!, month! - 1, date!);
  return (time < now ? time : now).toISOString();
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

/** The fields in which what is said differs from a session; empty where it says the same. */
export function changes(was: Session, said: Said): Patch<Session> {
  const now: Patch<Session> = {
    ...said,
    marks: marksOf(was.marks, was.rule, said.rule),
    at: said.day === was.day ? was.at : timeOn(said.day, was.at),
  };
  const differs = Object.entries(now).filter(([field, x]) => !same(x, was[field as keyof Session]));
  return Object.fromEntries(differs) as Patch<Session>;
}

/** The patch that takes one back. */
export const undone = (was: Session, patch: Patch<Session>): Patch<Session> =>
  Object.fromEntries(Object.keys(patch).map((field) => [field, was[field as keyof Session]]));

/** A session that was held elsewhere. */
export function added(id: string, learner: string, said: Said, now = new Date()): Session {
  const fields = Object.entries(said).filter(([, value]) => value !== undefined);
  return {
    id,
    learner,
    at: timeOn(said.day, now.toISOString(), now),
    marks: [],
    stops: [],
    extra: 0,
    helped: false,
    ...(Object.fromEntries(fields) as unknown as Said),
  } as Session;
}

// Work that a teacher gave, beside what the record has of it.
import { linesKey } from '../share/link.ts';
import type { Catalogue, Entry, Lesson, Lines, Work } from '../types.ts';

/** The sessions of a learner with the lines of the work, from its day on. */
export const doneOf = ({ lines, since }: Work, sessions: Entry[]): Entry[] =>
  sessions.filter((s) => s.day >= since && keyOf(s) === keyOf(lines));

const keyOf = ({ rule, from, to }: Entry | Lines) => linesKey({ rule, from, to });

/** The lessons all of whose rules are taught. */
export const lessonsTaught = (c: Catalogue, rules: ReadonlySet<string>): Lesson[] =>
  c.lessons.filter((l) => l.rules.every((r) => rules.has(r)));

/** Those of some lessons that have a rule not taught. A lesson that there is no longer is none. */
export const lessonsMissing = (c: Catalogue, ids: string[], rules: ReadonlySet<string>) =>
  c.lessons.filter((l) => ids.includes(l.id) && !l.rules.every((r) => rules.has(r)));

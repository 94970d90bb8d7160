// What is kept on the device: learners, their sessions, what they were taught, and the settings.
import type { Length } from './catalogue.ts';
import type { Lines, Place, Ref } from './text.ts';

/** A letter the child has marked, and the count written at it (0 for none). */
export interface Mark extends Place {
  count: number;
}

export type Outcome = 'alone' | 'some' | 'much';

/** Reading on through the text, or surah after surah backwards, each of them forwards. */
export type Direction = 'forwards' | 'backwards';

/** How many places a session is to have. */
export type Load = 'few' | 'usual' | 'many';

/**
 * order is the adult's order of lessons by id, ready what makes a lesson count as known, load how
 * many places a session is to have; direction whether the surah after or before follows a
 * surah; each absent for the default.
 */
export interface Learner {
  id: string;
  name: string;
  place: Ref;
  settled: boolean;
  made: string;
  updated: string;
  order?: string[];
  ready?: { sessions: number; days: number; percent: number };
  load?: Load;
  direction?: Direction;
}

/**
 * What the record says of a practice session. Times are ISO 8601; day is the local date YYYY-MM-DD.
 */
export interface Entry {
  id: string;
  learner: string;
  day: string;
  at: string;
  rule: string;
  from: Ref;
  to: Ref;
  found: number;
  missed: number;
  extra: number;
  helped: boolean;
  outcome: Outcome;
}

/** A practice session as it is kept. */
export interface Session extends Entry {
  marks: Mark[];
  stops: [number, number, boolean][];
}

/**
 * What a learner has been taught: since when, and since when the adult calls it known ('' for not
 * yet).
 */
export interface Taught {
  learner: string;
  rule: string;
  since: string;
  known: string;
}

export interface Settings {
  learner: string;
  size: number;
  spacing: number;
  theme: 'auto' | 'light' | 'dark';
  madd: number;
  arid: number;
  // a family's own colours on paper, #rrggbb by the id of the family of rules
  pencils?: Record<string, string>;
}

export type Phase = 'find' | 'check' | 'read' | 'done';

/**
 * A session not kept yet, so that a closed page loses nothing: one for each learner and set of
 * lines. id will be that of the session; at is the address of the lines. Times are ISO 8601.
 */
export interface Draft {
  id: string;
  learner: string;
  at: string;
  lines: Lines;
  phase: Phase;
  marks: Mark[];
  stops: [number, number, boolean][];
  helped: boolean;
  started: string;
  updated: string;
}

/** The lengths that a family has chosen. */
export type Lengths = Pick<Settings, Length>;

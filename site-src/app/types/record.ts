// What is kept on the device: learners, their sessions, what they were taught, and the settings.
import type { Length } from './catalogue.ts';
import type { Lines, Place, Ref } from './text.ts';

/**
 * A letter the child has marked, and the count written at it (0 for none). pencil is the id of the
 * one it was marked with, absent for that of the lines' rule.
 */
export interface Mark extends Place {
  count: number;
  pencil?: string;
}

/** Places of a rule found and missed. */
export interface Tally {
  rule: string;
  found: number;
  missed: number;
}

export const OUTCOMES = ['alone', 'some', 'much'] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** Reading on through the text, or surah after surah backwards, each of them forwards. */
export type Direction = 'forwards' | 'backwards';

/** How many places a session is to have. */
export type Load = 'few' | 'usual' | 'many';

/** Settings that a learner may have of its own. */
export type Own = Pick<Settings, 'size' | 'spacing' | 'counting' | 'large' | Length>;

/**
 * Work that a teacher gave: lines, from which local date on, how often a week, and what was said of
 * it ('' for nothing).
 */
export interface Work {
  lines: Lines;
  since: string;
  times: number;
  say: string;
}

/**
 * order is the adult's order of lessons by id, ready what makes a lesson count as known, load how
 * many places a session is to have; direction whether the surah after or before follows a
 * surah; colour one of those by which learners are told apart, from 0; each absent for the default.
 * archived: since when the learner is out of use. updated is the time of the last change.
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
  colour?: number;
  archived?: string;
  own?: Partial<Own>;
  work?: Work;
}

/**
 * What the record says of a practice session. Times are ISO 8601; day is the local date YYYY-MM-DD.
 * found and missed are places of the rule; also has those of other rules marked, extra the marks on
 * letters of none. pencils are those of the lines beside their rule. looked: places of all of them
 * found before looking again. paper: marked on paper, together: by several learners at once; in
 * both, nothing found and nothing missed says that nobody told how many, of each rule. minutes it
 * took, and what somebody noted. updated is the time of the last correction.
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
  also?: Tally[];
  pencils?: string[];
  looked?: number;
  paper?: boolean;
  together?: boolean;
  minutes?: number;
  note?: string;
  updated?: string;
}

/** A practice session as it is kept. */
export interface Session extends Entry {
  marks: Mark[];
  stops: [number, number, boolean][];
}

/**
 * What a learner has been taught: since when, and since when the adult calls it known ('' for not
 * yet). updated is the time when somebody said so. Where since is '', it is no longer taught; such
 * an entry is only kept, and never shown.
 */
export interface Taught {
  learner: string;
  rule: string;
  since: string;
  known: string;
  updated?: string;
}

/** That a session was removed, by its id, and when; with the session while it can be brought back. */
export interface Gone {
  id: string;
  learner: string;
  at: string;
  session?: Session;
}

export interface Settings {
  learner: string;
  size: number;
  spacing: number;
  theme: 'auto' | 'light' | 'dark';
  muttasil: number;
  munfasil: number;
  arid: number;
  lin: number;
  // when counts are written: once for all where there is but one length, at every letter, or never
  counting?: 'once' | 'every' | 'never';
  // a family's own colours on paper, #rrggbb by the id of the family of rules
  pencils?: Record<string, string>;
  // whether every tapped word opens large before a letter of it is marked
  large?: boolean;
  // whether it has been said why a tap between two letters opens the word
  toldLarge?: boolean;
  // when the last backup was saved, ISO 8601
  backed?: string;
  // the order in which learners are listed: the one who read last first, or as they were made
  sort?: 'read' | 'made';
  // whether nothing more is to be said of the home screen
  noHome?: boolean;
}

export type Phase = 'find' | 'check' | 'read' | 'done';

/**
 * A session not kept yet, so that a closed page loses nothing: one for each learner and set of
 * lines. id will be that of the session; at is the address of the lines without their other pencils;
 * learner is '' where there is none yet. told: how much the check has said, how many places each
 * verse still hides or all of them; looked: places found when it was first asked. lengths: counts
 * written once for all marks of a pencil, by its id. paper: places that were found on paper, by
 * pencil, as far as somebody said. together: learners who read the same lines beside the first.
 * Times are ISO 8601.
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
  told?: 'some' | 'all';
  looked?: number;
  lengths?: Record<string, number>;
  paper?: Record<string, number>;
  together?: string[];
  started: string;
  updated: string;
}

/** The lengths that a family has chosen. */
export type Lengths = Pick<Settings, Length>;

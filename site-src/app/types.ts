// Every type that more than one module speaks of.
import type { Below } from './i18n.ts';

/**
 * When an event holds: always, when the reader reads on, stops after the word, or starts at the
 * word.
 */
export const Always = 0,
  Join = 1,
  Stop = 2,
  Start = 3;

/** One place where one rule acts. */
export interface Event {
  w: number; // word of the verse, from 0
  l: number; // letter of the word, from 0
  rule: number; // index into Catalogue.rules
  count: number; // short vowels held at the default setting, 0 for none
  when: number; // Always, Join, Stop or Start
  before: boolean; // the boundary meant is the one before the word
  unwritten: boolean; // heard but not written: never asked of a child who marks
  detail: number; // index into Catalogue.details
  cw: number; // word of the letter that causes it, relative to w
  cl: number; // that letter, -1 for none
}

/**
 * All of an event but its place: rule, count, when | before << 2 | unwritten << 3 | detail << 4,
 * and where there is a cause its word and its letter, counted from the event's own where it is in
 * the same word.
 */
export type Kind = [rule: number, count: number, flags: number, cw?: number, cause?: number];

/** One letter of a word: UTF-16 offsets into the word's text. */
export interface Letter {
  rune: number;
  from: number;
  to: number;
  marks: number[];
}

/** lined: one of the words of a prostration, over which the print draws a line. */
export interface Word {
  text: string;
  letters: Letter[];
  pause: number;
  lined?: boolean;
}

/** open says that the lines end within the verse: its last words are left out. */
export interface Verse {
  s: number;
  a: number;
  text: string;
  words: Word[];
  events: Event[];
  open?: boolean;
}

/**
 * All that is known here about a rule; the files of the rules say it. counts: every length the rule
 * can have; setting: the family's setting that chooses among them; role: what its letter does, also
 * for a child who has not been taught it; cases: sentences in place of why (see text/explain.ts);
 * letters: those that decide it; at: a word that shows it, from 0.
 */
export interface Rule {
  id: string;
  name: string;
  ar: string;
  tr: string;
  family: string;
  needs: string[];
  counts: number[];
  setting?: Length;
  role?: 'silent' | 'long' | 'ending';
  short: string;
  why: string;
  cases?: Record<string, string>;
  lesson: string;
  letters?: string;
  at: [surah: number, verse: number, word: number];
}

/**
 * What an event's rule does not say. counts: lengths also accepted, at: only when reading on after
 * the word, or at a stop there.
 */
export interface Detail {
  id: string;
  counts?: number[];
  at?: 'join' | 'stop';
  text?: string;
}

/** Lengths in which teachers differ: of a long vowel with hamza, and of one at a stop. */
export type Length = 'madd' | 'arid';
export type Lengths = Pick<Settings, Length>;

export interface Surah {
  n: number;
  ar: string;
  la: string;
  count: number;
  sha: string;
}
export interface Family {
  id: string;
  light: string;
  dark: string;
  form: 'solid' | 'double' | 'dotted' | 'dashed' | 'wavy';
}
/** A page and its ink, #rrggbb. */
export interface Theme {
  paper: string;
  ink: string;
}
export interface Catalogue {
  v: number;
  textDigest: string;
  surahs: Surah[];
  rules: Rule[];
  families: Family[];
  details: Detail[];
  themes: Record<'light' | 'dark', Theme>;
  alphabet: string;
  kinds: Kind[]; // what the bytes of the surahs' files mean (text/surah.ts)
  juz: [number, number][];
  pages: [number, number][];
  passages: string;
  // file of the passage index, beside the catalogue, and the digest of what is in it
  passagesSha: string;
  lessons: Lesson[]; // in teaching order
}

/**
 * Rules taught together, and why there: places are its own, in the last juz. opens is the lesson
 * (an index) for whose sake it stands there, itself where it is its own places; lessons are those
 * up to opens and together their places.
 */
export interface Lesson {
  id: string;
  name: string;
  ar: string;
  rules: string[];
  places: number;
  opens: number;
  lessons: number;
  together: number;
}

/**
 * A verse by surah and number, both from 1. w is a word of it from 0, where lines begin or end
 * within the verse: the first word of from, the last of to.
 */
export interface Ref {
  s: number;
  a: number;
  w?: number;
}

/** Lines to work on; rule is empty for reading without a new rule. */
export interface Lines {
  rule: string;
  from: Ref;
  to: Ref;
}

/** A letter of the lines on screen: verse of the passage, word, letter, all from 0. */
export interface Place {
  v: number;
  w: number;
  l: number;
}

/** A letter the child has marked, and the count written at it (0 for none). */
export interface Mark extends Place {
  count: number;
}

export type Outcome = 'alone' | 'some' | 'much';

/**
 * order is the adult's order of lessons by id, ready what makes a lesson count as known; both
 * absent for the default.
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

export type Route =
  | { name: 'today' | 'rules' | 'record' | 'learner' | 'print' }
  | { name: 'choose'; pick: string }
  | { name: 'lines'; lines: Lines }
  | { name: 'bad'; reason: Below<'bad'>; vars: Record<string, string | number> };

// Every type that more than one module speaks of.
import type { Below } from './i18n.ts';

/** When an event holds: always, when the reader reads on, stops after the word, or starts at the word. */
export const Always = 0, Join = 1, Stop = 2, Start = 3;

/** One place where one rule acts, decoded from eight numbers of a surah's file. */
export interface Event {
  w: number; // word of the verse, from 0
  f: number; // first letter of the word, from 0
  n: number; // how many letters
  rule: number; // index into Catalogue.rules
  count: number; // short vowels held at the default setting, 0 for none
  when: number; // Always, Join, Stop or Start
  before: boolean; // the boundary meant is the one before the word
  unwritten: boolean; // heard but not written: never asked of a child who marks
  detail: number; // index into Catalogue.details
  cw: number; // word of the letter that causes it, relative to w
  cl: number; // that letter, -1 for none
}

/** One letter of a word: UTF-16 offsets into the word's text. */
export interface Letter { rune: number; from: number; to: number; marks: number[] }

/** lined: one of the words of a prostration, over which the print draws a line. */
export interface Word { text: string; letters: Letter[]; pause: number; lined?: boolean }

/** open says that the lines end within the verse: its last words are left out. */
export interface Verse { s: number; a: number; text: string; page: number; juz: number; words: Word[]; events: Event[]; open?: boolean }

export interface Rule {
  id: string; name: string; ar: string; tr: string; family: string; needs: string[]; counts: number[];
  short: string; why: string; lesson?: string;
}
export interface Surah { n: number; ar: string; la: string; count: number; file: string; page: number; juz: number; sha: string }
export interface Family { id: string; light: string; dark: string; form: 'solid' | 'double' | 'dotted' | 'dashed' | 'wavy' }
export interface Catalogue {
  v: number; textDigest: string; surahs: Surah[]; rules: Rule[]; families: Family[]; details: string[];
  juz: [number, number][]; pages: [number, number][];
  passages: string; passagesSha: string; // file of the passage index, beside the catalogue, and the digest of what is in it
  lessons: { id: string; name: string; ar: string; rules: string[] }[]; // rules taught together, in the lessons' order
}

/**
 * A verse by surah and number, both from 1. w is a word of it from 0, where lines begin or end within the verse: the first
 * word of from, the last of to.
 */
export interface Ref { s: number; a: number; w?: number }

/** Lines to work on; rule is empty for reading without a new rule. */
export interface Lines { rule: string; from: Ref; to: Ref }

/** A letter of the lines on screen: verse of the passage, word, letter, all from 0. */
export interface Place { v: number; w: number; l: number }

/** A letter the child has marked, and the count written at it (0 for none). */
export interface Mark extends Place { count: number }

export type Outcome = 'alone' | 'some' | 'much';

/** order is the adult's order of lessons by id, ready what makes a lesson count as known; both absent for the default. */
export interface Learner {
  id: string; name: string; place: Ref; settled: boolean; made: string; updated: string;
  order?: string[]; ready?: { sessions: number; days: number; percent: number };
}

/** A practice session as it is kept. Times are ISO 8601; day is the local date YYYY-MM-DD. */
export interface Session {
  id: string; learner: string; day: string; at: string; rule: string; from: Ref; to: Ref; marks: Mark[];
  stops: [number, number, boolean][]; found: number; missed: number; extra: number; helped: boolean; outcome: Outcome;
}

/** What a learner has been taught: since when, and since when the adult calls it known ('' for not yet). */
export interface Taught { learner: string; rule: string; since: string; known: string }

export interface Settings {
  learner: string; size: number; spacing: number; theme: 'auto' | 'light' | 'dark'; madd: 4 | 5; arid: 2 | 4 | 6;
  pencils?: Record<string, string>; // a family's own colours on paper, #rrggbb by the id of the family of rules
}

export type Phase = 'find' | 'check' | 'read' | 'done';

/**
 * A session not kept yet, so that a closed page loses nothing: one for each learner and set of lines. id will be that of the
 * session; at is the address of the lines. Times are ISO 8601.
 */
export interface Draft {
  id: string; learner: string; at: string; lines: Lines; phase: Phase; marks: Mark[]; stops: [number, number, boolean][];
  helped: boolean; started: string; updated: string;
}

export type Route =
  | { name: 'today' | 'rules' | 'record' | 'learner' | 'print' }
  | { name: 'choose'; pick: string }
  | { name: 'lines'; lines: Lines }
  | { name: 'bad'; reason: Below<'bad'>; vars: Record<string, string | number> };

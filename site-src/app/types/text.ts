// The text as it is shown: verses, words, letters, and the places where rules act.

/**
 * When an event holds: always, when the reader reads on, stops after the word, or starts at the
 * word.
 */
export const Always = 0;
export const Join = 1;
export const Stop = 2;
export const Start = 3;

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
 * A verse by surah and number, both from 1. w is a word of it from 0, where lines begin or end
 * within the verse: the first word of from, the last of to.
 */
export interface Ref {
  s: number;
  a: number;
  w?: number;
}

/**
 * Lines to work on; rule is empty for reading without a new rule. also are the other pencils: ids of
 * rules, of groups of rules, or the one of stops (marking/pencils.ts).
 */
export interface Lines {
  rule: string;
  also?: string[];
  from: Ref;
  to: Ref;
}

/** A letter of the lines on screen: verse of the passage, word, letter, all from 0. */
export interface Place {
  v: number;
  w: number;
  l: number;
}

/** A word of the lines: verse of the passage and word, from 0. */
export type WordAt = Pick<Place, 'v' | 'w'>;

export const samePlace = (a: Place, b: Place) => a.v === b.v && a.w === b.w && a.l === b.l;

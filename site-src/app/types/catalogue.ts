// What the build says of the rules, the lessons and the text.
import type { Kind } from './text.ts';

/**
 * All that is known here about a rule; the files of the rules say it. counts: every length the rule
 * can have; setting: the family's setting that chooses among them; role: what its letter does, also
 * for a child who has not been taught it; cases: sentences in place of why (see text/explain.ts);
 * letters: those that decide it; stuck: what to say to a child who is; at: a word that shows it,
 * from 0.
 *
 * alike: ids of rules whose places count as right where this one is marked by ear, and sound is what
 * is heard in all of them, as in "Yes, two counts too." Where the role is silent, an event at a
 * start is not alike: its letter is read there. onCause is said of a mark on the letter that causes
 * an event of the rule; without it such a mark is a mistake.
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
  alike?: string[];
  sound?: string;
  onCause?: string;
  short: string;
  why: string;
  cases?: Record<string, string>;
  lesson: string;
  letters?: string;
  stuck?: string;
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

/**
 * Lengths in which teachers differ: of a long vowel with a hamza in its word or after it, and at a
 * stop of a long vowel or of a soft waw or ya.
 */
export const LENGTHS = ['muttasil', 'munfasil', 'arid', 'lin'] as const;
export type Length = (typeof LENGTHS)[number];

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
/** Every rule of some families: what a child marks with one pencil. Its id is no rule's. */
export interface Group {
  id: string;
  name: string;
  families: string[];
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
  groups: Group[];
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
 * Rules taught together, and why there (Step in generator/internal/plan/sequence.go): it begins a
 * row of its family, begins one that builds on lesson `on` (an index), follows `on` in its row, or
 * is rare. places are its own, in the last juz; look is how many things besides the letter a child
 * must look at, sign whether the print shows each place by one.
 */
export interface Lesson {
  id: string;
  name: string;
  ar: string;
  rules: string[];
  why: 'begins' | 'builds' | 'row' | 'rare';
  on: number;
  places: number;
  look: 0 | 1 | 2 | 3;
  sign: boolean;
}

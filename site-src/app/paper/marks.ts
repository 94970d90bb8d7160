// What an answer sheet shows: the places of its rules under the default stops, and what is written
// at their letters.
import { type Hit, written } from '../marking/check.ts';
import { standsOver } from '../text/letters.ts';
import { Stops } from '../text/stops.ts';
import { KEYS } from '../marking/pencils.ts';
import type { Event, Verse, Word } from '../types.ts';

export interface Marks {
  /** The places by verse and word, those of the first rule first. */
  hits: Hit[][][];
  /** How many places each rule has, by its index. */
  totals: Map<number, number>;
}

export function marks(verses: Verse[], rules: number[]): Marks {
  const hits = verses.map((x) => x.words.map((): Hit[] => []));
  const totals = new Map(rules.map((r) => [r, 0]));
  for (const h of written(verses, rules, new Stops(verses))) {
    hits[h.v]![h.e.w]!.push(h);
    totals.set(h.e.rule, totals.get(h.e.rule)! + 1);
  }
  return { hits, totals };
}

/** What is written at letter l. */
export interface Note {
  l: number;
  /** How long it is held, above it. */
  counts: number[];
  /** The short names of its rules, below it. */
  keys: string[];
}

/**
 * The notes of a word. A small letter and the one it stands over have one place on the line, and so
 * one note.
 */
export function notes(
  word: Word,
  hits: Hit[],
  count: (e: Event) => number,
  keys: Map<number, string>,
): Note[] {
  const out: Note[] = [];
  for (const l of [...new Set(hits.map((h) => h.e.l))].sort((a, b) => a - b)) {
    const here = hits.filter((h) => h.e.l === l).map((h) => h.e);
    const before = out.at(-1);
    const counts = here.map(count).filter(Boolean).slice(0, 1);
    const short = here.flatMap((e) => keys.get(e.rule) ?? []);
    if (before?.l === l - 1 && standsOver(word, l)) {
      before.counts.push(...counts);
      before.keys.push(...short);
    } else out.push({ l, counts, keys: short });
  }
  return out;
}

/**
 * Short names that tell rules apart without colour: a, b, … z, then aa, ab, …; none where there is
 * but one rule.
 */
export function keys(m: Marks): Map<number, string> {
  const present = [...m.totals].filter(([, n]) => n > 0).map(([r]) => r);
  if (m.totals.size < 2) return new Map();
  return new Map(
    present.map((r, i) => [
      r,
      i < KEYS.length ? KEYS[i]! : KEYS[Math.floor(i / KEYS.length) - 1]! + KEYS[i % KEYS.length]!,
    ]),
  );
}

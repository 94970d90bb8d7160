// Reads lines: their text, what is read before it, and what the learner has marked in them.
import { linesKey } from '../share/link.ts';
import * as store from '../store/store.ts';
import { basmala, verses } from '../text/data.ts';
import type { Catalogue, Draft, Lines, Verse } from '../types.ts';

export interface Read {
  verses: Verse[];
  basmala: string;
  /** Undefined where there is none, or it cannot be read. */
  draft: Draft | undefined;
}

/** Fails with a TextError. */
export async function readLines(c: Catalogue, learner: string, l: Lines): Promise<Read> {
  const kept = store.draft(learner, linesKey(l)).catch(() => undefined);
  const [text, before, draft] = await Promise.all([
    verses(c, l.from, l.to),
    basmala(c, l.from, l.to),
    kept,
  ]);
  return { verses: text, basmala: before, draft };
}

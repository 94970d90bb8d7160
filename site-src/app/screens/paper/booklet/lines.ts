// The lines of a booklet. A juz has some 2,600 words: they are measured a few verses at a time, and
// in between the screen draws and hears whether it is to stop.
import { look } from '../../../colour/ink.ts';
import { spanOf } from '../../../marking/spans.ts';
import * as breaks from '../../../paper/breaks.ts';
import { type Geometry, MM } from '../../../paper/geometry.ts';
import { notes } from '../../../paper/marks.ts';
import { type Row, rows, type Widths } from '../../../paper/rows.ts';
import { counts } from '../../../text/counts.ts';
import type { Event, Verse } from '../../../types.ts';
import { type InkedWord, inkedWord } from '../ink.ts';
import type { Job } from '../job.ts';
import { measure, type Measured } from '../measure.ts';
import type { Content } from './content.ts';

/** Height of the head of a page of lines, in millimetres. */
export const HEAD = 8;

/** Words that are measured at once. */
const WORDS = 120;

/** Lines broken into pages. */
export interface LineSet {
  g: Geometry;
  rows: Row[];
  /** The first row of each page. */
  starts: number[];
}

/** The first verse of each part of so many words. */
function parts(verses: Verse[]): number[] {
  const out: number[] = [];
  let words = Infinity;
  verses.forEach((v, i) => {
    if (words >= WORDS) {
      out.push(i);
      words = 0;
    }
    words += v.words.length;
  });
  return out;
}

/** Measures verses with letters of em pixels; each sees a part while it can be asked, from a verse. */
async function measured(
  verses: Verse[],
  em: number,
  step: (share: number) => Promise<void>,
  each?: (m: Measured, list: Verse[], from: number) => void,
): Promise<Widths> {
  const out: Widths = { words: [], space: 0 };
  const starts = parts(verses);
  for (const [i, from] of starts.entries()) {
    const list = verses.slice(from, starts[i + 1]);
    const m = await measure(list, em);
    try {
      out.words.push(...m.words);
      out.space = m.space;
      each?.(m, list, from);
    } finally {
      m.drop();
    }
    await step((i + 1) / starts.length);
  }
  return out;
}

function setOf(verses: Verse[], m: Widths, g: Geometry): LineSet {
  const all = rows(verses, m, g, false);
  const room = Math.floor((g.room - HEAD * MM) / g.pitch);
  const heads = all.map((r) => 'head' in r);
  return { g, rows: all, starts: breaks.pages(heads, room, room) };
}

/** The lines to practise on. */
export async function practiceLines(
  { passage: { verses } }: Content,
  g: Geometry,
  step: (share: number) => Promise<void>,
): Promise<LineSet> {
  return setOf(verses, await measured(verses, g.em, step), g);
}

/** The lines of the answers, and their words by verse as they are painted. */
export async function answerLines(
  { c, settings }: Job,
  { passage: { verses }, found, keys }: Content,
  g: Geometry,
  step: (share: number) => Promise<void>,
): Promise<{ lines: LineSet; inked: InkedWord[][] }> {
  const inked: InkedWord[][] = [];
  const count = (e: Event) => counts(c.rules[e.rule]!, e, settings).want;
  const ink = (m: Measured, list: Verse[], from: number) =>
    list.forEach(({ words }, v) =>
      inked.push(
        words.map((word, w) => {
          const hits = found.hits[from + v]![w]!;
          const spans = hits.map((h) => spanOf(h, look(c.rules[h.e.rule]!.family)));
          return inkedWord(word, { v, w }, spans, m, notes(word, hits, count, keys));
        }),
      ),
    );
  const widths = await measured(verses, g.em, step, ink);
  return { lines: setOf(verses, widths, g), inked };
}

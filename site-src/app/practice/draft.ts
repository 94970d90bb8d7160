// A session that is not kept yet.
import { linesKey } from '../share/link.ts';
import { firstStep } from '../marking/pencils.ts';
import { newId } from '../store/id.ts';
import type { Draft, Lines, Verse } from '../types.ts';

export function fresh(learner: string, lines: Lines): Draft {
  const now = new Date().toISOString();
  return {
    id: newId(),
    learner,
    at: linesKey(lines),
    lines,
    phase: firstStep(lines),
    marks: [],
    stops: [],
    helped: false,
    started: now,
    updated: now,
  };
}

/** A draft as it fits the lines: what was kept of another text is left out. */
export function fitted(d: Draft, verses: Verse[]): Draft {
  const word = (v: number, w: number) => verses[v]?.words[w];
  return {
    ...d,
    marks: d.marks.filter((m) => word(m.v, m.w)?.letters[m.l]),
    stops: d.stops.filter(([v, w]) => word(v, w)),
  };
}

// Opens lines on the shared screen.
import { fitted } from '../../practice/draft.ts';
import { readLines } from '../../practice/reading.ts';
import * as state from '../../state.ts';
import { TextError } from '../../text/data.ts';
import { Stops } from '../../text/stops.ts';
import type { Lines } from '../../types.ts';
import { fresh } from './board.ts';

/** Tells visits of the screen apart: what an earlier one asked for is not shown. */
let visit = 0;

export async function open(lines: Lines) {
  const mine = ++visit;
  const { catalogue } = state.get();
  const who = state.learner()?.id ?? '';
  try {
    const { verses, basmala, draft } = await readLines(catalogue, who, lines);
    if (mine !== visit) return;
    const stops = new Stops(verses, draft ? fitted(draft, verses).stops : []);
    state.set({ board: fresh(catalogue, { lines, verses, basmala, stops }) });
  } catch (e) {
    if (!(e instanceof TextError)) throw e;
    if (mine === visit) state.set({ unreadable: e.code });
  }
}

/** The screen is left, and everything drawn is gone. */
export function close() {
  visit++;
  state.set({ board: undefined, unreadable: undefined });
}

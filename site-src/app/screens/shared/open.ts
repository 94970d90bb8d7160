// Opens lines on the shared screen.
import { fitted } from '../../practice/draft.ts';
import { linesKey } from '../../share/link.ts';
import * as state from '../../state.ts';
import * as store from '../../store/store.ts';
import { basmala, TextError, verses } from '../../text/data.ts';
import { Stops } from '../../text/stops.ts';
import type { Lines } from '../../types.ts';
import { fresh } from './board.ts';

/** Tells visits of the screen apart: what an earlier one asked for is not shown. */
let visit = 0;

export async function open(lines: Lines) {
  const mine = ++visit;
  const { catalogue } = state.get();
  const who = state.learner()?.id ?? '';
  const draft = store.draft(who, linesKey(lines)).catch(() => undefined);
  try {
    const [text, before, kept] = await Promise.all([
      verses(catalogue, lines.from, lines.to),
      basmala(catalogue, lines.from, lines.to),
      draft,
    ]);
    if (mine !== visit) return;
    const stops = new Stops(text, kept ? fitted(kept, text).stops : []);
    state.set({ board: fresh(catalogue, { lines, verses: text, basmala: before, stops }) });
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

// What the shared screen shows: lines, which pencils' places are coloured, and what is drawn over
// them. None of it is kept.
import { BLANK, type Drawing } from '../../marking/drawing.ts';
import { type Pencil, pencilIds, pencils } from '../../marking/pencils.ts';
import * as state from '../../state.ts';
import type { Stops } from '../../text/stops.ts';
import type { Catalogue, Lines, Place, Verse } from '../../types.ts';

export interface Board {
  lines: Lines;
  verses: Verse[];
  /** What is read before a surah's first verse; empty where nothing is. */
  basmala: string;
  /** As the learner has them in these lines. */
  stops: Stops;
  pencils: Pencil[];
  /** The ids of the pencils whose places are coloured. */
  shown: string[];
  /** By how many steps the letters are larger than the window makes them. */
  step: number;
  drawing: Drawing;
  /** The letter of the keyboard. */
  caret: Place | undefined;
  /** The ring at which numbers can be chosen. */
  numbers: Place | undefined;
  /** What a screen reader is to say. */
  say: string;
}

/** A board with nothing on it but the text. */
export function fresh(
  c: Catalogue,
  x: Pick<Board, 'lines' | 'verses' | 'basmala' | 'stops'>,
): Board {
  const who = state.learner()?.id;
  const taught = who ? new Set(state.taughtOf(who).map((r) => r.rule)) : 'all';
  return {
    ...x,
    pencils: pencils(c, pencilIds(x.lines), taught),
    shown: [],
    step: 0,
    drawing: BLANK,
    caret: undefined,
    numbers: undefined,
    say: '',
  };
}

export const get = () => state.get().board;

export function set(patch: Partial<Board>) {
  const board = get();
  if (board) state.set({ board: { ...board, ...patch } });
}

/** Changes what is drawn. */
export function draw(to: (d: Drawing) => Drawing, more: Partial<Board> = {}) {
  const board = get();
  if (board) set({ drawing: to(board.drawing), ...more });
}

/** Says it at once; the same words once more are other text, or they would not be read again. */
export const say = (words: string) => set({ say: get()?.say === words ? `${words}\u00a0` : words });

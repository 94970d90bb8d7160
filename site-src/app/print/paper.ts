// Paper and what fits on it. Lengths are in CSS pixels, 96 to an inch, which is what a browser lays
// out and prints with.
import type { Paper, Turn } from './options.ts';

const MM = 96 / 25.4,
  PT = 4 / 3;

// ISO 216 A4, and ANSI A (Letter), in millimetres.
const SIZES: Record<Paper, [number, number]> = { a4: [210, 297], letter: [215.9, 279.4] };

/**
 * Margins of a page, the column of the verse numbers, the foot, in millimetres. Home printers reach
 * to within 5 mm of the edge.
 */
export const EDGE = 13,
  NUMBERS = 13,
  FOOT = 8;

/**
 * From one line of text to the next, in letter sizes: above the letters a count can be written,
 * below them a mark.
 */
export const PITCH = 2.75;

export interface Geometry {
  wide: number;
  high: number;
  em: number;
  line: number;
  pitch: number;
  room: number;
}

/** Page size in millimetres. */
export const page = (paper: Paper, turn: Turn): [number, number] => {
  const [w, h] = SIZES[paper];
  return turn === 'portrait' ? [w, h] : [h, w];
};

/**
 * line is the length of a line of text; room the height between margins, above the foot; size is in
 * points.
 */
export function geometry(paper: Paper, turn: Turn, size: number): Geometry {
  const [w, h] = page(paper, turn),
    em = size * PT;
  return {
    wide: w * MM,
    high: h * MM,
    em,
    line: (w - 2 * EDGE - NUMBERS) * MM,
    pitch: PITCH * em,
    room: (h - 2 * EDGE - FOOT) * MM,
  };
}

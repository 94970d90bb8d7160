// Paper and what fits on it. Lengths are in CSS pixels, 96 to an inch, which is what a browser lays
// out and prints with.
import type { Options, Paper, Turn } from './options.ts';

const MM = 96 / 25.4;
const PT = 4 / 3;

// ISO 216 A4, and ANSI A (Letter), in millimetres.
const SIZES: Record<Paper, [number, number]> = { a4: [210, 297], letter: [215.9, 279.4] };

/** Margin of a page, in millimetres. Home printers reach to within 5 mm of the edge. */
export const EDGE = 13;

/** Width of the column of the verse numbers, in millimetres. */
export const NUMBERS = 13;

/** Height of the foot, in millimetres. */
export const FOOT = 8;

/**
 * From one line of text to the next, in letter sizes: above the letters a count can be written,
 * below them a mark.
 */
const PITCH = 2.75;

/** A page's measures, in pixels. */
export interface Geometry {
  width: number;
  height: number;
  /** Letter size. */
  em: number;
  /** Length of a line of text. */
  line: number;
  /** From one line to the next. */
  pitch: number;
  /** Height between the margins, above the foot. */
  room: number;
}

/** Width and height of a page in millimetres. */
export const pageSize = (paper: Paper, turn: Turn): [number, number] => {
  const [w, h] = SIZES[paper];
  return turn === 'portrait' ? [w, h] : [h, w];
};

/** The measures of a page for letters of size points. */
export function geometry({ paper, turn, size }: Options): Geometry {
  const [w, h] = pageSize(paper, turn);
  const em = size * PT;
  return {
    width: w * MM,
    height: h * MM,
    em,
    line: (w - 2 * EDGE - NUMBERS) * MM,
    pitch: PITCH * em,
    room: (h - 2 * EDGE - FOOT) * MM,
  };
}

// Paper and what fits on it. Lengths are in CSS pixels, 96 to an inch, which is what a browser lays
// out and prints with.
import type { Options, Paper, Turn } from './options.ts';

/** Pixels to a millimetre. */
export const MM = 96 / 25.4;
const PT = 4 / 3;

// ISO 216 A4, and ANSI A (Letter), in millimetres.
const SIZES: Record<Paper, [number, number]> = { a4: [210, 297], letter: [215.9, 279.4] };

/** Margin of a page, in millimetres. Home printers reach to within 5 mm of the edge. */
export const EDGE = 13;

/** The same of a page that is half a sheet. */
const NARROW_EDGE = 10;

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

/** Width and height of paper in millimetres. */
export const pageSize = (paper: Paper, turn: Turn): [number, number] => {
  const [w, h] = SIZES[paper];
  return turn === 'portrait' ? [w, h] : [h, w];
};

type Sized = Pick<Options, 'kind' | 'paper' | 'turn' | 'size' | 'booklet'>;

/** Whether two pages stand on a side of paper. */
export const inHalves = ({ kind, booklet }: Sized) => kind === 'booklet' && booklet.lay !== 'one';

/** How paper is turned; the pages of a booklet stand upright. */
export const turnOf = (o: Sized): Turn =>
  o.kind !== 'booklet' ? o.turn : inHalves(o) ? 'landscape' : 'portrait';

/** Width and height in millimetres of what goes into the printer. */
export const paperSize = (o: Sized) => pageSize(o.paper, turnOf(o));

/** Width and height of a page in millimetres. */
export function leafSize(o: Sized): [number, number] {
  const [w, h] = paperSize(o);
  return inHalves(o) ? [w / 2, h] : [w, h];
}

/** Margin of a page, in millimetres. */
export const edgeOf = (o: Sized) => (inHalves(o) ? NARROW_EDGE : EDGE);

/** Width and height of what stands between the margins above the foot, in millimetres. */
export function roomOf(o: Sized): [number, number] {
  const [w, h] = leafSize(o);
  return [w - 2 * edgeOf(o), h - 2 * edgeOf(o) - FOOT];
}

/** The measures of a page for letters of size points. */
export function geometry(
  o: Sized,
  size = o.kind === 'booklet' ? o.booklet.size : o.size,
): Geometry {
  const [w, h] = leafSize(o);
  const [wide, high] = roomOf(o);
  const em = size * PT;
  return {
    width: w * MM,
    height: h * MM,
    em,
    line: (wide - NUMBERS) * MM,
    pitch: PITCH * em,
    room: high * MM,
  };
}

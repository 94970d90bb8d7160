// Which pages stand side by side on paper. A booklet of the text is bound at the right, as a mushaf
// is: page 1 is its front, and the page after one on the right is on the left of it.
import type { Lay } from './booklet.ts';

/** How many pages a sheet of paper has on its two sides together, or on its only one. */
const AT_ONCE: Record<Lay, number> = { one: 1, two: 2, fold: 4 };

/** The number of pages filled up so that no half of a sheet is left over. */
export const filled = (pages: number, lay: Lay) => Math.ceil(pages / AT_ONCE[lay]) * AT_ONCE[lay];

/**
 * The sides of paper in the order of printing, each with its pages, numbered from 1, from left to
 * right. pages must be filled.
 *
 * Sheets that are folded lie in each other: the outermost has the first two pages and the last two,
 * the front page at the left and its back at the right of the other side, because paper that is
 * turned on its short edge has there what was at the left.
 */
export function sides(pages: number, lay: Lay): number[][] {
  if (lay === 'one') return Array.from({ length: pages }, (_, i) => [i + 1]);
  return Array.from({ length: pages / 2 }, (_, i) => {
    if (lay === 'two') return [2 * i + 2, 2 * i + 1];
    const front = i + 1;
    const back = pages - i;
    return i % 2 ? [back, front] : [front, back];
  });
}

// How the rules of a card are shared among its quarters: four on each side of a sheet.
import { EDGE, FOOT, pageSize } from './geometry.ts';
import type { Options } from './options.ts';

/** Least height of a rule, in millimetres, unless there are more than two sides hold. */
const LEAST = 23;

/** Greatest height of a rule, in millimetres. */
const MOST = 32;

/** Height of the card's title, in millimetres. */
const TITLE = 9;

/** Rules in a quarter, and the height of each in millimetres. */
export interface Share {
  per: number;
  height: number;
}

/** At most eight quarters are filled, the two sides of one sheet. */
export function share(n: number, o: Options): Share {
  const room = pageSize(o.paper, o.turn)[1] / 2 - EDGE - FOOT - TITLE;
  const fit = Math.floor(room / LEAST);
  const per = n <= 4 * fit ? Math.max(1, Math.ceil(n / 4)) : Math.max(fit, Math.ceil(n / 8));
  return { per, height: Math.min(MOST, room / per) };
}

/** The items by side and quarter, as evenly as can be. */
export function quarters<T>(items: T[], per: number): T[][][] {
  const sides = Math.max(1, Math.ceil(items.length / (4 * per)));
  const first = (q: number) => before(items.length, 4 * sides, q);
  return Array.from({ length: sides }, (_, side) =>
    [0, 1, 2, 3].map((q) => items.slice(first(4 * side + q), first(4 * side + q + 1))),
  );
}

/** How many of n items come before a quarter, counted from 0. */
const before = (n: number, quarters: number, quarter: number) =>
  Math.floor(n / quarters) * quarter + Math.min(quarter, n % quarters);

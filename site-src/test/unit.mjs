// Three lessons of four rules, and sessions with them.
import { Alone } from '../node_modules/.out/app/plan/ready.js';

export const unit = (rules, needs = []) => ({ id: '', name: '', ar: '', family: '', rules, needs });
export const units = [unit([0]), unit([1, 2]), unit([3])];
export const FEW = [false, false, false, false];
/**
 * A session in whose lines the given rules have a place; rule is the one that is marked, also are
 * others, each with its places found and missed.
 */
export const session = (
  day,
  rule,
  { found = 0, missed = 0, also = [], help = Alone, read = [rule] } = {},
) => ({
  day,
  marked: [
    ...(rule < 0 ? [] : [{ rule, found, missed }]),
    ...also.map(([rule, found, missed]) => ({ rule, found, missed })),
  ],
  help,
  places: FEW.map((_, r) => Number(read.includes(r))),
});
export const read = (day, ...rules) => session(day, -1, { read: rules });

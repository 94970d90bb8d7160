// Three lessons of four rules, and sessions with them.
import { Alone } from '../node_modules/.out/app/plan/ready.js';

export const unit = (rules, needs = []) => ({ id: '', name: '', ar: '', family: '', rules, needs });
export const units = [unit([0]), unit([1, 2]), unit([3])];
export const FEW = [false, false, false, false];
/** A session in whose lines the given rules have a place; rule is the one that is marked. */
export const session = (
  day,
  rule,
  { found = 0, missed = 0, help = Alone, read = [rule] } = {},
) => ({
  day,
  rule,
  found,
  missed,
  help,
  places: FEW.map((_, r) => Number(read.includes(r))),
});
export const read = (day, ...rules) => session(day, -1, { read: rules });

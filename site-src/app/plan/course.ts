// What is the same for every child: all lessons over the text.
import type { Catalogue } from '../types.ts';
import { all } from './candidates.ts';
import type { Phrases } from './phrases.ts';
import { rare } from './ready.ts';
import { MAX, MIN } from './score.ts';
import { type Unit, units } from './units.ts';

/** All lessons over the text: what is the same for every child. */
export interface Course {
  x: Phrases;
  c: Catalogue;
  units: Unit[];
  rare: boolean[];
}

export function course(x: Phrases, c: Catalogue): Course {
  all(x, 0, x.n - 1, MIN, MAX); // what the first ranking asks for
  return { x, c, units: units(c), rare: rare(x.places(0, x.of.length - 2)) };
}

// What is the same for every child: all lessons over the text.
import type { Catalogue } from '../types.ts';
import type { Phrases } from './phrases.ts';
import { rare } from './ready.ts';
import { type Unit, units } from './units.ts';

/** All lessons over the text: what is the same for every child. */
export interface Course {
  x: Phrases;
  c: Catalogue;
  units: Unit[];
  rare: boolean[];
}

export function course(x: Phrases, c: Catalogue): Course {
  return { x, c, units: units(c), rare: rare(x.places(0, x.of.length - 2)) };
}

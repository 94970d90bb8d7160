// What is the same for every child: all lessons over the text.
import type { Catalogue } from '../types.ts';
import type { Phrases } from './phrases.ts';
import { rare } from './ready.ts';
import { ENOUGH } from './score.ts';
import { type Unit, units } from './units.ts';

/** All lessons over the text: what is the same for every child. */
export interface Course {
  x: Phrases;
  c: Catalogue;
  units: Unit[];
  rare: boolean[];
}

export function course(x: Phrases, c: Catalogue): Course {
  return { x, c, units: units(c), rare: rare(x.counts.map((_, r) => x.upTo(r, ENOUGH))) };
}

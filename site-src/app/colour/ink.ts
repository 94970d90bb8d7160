// How a rule family is drawn: its pencil's colour and the shape under its letters.
import { sample } from '../marking/pieces.ts';
import type { Sign } from '../marking/signs.ts';
import { familyLook, type Look } from '../marking/spans.ts';
import * as state from '../state.ts';

/** The style that gives an element, and what is below it, a family's pencil. */
export const pencil = (family: string) => `--pencil:var(--c-${family})`;

const sign = (family: string): Sign =>
  state.get().catalogue.families.find((f) => f.id === family)?.form ?? 'solid';

/** How the letters of a family are marked. */
export const look = (family: string): Look => familyLook(family, sign(family));

/** A stroke of a family's pencil, to stand before a rule's name. */
export const swatch = (family: string): SVGElement => sample(sign(family), `var(--c-${family})`);

// How the letters of a rule family are marked: the colour of its pencil, and its shape.
import type { Sign } from '../marking/signs.ts';
import { familyLook, type Look } from '../marking/spans.ts';
import * as state from '../state.ts';

const sign = (family: string): Sign =>
  state.get().catalogue.families.find((f) => f.id === family)?.form ?? 'solid';

/** How the letters of a family are marked; key is that of the pencil. */
export const look = (family: string, key?: string): Look => ({
  ...familyLook(family, sign(family)),
  ...(key && { key }),
});

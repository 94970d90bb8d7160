// A stroke along the letters of one word. It marks them, or takes their marks away, when the finger
// lifts; until then the lines show what it will do.
import type { Place } from '../types.ts';
import { finding, get, markAll, marked, set } from './practice.ts';

/** Begins a stroke at a letter: a marked one begins to take marks away. False where none may. */
export function begin(at: Place): boolean {
  const p = get();
  if (!p || !finding(p)) return false;
  set({ stroke: { letters: [at], on: !marked(p, at) } });
  return true;
}

/** Passes a letter of the same word; back over one, the letters after it are left out again. */
export function pass(at: Place) {
  const stroke = get()?.stroke;
  const first = stroke?.letters[0];
  if (!first || first.v !== at.v || first.w !== at.w) return;
  const passed = stroke.letters.findIndex((x) => x.l === at.l);
  if (passed === stroke.letters.length - 1) return;
  const letters = passed < 0 ? [...stroke.letters, at] : stroke.letters.slice(0, passed + 1);
  set({ stroke: { ...stroke, letters } });
}

/** Does as shown, in one step of the history; false for a stroke of one letter, which is a tap. */
export function lift(): boolean {
  const stroke = get()?.stroke;
  drop();
  if (!stroke || stroke.letters.length < 2) return false;
  markAll(stroke.letters, stroke.on);
  return true;
}

/** Leaves everything as it was. */
export function drop() {
  if (get()?.stroke) set({ stroke: undefined });
}

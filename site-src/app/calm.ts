// What comes by itself, such as the worker's messages, waits while a finger is down: a control that is drawn again between
// press and release would lose its click.
let down = 0, held: (() => void)[] = [];

const press = () => { down++; };
const release = () => setTimeout(() => {
  if (down > 0 && --down) return;
  const now = held;
  held = [];
  for (const f of now) f();
}, 80); // the click of a touch comes a moment after the finger has left

addEventListener('pointerdown', press, true);
addEventListener('pointerup', release, true);
addEventListener('pointercancel', release, true);

/** Runs f now, or when no finger or button is down any more. */
export function whenCalm(f: () => void): void {
  if (down) held.push(f);
  else f();
}

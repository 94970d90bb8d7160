// A control that is drawn again between press and release would lose its click, and a slider the
// finger on it. So what draws controls waits while a finger or a button is down, until its click
// has been heard; so does what comes late and would move a control from under the finger.
const pressed = new Map<number, number>(); // by pointer, the number of its press
let presses = 0,
  held = new Set<() => void>();

function up(pointer: number) {
  pressed.delete(pointer);
  if (pressed.size) return;
  const now = held;
  held = new Set();
  for (const f of now) f();
}

function release(e: PointerEvent) {
  const press = pressed.get(e.pointerId);
  // Not every press ends in a click. That of a finger comes later than that of a mouse, in Firefox
  // and on a busy phone.
  setTimeout(
    () => {
      if (pressed.get(e.pointerId) === press) up(e.pointerId);
    },
    e.pointerType === 'touch' ? 300 : 80,
  );
}

addEventListener(
  'pointerdown',
  (e) => {
    pressed.set(e.pointerId, ++presses);
  },
  true,
);
// after all that listen for it themselves
addEventListener('click', (e) => up((e as PointerEvent).pointerId));
addEventListener('pointerup', release, true);
addEventListener('pointercancel', release, true);

/**
 * Runs f now, or when no finger or button is down any more; once, however often it was asked for.
 */
export function whenCalm(f: () => void): void {
  if (pressed.size) held.add(f);
  else f();
}

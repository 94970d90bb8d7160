// Whether something comes from a finger, a pen or a mouse. The pseudo-class :focus-visible does not
// tell: nothing matches it in a window that is not active, as where WebKit is automated.

/** How long (ms) after a press what follows belongs to it. */
const OWN = 1000;

let at = -Infinity;

for (const kind of ['pointerdown', 'pointerup'])
  addEventListener(kind, (e) => (at = e.timeStamp), true);

export const pressed = (e: Event) => e.timeStamp - at < OWN;

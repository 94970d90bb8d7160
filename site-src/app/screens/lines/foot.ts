// The row at the foot of a short screen, which is pushed sideways under the button at its end.
import { afterFrame } from '../../idle.ts';
import { pressed } from '../../pressed.ts';

/** Pixels to the edge, and to the button. */
const GAP = 10;

/** Brings what the keyboard comes to out from under the button; where a finger is, nothing moves. */
export function fromUnder(event: Event) {
  const e = event.target as HTMLElement;
  const bar = e.closest('.bar');
  const main = bar?.querySelector('.main');
  if (!bar || !main || e === main || pressed(event)) return;
  // After the browser's own scrolling.
  afterFrame(() => {
    const at = e.getBoundingClientRect();
    const room = at.left - bar.getBoundingClientRect().left - GAP;
    const over = at.right + GAP - main.getBoundingClientRect().left;
    bar.scrollLeft += room < 0 ? room : Math.max(0, Math.min(over, room));
  });
}

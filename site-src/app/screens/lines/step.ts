// Steps of a session. A new one begins at its head: the eye and the focus go to the task line.
import { scrolling } from '../../motion.ts';
import * as practice from '../../practice/practice.ts';
import type { Phase } from '../../types.ts';

/** Brings the head of the step into view, once it is drawn. */
export const toHead = () =>
  requestAnimationFrame(() => {
    const task = document.querySelector<HTMLElement>('[data-t=task]');
    if (!task) return;
    scrollTo({ top: 0, behavior: scrolling() });
    task.focus({ preventScroll: true });
  });

/** Goes on to the next step. */
export function advance() {
  practice.advance();
  toHead();
}

export function goTo(phase: Phase) {
  practice.setPhase(phase);
  toHead();
}

// Steps of a session. A new one begins at its head: the eye and the focus go to the task line.
import { scrolling } from '../../motion.ts';
import * as practice from '../../practice/practice.ts';
import * as steps from '../../practice/steps.ts';

/** Brings the head of the step into view, once it is drawn. */
export const toHead = () =>
  requestAnimationFrame(() => {
    const task = document.querySelector<HTMLElement>('[data-t=task]');
    if (!task) return;
    scrollTo({ top: 0, behavior: scrolling() });
    task.focus({ preventScroll: true });
  });

const stepping = (step: () => void) => () => {
  step();
  toHead();
};

/** Goes on to the next step. */
export const advance = stepping(steps.advance);

/** Goes back to marking. */
export const lookAgain = stepping(steps.lookAgain);

/** The lines were marked on paper. */
export const onPaper = stepping(steps.onPaper);

/** Goes back one step. */
export const back = stepping(() => {
  const p = practice.get();
  const to = p && steps.before(p);
  if (to === 'find') steps.lookAgain();
  else if (to) practice.setPhase(to);
});

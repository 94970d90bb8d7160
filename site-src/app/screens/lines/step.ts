// Steps of a session. A new one begins at its head: the eye and the focus go to the task line.
import { t } from '../../i18n.ts';
import { scrolling } from '../../motion.ts';
import * as practice from '../../practice/practice.ts';
import * as steps from '../../practice/steps.ts';
import { summary } from './answer.ts';
import { say } from './say.ts';

/** Brings the head of the step into view, once it is drawn. */
export const toHead = () =>
  requestAnimationFrame(() => {
    const task = document.querySelector<HTMLElement>('[data-t=task]');
    if (!task) return;
    document.querySelector('.bar')?.scrollTo({ left: 0 });
    scrollTo({ top: 0, behavior: scrolling() });
    task.focus({ preventScroll: true });
  });

/** Begins the step that is in hand: says which, and after the check how much was found. */
const stepping = (step: () => void) => () => {
  step();
  const p = practice.get();
  if (!p) return;
  const { phase } = p.draft;
  const words = t('say.step', { step: t(`say.step-${phase}`) });
  say(phase === 'check' ? `${words} ${summary(p)}` : words);
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

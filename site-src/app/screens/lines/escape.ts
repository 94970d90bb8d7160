// Escape on the lines closes what is open, the last first, and the keyboard goes back to what opened
// it. The enlarged word is a dialog, which does so by itself.
import * as practice from '../../practice/practice.ts';
import { closeLetter } from './letter.ts';
import { closeMenu } from './menu.ts';

/** Whether something was closed. */
export const escape = () =>
  !document.querySelector('dialog[open]') && (closeMenu() || closeLetter() || closeBelow());

/** The adult's help or the pencil case, of which one is open at a time. */
function closeBelow(): boolean {
  const p = practice.get();
  if (!p?.drawer && !p?.case) return false;
  practice.set({ drawer: false, case: false });
  const opener = p.drawer ? '[data-t=drawer]' : '[data-t=case]';
  document.querySelector<HTMLElement>(opener)?.focus({ preventScroll: true });
  return true;
}

// Where the keyboard goes on when what it is on is taken away. It must not fall to the page: the
// next Tab would then begin at the very top, and a screen reader would say nothing.

const usable = (e: Element | null | undefined): e is HTMLElement =>
  e instanceof HTMLElement &&
  e !== document.body &&
  e.isConnected &&
  !e.matches(':disabled') &&
  !e.closest('[hidden]');

/** The same control in the rows after and before that of a control, also in the lists beside. */
function beside(e: Element): (HTMLElement | undefined)[] {
  const name = e.getAttribute('data-t');
  if (!name || !e.closest('li')) return [];
  const all = [...document.querySelectorAll<HTMLElement>(`li [data-t="${name}"]`)];
  const at = all.indexOf(e as HTMLElement);
  return [all[at + 1], all[at - 1]];
}

/** The head of what is shown: the task of the lines, or the heading. */
const head = () =>
  document.querySelector<HTMLElement>('.screen .task') ??
  document.querySelector<HTMLElement>('.screen h1');

/** The notice that is shown, and what the keyboard was on when it came. */
let notice: Element | null = null;
let before: Element | null = null;

function follow() {
  const now = document.querySelector('.notice');
  if (now === notice) return;
  notice = now;
  before = document.activeElement;
}

/**
 * Draws. If that takes away what the keyboard is on, the keyboard goes to what the element names in
 * data-next, to the row beside, from a notice back to where it was, or else to the head.
 */
export function keepFocus(draw: () => void) {
  const held = document.activeElement;
  const rows = held ? beside(held) : [];
  draw();
  if (held && held !== document.body && !usable(document.activeElement)) {
    const next = held.getAttribute('data-next');
    const to = [
      held, // a row that was moved
      next ? document.querySelector(next) : null,
      ...rows,
      held.closest('.notice') ? before : null,
      head(),
    ].find(usable);
    to?.focus({ preventScroll: true });
  }
  follow();
}

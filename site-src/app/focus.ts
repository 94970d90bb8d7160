// Where the keyboard goes on when what it is on is taken away. It must not fall to the page: the
// next Tab would then begin at the very top, and a screen reader would say nothing.

const usable = (e: Element | null | undefined): e is HTMLElement =>
  e instanceof HTMLElement &&
  e !== document.body &&
  e.isConnected &&
  !e.matches(':disabled') &&
  !e.closest('[hidden]');

/** The same control in the rows before and after that of a control in a list. */
function beside(e: Element): (HTMLElement | null | undefined)[] {
  const row = e.closest('li');
  const name = e.getAttribute('data-t');
  if (!row || !name) return [];
  return [row.nextElementSibling, row.previousElementSibling].map((r) =>
    r?.querySelector<HTMLElement>(`[data-t="${name}"]`),
  );
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

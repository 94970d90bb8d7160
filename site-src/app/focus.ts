// Where the keyboard goes on when what it is on is taken away. It must not fall to the page: the
// next Tab would then begin at the very top, and a screen reader would say nothing.

/** What the keyboard was on last outside the notice. */
let before: HTMLElement | undefined;

document.addEventListener('focusin', ({ target }) => {
  if (target instanceof HTMLElement && !target.closest('.said')) before = target;
});

const usable = (e: Element | null | undefined): e is HTMLElement =>
  e instanceof HTMLElement && e.isConnected && !e.matches(':disabled') && !e.closest('[hidden]');

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

/**
 * Draws. If that takes away what the keyboard is on, the keyboard goes to what the element or one
 * around it names in data-next, to the row beside, from a notice to where it came from, or else to
 * the head.
 */
export function keepFocus(draw: () => void) {
  const held = document.activeElement;
  if (!held || held === document.body) return draw();
  const rows = beside(held);
  draw();
  const now = document.activeElement;
  if (now !== document.body && usable(now)) return;
  const next = held.closest<HTMLElement>('[data-next]')?.dataset.next;
  const to = [
    held, // a row that was moved
    next ? document.querySelector<HTMLElement>(next) : undefined,
    ...rows,
    held.closest('.notice') ? before : undefined,
    head(),
  ].find(usable);
  to?.focus({ preventScroll: true });
}

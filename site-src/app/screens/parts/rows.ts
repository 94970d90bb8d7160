// Rows of a list that can be taken away.

/**
 * Runs what takes away the row of a button; whether it did. A keyboard that was on the button goes
 * on to that of the row beside it.
 */
export async function takeRow(button: HTMLElement, remove: () => Promise<boolean>) {
  const row = button.closest('li');
  const beside = row?.nextElementSibling ?? row?.previousElementSibling;
  const held = button === document.activeElement;
  const done = await remove();
  const next = beside?.querySelector('button') ?? document.querySelector<HTMLElement>('.screen h1');
  if (done && held) next?.focus({ preventScroll: true });
  return done;
}

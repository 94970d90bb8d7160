// Boxes that open and close: dialogs, which draw.ts opens once they are drawn, and lists under a
// button.

/** Closes the dialog that a control is in. */
export const closeDialog = (e: Event) => (e.target as Element).closest('dialog')!.close();

/** Closes a list, with the keyboard on what opens it. */
export function shut(box: HTMLDetailsElement) {
  box.open = false;
  box.querySelector('summary')!.focus({ preventScroll: true });
}

/** A list closes when the keyboard goes elsewhere. */
export function leave(e: FocusEvent) {
  const box = e.currentTarget as HTMLDetailsElement;
  if (e.relatedTarget && !box.contains(e.relatedTarget as Node)) box.open = false;
}

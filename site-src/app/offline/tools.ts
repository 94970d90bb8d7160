// What boot.ts has made ready for a page that cannot go on: Repair, and the record as a file. The
// app takes them over before it puts its own screen in their place.
import { isThere } from '../edition/pages.ts';
import { note } from '../notes.ts';

export const tools = document.getElementById('tools');

const again = document.getElementById('again');

/**
 * Opens the page again at the same place, with all its parts fetched anew, if the host or the
 * worker has it, or a network leads to its sign-in page; else it stays as it is. A part of the
 * script that failed needs this: Firefox (153) never asks for it again in the same page; Chromium
 * (156) and WebKit (2.50) ask again for one that did not come, but not for one that came and does
 * not run.
 */
export const reopen = () =>
  void isThere().then((yes) => {
    if (yes) again ? again.click() : location.reload();
  });

/** The app has started: what boot.ts noted of an attempt before is over. */
export const started = () => note('visit', 'sutur-tried', undefined);

// Sets the theme and the family's own pencils before the page is drawn.
import { noted } from './notes.ts';

/**
 * Holds the colours a family has set in place of the usual ones; colour/pencils.ts writes it.
 * Absent in browsers that cannot make one.
 */
export const own = make();

function make(): CSSStyleSheet | undefined {
  try {
    const sheet = new CSSStyleSheet();
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return sheet;
  } catch {
    return undefined; // the usual colours
  }
}

export function early() {
  const theme = noted('device', 'sutur-theme');
  if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
  own?.replaceSync(noted('device', 'sutur-pencils'));
}

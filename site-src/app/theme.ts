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

/** The colour of the browser's own bars, for the light page and the dark one (pages/parts.html). */
const bars = [...document.querySelectorAll<HTMLMetaElement>('meta[name=theme-color]')];
const papers = bars.map((m) => m.content);

/** The page's own choice goes before the system's, also around the page. */
export function setTheme(theme: string) {
  const chosen = ['light', 'dark'].indexOf(theme);
  const { dataset } = document.documentElement;
  if (chosen < 0) delete dataset.theme;
  else dataset.theme = theme;
  bars.forEach((m, i) => (m.content = papers[chosen < 0 ? i : chosen] ?? ''));
}

export function early() {
  setTheme(noted('device', 'sutur-theme'));
  own?.replaceSync(noted('device', 'sutur-pencils'));
}

// The style sheets that a page names in its head. Chromium and Firefox run the page's script after
// them; WebKit runs a module that comes before them, and what it measured then would stay wrong.

/**
 * Runs once these sheets have come or are known not to: at once where they have, so that a page is
 * not seen without what its script adds.
 */
export function whenStyled(run: () => void): void {
  const sheets = [...document.querySelectorAll<HTMLLinkElement>('link[rel=stylesheet]')];
  const missing = sheets.filter((l) => !l.sheet);
  if (!missing.length || document.readyState === 'complete') return run();
  const over = (l: EventTarget, event: string) =>
    new Promise((ok) => l.addEventListener(event, ok, { once: true }));
  const all = missing.map((l) => Promise.race([over(l, 'load'), over(l, 'error')]));
  // One that had failed before says nothing any more; the page's own load comes after all of them.
  void Promise.race([Promise.all(all), over(window, 'load')]).then(run);
}

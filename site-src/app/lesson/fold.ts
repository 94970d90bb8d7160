// What follows the first minute of a lesson is folded; the page comes with all of it open, for
// paper and for browsers without a script.

/** Folds every part but the one that the address names, and opens all while the page is printed. */
export function fold(): void {
  const folds = [...document.querySelectorAll<HTMLDetailsElement>('.part, .check details')];
  for (const d of folds) d.open = false;
  reveal(location.hash);
  addEventListener('hashchange', () => reveal(location.hash));
  // The address does not change where the part that it names has been folded again.
  document.addEventListener('click', (e) => {
    const a = (e.target as Element).closest?.('a');
    if (a?.getAttribute('href')?.startsWith('#')) reveal(a.hash);
  });
  print(folds);
}

/** Opens all that stands around the place. */
function reveal(hash: string) {
  const at = /^#[\w-]+$/.test(hash) && document.getElementById(hash.slice(1));
  if (!at) return;
  let d = at.closest('details');
  if (!d) return;
  for (; d; d = d.parentElement?.closest('details') ?? null) d.open = true;
  at.scrollIntoView();
}

/** Runs f, which measures el, as if nothing around it were folded: folded, it has no size. */
export function unfolded(el: Element, f: () => void): void {
  const shut: HTMLDetailsElement[] = [];
  for (let d = el.closest('details'); d; d = d.parentElement?.closest('details') ?? null)
    if (!d.open) shut.push(d);
  for (const d of shut) d.open = true;
  f();
  for (const d of shut) d.open = false;
}

function print(folds: HTMLDetailsElement[]) {
  let shut: HTMLDetailsElement[] = [];
  addEventListener('beforeprint', () => {
    shut = [...shut, ...folds.filter((d) => !d.open)];
    for (const d of shut) d.open = true;
  });
  addEventListener('afterprint', () => {
    for (const d of shut) d.open = false;
    shut = [];
  });
}

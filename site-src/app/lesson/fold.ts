// What follows the first minute of a lesson is folded; the page comes with all of it open, for
// paper and for browsers without a script.

/** Folds every part but the one that the address names, and opens all while the page is printed. */
export function fold(page: ParentNode, at: string, left?: AbortSignal): void {
  const folds = [...page.querySelectorAll<HTMLDetailsElement>('.part, .check details')];
  const signal = left && { signal: left };
  for (const d of folds) d.open = false;
  reveal(at);
  addEventListener('hashchange', () => reveal(location.hash), signal);
  // The address does not change where the part that it names has been folded again.
  const click = (e: Event) => {
    const a = (e.target as Element).closest?.('a');
    if (a?.getAttribute('href')?.startsWith('#')) reveal(a.hash);
  };
  document.addEventListener('click', click, signal);
  print(folds, signal);
}

/** Shows the place, with all open that stands around it. */
export function reveal(hash: string) {
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

function print(folds: HTMLDetailsElement[], signal?: { signal: AbortSignal }) {
  let shut: HTMLDetailsElement[] = [];
  const before = () => {
    shut = [...shut, ...folds.filter((d) => !d.open)];
    for (const d of shut) d.open = true;
  };
  const after = () => {
    for (const d of shut) d.open = false;
    shut = [];
  };
  addEventListener('beforeprint', before, signal);
  addEventListener('afterprint', after, signal);
}

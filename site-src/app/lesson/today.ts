// The app's link to a lesson carries the address of the lines after its #. Then the first links
// lead back to these lines.
export function today(page: ParentNode, lines: string): void {
  if (!/^#\/lines\?[\w=:&-]+$/.test(lines)) return;
  const links = page.querySelectorAll<HTMLAnchorElement>('.back a, .on a, .try-today a');
  const [first] = links;
  if (!first) return;
  const to = new URL(first.href);
  to.hash = lines;
  for (const a of links) a.href = to.href;
  const on = page.querySelector('.on a');
  if (on) on.textContent = first.textContent;
  page.querySelectorAll<HTMLElement>('.back, .try-today').forEach((p) => (p.hidden = false));
  page.querySelector('.onward a')?.classList.remove('main');
  offer(page, new URLSearchParams(lines.slice(lines.indexOf('?'))));
}

/** Names today's lines where lines are offered, and puts them first where they are among them. */
function offer(page: ParentNode, lines: URLSearchParams) {
  const from = lines.get('from') ?? '';
  const to = lines.get('to') ?? from;
  const name = page.querySelector('.today-lines');
  if (name) name.textContent = range(from, to);
  for (const a of page.querySelectorAll<HTMLAnchorElement>('.try-lines a')) {
    const at = new URLSearchParams(a.hash.slice(a.hash.indexOf('?')));
    const figure = a.closest('figure');
    if (figure && at.get('from') === from && at.get('to') === to)
      figure.parentElement?.prepend(figure);
  }
}

/** Such as 110:1–3, or 110:1–111:2. */
function range(from: string, to: string): string {
  if (from === to) return from;
  const [s, a] = to.split(':');
  return `${from}–${from.startsWith(`${s}:`) ? a : to}`;
}

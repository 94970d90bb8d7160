// Examples stand in a row that scrolls sideways, one at a time. Keys and two buttons turn them; a
// finger needs neither.
import { scrolling } from '../motion.ts';

export function cards(page: ParentNode): void {
  page.querySelectorAll<HTMLElement>('.verses').forEach(turnable);
}

function turnable(row: HTMLElement) {
  const all = [...row.querySelectorAll<HTMLElement>('figure')];
  if (all.length < 2) return;
  const go = (i: number) =>
    row.scrollTo({ left: all[clamp(i)]!.offsetLeft - all[0]!.offsetLeft, behavior: scrolling() });
  const clamp = (i: number) => Math.min(all.length - 1, Math.max(0, i));
  row.addEventListener('keydown', (e) => {
    if (e.target !== row || e.altKey || e.ctrlKey || e.metaKey) return;
    const keys: Record<string, number> = {
      ArrowRight: now(row, all) + 1,
      ArrowLeft: now(row, all) - 1,
      Home: 0,
      End: all.length - 1,
    };
    const to = keys[e.key];
    if (to === undefined) return;
    e.preventDefault();
    go(to);
  });
  buttons(row, all, go);
}

/** The words of the two buttons stand in the page. */
function buttons(row: HTMLElement, all: HTMLElement[], go: (i: number) => void) {
  const from = document.querySelector<HTMLTemplateElement>('#turn-cards');
  if (!from) return;
  const box = from.content.cloneNode(true) as DocumentFragment;
  const both = [...box.querySelectorAll('button')];
  const mark = () => {
    const i = now(row, all);
    for (const b of both) {
      const at = i + Number(b.dataset.step);
      // Not disabled: the button that was pressed keeps the focus.
      b.ariaDisabled = String(at < 0 || at >= all.length);
    }
  };
  for (const b of both)
    b.addEventListener('click', () => go(now(row, all) + Number(b.dataset.step)));
  row.addEventListener('scroll', mark, { passive: true });
  row.after(box);
  mark();
}

/** The card that stands first in view; the last one at the end of the way. */
function now(row: HTMLElement, all: HTMLElement[]): number {
  const way = row.scrollWidth - row.clientWidth;
  if (way > 0 && row.scrollLeft >= way - 1) return all.length - 1;
  const off = all.map((f) => Math.abs(f.offsetLeft - all[0]!.offsetLeft - row.scrollLeft));
  return off.indexOf(Math.min(...off));
}

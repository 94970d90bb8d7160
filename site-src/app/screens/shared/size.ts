// How large the letters are: as the window makes them, and by some steps more or less.
import { get, set } from './board.ts';

/** How much larger one step is, and how many there are to each side. */
const STEP = 1.15;
const MOST = 6;

export const sizeOf = (step: number) => `--step:${(STEP ** step).toFixed(3)}`;

/** Makes the letters larger or smaller; the first word in sight stays so. */
export function larger(by: 1 | -1) {
  const b = get();
  if (!b) return;
  const step = Math.min(Math.max(b.step + by, -MOST), MOST);
  if (step === b.step) return;
  const words = [...document.querySelectorAll<HTMLElement>('[data-t=passage] .w')];
  const first = words.find((w) => w.getBoundingClientRect().top >= 0);
  const up = first?.getBoundingClientRect().top ?? 0;
  set({ step });
  // After the drawing.
  queueMicrotask(() => {
    if (first && scrollY)
      scrollBy({ top: first.getBoundingClientRect().top - up, behavior: 'instant' });
  });
}

// Makes what stands on a page smaller until it has its place, whatever font the device reads with.
// The style sheets take the sizes of letters times --fit; the places themselves, and what is
// written on by hand, keep their measures.

/** The least that letters are made, of their full size. */
const LEAST = 0.5;
/** How much smaller at a time. */
const STEP = 0.03;

/**
 * Some fonts' letters have boxes higher than a line, of which nothing is seen; a line too many is
 * more than this, in letter sizes.
 */
const OVERHANG = 0.5;

/** Whether a box holds more than it has room for: a child stands out of it, or its own words do. */
function spills(box: Element): boolean {
  const r = box.getBoundingClientRect();
  const over = OVERHANG * parseFloat(getComputedStyle(box).fontSize);
  return (
    box.scrollWidth > box.clientWidth + 1 ||
    box.scrollHeight > box.clientHeight + over ||
    [...box.children].some((el) => {
      const k = el.getBoundingClientRect();
      return (
        k.left < r.left - 1 || k.right > r.right + 1 || k.top < r.top - 1 || k.bottom > r.bottom + 1
      );
    })
  );
}

/**
 * Gives els one --fit, the largest with which nothing runs out of boxes, and returns it. They must
 * be on the page, in full size.
 */
export function fit(els: HTMLElement[], boxes: Iterable<Element>): number {
  const all = [...boxes];
  let fit = 1;
  for (let k = 1; k >= LEAST; k -= STEP) {
    fit = k;
    for (const el of els) el.style.setProperty('--fit', k.toFixed(2));
    if (!all.some(spills)) break;
  }
  return fit;
}

/** The boxes below root that a selector names. */
export const boxes = (root: Element, selector: string) => [
  ...root.querySelectorAll<HTMLElement>(selector),
];

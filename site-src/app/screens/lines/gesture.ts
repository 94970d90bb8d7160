// A finger, pen or mouse on the lines: a tap, a stroke along a word, or a word held for a moment.
import type { Place } from '../../types.ts';
import type { Sheet } from '../../marking/sheet.ts';

export interface Hands {
  tap: (p: Place) => void;
  /** The first letter of a stroke, then each letter it passes. */
  stroke: (p: Place, first: boolean) => void;
  hold: (v: number, w: number) => void;
}

const HOLD = 450; // milliseconds
const SLOP = 8; // pixels a resting finger moves
const STEP = 5; // pixels between the points of a stroke that are looked at

export function watch(el: HTMLElement, sheet: Sheet, on: Hands) {
  let id = -1,
    x = 0,
    y = 0,
    timer = 0,
    moving = false,
    touched = 0;
  const end = () => {
    clearTimeout(timer);
    id = -1;
  };

  el.addEventListener('pointerdown', (e) => {
    if (e.button !== 0 || id >= 0 || (e.target as Element).closest('button')) return;
    ({ pointerId: id, clientX: x, clientY: y } = e);
    moving = false;
    timer = window.setTimeout(() => {
      const p = sheet.hit(x, y);
      end();
      if (p) on.hold(p.v, p.w);
    }, HOLD);
  });

  el.addEventListener('pointermove', (e) => {
    if (e.pointerId !== id) return;
    const far = Math.hypot(e.clientX - x, e.clientY - y);
    if (!moving) {
      if (far < SLOP) return;
      clearTimeout(timer);
      // Up or down is the page's: the finger scrolls, also where there is nothing to scroll.
      if (e.pointerType === 'touch' && Math.abs(e.clientY - y) > Math.abs(e.clientX - x)) {
        end();
        return;
      }
      moving = true;
      el.setPointerCapture(id);
      const p = sheet.hit(x, y);
      if (p) on.stroke(p, true);
    }
    for (let i = 1, n = Math.ceil(far / STEP); i <= n; i++) {
      const p = sheet.hit(x + ((e.clientX - x) * i) / n, y + ((e.clientY - y) * i) / n);
      if (p) on.stroke(p, false);
    }
    x = e.clientX;
    y = e.clientY;
  });

  el.addEventListener('pointerup', (e) => {
    if (e.pointerId !== id) return;
    end();
    touched = e.timeStamp;
    const p = moving ? undefined : sheet.hit(e.clientX, e.clientY);
    if (p) on.tap(p);
  });
  el.addEventListener('pointercancel', end); // the page scrolls

  // A screen reader's own tap comes as a click without a pointer: open the word, where every letter
  // is a control.
  el.addEventListener('click', (e) => {
    if (e.detail !== 0 || e.timeStamp - touched <= 1000 || (e.target as Element).closest('button'))
      return;
    const w = (e.target as Element).closest<HTMLElement>('.w');
    const p = w
      ? { v: Number(w.dataset.v), w: Number(w.dataset.w) }
      : sheet.hit(e.clientX, e.clientY);
    if (p) on.hold(p.v, p.w);
  });
  // The text can be selected, because WebKit colours none that cannot: a stroke or a double tap
  // must not.
  el.addEventListener('selectstart', (e) => e.preventDefault());
  el.addEventListener('contextmenu', (e) => {
    if ((e as PointerEvent).pointerType !== 'mouse') e.preventDefault();
  });
}

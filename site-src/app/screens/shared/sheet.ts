// The sheet of the shared screen at work: it is painted and drawn over after each drawing of the
// page, and follows pens, fingers and keys.
import { html, nothing, render } from 'lit-html';
import type { Spot } from '../../marking/snap.ts';
import { paint, unpaint } from '../../painting/paint.ts';
import { Sheet } from '../../painting/sheet.ts';
import type { Verse } from '../../types.ts';
import { actsOn } from './acts.ts';
import { type Board, get } from './board.ts';
import { watch } from './hand.ts';
import { spansOf } from './key.ts';
import { followKeys } from './keys.ts';
import { numbersRow } from './numbers.ts';
import { type Ground, ringOf, shapes } from './shapes.ts';

/** shown is which pencils' places are painted. */
interface Laid {
  el: HTMLElement;
  verses: Verse[];
  sheet: Sheet;
  shown?: string[];
}

let laid: Laid | undefined;
let resized: ResizeObserver | undefined;

/** After each drawing of the page. */
export function sheetDrawn() {
  const b = get();
  const el = document.querySelector<HTMLElement>('[data-t=passage]');
  if (!b || !el) return;
  if (laid?.el !== el || laid.verses !== b.verses) laid = lay(el, b);
  const { sheet, shown } = laid;
  if (shown !== b.shown) paint(sheet, el, spansOf(b));
  laid.shown = b.shown;
  drawOver(b, el, sheet);
}

/** The lines were laid anew, or in another font. */
function relaid() {
  if (!laid) return;
  fit(laid.el, laid.sheet);
  delete laid.shown;
  sheetDrawn();
}

/** Begins to follow lines that were drawn for the first time. */
function lay(el: HTMLElement, b: Board): Laid {
  const sheet = Sheet.of(el, b.verses);
  fit(el, sheet);
  watch(
    el,
    actsOn(() => groundOf(el, sheet)),
  );
  followKeys(el, sheet);
  sheet.whenFont(el.textContent, relaid);
  resized?.disconnect();
  resized = new ResizeObserver(relaid);
  resized.observe(el);
  return { el, verses: b.verses, sheet };
}

/** Says how wide the widest word is, so that it fits the width. */
function fit(el: HTMLElement, { shown }: Sheet) {
  const widest = Math.max(...shown.map((s) => s.el.offsetWidth)) / Sheet.em(shown[0]!);
  el.style.setProperty('--widest', widest.toFixed(2));
}

function drawOver(b: Board, el: HTMLElement, sheet: Sheet) {
  const g = groundOf(el, sheet);
  const marks = el.querySelector<HTMLElement>('.drawing > g')!;
  render(shapes(g, b.drawing.drawn), marks);
  const layer = el.querySelector<HTMLElement>('.layer')!;
  render([caret(b, g), numbersRow(b, g, el.clientWidth)], layer);
}

/** The place of the keyboard. */
function caret(b: Board, g: Ground) {
  const r = b.caret && ringOf(g, b.caret);
  if (!r) return nothing;
  const [x, y] = [r.cx - r.rx, r.cy - r.ry];
  const style = `left:${x}px;top:${y}px;width:${2 * r.rx}px;height:${2 * r.ry}px`;
  return html`<span class="caret" .style=${style}></span>`;
}

/** The sheet as it is on screen now; words are measured when that is first asked for. */
function groundOf(el: HTMLElement, sheet: Sheet): Ground {
  const { left: x, top: y } = el.getBoundingClientRect();
  let found: Map<string, Spot> | undefined;
  const all = () => (found ??= measured(sheet, x, y));
  return {
    sheet,
    origin: { x, y },
    get spots() {
      return [...all().values()];
    },
    spot: ({ v, w }) => all().get(`${v}.${w}`),
  };
}

/** Words have one size, and their baselines one height in their boxes. */
function measured({ shown }: Sheet, x: number, y: number): Map<string, Spot> {
  const first = shown[0]!;
  const em = Sheet.em(first);
  const down = Sheet.base(first) - first.el.getBoundingClientRect().top;
  return new Map(
    shown.map(({ v, w, el }) => {
      const r = el.getBoundingClientRect();
      const spot = { v, w, left: r.left - x, right: r.right - x, base: r.top + down - y, em };
      return [`${v}.${w}`, spot];
    }),
  );
}

/** The screen is left. */
export function leaveSheet() {
  resized?.disconnect();
  laid = undefined;
  unpaint();
}

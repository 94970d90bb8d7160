// The sheet of the lines at work: it is painted after each drawing, and follows fingers and keys.
import { watch } from './gesture.ts';
import { paint, unpaint } from '../../painting/paint.ts';
import { Sheet } from '../../painting/sheet.ts';
import * as practice from '../../practice/practice.ts';
import type { Practice } from '../../practice/practice.ts';
import * as stroke from '../../practice/stroke.ts';
import type { Verse } from '../../types.ts';
import { colours } from './colours.ts';
import { keys } from './keys.ts';
import { labelWords } from './labels.ts';
import { drawOver } from './over.ts';
import { tap } from './word.ts';

let laid: { el: HTMLElement; verses: Verse[]; sheet: Sheet } | undefined;
let resized: ResizeObserver | undefined;

/** Colours the letters and draws what lies over them. */
export function paintLines() {
  const p = practice.get();
  const el = document.querySelector<HTMLElement>('[data-t=passage]');
  if (!p || !el) return;
  if (laid?.el !== el || laid.verses !== p.verses) lay(el, p);
  const spans = colours(p);
  paint(laid!.sheet, el, spans);
  labelWords(p, laid!.sheet, spans);
  drawOver(p, laid!.sheet, el.querySelector<HTMLElement>('.layer')!);
}

/** Begins to follow lines that were drawn for the first time. */
function lay(el: HTMLElement, p: Practice) {
  const sheet = Sheet.of(el, p.verses);
  laid = { el, verses: p.verses, sheet };
  follow(el, sheet);
  keys(el, sheet, paintLines);
  sheet.whenFont(el.textContent, paintLines);
  // Letters move when the lines are laid anew: by a turned phone or a setting.
  let size = '';
  resized?.disconnect();
  resized = new ResizeObserver(([e]) => {
    const now = `${e!.contentRect.width} ${e!.contentRect.height}`;
    if (size && size !== now) paintLines();
    size = now;
  });
  resized.observe(el);
}

function follow(el: HTMLElement, sheet: Sheet) {
  watch(el, sheet, { tap, ...stroke, hold: (v, w) => practice.set({ open: { v, w } }) });
}

/** The lines are left. */
export function leaveSheet() {
  resized?.disconnect();
  laid = undefined;
  unpaint();
}
